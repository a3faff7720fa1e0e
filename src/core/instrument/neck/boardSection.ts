/** A fingerboard as it lies glued: straight tapering plan, round on top, its sides of one height. */
export interface BoardSizes {
  readonly lengthMm: number;
  readonly widthAtNutMm: number;
  readonly widthAtEndMm: number;
  /** Of the round top, the same all along. */
  readonly radiusMm: number;
  /** Height of the sides. */
  readonly sideMm: number;
}

/** Width of the board at a distance from the nut, mm; the taper is carried on beyond the end. */
export function boardWidth(board: BoardSizes, fromNutMm: number): number {
  const { lengthMm, widthAtNutMm, widthAtEndMm } = board;
  return widthAtNutMm + ((widthAtEndMm - widthAtNutMm) * fromNutMm) / lengthMm;
}

/**
 * Thickness of the board in the middle at a distance from the nut, mm: its side and the rise of its round top over the
 * width there. NaN where the board is wider than its round.
 */
export function boardThickness(board: BoardSizes, fromNutMm: number): number {
  const { radiusMm, sideMm } = board;
  return sideMm + radiusMm - Math.sqrt(radiusMm ** 2 - (boardWidth(board, fromNutMm) / 2) ** 2);
}
