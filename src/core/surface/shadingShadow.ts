import { atan, atan2, hypot, tan } from '../base/index.ts';
import type { HeightField } from './heightField.ts';

/** A step of the march grows by this share of the way: far ridges are blunter as seen from the place. */
const STEP_GROWTH = 0.02;

/**
 * Share of a lamp that a place sees over the surface, 0 to 1: it sinks behind the horizon evenly over the lamp's width.
 *
 * `towards` is the way from the place to the lamp, mm. Method: a march along the field towards the lamp, as far as the
 * surface can still hide it; the horizon is the steepest line of sight that touches a height.
 */
export function lampShare(
  field: HeightField,
  place: { readonly column: number; readonly row: number },
  towards: { readonly x: number; readonly y: number; readonly up: number },
  highestMm: number,
  halfWidthRad: number,
): number {
  const { columns, zMm, stepMm } = field;
  const level = hypot(towards.x, towards.y);
  if (level === 0) return 1;
  const lampRad = atan2(towards.up, level);
  const lowest = tan(Math.max(0, lampRad - halfWidthRad));
  const z = zMm[place.row * columns + place.column] as number;
  const [dx, dy] = [towards.x / level, towards.y / level];
  // Beyond this way even the highest place lies under the lower rim of the lamp.
  const reach = lowest > 0 ? (highestMm - z) / (lowest * stepMm) : Number.POSITIVE_INFINITY;
  let steepest = 0;
  for (let way = 1; way < reach; way += 1 + STEP_GROWTH * way) {
    const height = heightBetween(field, place.column + way * dx, place.row + way * dy);
    if (height === null) break;
    const rise = (height - z) / (way * stepMm);
    if (rise > steepest) steepest = rise;
  }
  const over = lampRad - atan(steepest);
  if (over >= halfWidthRad) return 1;
  if (over <= -halfWidthRad) return 0;
  // The seen part of a round lamp, nearly: an even rise with soft ends.
  const share = (over + halfWidthRad) / (2 * halfWidthRad);
  return share * share * (3 - 2 * share);
}

/** Bilinear height between grid places; lowest possible where one is missing, null off the field. */
function heightBetween({ columns, rows, zMm }: HeightField, column: number, row: number): number | null {
  const [c, r] = [Math.floor(column), Math.floor(row)];
  if (c < 0 || r < 0 || c + 1 >= columns || r + 1 >= rows) return null;
  const [u, v] = [column - c, row - r];
  const at = r * columns + c;
  const lower = (1 - u) * (zMm[at] as number) + u * (zMm[at + 1] as number);
  const upper = (1 - u) * (zMm[at + columns] as number) + u * (zMm[at + columns + 1] as number);
  const height = (1 - v) * lower + v * upper;
  return Number.isNaN(height) ? Number.NEGATIVE_INFINITY : height;
}
