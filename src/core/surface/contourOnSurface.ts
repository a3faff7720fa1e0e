import { hypot } from '../base/index.ts';
import type { ContourLine } from './contourLine.ts';

/** How a contour of a grid is brought on to the surface that the grid was taken from. */
export interface SurfaceContourTask {
  readonly heightAt: (xMm: number, yMm: number) => number;
  /** How far a place of the line may lie from the surface's own line: about a step of the grid. */
  readonly reachMm: number;
  /** How far a stretch between two places may leave the surface's own line. */
  readonly chordErrorMm: number;
}

export interface SurfaceContour {
  readonly line: ContourLine;
  /** Places that found no such height within reach and stand where the grid had them. */
  readonly unsettled: number;
}

type Place = readonly [number, number];

/** A stretch is halved at most so often: a bend that is still not followed then is a corner. */
const MOST_HALVINGS = 5;

/**
 * The line of a height on a surface, from a contour of its grid: every place is moved square to the line until the
 * surface has the height there, places are added where the line bends and left out where it hardly does.
 *
 * Each place lies within a hundredth of the chord error of the surface's own line, stretches within the chord error.
 */
export function contourOnSurface(line: ContourLine, task: SurfaceContourTask): SurfaceContour {
  const start = placesOf(line);
  const count = start.length;
  let unsettled = 0;
  const settled = start.map((place, index): Place => {
    const before = start[line.closed ? (index + count - 1) % count : Math.max(0, index - 1)] as Place;
    const after = start[line.closed ? (index + 1) % count : Math.min(count - 1, index + 1)] as Place;
    const found = settle(place, before, after, line.levelMm, task);
    if (found === null) unsettled++;
    return found ?? place;
  });
  const followed: Place[] = [];
  for (const [index, from] of settled.entries()) {
    followed.push(from);
    const to = settled[index + 1] ?? (line.closed ? settled[0] : undefined);
    if (to !== undefined) follow(from, to, line.levelMm, task, MOST_HALVINGS, followed);
  }
  const kept = thinned(followed, line.closed, task.chordErrorMm / 3);
  return { line: { ...line, xyMm: Float64Array.from(kept.flat()) }, unsettled };
}

export function placesOf({ xyMm }: ContourLine): Place[] {
  return Array.from({ length: xyMm.length / 2 }, (_, index) => [
    xyMm[2 * index] as number,
    xyMm[2 * index + 1] as number,
  ]);
}

/** Adds the places between two that keep the stretch to the surface's line. */
function follow(
  from: Place,
  to: Place,
  levelMm: number,
  task: SurfaceContourTask,
  halvings: number,
  into: Place[],
): void {
  if (halvings === 0) return;
  const middle: Place = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const found = settle(middle, from, to, levelMm, task);
  if (found === null) return;
  const off = hypot(found[0] - middle[0], found[1] - middle[1]);
  // Half of what is allowed: the rest is for what is left out again.
  if (off <= task.chordErrorMm / 2) return;
  follow(from, found, levelMm, task, halvings - 1, into);
  into.push(found);
  follow(found, to, levelMm, task, halvings - 1, into);
}

/** Steps of the secant method at most; it has settled after three or four on a smooth flank. */
const MOST_STEPS = 30;
/** Share of the reach by which the first slope is probed. */
const PROBE_SHARE = 0.04;
/** Share of the chord error within which a place has settled. */
const SETTLED_SHARE = 0.01;

/**
 * The place square to the direction from `before` to `after` where the surface has the height, by secant steps; null
 * where none is within reach.
 */
function settle(
  place: Place,
  before: Place,
  after: Place,
  levelMm: number,
  task: SurfaceContourTask,
): Place | null {
  const length = hypot(after[0] - before[0], after[1] - before[1]);
  if (!(length > 0)) return null;
  const [nx, ny] = [(before[1] - after[1]) / length, (after[0] - before[0]) / length];
  const miss = (t: number): number => task.heightAt(place[0] + t * nx, place[1] + t * ny) - levelMm;
  const near = task.chordErrorMm * SETTLED_SHARE;
  let [t0, f0] = [0, miss(0)];
  if (f0 === 0) return place;
  // The higher side is on the left: where it is too low the line lies to the left.
  let t1 = f0 < 0 ? PROBE_SHARE * task.reachMm : -PROBE_SHARE * task.reachMm;
  let f1 = miss(t1);
  for (let step = 0; step < MOST_STEPS; step++) {
    const t = t1 - (f1 * (t1 - t0)) / (f1 - f0);
    if (!(Math.abs(t) <= task.reachMm)) return null;
    if (Math.abs(t - t1) <= near) return [place[0] + t * nx, place[1] + t * ny];
    const f = miss(t);
    // Once both sides are known the farther one stays, with half its weight (Illinois), so that the line is not lost again.
    if (f0 < 0 !== f1 < 0 && f < 0 === f1 < 0) f0 /= 2;
    else [t0, f0] = [t1, f1];
    [t1, f1] = [t, f];
  }
  return null;
}

/** Fewest places (nearly) whose stretches stay within an error of those left out; by Douglas and Peucker's halving. */
function thinned(places: readonly Place[], closed: boolean, errorMm: number): readonly Place[] {
  const round = closed && places.length > 0 ? [...places, places[0] as Place] : places;
  const keep = new Uint8Array(round.length);
  if (round.length > 0) {
    keep[0] = 1;
    keep[round.length - 1] = 1;
  }
  const half = round.length >> 1;
  const open: [number, number][] = closed
    ? [
        [0, half],
        [half, round.length - 1],
      ]
    : [[0, round.length - 1]];
  if (closed) keep[half] = 1;
  for (let span = open.pop(); span !== undefined; span = open.pop()) {
    const [from, to] = span;
    const far = farthest(round, from, to);
    if (far.offMm <= errorMm) continue;
    keep[far.index] = 1;
    open.push([from, far.index], [far.index, to]);
  }
  return round.filter((_, index) => keep[index] === 1 && !(closed && index === round.length - 1));
}

function farthest(places: readonly Place[], from: number, to: number): { index: number; offMm: number } {
  const [ax, ay] = places[from] as Place;
  const [bx, by] = places[to] as Place;
  const length = hypot(bx - ax, by - ay);
  const found = { index: from, offMm: -1 };
  for (let index = from + 1; index < to; index++) {
    const [x, y] = places[index] as Place;
    const off =
      length > 0 ? Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / length : hypot(x - ax, y - ay);
    if (off > found.offMm) Object.assign(found, { index, offMm: off });
  }
  return found;
}
