import { distanceBetween, type Point, point } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';
import { brightnessAt } from '../picture/grayPicture.ts';
import { convexHull, polygonArea } from './convexHull.ts';
import type { DarkPatch } from './darkPatches.ts';

/** Four corners, clockwise as seen in the picture. */
export type Quad = readonly [Point<'photo'>, Point<'photo'>, Point<'photo'>, Point<'photo'>];

/** Share of the patch's hull that four of its corners must span: a square under blur and perspective, not a blot. */
const LEAST_FILL = 0.82;
/** px. Sides shorter than this hold no code. */
const SHORTEST_PX = 7;
/** The longest side may be so many times the shortest: a square seen from 70° off. */
const LONGEST_SHARE = 4;

/** The four corners of a dark patch that is a square seen from anywhere; null for other shapes. */
export function patchQuad(patch: DarkPatch): Quad | null {
  const hull = convexHull(endsOf(patch));
  const hullArea = Math.abs(polygonArea(hull));
  const middle = point<'photo'>(
    hull.reduce((sum, one) => sum + one.x, 0) / hull.length,
    hull.reduce((sum, one) => sum + one.y, 0) / hull.length,
  );
  const first = farthest(hull, (one) => distanceBetween(one, middle));
  const third = farthest(hull, (one) => distanceBetween(one, first));
  const off = (one: Point<'photo'>) =>
    (third.x - first.x) * (one.y - first.y) - (third.y - first.y) * (one.x - first.x);
  const quad: Quad = [first, farthest(hull, (one) => -off(one)), third, farthest(hull, off)];
  const clockwise: Quad = polygonArea(quad) > 0 ? quad : [quad[0], quad[3], quad[2], quad[1]];
  if (Math.abs(polygonArea(clockwise)) < LEAST_FILL * hullArea) return null;
  const sides = clockwise.map((one, place) => distanceBetween(one, clockwise[(place + 1) % 4]));
  const shortest = Math.min(...sides);
  return shortest >= SHORTEST_PX && Math.max(...sides) <= LONGEST_SHARE * shortest ? clockwise : null;
}

/** Corners of the pixels at both ends of every run. */
function endsOf({ runs }: DarkPatch): Point<'photo'>[] {
  const ends: Point<'photo'>[] = [];
  for (let at = 0; at < runs.length; at += 3)
    for (const y of [runs[at] - 0.5, runs[at] + 0.5])
      ends.push(point(runs[at + 1] - 0.5, y), point(runs[at + 2] + 0.5, y));
  return ends;
}

function farthest(hull: readonly Point<'photo'>[], measure: (one: Point<'photo'>) => number): Point<'photo'> {
  return hull.reduce((best, one) => (measure(one) > measure(best) ? one : best));
}

/** px, to both sides of an edge. The white round a code is wider than this in any picture that can be read. */
const PROFILE_PX = 2;
const PROFILE_STEP_PX = 0.5;
/** The stretch of a side that is looked at: off its corners. */
const FROM_SHARE = 0.15;

/** The quad moved so that its sides lie where the brightness rises outwards, corner to corner; as it was where they do not. */
export function sharpenedQuad(picture: GrayPicture, quad: Quad): Quad {
  const sides = quad.map((corner, place) => sharpenedSide(picture, corner, quad[(place + 1) % 4]));
  const corner = (place: number): Point<'photo'> => {
    const met = meeting(sides[(place + 3) % 4], sides[place]);
    return met && distanceBetween(met, quad[place]) < 2 * PROFILE_PX ? met : quad[place];
  };
  return [corner(0), corner(1), corner(2), corner(3)];
}

/** The line a·x + b·y = c. */
interface Line {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

function sharpenedSide(picture: GrayPicture, from: Point<'photo'>, to: Point<'photo'>): Line {
  const length = distanceBetween(from, to);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [nx, ny] = [uy, -ux];
  const count = Math.max(4, Math.min(24, Math.round(length / 2)));
  let [n, sumT, sumS, sumTt, sumTs] = [0, 0, 0, 0, 0];
  for (let index = 0; index < count; index++) {
    const t = length * (FROM_SHARE + ((1 - 2 * FROM_SHARE) * index) / (count - 1));
    const s = riseAt(picture, from.x + ux * t, from.y + uy * t, nx, ny);
    if (s === null) continue;
    n++;
    sumT += t;
    sumS += s;
    sumTt += t * t;
    sumTs += t * s;
  }
  const spread = n * sumTt - sumT * sumT;
  const slope = n >= 3 && spread > 0 ? (n * sumTs - sumT * sumS) / spread : 0;
  const offset = n > 0 ? (sumS - slope * sumT) / n : 0;
  const [x0, y0] = [from.x + nx * offset, from.y + ny * offset];
  const [a, b] = [nx - slope * ux, ny - slope * uy];
  return { a, b, c: a * x0 + b * y0 };
}

/** How far along (nx, ny) the brightness rises, as the middle of all that it rises; null where it hardly does. */
function riseAt(picture: GrayPicture, x: number, y: number, nx: number, ny: number): number | null {
  let [rises, moment] = [0, 0];
  let last = brightnessAt(picture, x - PROFILE_PX * nx, y - PROFILE_PX * ny);
  for (let s = -PROFILE_PX + PROFILE_STEP_PX; s <= PROFILE_PX; s += PROFILE_STEP_PX) {
    const next = brightnessAt(picture, x + s * nx, y + s * ny);
    const rise = Math.max(0, next - last);
    rises += rise;
    moment += rise * (s - PROFILE_STEP_PX / 2);
    last = next;
  }
  return rises > LEAST_RISE ? moment / rises : null;
}

/** Levels of 255. Less is noise. */
const LEAST_RISE = 6;

function meeting(one: Line, other: Line): Point<'photo'> | null {
  const determinant = one.a * other.b - one.b * other.a;
  if (Math.abs(determinant) < LEAST_MEETING) return null;
  return point(
    (one.c * other.b - one.b * other.c) / determinant,
    (one.a * other.c - one.c * other.a) / determinant,
  );
}

/** Sine of the angle between two sides that still meet sharply, 6°. */
const LEAST_MEETING = 0.1;
