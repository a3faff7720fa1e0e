import { asin, Bug, type Frame, type Point, point } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { arcOf, pointOn, segments } from './segment.ts';

/**
 * Points along a chain whose joining lines stay within `chordErrorMm` of it. Every vertex is among them,
 * exactly; an open chain ends with its end, a closed one does not repeat its first point.
 */
export function sampleChain<F extends Frame>(chain: Chain<F>, chordErrorMm: number): readonly Point<F>[] {
  if (!(chordErrorMm > 0)) throw new Bug(`a chord error of ${chordErrorMm} mm cannot be kept`);
  const points: Point<F>[] = [];
  for (const segment of segments(chain)) {
    const arc = arcOf(segment);
    let pieces = 1;
    if (arc) {
      const sagittaRatio = Math.min(1, chordErrorMm / arc.radiusMm);
      const stepRad = Math.min(4 * asin(Math.sqrt(sagittaRatio / 2)), Math.PI / 2);
      pieces = Math.max(1, Math.ceil(Math.abs(arc.sweepRad) / stepRad));
    }
    for (let piece = 0; piece < pieces; piece++) points.push(pointOn(segment, piece / pieces));
  }
  const last = chain.vertices.at(-1);
  if (!chain.closed && last) points.push(point(last.x, last.y));
  return points;
}
