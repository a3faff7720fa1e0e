import { type Point, point, WELD_MM } from '../../base/index.ts';
import { type Chain, type HalfOutline, nearestOn } from '../../curve/index.ts';

/** The lines that a plate's edge is made of, treble half: three sections and the two corner ends. */
export type EdgeMembers = readonly Chain<'body'>[];

/**
 * `arched`: the edge is still flat land, and templates rest on it. `finished`: scooped from the crest of the edge,
 * and rounded over outside the crest.
 */
export type EdgeState = 'arched' | 'finished';

/** What the edge is shaped to, mm. */
export interface EdgeSizes {
  readonly edgeHeightMm: number;
  readonly scoopDepthMm: number;
  readonly crestInsetMm: number;
  readonly edgeLandMm: number;
}

export function edgeMembers(half: HalfOutline): EdgeMembers {
  return [
    half.lowerBout,
    cornerEnd(half.lowerBout, half.cBout),
    half.cBout,
    cornerEnd(half.cBout, half.upperBout),
    half.upperBout,
  ];
}

/** How far a point stands inside the edge: its distance from each member, mm. */
export function edgeDistances(members: EdgeMembers, at: Point<'body'>): readonly number[] {
  return members.map((member) => nearestOn(member, at).distanceMm);
}

/** Distance inside the edge of the border where the scoop begins: the crest, or the end of the flat land. */
export function scoopBorderMm(sizes: EdgeSizes, state: EdgeState): number {
  return state === 'finished' ? sizes.crestInsetMm : sizes.edgeLandMm;
}

/**
 * Height above the gluing face outside the channel, from the distances to the edge's members and to the channel.
 *
 * Between channel and border the height above the channel goes with the square of τ = d / (d + e), d the distance
 * outside the channel and e inside the border: level at the channel, a gouge's radius all the way. In a corner e is
 * a power mean over the members, so that no valley stands on the bisector.
 */
export function edgeHeight(
  sizes: EdgeSizes,
  state: EdgeState,
  distancesMm: readonly number[],
  outsideChannelMm: number,
): number {
  const border = scoopBorderMm(sizes, state);
  const least = Math.min(...distancesMm);
  if (least <= border + WELD_MM) {
    if (state === 'arched') return sizes.edgeHeightMm;
    // A quarter circle from the crest down to the edge.
    const inset = sizes.crestInsetMm;
    const out = Math.max(0, inset - least);
    return sizes.edgeHeightMm - (inset - Math.sqrt(inset * inset - out * out));
  }
  const inside = distancesMm.reduce((sum, distance) => sum + (distance - border) ** -4, 0) ** -0.25;
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
