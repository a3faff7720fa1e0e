import { Bug, type Frame } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { segmentLength, segments, subSegment } from './segment.ts';
import { chainOfSegments } from './subChain.ts';

/**
 * An open chain with its first and its last arc or line carried on by so many millimetres along their own circles;
 * negative lengths cut back, by less than that arc is long.
 */
export function carryChain<F extends Frame>(chain: Chain<F>, startMm: number, endMm: number): Chain<F> {
  if (chain.closed) throw new Bug('a closed chain has no ends to carry on');
  const all = segments(chain);
  const last = all.length - 1;
  return chainOfSegments(
    all.map((segment, index) => {
      const length = segmentLength(segment);
      const from = index === 0 ? -startMm / length : 0;
      const to = index === last ? 1 + endMm / length : 1;
      if (!(from < to)) throw new Bug('a chain cut back by more than its last arc');
      return subSegment(segment, from, to);
    }),
  );
}
