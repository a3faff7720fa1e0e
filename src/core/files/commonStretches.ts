import { type Point, WRITE_MM } from '../base/index.ts';
import { type Chain, intersections, nearestOn, pointOn, segmentLength, segments } from '../curve/index.ts';

/** A stretch of one arc or line that runs along another chain; `wholeOfA` when nothing of that arc or line is left over. */
export interface CommonStretch {
  readonly at: Point<'drawing'>;
  readonly wholeOfA: boolean;
}

/**
 * Where the arcs and lines of chain `a` run along chain `b`, one entry for each arc or line of `a` that is touched at
 * all by a common stretch, and one with `wholeOfA` false for each that is not, once any is. Empty when the two
 * only cross or never meet.
 * Method: shared points cut each arc or line; a cut piece whose middle and quarters lie on `b` is common.
 */
export function commonStretches(a: Chain<'drawing'>, b: Chain<'drawing'>): CommonStretch[] {
  const crossings = intersections(a, b);
  if (crossings.length < 2) return [];
  const stretches = segments(a).map((segment, index) => {
    const cuts = crossings.filter((one) => one.a.segment === index).map((one) => one.a.fraction);
    const ends = [0, ...cuts, 1].sort((one, other) => one - other);
    const lengthMm = segmentLength(segment);
    let at: Point<'drawing'> | undefined;
    let commonMm = 0;
    for (let cut = 0; cut + 1 < ends.length; cut++) {
      const from = ends[cut] ?? 0;
      const to = ends[cut + 1] ?? 1;
      const pieceMm = (to - from) * lengthMm;
      if (pieceMm < WRITE_MM) continue;
      const probes = [0.25, 0.5, 0.75].map((part) => pointOn(segment, from + (to - from) * part));
      if (!probes.every((probe) => nearestOn(b, probe).distanceMm < WRITE_MM)) continue;
      commonMm += pieceMm;
      at ??= probes[1];
    }
    return { at, wholeOfA: lengthMm - commonMm < WRITE_MM };
  });
  const first = stretches.find((stretch) => stretch.at !== undefined)?.at;
  if (first === undefined) return [];
  return stretches.map((stretch) => ({ at: stretch.at ?? first, wholeOfA: stretch.wholeOfA }));
}
