import { medianOf } from '../../numeric/index.ts';
import type { EdgeSpot } from '../edge/foundEdge.ts';

/** Where each width is looked for, shares of the body length. */
const WIDTHS = [
  { name: 'lowerBout', section: 'lowerBout', from: 0.1, to: 0.34, widest: true },
  { name: 'waist', section: 'cBout', from: 0.44, to: 0.64, widest: false },
  { name: 'upperBout', section: 'upperBout', from: 0.72, to: 0.9, widest: true },
] as const;

/** Seen places that a width needs on either side. */
const LEAST_PLACES = 8;
/**
 * mm along the edge to either side over which places are taken together: the jaw of a calliper touches wood, not the one
 * place that slipped farthest out. An edge as curved as a bout loses less than 0.01 mm a side by it.
 */
const JAW_MM = 2.5;

/** Bouts and waist as callipers would read them on the worn instrument, body frame, where both sides are seen. */
export function calliperWidths(
  bass: readonly EdgeSpot<'body'>[],
  treble: readonly EdgeSpot<'body'>[],
  lengthMm: number,
): { readonly name: string; readonly mm: number }[] {
  return WIDTHS.flatMap(({ name, section, from, to, widest }) => {
    const reach = (spots: readonly EdgeSpot<'body'>[]): number | null => {
      const across = spots
        .filter((spot) => spot.seen && spot.section === section)
        .filter((spot) => spot.y > from * lengthMm && spot.y < to * lengthMm);
      if (across.length < LEAST_PLACES) return null;
      const touched = across.map(({ alongMm }) =>
        medianOf(
          across.filter((near) => Math.abs(near.alongMm - alongMm) <= JAW_MM).map(({ x }) => Math.abs(x)),
        ),
      );
      return widest ? Math.max(...touched) : Math.min(...touched);
    };
    const [left, right] = [reach(bass), reach(treble)];
    return left === null || right === null ? [] : [{ name, mm: left + right }];
  });
}
