import { atan2, cos, distanceBetween, type Point, sin } from '../../base/index.ts';
import { fitLine } from '../../numeric/index.ts';

/** A stretch of a closed contour between two corners. */
export interface ContourRun<P extends Point<'scene'>> {
  readonly places: readonly P[];
  readonly lengthMm: number;
  /** Straight line through it: how far it bows from that, rms. */
  readonly bowMm: number;
}

/** mm of contour compared on either side of a place when corners are looked for. */
const ARM_MM = 3;
/** rad. A turn sharper than this over twice the arm is a corner of a card, no arch. */
const CORNER_RAD = 0.6;
/** mm. Two corners nearer than this are one. */
const APART_MM = 2.5;
/** mm left out beside a corner, where an edge is rounded by blur. */
const BESIDE_MM = 1.2;

/** The stretches of a closed contour between its corners; none where it has fewer than two. */
export function contourRuns<P extends Point<'scene'>>(contour: readonly P[]): readonly ContourRun<P>[] {
  const corners = cornersOf(contour);
  if (corners.length < 2) return [];
  return corners.map((from, k) => {
    const to = corners[(k + 1) % corners.length];
    return runOf(cut(between(contour, from, to), BESIDE_MM));
  });
}

/** The stretch of a contour from the place nearest to one end to that nearest to the other, whichever way bows more. */
export function runBetween<P extends Point<'scene'>>(
  contour: readonly P[],
  ends: readonly [Point<'scene'>, Point<'scene'>],
): ContourRun<P> {
  const [from, to] = ends.map((end) => nearestPlace(contour, end)) as [number, number];
  const ways = [between(contour, from, to), between(contour, to, from)].map(runOf);
  return ways[0].bowMm >= ways[1].bowMm ? ways[0] : ways[1];
}

function between<P>(contour: readonly P[], from: number, to: number): readonly P[] {
  return to > from ? contour.slice(from, to + 1) : [...contour.slice(from), ...contour.slice(0, to + 1)];
}

function nearestPlace(contour: readonly Point<'scene'>[], end: Point<'scene'>): number {
  return contour.reduce(
    (best, place, i) => (distanceBetween(place, end) < distanceBetween(contour[best], end) ? i : best),
    0,
  );
}

function runOf<P extends Point<'scene'>>(places: readonly P[]): ContourRun<P> {
  let lengthMm = 0;
  for (let i = 1; i < places.length; i++) lengthMm += distanceBetween(places[i - 1], places[i]);
  return { places, lengthMm, bowMm: fitLine(places).rms };
}

function cut<P extends Point<'scene'>>(places: readonly P[], mm: number): readonly P[] {
  const [first, last] = [places[0], places[places.length - 1]];
  return places.filter((place) => distanceBetween(place, first) > mm && distanceBetween(place, last) > mm);
}

function cornersOf(contour: readonly Point<'scene'>[]): readonly number[] {
  const count = contour.length;
  const step = contour.reduce((sum, at, i) => sum + distanceBetween(at, contour[(i + 1) % count]), 0) / count;
  const arm = Math.max(2, Math.round(ARM_MM / step));
  const turns = contour.map((at, i) => {
    const [a, b] = [contour[(i - arm + count) % count], contour[(i + arm) % count]];
    const turn = atan2(b.y - at.y, b.x - at.x) - atan2(at.y - a.y, at.x - a.x);
    return Math.abs(atan2(sin(turn), cos(turn)));
  });
  const near = Math.max(1, Math.round(APART_MM / step));
  return turns.flatMap((turn, i) => {
    if (turn < CORNER_RAD) return [];
    for (let k = 1; k <= near; k++) {
      if (turns[(i + k) % count] > turn || turns[(i - k + count) % count] >= turn) return [];
    }
    return [i];
  });
}
