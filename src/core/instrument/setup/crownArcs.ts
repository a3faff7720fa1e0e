import { Bug, type Frame, type Point, point } from '../../base/index.ts';
import { arcOf, bulgeLeaving, type Chain, headingOn, segments, type Vertex } from '../../curve/index.ts';

/**
 * One smooth line of arcs through places from left to right, an arc from each to the next, carried on at both ends.
 *
 * Of all such lines that whose curvatures differ least: the heading in which it starts turns every arc by as much one way or
 * the other, so that the best is found at once. Promises two places or more.
 */
export function crownArcs<F extends Frame>(
  places: readonly Point<F>[],
  fromX: number,
  toX: number,
): Chain<F> {
  const chords = places.slice(1).map((to, index) => {
    const from = places[index] as Point<F>;
    return {
      lengthMm: Math.hypot(to.x - from.x, to.y - from.y),
      rad: Math.atan2(to.y - from.y, to.x - from.x),
    };
  });
  // An arc's heading at its end is twice its chord's less that at its start: so h_k = offset_k + sign_k h_0.
  let [offset, sign] = [0, 1];
  const bends = chords.map(({ lengthMm, rad }) => {
    const bend = { constant: (2 * (rad - offset)) / lengthMm, slope: (-2 * sign) / lengthMm };
    offset = 2 * rad - offset;
    sign = -sign;
    return bend;
  });
  const mean = (pick: (bend: (typeof bends)[number]) => number): number =>
    bends.reduce((sum, bend) => sum + pick(bend), 0) / bends.length;
  const [constant, slope] = [mean((bend) => bend.constant), mean((bend) => bend.slope)];
  let [top, below] = [0, 0];
  for (const bend of bends) {
    top -= (bend.slope - slope) * (bend.constant - constant);
    below += (bend.slope - slope) ** 2;
  }
  // A single arc, or all equally long with an even count: any heading serves; the chord's own is straight.
  let heading = below > 0 ? top / below : (chords[0]?.rad ?? 0);
  const vertices: Vertex<F>[] = places.map((from, index) => {
    const to = places[index + 1];
    if (!to) return { x: from.x, y: from.y, bulge: 0 };
    const bulge = bulgeLeaving(from, heading, to);
    heading = 2 * (chords[index]?.rad ?? 0) - heading;
    return { x: from.x, y: from.y, bulge };
  });
  return carriedOn({ closed: false, vertices }, fromX, toX);
}

/** The line with its first and last arc carried on to other places across. */
function carriedOn<F extends Frame>(chain: Chain<F>, fromX: number, toX: number): Chain<F> {
  const all = segments(chain);
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) throw new Bug('a crown through a single place');
  const onArc = (segment: typeof first, x: number, atEnd: boolean): Point<F> => {
    const arc = arcOf(segment);
    const end = atEnd ? segment.end : segment.start;
    if (!arc) return point(x, end.y + (x - end.x) * Math.tan(headingOn(segment, 0)));
    const { centre, radiusMm } = arc;
    const upward = Math.sign(end.y - centre.y);
    return point(x, centre.y + upward * Math.sqrt(radiusMm ** 2 - (x - centre.x) ** 2));
  };
  const [from, to] = [onArc(first, fromX, false), onArc(last, toX, true)];
  const middle = chain.vertices.slice(1, -1);
  const startHeading = startHeadingOf(first, from);
  const second = chain.vertices[1] as Vertex<F>;
  const begin: Vertex<F> = { x: from.x, y: from.y, bulge: bulgeLeaving(from, startHeading, second) };
  const rest = middle.map((vertex, index) => {
    if (index < middle.length - 1) return vertex;
    return { ...vertex, bulge: bulgeLeaving(vertex, headingOn(last, 0), to) };
  });
  return { closed: false, vertices: [begin, ...rest, { x: to.x, y: to.y, bulge: 0 }] };
}

/** The heading of an arc where it is carried back to another place of its circle. */
function startHeadingOf<F extends Frame>(
  segment: ReturnType<typeof segments<F>>[number],
  at: Point<F>,
): number {
  const arc = arcOf(segment);
  if (!arc) return headingOn(segment, 0);
  const outward = Math.atan2(at.y - arc.centre.y, at.x - arc.centre.x);
  return outward + (Math.sign(arc.sweepRad) * Math.PI) / 2;
}
