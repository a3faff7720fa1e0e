import { cos, type Point, point, sin } from '../base/index.ts';
import { nearestOnSpans, type Span } from '../curve/index.ts';
import { type PlateArch, plateHeight } from '../instrument/index.ts';
import {
  type CubicKnots,
  knotPlaces,
  knotsAt,
  type SplinePatch,
  type SplineSurface,
  splinePatch,
  splinePatchAt,
  splineSurfaceAt,
} from '../surface/index.ts';
import type { ChannelRound } from './channelRound.ts';

/** What a scoop lies between: the channel round, the outline, and the arch that it meets at the channel. */
export interface ScoopGround {
  readonly plate: PlateArch;
  readonly round: ChannelRound;
  readonly outline: readonly Span<'body'>[];
  readonly arch: SplineSurface;
  /** Between knots along the scoop, mm. */
  readonly alongMm: number;
}

/** Knots across from channel to crest, closer and closer to the crest: toward its corners the scoop runs to a point. */
const ACROSS = knotsAt([
  0, 0.2, 0.4, 0.55, 0.68, 0.78, 0.85, 0.9, 0.935, 0.96, 0.975, 0.985, 0.992, 0.996, 1,
]);

/**
 * The scoop between two places of the channel whose squares meet corners of the crest, as a patch: u from channel (0) to crest
 * (1), straight and square to the channel; v along the channel, mm. At the channel as high as the arch's surface stands there.
 * `jointsMm` are places of the channel beside which its borders bend anew.
 */
export function scoopPatch(
  ground: ScoopGround,
  fromMm: number,
  toMm: number,
  jointsMm: readonly number[],
): SplinePatch {
  const { plate, round, arch } = ground;
  const { edgeHeightMm } = plate.numbers;
  const widths = new Map<number, number>();
  const widthAt = (alongMm: number): number => {
    const known = widths.get(alongMm);
    if (known !== undefined) return known;
    const found = scoopWidth(ground, alongMm);
    widths.set(alongMm, found);
    return found;
  };
  return splinePatch(ACROSS, alongKnots(fromMm, toMm, jointsMm, ground.alongMm), (u, v) => {
    const foot = round.placeAt(v);
    const { x, y } = outwardOf(foot, u * widthAt(v));
    const missMm = splineSurfaceAt(arch, foot.x, foot.y).zMm - plate.channelZMm;
    const zMm = u === 0 ? plate.channelZMm : u === 1 ? edgeHeightMm : plateHeight(plate, x, y, 'finished');
    return [x, y, zMm + missMm * (1 - u) ** 2];
  });
}

function outwardOf(foot: Point<'body'> & { readonly headingRad: number }, mm: number): Point<'body'> {
  return point(foot.x + mm * sin(foot.headingRad), foot.y - mm * cos(foot.headingRad));
}

/** Halvings of the way to the edge after which nothing is left of it. */
const HALVINGS = 44;

/** From a place of the channel square outwards to the crest, mm. */
function scoopWidth({ plate, round, outline }: ScoopGround, alongMm: number): number {
  const foot = round.placeAt(alongMm);
  const { crestInsetMm } = plate.numbers;
  const isBeyond = (mm: number): boolean =>
    nearestOnSpans(outline, outwardOf(foot, mm)).distanceMm < crestInsetMm;
  let low = nearestOnSpans(outline, foot).distanceMm - crestInsetMm;
  let high = low;
  // Beyond the crest it is an inset's width to the edge, which steps of half an inset cannot jump.
  while (!isBeyond(high)) high += crestInsetMm / 2;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (isBeyond(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * From the ends of a scoop, where the crest has corners and runs fast past the channel's rounding, the first knot stands so many mm
 * away, and each next one so many times as far, up to the step of the rest.
 */
const FIRST_MM = 0.02;
const GROWTH = 1.25;

/** Share of a short scoop's length that is its end. */
const END_SHARE = 0.4;

/** mm. Joints nearer to each other, or to the ends, than this need no knots of their own. */
const APART_MM = 0.05;

/** Share of the step between knots within which a knot makes room for a joint. */
const ROOM_SHARE = 0.4;

/** Knots along a scoop, close toward its ends, double at the joints. */
function alongKnots(fromMm: number, toMm: number, jointsMm: readonly number[], alongMm: number): CubicKnots {
  const lengthMm = toMm - fromMm;
  const graded: number[] = [];
  for (let away = FIRST_MM; away * (GROWTH - 1) < alongMm && away < END_SHARE * lengthMm; away *= GROWTH)
    graded.push(away);
  const start = graded.at(-1) ?? 0;
  const count = Math.ceil((lengthMm - 2 * start) / alongMm);
  const even = Array.from(
    { length: count + 1 },
    (_, step) => start + ((lengthMm - 2 * start) * step) / count,
  );
  const plain = [
    ...graded.slice(0, -1),
    ...even,
    ...graded
      .slice(0, -1)
      .toReversed()
      .map((away) => lengthMm - away),
  ];
  const joints = jointsMm
    .map((at) => at - fromMm)
    .filter((at) => at > APART_MM && at < lengthMm - APART_MM)
    .toSorted((p, q) => p - q)
    .filter((at, index, all) => index === 0 || at - (all[index - 1] as number) > APART_MM);
  const kept = plain.filter((at, index) => {
    const stepMm = Math.min(at - (plain[index - 1] ?? 0), (plain[index + 1] ?? lengthMm) - at);
    return joints.every((joint) => Math.abs(joint - at) > ROOM_SHARE * stepMm);
  });
  const inner = [...kept, ...joints, ...joints].toSorted((p, q) => p - q);
  return knotsAt([fromMm, ...inner.map((at) => fromMm + at), toMm]);
}

/** The most by which a scoop stands off the plate, measured half way between its knot places. */
export function scoopOff({ plate }: ScoopGround, patch: SplinePatch): number {
  const middles = (knots: CubicKnots): readonly number[] =>
    [...knotPlaces(knots)].flatMap((to, index, all) =>
      index === 0 ? [] : [(to + (all[index - 1] as number)) / 2],
    );
  let most = 0;
  for (const v of middles(patch.knotsV))
    for (const u of middles(patch.knotsU)) {
      const [x, y, zMm] = splinePatchAt(patch, u, v);
      most = Math.max(most, Math.abs(zMm - plateHeight(plate, x, y, 'finished')));
    }
  return most;
}

/** The most by which the borders of a scoop stand off the crest and the arch's surface, measured half way between its knot places. */
export function scoopBorderOff({ plate, outline, arch }: ScoopGround, patch: SplinePatch): number {
  const places = [...knotPlaces(patch.knotsV)];
  let most = 0;
  for (const [index, to] of places.entries()) {
    const v = (to + (places[index - 1] ?? to)) / 2;
    const [x, y] = splinePatchAt(patch, 1, v);
    const [channelX, channelY, channelZ] = splinePatchAt(patch, 0, v);
    const offCrest = Math.abs(nearestOnSpans(outline, point(x, y)).distanceMm - plate.numbers.crestInsetMm);
    const offArch = Math.abs(splineSurfaceAt(arch, channelX, channelY).zMm - channelZ);
    most = Math.max(most, offCrest, offArch);
  }
  return most;
}
