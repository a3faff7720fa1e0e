import { log, power } from '../../base/index.ts';
import type { PrintBelief } from '../sheet/printScale.ts';
import type { Belief } from './adjustment.ts';
import {
  BOWS,
  bowSlot,
  cardHeightSlot,
  lensSlot,
  placeSlot,
  printSlot,
  type SceneUnknowns,
} from './sceneUnknowns.ts';
import { UNKNOWN } from './sight.ts';

/** What a picture's size and its camera's note say of the lens. */
export interface LensHint {
  readonly centre: { readonly x: number; readonly y: number };
  readonly diagonalPx: number;
  readonly notedFocalPx: number | undefined;
  /** The focal length that distortion is reckoned with. */
  readonly likelyFocalPx: number;
}

/** Share by which a noted focal length may be off: it is rounded to whole mm, and focusing lengthens it. */
export const NOTED_FOCAL_SIGMA = 0.03;
/** Lenses from a phone's wide one to a short telephoto, in logarithm, about a normal one of 1.15 diagonals (from memory). */
export const UNKNOWN_FOCAL_SIGMA = 0.6;
export const UNKNOWN_FOCAL_SHARE = 1.15;
/** Share of the diagonal by which the lens's axis misses the middle; stabilised lenses move by about so much. */
const CENTRE_SIGMA = 0.006;
/**
 * Distortion at the corner of the picture, as a share of the radius (k: from memory, 1 to 3 % at the corner, of which the
 * second term is a tenth or two; what sees a wide lens overrules it), and across it (p: from memory, lenses are centred to a
 * few micrometres; more of it looks like a shift of the centre, which is believed in by itself).
 */
const CORNER_BEND = { k1: 0.03, k2: 0.006, k3: 0.02, p: 0.0003 } as const;
/** How much wider every belief of a lens is when nothing is to be believed. */
const OPEN = 1000;
/** The spread of an unknown that is not asked for: far below what any point can tell. */
const HELD = 1 / 1_000_000_000;

/** The beliefs about one lens. */
export function lensBeliefs(
  unknowns: SceneUnknowns,
  lens: number,
  hint: LensHint,
  { open, withThirdTerm }: { readonly open: boolean; readonly withThirdTerm: boolean },
): readonly Belief[] {
  const slot = lensSlot(unknowns, lens);
  const corner = hint.diagonalPx / 2 / hint.likelyFocalPx;
  const wide = open ? OPEN : 1;
  const one = (unknown: number, value: number, sigma: number): Belief => ({
    slots: [slot + unknown],
    factors: [1],
    value,
    sigma,
  });
  const noted = hint.notedFocalPx;
  const across = (wide * CORNER_BEND.p) / (3 * corner);
  return [
    one(
      UNKNOWN.logFocal,
      log(noted ?? UNKNOWN_FOCAL_SHARE * hint.diagonalPx),
      wide * (noted === undefined ? UNKNOWN_FOCAL_SIGMA : NOTED_FOCAL_SIGMA),
    ),
    one(UNKNOWN.centreX, hint.centre.x, wide * CENTRE_SIGMA * hint.diagonalPx),
    one(UNKNOWN.centreY, hint.centre.y, wide * CENTRE_SIGMA * hint.diagonalPx),
    one(UNKNOWN.k1, 0, (wide * CORNER_BEND.k1) / corner ** 2),
    one(UNKNOWN.k2, 0, (wide * CORNER_BEND.k2) / power(corner, 4)),
    one(UNKNOWN.k3, 0, withThirdTerm ? (wide * CORNER_BEND.k3) / power(corner, 6) : HELD),
    one(UNKNOWN.p1, 0, across),
    one(UNKNOWN.p2, 0, across),
  ];
}

/** What is known of each sheet's print: rows of its own, or none where it follows the first sheet's. */
export interface SheetPrint {
  readonly scale: { readonly x: number; readonly y: number };
  readonly rows: readonly PrintBelief[] | null;
}

/** Share. How far two pages of one printing differ, paper and feed together (from memory). */
export const ONE_PRINTING_SIGMA = 0.0005;
/** Share. How far two printings may differ. */
const TWO_PRINTINGS_SIGMA = 0.02;

/** The beliefs about the sheets: the first lies at the scene's origin, their prints are as the bars say. */
export function sheetBeliefs(
  unknowns: SceneUnknowns,
  prints: readonly SheetPrint[],
  { open, areOnePrinting }: { readonly open: boolean; readonly areOnePrinting: boolean },
): readonly Belief[] {
  const tie = areOnePrinting ? ONE_PRINTING_SIGMA : TWO_PRINTINGS_SIGMA;
  const first = printSlot(unknowns, 0);
  const printRows = prints.flatMap(({ scale, rows }, sheet): readonly Belief[] => {
    const slot = printSlot(unknowns, sheet);
    const held = (place: 0 | 1, value: number): Belief => ({
      slots: [slot + place],
      factors: [1],
      value,
      sigma: HELD,
    });
    const follows = (place: 0 | 1): Belief => ({
      slots: [slot + place, first + place],
      factors: [1, -1],
      value: 0,
      sigma: tie,
    });
    if (open) return [held(0, scale.x), held(1, scale.y)];
    if (rows === null) return [follows(0), follows(1)];
    return rows.map(({ x, y, value, sigma }) => ({ slots: [slot, slot + 1], factors: [x, y], value, sigma }));
  });
  const place = placeSlot(unknowns, 0);
  const origin = [0, 1, 2].map(
    (one): Belief => ({ slots: [place + one], factors: [1], value: 0, sigma: HELD }),
  );
  return [...printRows, ...origin];
}

/** mm, k = 2. How far a sheet on a table lifts at its rim (from memory: a few tenths). */
export const PAPER_LIFT_MM = 0.3;

/** The beliefs about how flat the sheets lie; exact boards are flat. */
export function bowBeliefs(unknowns: SceneUnknowns, sigmaMm: number, open: boolean): readonly Belief[] {
  return unknowns.sheetNumbers.flatMap((_, sheet) =>
    Array.from({ length: BOWS }, (_one, bow) => ({
      slots: [bowSlot(unknowns, sheet) + bow],
      factors: [1],
      value: 0,
      sigma: open ? HELD : sigmaMm,
    })),
  );
}

/** mm. Where the edge of a plate may stand when nobody measured it: from the table to over a cello's ribs. */
const UNKNOWN_HEIGHT = { mm: 50, sigma: 60 } as const;

/** The beliefs about the cards' heights over the sheet. */
export function cardBeliefs(
  unknowns: SceneUnknowns,
  heightsMm: ReadonlyMap<number, { readonly heightMm: number; readonly plusMinusMm: number }>,
): readonly Belief[] {
  return unknowns.cardNumbers.map((number, card) => {
    const given = heightsMm.get(number);
    return {
      slots: [cardHeightSlot(unknowns, card)],
      factors: [1],
      value: given?.heightMm ?? UNKNOWN_HEIGHT.mm,
      sigma: given ? Math.max(given.plusMinusMm / 2, LEAST_HEIGHT_SIGMA_MM) : UNKNOWN_HEIGHT.sigma,
    };
  });
}

/** mm. No height is known better. */
const LEAST_HEIGHT_SIGMA_MM = 0.001;
