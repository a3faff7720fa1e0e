import { exp } from '../../base/index.ts';
import { type Evidence, type PhotoPlaces, SAMPLES } from './edgeEvidence.ts';
import type { FitKnowledge } from './fitRows.ts';

/** mm along the edge to either side of a hand-set place for which it speaks. */
const SPEAKS_FOR_MM = 4;
/** mm across. How well a hand sets a place on an edge. */
const HAND_MM = 0.6;
/** Beside a forbidden edge a faint one is the body's, if it is an edge at all. */
const LEAST_LEFT = 0.02;
/** Rise of strength out of a forbidden edge's flank that is another edge, not noise. */
const NEW_EDGE = 0.03;
/** What is left of an edge beside a place that the hand set. */
const BESIDE_SET = 0.1;

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
  const forbid = (sign: 1 | -1) => (i: number, outPx: number) => {
    const own = strength.subarray(i * SAMPLES, (i + 1) * SAMPLES);
    const before = largest(own);
    forbidUpTo(own, offset, sign, outPx);
    const left = largest(own);
    if (left >= LEAST_LEFT && left < before) for (let j = 0; j < SAMPLES; j++) own[j] *= before / left;
  };
  each(known.inside, forbid(1));
  each(known.outside, forbid(-1));
  each(known.onEdge, (i, outPx) => {
    visible[i] = 1;
    for (let j = 0; j < SAMPLES; j++) {
      const at = i * SAMPLES + j;
      const away = (offset(j) - outPx) / (HAND_MM * pxPerMm);
      strength[at] = Math.max(BESIDE_SET * strength[at], exp(-0.5 * away * away));
    }
  });
}

/** Clears all samples on the wrong side of the mark, and the flank of a forbidden edge that reaches over it. */
function forbidUpTo(own: Float32Array, offset: (j: number) => number, sign: 1 | -1, outPx: number): void {
  let least = Number.POSITIVE_INFINITY;
  let isFlank = true;
  for (let step = 0; step < SAMPLES; step++) {
    const j = sign === 1 ? step : SAMPLES - 1 - step;
    const value = own[j];
    const isForbidden = sign * (offset(j) - outPx) < 0;
    if (!isForbidden && value > least + NEW_EDGE) isFlank = false;
    if (isForbidden || isFlank) own[j] = 0;
    least = isForbidden ? value : Math.min(least, value);
  }
}

function largest(values: Float32Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) if (values[i] > most) most = values[i];
  return most;
}
