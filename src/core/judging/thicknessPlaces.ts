import { type Point, point } from '../base/index.ts';
import { boundsOf, containsPoint, nearestOn } from '../curve/index.ts';
import { type Lettering, letteringWidthMm } from '../drawing/index.ts';
import { type HollowPlate, thicknessAt } from '../instrument/index.ts';
import type { NumberBox } from './numberBox.ts';

/** A place where a calliper is held, with the thickness that it must show, and the room of its figure. */
export interface ThicknessPlace {
  readonly at: Point<'body'>;
  readonly thicknessMm: number;
  readonly figure: Lettering;
  readonly box: NumberBox;
}

/** mm on an instrument of the usual length: from place to place about, and whole steps that are easy to measure off. */
const PITCH_MM = 20;
const WHOLE_MM = 5;

/** mm at the usual length. Arms of a mark, from them to the figure over it, its height, and what is kept free around it. */
export const MARK_MM = 0.9;
const GAP_MM = 0.6;
const FIGURE_MM = 2.4;
const FREE_MM = 0.7;

/** mm between places on a plate of some size against the usual one. */
export function placesEveryMm(size: number): number {
  return WHOLE_MM * Math.max(1, Math.round((PITCH_MM * size) / WHOLE_MM));
}

/**
 * The places of a plate that are measured: first those that the maker asked for, points on both halves and the middles of
 * post and bar, then an even grid about the centre line and the bridge; wherever the plate has its full thickness and there
 * is room for the figure.
 */
export function thicknessPlaces(plate: HollowPlate, size: number): readonly ThicknessPlace[] {
  const { thickness } = plate;
  const points = thickness.points.flatMap(({ x, y }) =>
    (x === 0 ? [0] : [x, -x]).map((side) => point<'body'>(side, y)),
  );
  const middles = thickness.areas
    .filter(({ extraMm }) => extraMm !== 0)
    .map(({ from, to }) => point<'body'>((from.x + to.x) / 2, (from.y + to.y) / 2));
  const asked = [...points, ...middles].map((at) => placed(plate, at, size, 2));
  const grid = gridPlaces(plate, placesEveryMm(size)).map((at) => placed(plate, at, size, 1));
  const measured = [...asked, ...grid].filter(({ at }) => hasFullThickness(plate, at));
  return measured.reduce<readonly ThicknessPlace[]>(
    (kept, one) => (kept.some((other) => collide(one.box, other.box)) ? kept : [...kept, one]),
    [],
  );
}

/** Ramps from the gluing face to a place: its figure has room there too. */
const RAMPS_AWAY = 2;

/** Whether the hollow has its full depth there, clear of the slope up to linings and blocks. */
function hasFullThickness({ line, rampMm }: HollowPlate, at: Point<'body'>): boolean {
  return containsPoint(line, at) && nearestOn(line, at).distanceMm > RAMPS_AWAY * rampMm;
}

/** An even grid about the centre line and the bridge that reaches beyond the hollow on every side. */
function gridPlaces(
  { line, thickness: { middleYMm } }: HollowPlate,
  pitchMm: number,
): readonly Point<'body'>[] {
  const { min, max } = boundsOf(line);
  const steps = (fromMm: number, toMm: number): readonly number[] => {
    const first = Math.floor(fromMm / pitchMm);
    const last = Math.ceil(toMm / pitchMm);
    return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * pitchMm);
  };
  return steps(min.y - middleYMm, max.y - middleYMm).flatMap((up) =>
    steps(min.x, max.x).map((across) => point<'body'>(across, middleYMm + up)),
  );
}

function placed(
  { thickness }: HollowPlate,
  at: Point<'body'>,
  size: number,
  decimals: number,
): ThicknessPlace {
  const thicknessMm = thicknessAt(thickness, at.x, at.y);
  const text = decimals === 1 ? thicknessMm.toFixed(1) : String(Number(thicknessMm.toFixed(decimals)));
  const heightMm = FIGURE_MM * size;
  const y = at.y + (MARK_MM + GAP_MM) * size;
  const halfWidthMm = letteringWidthMm({ text, heightMm }) / 2 + FREE_MM * size;
  return {
    at,
    thicknessMm,
    figure: { text, at: point(at.x, y), heightMm, turnRad: 0, anchor: 'middle' },
    box: {
      at: [at.x, y + heightMm / 2],
      turnRad: 0,
      halfWidthMm,
      halfHeightMm: heightMm / 2 + FREE_MM * size,
    },
  };
}

function collide(one: NumberBox, other: NumberBox): boolean {
  return (
    Math.abs(one.at[0] - other.at[0]) < one.halfWidthMm + other.halfWidthMm &&
    Math.abs(one.at[1] - other.at[1]) < one.halfHeightMm + other.halfHeightMm
  );
}
