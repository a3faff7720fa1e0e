import { hypot } from '../../base/index.ts';
import type { FitKnowledge } from './fitRows.ts';
import type { FitScore } from './fitScore.ts';

const HINT_COST = 0.5;

/** mm. How far an outline may miss a place that the hand set on the edge. */
const MISSED_MM = 3;

/**
 * A fit that leaves out a place marked as inside, covers one marked as outside, or misses one on the edge can hardly win.
 * `outline`: [x, y, …] px, its corners a few mm apart.
 */
export function withHints(
  score: FitScore,
  outline: Float64Array,
  pxPerMm: number,
  known: FitKnowledge,
): FitScore {
  const wrong =
    shareOf(known.inside, (place) => !encloses(outline, place)) +
    shareOf(known.outside, (place) => encloses(outline, place)) +
    shareOf(known.onEdge, (place) => farFrom(outline, place, MISSED_MM * pxPerMm));
  return wrong === 0 ? score : { ...score, score: score.score - HINT_COST * wrong };
}

/** How many, each counting one up to three and less from there: a long stroke is one statement, not a hundred. */
function shareOf<T>(places: readonly T[], isWrong: (place: T) => boolean): number {
  const wrong = places.filter(isWrong).length;
  return Math.min(wrong, MOST_COUNTED);
}

const MOST_COUNTED = 3;

function farFrom(
  outline: Float64Array,
  place: { readonly x: number; readonly y: number },
  px: number,
): boolean {
  for (let i = 0; i < outline.length; i += 2)
    if (hypot(outline[i] - place.x, outline[i + 1] - place.y) < px) return false;
  return true;
}

function encloses(outline: Float64Array, place: { readonly x: number; readonly y: number }): boolean {
  let inside = false;
  const corners = outline.length / 2;
  for (let i = 0, j = corners - 1; i < corners; j = i++) {
    const yi = outline[2 * i + 1];
    const yj = outline[2 * j + 1];
    if (yi > place.y === yj > place.y) continue;
    const xi = outline[2 * i];
    const crossing = xi + ((place.y - yi) / (yj - yi)) * (outline[2 * j] - xi);
    if (place.x < crossing) inside = !inside;
  }
  return inside;
}
