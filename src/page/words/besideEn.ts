/** Words where another design lies over the one on the bench. */
export const besideEn = {
  title: 'laid over it',
  lay: 'Lay another design over it',
  asItCame: 'Lay over it how it came',
  lies: (name: string) => `${name} lies over it, dashed: lower end on lower end, centre line on centre line.`,
  takeOff: 'Take it off',
  alike: 'The outlines are alike to 0.05 mm.',
  outside: (off: string, at: string) => `It lies ${off} mm outside at most, ${at} from the lower end.`,
  inside: (off: string, at: string) => `It lies ${off} mm inside at most, ${at} from the lower end.`,
  heights: (plate: string, rms: string) => `Heights of the ${plate}: ${rms} mm apart on average (rms).`,
  higher: (off: string, at: string, x: string) =>
    `${off} mm higher, ${at} from the lower end, ${x} from the centre line.`,
  lower: (off: string, at: string, x: string) =>
    `${off} mm lower, ${at} from the lower end, ${x} from the centre line.`,
  numbers: (count: number) => (count === 1 ? '1 number differs' : `${count} numbers differ`),
  number: 'number',
  here: 'here',
  there: 'over it',
};
