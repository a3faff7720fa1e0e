import type { LabPicture } from '../picture/labPicture.ts';
import { findBoard } from './boardTest.ts';
import { type BodyFit, bodyToPhoto, seatOf } from './bodySeat.ts';
import { valueAt } from './edgeMap.ts';

/** Where sound holes lie, mm from the centre line and from the lower end of a body of 355. */
const HOLES_MM = { fromX: 24, toX: 64, fromY: 148, toY: 228, step: 1 } as const;
/** Lightness by which a hole is darker than the plate round it. */
const DARKER = 14;
/** Share of the place that is dark: of a top much, of a back hardly any; figure and glare lie between (seen on 13 simulated pictures). */
const TOP_SHARE = 0.15;
const BACK_SHARE = 0.02;

/**
 * Which face shows: a top has a fingerboard over it or two dark sound holes, a back has neither. Null where it cannot
 * be told. A proposal only: a plate without sound holes looks like a back.
 */
export function guessFace(lab: LabPicture, fit: BodyFit): 'top' | 'back' | null {
  if (findBoard(lab, fit) !== null) return 'top';
  const shares = ([1, -1] as const).map((side) => darkShare(lab, fit, side));
  if (shares.every((share) => share > TOP_SHARE)) return 'top';
  return shares.every((share) => share < BACK_SHARE) ? 'back' : null;
}

function darkShare(lab: LabPicture, fit: BodyFit, side: 1 | -1): number {
  const seat = seatOf(fit);
  const place = new Float64Array(2);
  const seen: number[] = [];
  for (let y = HOLES_MM.fromY; y <= HOLES_MM.toY; y += HOLES_MM.step)
    for (let x = HOLES_MM.fromX; x <= HOLES_MM.toX; x += HOLES_MM.step) {
      bodyToPhoto(seat, side * x, y, place, 0);
      const [across, down] = place;
      if (across < 0 || down < 0 || across > lab.widthPx - 1 || down > lab.heightPx - 1) continue;
      seen.push(valueAt(lab.lightness, lab.widthPx, lab.heightPx, across, down));
    }
  seen.sort((a, b) => a - b);
  const plate = seen[Math.floor(0.6 * seen.length)] ?? 0;
  return seen.filter((value) => value < plate - DARKER).length / Math.max(1, seen.length);
}
