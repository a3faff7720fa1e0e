import { CARD_NUMBERS, heightCard } from './heightCard.ts';
import { codedSquares, SHEET_PAPERS, SHEET_PLANS, type SheetPaper } from './sheetPlans.ts';

/** What a code is printed on. */
export type MarkerOwner =
  | { readonly kind: 'sheet'; readonly paper: SheetPaper; readonly number: number }
  | { readonly kind: 'card'; readonly number: number };

/** Every code of ours with the sheet or the card that bears it; each of these is one object. */
export function markerOwners(): ReadonlyMap<number, MarkerOwner> {
  const owners = new Map<number, MarkerOwner>();
  for (const paper of SHEET_PAPERS) {
    const plan = SHEET_PLANS[paper];
    for (const [place, firstId] of plan.firstIds.entries()) {
      const number = place + 1;
      const owner = { kind: 'sheet', paper, number } as const;
      for (const index of codedSquares(plan, number).keys()) owners.set(firstId + index, owner);
    }
  }
  for (const number of CARD_NUMBERS) {
    const owner = { kind: 'card', number } as const;
    for (const { id } of heightCard(number).markers) owners.set(id, owner);
  }
  return owners;
}
