import type { Box, Point } from '../base/index.ts';
import { boundsOf, type Chain, sampleChain } from '../curve/index.ts';
import { lineEnters } from './lineEnters.ts';

/** mm. How far from its ends a seam's outer marks stand, clear of the seam that crosses there. */
const INSET_MM = 16;
/** mm. Marks stand alternately this far from the two edges of the overlap, so that three never lie in one line. */
const OFFSETS_MM = [3, 7, 3] as const;
/** mm. So far around a mark nothing else should stand: its arms, and a breath. */
const CLEAR_MM = 3.5;
/** mm. And so far beside the middle one, where the names of both pages stand. */
const NAMES_MM = 17;
/** mm. Marks give way to what is printed there in such steps, each no farther than so many. */
const STEP_MM = 2;
const MOST_STEPS = 20;
/** mm. The middle mark stays this far inside the ends, so that it is not where an outer one went. */
const APART_MM = STEP_MM * MOST_STEPS;
/** mm. Lines as they are looked at here: well below the breath that a mark keeps. */
const CHORD_MM = 0.1;

/**
 * The three marks in the overlap of two tiles. Each stands at the end or the middle of the seam, or as near to it as nothing
 * else is printed: a mark over a number hides a depth to drill to. Where there is no such place, where fewest lines run.
 */
export function seamMarks(
  shared: Box<'drawing'>,
  upright: boolean,
  chains: readonly Chain<'drawing'>[],
): readonly Point<'drawing'>[] {
  const [along, across] = upright ? (['y', 'x'] as const) : (['x', 'y'] as const);
  const [from, to] = [shared.min[along] + INSET_MM, shared.max[along] - INSET_MM];
  const usual = upright ? [to, (from + to) / 2, from] : [from, (from + to) / 2, to];
  const printed = linesNear(shared, chains);
  return usual.map((place, index) => {
    const isMiddle = index === 1;
    const markAt = (at: number): Point<'drawing'> => {
      const beside = shared.min[across] + (OFFSETS_MM[index] ?? 0);
      return upright ? { x: beside, y: at } : { x: at, y: beside };
    };
    const inTheWay = (at: number): number => {
      const { x, y } = markAt(at);
      const names = isMiddle ? NAMES_MM : CLEAR_MM;
      const box: Box<'drawing'> = {
        min: { x: x - CLEAR_MM, y: y - CLEAR_MM },
        max: { x: x + (upright ? CLEAR_MM : names), y: y + (upright ? names : CLEAR_MM) },
      };
      return printed.filter(([a, b]) => lineEnters(a, b, box)).length;
    };
    const [least, most] = isMiddle ? [from + APART_MM, to - APART_MM] : [from, to];
    let best = { at: place, count: inTheWay(place) };
    for (let step = 1; step <= MOST_STEPS && best.count > 0; step++)
      for (const way of [1, -1]) {
        const at = place + way * step * STEP_MM;
        if (at < least || at > most) continue;
        const count = inTheWay(at);
        if (count < best.count) best = { at, count };
      }
    return markAt(best.at);
  });
}

/** The pieces of all printed lines that come near a seam. */
function linesNear(
  shared: Box<'drawing'>,
  chains: readonly Chain<'drawing'>[],
): readonly (readonly [Point<'drawing'>, Point<'drawing'>])[] {
  const near: Box<'drawing'> = {
    min: { x: shared.min.x - CLEAR_MM, y: shared.min.y - CLEAR_MM },
    max: { x: shared.max.x + CLEAR_MM, y: shared.max.y + CLEAR_MM },
  };
  return chains.flatMap((chain) => {
    const { min, max } = boundsOf(chain);
    if (min.x > near.max.x || max.x < near.min.x || min.y > near.max.y || max.y < near.min.y) return [];
    const points = sampleChain(chain, CHORD_MM);
    return points.flatMap((a, index) => {
      const b = points[index + 1] ?? (chain.closed ? points[0] : undefined);
      return b && lineEnters(a, b, near) ? [[a, b] as const] : [];
    });
  });
}
