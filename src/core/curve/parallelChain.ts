import {
  accept,
  type Checked,
  cos,
  distanceBetween,
  type Fault,
  type Frame,
  refuse,
  sin,
  WELD_MM,
} from '../base/index.ts';
import type { Chain } from './chain.ts';
import { arcOf, headingOn, type Segment, segments } from './segment.ts';
import { chainOfSegments } from './subChain.ts';

/**
 * The parallel of an open tangent chain, `distanceMm` to the left of its travel (negative: to the right):
 * the same headings, radii changed by the distance, nothing trimmed.
 *
 * Faults: `parallel.collapse` for an arc whose radius the distance uses up, `parallel.kink` for a joint that
 * is not tangent, since the parallel would open there.
 */
export function parallelChain<F extends Frame>(chain: Chain<F>, distanceMm: number): Checked<Chain<F>> {
  const faults: Fault[] = [];
  const moved: Segment<F>[] = [];
  for (const [index, segment] of segments(chain).entries()) {
    const arc = arcOf(segment);
    const roomMm = arc ? arc.radiusMm - Math.sign(segment.bulge) * distanceMm : Infinity;
    if (arc && roomMm <= WELD_MM) faults.push(collapse(index, arc.radiusMm, distanceMm));
    const next = shifted(segment, distanceMm);
    const before = moved.at(-1);
    if (before && distanceBetween(before.end, next.start) > WELD_MM) faults.push(kink(index));
    moved.push(next);
  }
  if (faults.length > 0) return refuse(...faults);
  return accept(chainOfSegments(moved));
}

function shifted<F extends Frame>(segment: Segment<F>, distanceMm: number): Segment<F> {
  const startRad = headingOn(segment, 0);
  const endRad = headingOn(segment, 1);
  const { start, end, bulge } = segment;
  return {
    start: { x: start.x - distanceMm * sin(startRad), y: start.y + distanceMm * cos(startRad) },
    end: { x: end.x - distanceMm * sin(endRad), y: end.y + distanceMm * cos(endRad) },
    bulge,
  };
}

function collapse(index: number, radiusMm: number, distanceMm: number): Fault {
  const side = distanceMm > 0 ? 'left' : 'right';
  return {
    code: 'parallel.collapse',
    at: `arc ${index + 1}`,
    found: `a radius of ${radiusMm.toFixed(2)} mm against a parallel ${Math.abs(distanceMm).toFixed(2)} mm to its ${side}, where its centre lies`,
    need: 'a radius greater than the distance',
    remedy: 'take a smaller distance or a larger radius',
  };
}

function kink(index: number): Fault {
  return {
    code: 'parallel.kink',
    at: `joint before segment ${index + 1}`,
    found: 'a corner, where the parallel opens or crosses itself',
    need: 'a tangent joint',
    remedy: 'split the line at the corner and take the parallel of each part',
  };
}
