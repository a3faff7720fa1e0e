import { type BoardSizes, boardWidth } from './boardSection.ts';

/** How far the board is hollowed along its length, half way between nut and end, under a straight-edge along a string. */
export interface BoardScoop {
  readonly bassMm: number;
  readonly middleMm: number;
  readonly trebleMm: number;
  /** Radii of the arcs that gauges for both sides are cut to. */
  readonly bassRadiusMm: number;
  readonly trebleRadiusMm: number;
  /** Radius across the board half way that goes with these three. */
  readonly acrossRadiusMm: number;
  /** What the middle has instead where the round is kept the same all along. */
  readonly middleOfOneRoundMm: number;
}

/**
 * No unit. Where the outer strings run over a board, over its half width: 0.69 at the nut and 0.72 at the end of a violin with
 * usual spacings. Chosen by us; 0.05 more changes the radius by less than half a millimetre.
 */
const STRINGS_TO_HALF_WIDTH = 0.7;

/**
 * The scoop under both outer strings as given, their mean in the middle.
 *
 * Outer strings spread apart, so that a board of one round stands proud of a straight line under them half way:
 * by ((y₁ − y₀) / 2)² / 2R. A scoop as deep in the middle as the mean of both sides needs a rounder board there.
 */
export function boardScoop(board: BoardSizes, bassMm: number, trebleMm: number): BoardScoop {
  const { lengthMm, radiusMm } = board;
  const middleMm = (bassMm + trebleMm) / 2;
  const asideMm = (fromNutMm: number): number => (STRINGS_TO_HALF_WIDTH * boardWidth(board, fromNutMm)) / 2;
  const fallMm = (yMm: number): number => radiusMm - Math.sqrt(radiusMm ** 2 - yMm ** 2);
  const halfWayMm = asideMm(lengthMm / 2);
  const proudMm = (fallMm(asideMm(0)) + fallMm(asideMm(lengthMm))) / 2 - fallMm(halfWayMm);
  const riseMm = fallMm(halfWayMm) + proudMm;
  const arcRadius = (sagMm: number): number => lengthMm ** 2 / (8 * sagMm) + sagMm / 2;
  return {
    bassMm,
    middleMm,
    trebleMm,
    bassRadiusMm: arcRadius(bassMm),
    trebleRadiusMm: arcRadius(trebleMm),
    acrossRadiusMm: (halfWayMm ** 2 + riseMm ** 2) / (2 * riseMm),
    middleOfOneRoundMm: middleMm + proudMm,
  };
}
