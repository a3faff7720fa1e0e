import { distanceBetween, type Point, point } from '../base/index.ts';
import type { Ring } from './plateRings.ts';
import type { HeightAt } from './plateSkin.ts';
import { ringedTriangles } from './ringedTriangles.ts';

/** A skin to be laid closely enough: its rings, the places to start from and those it may have. */
export interface RoughSkin {
  readonly outer: Ring;
  readonly openings: readonly Ring[];
  readonly places: readonly Point<'body'>[];
  readonly heightAt: HeightAt;
  /** Whether a place is clear of all rings: one beside a ring would hide a side of it. */
  readonly isClear: (at: Point<'body'>) => boolean;
}

/** Rounds after which a skin is as close as it gets: the area of a triangle halves in each. */
const MOST_ROUNDS = 24;

/** mm. No side shorter than this is parted: the skin breaks there, it does not bend. */
const LEAST_SIDE_MM = 0.1;

/** More than there may be places: two indices in one number, and a third, stay below 2^53. */
const KEY_BASE = 1 << 17;

/** A place with its height. */
interface Raised {
  readonly x: number;
  readonly y: number;
  readonly zMm: number;
}

/**
 * Places with which the triangles of a skin stand off its surface by no more than the tolerance, mm, straight up or down, as
 * measured in the middle of each and of its sides: dense where the surface bends, and nowhere else.
 *
 * Method: the longest side of each triangle that is off is halved, and all are joined anew.
 */
export function refinedPlaces(rough: RoughSkin, toleranceMm: number): readonly Point<'body'>[] {
  const { outer, openings, heightAt, isClear } = rough;
  const raised = ({ x, y }: Point<'body'>): Raised => ({ x, y, zMm: heightAt(x, y) });
  const added = [...rough.places];
  const all = [...outer, ...openings.flat(), ...added].map(raised);
  const onSurface = new Map<number, Raised>();
  const settled = new Set<number>();
  /** The surface over the middle of a side, asked once for both of its triangles. */
  const overMiddle = (a: number, b: number): Raised => {
    const key = sideKey(a, b);
    const known = onSurface.get(key);
    if (known) return known;
    const found = raised(middleOf([all[a] as Raised, all[b] as Raised]));
    onSurface.set(key, found);
    return found;
  };
  const isOff = (corners: readonly number[], { zMm }: Raised): boolean =>
    Math.abs(zMm - corners.reduce((sum, at) => sum + (all[at] as Raised).zMm, 0) / corners.length) >
    toleranceMm;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const triangles = ringedTriangles(outer, openings, added);
    const before = added.length;
    const halved = new Set<number>();
    for (let at = 0; at < triangles.length; at += 3) {
      const [a, b, c] = longestFirst(all, triangles, at);
      const key = sideKey(a, b) * KEY_BASE + c;
      if (settled.has(key)) continue;
      settled.add(key);
      const middle = overMiddle(a, b);
      const needed =
        isOff([a, b], middle) ||
        isOff([b, c], overMiddle(b, c)) ||
        isOff([c, a], overMiddle(c, a)) ||
        isOff([a, b, c], raised(middleOf([a, b, c].map((corner) => all[corner] as Raised))));
      if (!needed || distanceBetween(all[a] as Raised, all[b] as Raised) < LEAST_SIDE_MM) continue;
      if (halved.has(sideKey(a, b))) continue;
      halved.add(sideKey(a, b));
      // Beside a ring, whose sides stay whole, the middle of the triangle is taken.
      const own = point<'body'>(middle.x, middle.y);
      const place = isClear(own) ? own : middleOf([a, b, c].map((corner) => all[corner] as Raised));
      if (place !== own && !isClear(place)) continue;
      added.push(place);
      all.push(place === own ? middle : raised(place));
    }
    // Each round at most doubles them.
    if (added.length === before || all.length > KEY_BASE / 2) break;
  }
  return added;
}

function sideKey(a: number, b: number): number {
  return Math.min(a, b) * KEY_BASE + Math.max(a, b);
}

function middleOf(corners: readonly Raised[]): Point<'body'> {
  const mean = (axis: 'x' | 'y'): number => corners.reduce((sum, at) => sum + at[axis], 0) / corners.length;
  return point(mean('x'), mean('y'));
}

/** The corners of a triangle, those of its longest side first. */
function longestFirst(
  all: readonly Raised[],
  triangles: readonly number[],
  at: number,
): [number, number, number] {
  const [a, b, c] = [triangles[at], triangles[at + 1], triangles[at + 2]] as [number, number, number];
  const [p, q, r] = [all[a], all[b], all[c]] as [Raised, Raised, Raised];
  const [ab, bc, ca] = [distanceBetween(p, q), distanceBetween(q, r), distanceBetween(r, p)];
  return ab >= bc && ab >= ca ? [a, b, c] : bc >= ca ? [b, c, a] : [c, a, b];
}
