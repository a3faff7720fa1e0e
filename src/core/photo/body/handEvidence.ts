import { type Evidence, type PhotoPlaces, SAMPLES } from './edgeEvidence.ts';
import type { FitKnowledge } from './fitRows.ts';

/** mm along the edge to either side of a hand-set place for which it speaks. */
const SPEAKS_FOR_MM = 4;
/** mm across. How well a hand sets a place on an edge. */
const HAND_MM = 0.6;
/** What is left of an edge that contradicts the hand. */
const CONTRADICTED = 0.1;

export function isHandMarked({ onEdge, inside, outside }: FitKnowledge): boolean {
  return onEdge.length + inside.length + outside.length > 0;
}

/**
 * Makes the evidence obey what the hand marked: next to a place inside the edge lies farther out, next to one outside
 * farther in, and at a place on the edge there is an edge. `reachPx` is that of the samples along each normal.
 */
export function obeyHand(
  places: PhotoPlaces,
  known: FitKnowledge,
  reachPx: number,
  pxPerMm: number,
  evidence: Evidence,
): void {
  const beside = SPEAKS_FOR_MM * pxPerMm;
  const { strength, visible, count } = evidence;
  const each = (hands: FitKnowledge['onEdge'], act: (station: number, outPx: number) => void): void => {
    for (const hand of hands)
      for (let i = 0; i < count; i++) {
        const dx = hand.x - places[4 * i];
        const dy = hand.y - places[4 * i + 1];
        const [nx, ny] = [places[4 * i + 2], places[4 * i + 3]];
        const outPx = dx * nx + dy * ny;
        if (Math.abs(outPx) <= reachPx && Math.abs(dy * nx - dx * ny) <= beside) act(i, outPx);
      }
  };
  const offset = (j: number): number => (j / ((SAMPLES - 1) / 2) - 1) * reachPx;
  const weaken = (sign: 1 | -1) => (i: number, outPx: number) => {
    for (let j = 0; j < SAMPLES; j++)
      if (sign * (offset(j) - outPx) < 0) strength[i * SAMPLES + j] *= CONTRADICTED;
  };
  each(known.inside, weaken(1));
  each(known.outside, weaken(-1));
  each(known.onEdge, (i, outPx) => {
    visible[i] = 1;
    for (let j = 0; j < SAMPLES; j++) {
      const at = i * SAMPLES + j;
      const away = (offset(j) - outPx) / (HAND_MM * pxPerMm);
      strength[at] = Math.max(CONTRADICTED * strength[at], Math.exp(-0.5 * away * away));
    }
  });
}
