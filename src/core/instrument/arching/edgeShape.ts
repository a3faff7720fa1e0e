import { type Point, point, WELD_MM } from '../../base/index.ts';
import {
  type Chain,
  distanceToSpans,
  type HalfOutline,
  nearestOnSpans,
  type Span,
  spansOf,
} from '../../curve/index.ts';

/** The lines that a plate's edge is made of, treble half: three sections and the two corner ends. */
export type EdgeMembers = readonly EdgeMember[];

/** One of them, with its spans made ready. */
export interface EdgeMember extends Chain<'body'> {
  readonly spans: readonly Span<'body'>[];
}

/**
 * `arched`: arched down to the edge's height, the channel not yet cut: flat from the edge to where the arch rises.
 * `finished`: scooped from the crest of the edge to the channel, and rounded over outside the crest.
 */
export type EdgeState = 'arched' | 'finished';

/** What the edge is shaped to, mm. */
export interface EdgeSizes {
  readonly edgeHeightMm: number;
  readonly scoopDepthMm: number;
  readonly crestInsetMm: number;
}

export function edgeMembers(half: HalfOutline): EdgeMembers {
  return [
    half.lowerBout,
    cornerEnd(half.lowerBout, half.cBout),
    half.cBout,
    cornerEnd(half.cBout, half.upperBout),
    half.upperBout,
  ].map((member) => ({ ...member, spans: spansOf(member) }));
}

/** How far a point stands inside the edge: its distance from each member, mm; `withinMm` for members farther than that. */
export function edgeDistances(
  members: EdgeMembers,
  at: Point<'body'>,
  withinMm = Number.POSITIVE_INFINITY,
): readonly number[] {
  return members.map(({ spans }) => distanceToSpans(spans, at.x, at.y, withinMm));
}

/** A distance and how it grows: the unit vector away from what it is measured from. */
export interface Away {
  readonly distanceMm: number;
  readonly x: number;
  readonly y: number;
}

/** {@link edgeDistances} with their directions. */
export function edgeAway(
  members: EdgeMembers,
  at: Point<'body'>,
  withinMm = Number.POSITIVE_INFINITY,
): readonly Away[] {
  return members.map(({ spans }) => {
    const { point: foot, distanceMm } = nearestOnSpans(spans, at, withinMm);
    const length = distanceMm > 0 ? distanceMm : 1;
    return { distanceMm, x: (at.x - foot.x) / length, y: (at.y - foot.y) / length };
  });
}

/** Slopes of {@link finishedEdgeHeight}, across and along, from the same distances with their directions. */
export function finishedEdgeSlopes(
  sizes: EdgeSizes,
  fromEdge: readonly Away[],
  outsideChannel: Away,
): readonly [number, number] {
  const inset = sizes.crestInsetMm;
  const nearest = fromEdge.reduce((best, away) => (away.distanceMm < best.distanceMm ? away : best));
  if (nearest.distanceMm <= inset + WELD_MM) {
    const out = Math.max(0, inset - nearest.distanceMm);
    const steep = out / Math.sqrt(Math.max(WELD_MM, inset * inset - out * out));
    return [steep * nearest.x, steep * nearest.y];
  }
  const d = outsideChannel.distanceMm;
  let [powers, growsX, growsY] = [0, 0, 0];
  for (const { distanceMm, x, y } of fromEdge) {
    const power = fourthPower(distanceMm - inset);
    const growth = power / (distanceMm - inset);
    powers += power;
    growsX += x * growth;
    growsY += y * growth;
  }
  const inside = 1 / Math.sqrt(Math.sqrt(powers));
  const rate = inside / powers;
  const slope = (outward: number, grows: number): number => {
    const shareSlope = (inside * outward - d * rate * grows) / (d + inside) ** 2;
    return (2 * sizes.scoopDepthMm * d * shareSlope) / (d + inside);
  };
  return [slope(outsideChannel.x, growsX), slope(outsideChannel.y, growsY)];
}

/**
 * Height of a finished edge above the gluing face, from the distances to the edge's members and to the channel.
 *
 * Between channel and crest the height above the channel goes with the square of τ = d / (d + e), d the distance
 * outside the channel and e inside the crest: level at the channel, a gouge's radius all the way. In a corner e is
 * a power mean over the members, so that no valley stands on the bisector. Outside the crest: a quarter circle.
 */
export function finishedEdgeHeight(
  sizes: EdgeSizes,
  distancesMm: readonly number[],
  outsideChannelMm: number,
): number {
  let [least, powers] = [Number.POSITIVE_INFINITY, 0];
  for (const distance of distancesMm) {
    if (distance < least) least = distance;
    powers += fourthPower(distance - sizes.crestInsetMm);
  }
  return heightBetween(sizes, least, powers, outsideChannelMm);
}

/** {@link finishedEdgeHeight} at a place, from the edge's members themselves; `withinMm` for members farther off than that. */
export function finishedEdgeHeightAt(
  sizes: EdgeSizes,
  members: EdgeMembers,
  at: Point<'body'>,
  outsideChannelMm: number,
  withinMm = Number.POSITIVE_INFINITY,
): number {
  let [least, powers] = [Number.POSITIVE_INFINITY, 0];
  for (const { spans } of members) {
    const distance = distanceToSpans(spans, at.x, at.y, withinMm);
    if (distance < least) least = distance;
    powers += fourthPower(distance - sizes.crestInsetMm);
  }
  return heightBetween(sizes, least, powers, outsideChannelMm);
}

/** Of the reciprocal. */
function fourthPower(mm: number): number {
  const square = mm * mm;
  return 1 / (square * square);
}

function heightBetween(sizes: EdgeSizes, least: number, powers: number, outsideChannelMm: number): number {
  const inset = sizes.crestInsetMm;
  if (least <= inset + WELD_MM) {
    const out = Math.max(0, inset - least);
    return sizes.edgeHeightMm - (inset - Math.sqrt(inset * inset - out * out));
  }
  const inside = 1 / Math.sqrt(Math.sqrt(powers));
  const share = outsideChannelMm / (outsideChannelMm + inside);
  return sizes.edgeHeightMm - sizes.scoopDepthMm * (1 - share * share);
}

function cornerEnd(before: Chain<'body'>, after: Chain<'body'>): Chain<'body'> {
  const from = before.vertices.at(-1) ?? point<'body'>(0, 0);
  const to = after.vertices[0] ?? from;
  return {
    closed: false,
    vertices: [
      { x: from.x, y: from.y, bulge: 0 },
      { x: to.x, y: to.y, bulge: 0 },
    ],
  };
}
