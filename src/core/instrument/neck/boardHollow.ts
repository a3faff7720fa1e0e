import { type BoardSizes, boardThickness } from './boardSection.ts';

/** The hollow under the board, from beyond the edge of the top to the board's end: an arc across, out of the flat underside. */
export interface BoardHollow {
  readonly widthMm: number;
  readonly depthMm: number;
  readonly radiusMm: number;
  /** From the nut to where it begins. */
  readonly fromNutMm: number;
}

/** No unit. Flat left on either side of the hollow, over the width of the board's end: what glue and sides need. From memory. */
const FLAT_TO_WIDTH = 0.14;

/** No unit. From the edge of the top to where the hollow begins, over the neck stop: 10 mm on a violin. From memory. */
const BEGINS_TO_STOP = 10 / 130;

/** The hollow that leaves a roof of this thickness in the middle; null where the board is no thicker than that. */
export function boardHollow(board: BoardSizes, neckStopMm: number, roofMm: number): BoardHollow | null {
  const depthMm = boardThickness(board, board.lengthMm) - roofMm;
  const widthMm = board.widthAtEndMm * (1 - 2 * FLAT_TO_WIDTH);
  if (!(depthMm > 0)) return null;
  return {
    widthMm,
    depthMm,
    radiusMm: ((widthMm / 2) ** 2 + depthMm ** 2) / (2 * depthMm),
    fromNutMm: neckStopMm * (1 + BEGINS_TO_STOP),
  };
}
