import type { LabPicture } from '../picture/labPicture.ts';
import { type BodyFit, bodyToPhoto, seatOf } from './bodySeat.ts';
import { valueAt } from './edgeMap.ts';

/** Where the fingerboard's middle stands across the centre line; it lies some 20 mm above the edge, so a turned body shows. */
export interface BoardPlace {
  readonly offsetMm: number;
  /** How well the profile mirrors about that middle, 0 to 1. */
  readonly likeness: number;
}

const FROM_MM = 295;
const TO_MM = 340;
const STEP_MM = 0.5;
const REACH_MM = 36;
const SEARCH_MM = 15;
const HALF_BOARD_MM = 20;
/** L a half mm; a fingerboard's edge is at least this sharp, a back has none. */
const LEAST_STEP = 3.4;
const LEAST_LIKENESS = 0.45;

/**
 * The fingerboard's middle, or null when no fingerboard is plain to see. Method: mean lightness across the body
 * between two stations of the upper bout, differentiated; the middle is where its mirror image is its negative.
 */
export function findBoard(lab: LabPicture, fit: BodyFit): BoardPlace | null {
  const slope = slopeAcross(lab, fit);
  const steepest = slope.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (steepest < LEAST_STEP) return null;
  const middle = (slope.length - 1) / 2;
  const half = Math.round(HALF_BOARD_MM / STEP_MM);
  let best: BoardPlace | null = null;
  for (let shift = -SEARCH_MM / STEP_MM; shift <= SEARCH_MM / STEP_MM; shift++) {
    let product = 0;
    let power = 0;
    for (let u = 1; u <= half; u++) {
      const right = slope[middle + shift + u] ?? 0;
      const left = slope[middle + shift - u] ?? 0;
      product -= right * left;
      power += 0.5 * (right * right + left * left);
    }
    const likeness = power > 0 ? product / power : 0;
    if (best === null || likeness > best.likeness) best = { offsetMm: shift * STEP_MM, likeness };
  }
  return best && best.likeness >= LEAST_LIKENESS ? best : null;
}

function slopeAcross(lab: LabPicture, fit: BodyFit): Float64Array {
  const seat = seatOf(fit);
  const count = Math.round((2 * REACH_MM) / STEP_MM) + 1;
  const sums = new Float64Array(count);
  const place = new Float64Array(2);
  let rows = 0;
  for (let y = FROM_MM; y <= TO_MM; y += 3) {
    rows++;
    for (let i = 0; i < count; i++) {
      bodyToPhoto(seat, -REACH_MM + i * STEP_MM, y, place, 0);
      const x = Math.min(lab.widthPx - 1, Math.max(0, place[0] as number));
      const down = Math.min(lab.heightPx - 1, Math.max(0, place[1] as number));
      sums[i] = (sums[i] as number) + valueAt(lab.lightness, lab.widthPx, lab.heightPx, x, down);
    }
  }
  return sums.map((_, i) =>
    i === 0 || i === count - 1 ? 0 : ((sums[i + 1] as number) - (sums[i - 1] as number)) / (2 * rows),
  );
}
