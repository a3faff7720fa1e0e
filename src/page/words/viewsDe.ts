import type { viewsEn } from './viewsEn.ts';

/** Worte zu den Arten, eine Platte und den Korpus anzusehen. */
export const viewsDe: typeof viewsEn = {
  inHand: 'Der Korpus in der Hand: ziehen, oder mit den Pfeiltasten drehen',
  held: (turn, tilt) => `um ${turn}° gedreht, um ${tilt}° geneigt`,
  takeInHand: 'In die Hand nehmen',
  layDown: 'Aufs Papier legen',
  turnOver: 'Umdrehen',
};
