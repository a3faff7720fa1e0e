/** Words of the pictures of a plate. */
export const picturesEn = {
  open: 'Pictures of it',
  title: 'picture',
  kinds: {
    contours: 'contours',
    curvature: 'curvature map',
    'raking-light': 'one low lamp',
    thickness: 'thickness map',
    section: 'a cut of your own',
    difference: 'difference to what lies over it',
  },
  interval: 'between two lines, mm',
  line: 'from x,y to x,y: across from the centre line, up from the lower end',
  keep: 'Keep it as',
};
