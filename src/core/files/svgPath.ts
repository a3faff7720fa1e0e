import { distanceBetween, type Frame, WRITE_MM } from '../base/index.ts';
import { type Chain, type Segment, segmentLength, segments, sweepOf } from '../curve/index.ts';
import { millimetres } from './millimetres.ts';
import { shortArcs } from './shortArcs.ts';

const QUARTER_TURN = Math.PI / 2;
/** An arc that leaves its chord by less than this share of the written step is written as a line. */
const FLAT_SHARE = 0.1;

/**
 * The `d` of an SVG path for a chain, y turned down: the chain's (x, y) is written (x − left, top − y). Arcs are `A` of
 * at most a quarter turn; stretches that vanish at the written step are left out.
 */
export function svgPath<F extends Frame>(chain: Chain<F>, left: number, top: number): string {
  const place = (x: number, y: number): string => `${millimetres(x - left)} ${millimetres(top - y)}`;
  const all = segments(shortArcs(chain, () => QUARTER_TURN));
  const first = all[0];
  if (!first) return '';
  let at = place(first.start.x, first.start.y);
  const parts = [`M${at}`];
  for (const [index, segment] of all.entries()) {
    const next = place(segment.end.x, segment.end.y);
    if (next === at) continue;
    at = next;
    const returns = chain.closed && index === all.length - 1;
    if (isFlat(segment)) {
      if (!returns) parts.push(`L${next}`);
      continue;
    }
    const radius = millimetres(segmentLength(segment) / Math.abs(sweepOf(segment)));
    parts.push(`A${radius} ${radius} 0 0 ${segment.bulge > 0 ? 0 : 1} ${next}`);
  }
  if (chain.closed) parts.push('Z');
  return parts.join('');
}

function isFlat<F extends Frame>(segment: Segment<F>): boolean {
  const riseMm = (Math.abs(segment.bulge) * distanceBetween(segment.start, segment.end)) / 2;
  return riseMm < WRITE_MM * FLAT_SHARE;
}
