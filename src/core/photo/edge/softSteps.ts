import type { Point } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { Picture } from '../picture/picture.ts';
import type { PurflingWitness, SightAt } from './nearPlateEdgePurfling.ts';
import { colourSteps } from './nearPlateEdgeSteps.ts';

/** What told the near edge at a place, and where. */
export type Told =
  | { readonly by: 'edge'; readonly outPx: number; readonly widthPx: number }
  | { readonly by: 'purfling'; readonly outPx: number }
  | { readonly by: 'none' };

/** Steps wider than this many usual ones are the rounding of the rim that turns from the light, not its end. */
const SOFT_TIMES = 1.35;
/** Every so many places free of overlook one is measured for how sharp the picture's edges are. */
const EVERY = 12;
/** mm to either side of a place whose edges show them. */
const REACH_MM = 1.2;

/** px. The widest that a step of the picture's own sharpness may be: from edges where nothing is looked over. */
export function sharpWidthPx(
  picture: Picture,
  edge: readonly EdgePoint[],
  sights: readonly SightAt[],
  leastGapPx: number,
  pxPerMm: number,
): number {
  const widths = edge
    .filter(({ state }, i) => state === 'seen' && sights[i].gapPx < leastGapPx)
    .filter((_, i) => i % EVERY === 0)
    .flatMap((place: { readonly point: Point<'photo'>; readonly normal: Point<'photo'> }) => {
      const steps = colourSteps(picture, place, REACH_MM * pxPerMm, pxPerMm);
      const own = steps.reduce(
        (best, step) => (best === null || Math.abs(step.outPx) < Math.abs(best.outPx) ? step : best),
        steps.at(0) ?? null,
      );
      return own === null ? [] : [own.widthPx];
    });
  return widths.length === 0 ? Number.POSITIVE_INFINITY : SOFT_TIMES * medianOf(widths);
}

/** mm of a 355 mm body's edge to either side over which soft steps are compared with their purfling. */
const TOGETHER_MM = 14;
const FEWEST = 5;

/**
 * Soft steps shifted by as much as they lie, in the median of their neighbourhood, off the place that the purfling
 * tells: the rounding of the rim darkens before it ends, by an amount that changes slowly along the edge. What is local,
 * a loss or a nick, stays as it was seen. Places without a purfling of their own go by their neighbours'.
 */
export function heldToPurfling(
  edge: readonly EdgePoint[],
  told: readonly (Told | null)[],
  witnesses: readonly (PurflingWitness | null)[],
  sharpPx: number,
): readonly (Told | null)[] {
  const isSoft = (one: Told | null) => one?.by === 'edge' && one.widthPx > sharpPx;
  return told.map((one, i) => {
    if (one?.by !== 'edge' || !isSoft(one)) return one;
    const off: number[] = [];
    const { side, section, along } = edge[i];
    for (const by of [-1, 1])
      for (let j = by < 0 ? i : i + 1; j >= 0 && j < edge.length; j += by) {
        const other = edge[j];
        if (other.side !== side || other.section !== section || Math.abs(other.along - along) > TOGETHER_MM)
          break;
        const [near, witness] = [told[j], witnesses[j]];
        if (near?.by === 'edge' && witness && isSoft(near)) off.push(near.outPx - witness.outPx);
      }
    return off.length < FEWEST ? one : { ...one, outPx: one.outPx - medianOf(off) };
  });
}
