import { asin, atan2, distanceBetween, type Frame, type Point, point, sin, tan } from '../../base/index.ts';
import { bulgeLeaving, type Chain, type Vertex } from '../../curve/index.ts';

/** Rounds in which the lengths of the arcs, and with them the best start, settle; each leaves a hundredth of what was off. */
const ROUNDS = 5;

/**
 * One smooth line of arcs through places from left to right, an arc from each to the next, carried on at both ends.
 *
 * Of all such lines that whose curvatures differ least: the heading in which it starts turns every arc by as much one way or
 * the other, so that the best follows at once but for the lengths of the arcs. Promises three places or more, and ends that
 * the outer arcs reach.
 */
export function crownArcs<F extends Frame>(
  places: readonly Point<F>[],
  fromX: number,
  toX: number,
): Chain<F> {
  const chords = places.slice(1).map((to, index): Chord => {
    const from = places[index] as Point<F>;
    return {
      lengthMm: distanceBetween(from, to),
      rad: atan2(to.y - from.y, to.x - from.x),
    };
  });
  let lengths = chords.map(({ lengthMm }) => lengthMm);
  let start = 0;
  for (let round = 0; round < ROUNDS; round++) {
    start = evenestStart(chords, lengths);
    lengths = headingsFrom(start, chords).map((heading, index) => {
      const { lengthMm, rad } = chords[index] as Chord;
      const half = rad - heading;
      return half === 0 ? lengthMm : (lengthMm * half) / sin(half);
    });
  }
  const headings = headingsFrom(start, chords);
  const last = headings.length - 1;
  const first = reached(places[0] as Point<F>, headings[0] ?? 0, places[1] as Point<F>, fromX);
  const end = reached(places[last] as Point<F>, headings[last] ?? 0, places[last + 1] as Point<F>, toX);
  const vertices = places.slice(1, -1).map((from, index): Vertex<F> => {
    const to = index + 1 === last ? end.at : (places[index + 2] as Point<F>);
    return { x: from.x, y: from.y, bulge: bulgeLeaving(from, headings[index + 1] ?? 0, to) };
  });
  const second = places[1] as Point<F>;
  return {
    closed: false,
    vertices: [
      { ...first.at, bulge: bulgeLeaving(first.at, first.headingRad, second) },
      ...vertices,
      { ...end.at, bulge: 0 },
    ],
  };
}

interface Chord {
  readonly lengthMm: number;
  readonly rad: number;
}

/** Heading of every arc where it starts: an arc's at its end is twice its chord's less that at its start. */
function headingsFrom(start: number, chords: readonly Chord[]): readonly number[] {
  let heading = start;
  return chords.map(({ rad }) => {
    const here = heading;
    heading = 2 * rad - heading;
    return here;
  });
}

/** The start for which sweeps over lengths differ least: every sweep is of the first degree in it. */
function evenestStart(chords: readonly Chord[], lengths: readonly number[]): number {
  const straight = headingsFrom(0, chords);
  const bends = chords.map(({ rad }, index) => ({
    constant: (2 * (rad - (straight[index] ?? 0))) / (lengths[index] ?? 1),
    slope: (index % 2 === 0 ? -2 : 2) / (lengths[index] ?? 1),
  }));
  const mean = (pick: (bend: (typeof bends)[number]) => number): number =>
    bends.reduce((sum, bend) => sum + pick(bend), 0) / bends.length;
  const [constant, slope] = [mean((bend) => bend.constant), mean((bend) => bend.slope)];
  let [product, square] = [0, 0];
  for (const bend of bends) {
    product += (bend.slope - slope) * (bend.constant - constant);
    square += (bend.slope - slope) ** 2;
  }
  return -product / square;
}

/** Where the arc that leaves a place in a heading through another is at some place across, and its heading there. */
function reached<F extends Frame>(
  from: Point<F>,
  headingRad: number,
  through: Point<F>,
  x: number,
): { readonly at: Point<F>; readonly headingRad: number } {
  const chordRad = atan2(through.y - from.y, through.x - from.x);
  // Positive to the left, as bulges are.
  const curvature = (2 * sin(chordRad - headingRad)) / distanceBetween(through, from);
  const sine = sin(headingRad) + curvature * (x - from.x);
  const heading = asin(sine);
  // A chord of a circle lies in the mean of the headings at its ends.
  const y = from.y + (x - from.x) * tan((headingRad + heading) / 2);
  return { at: point(x, y), headingRad: heading };
}
