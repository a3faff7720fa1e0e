/** Words of the ways to look at a plate and at the body. */
export const viewsEn = {
  inHand: 'The body in the hand: drag, or turn it with the arrow keys',
  held: (turn: number, tilt: number) => `turned by ${turn}°, tilted by ${tilt}°`,
  takeInHand: 'Take it in the hand',
  layDown: 'Lay it on the paper',
  turnOver: 'Turn it over',
};
