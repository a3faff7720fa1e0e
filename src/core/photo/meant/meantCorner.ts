import { cos, hypot, type Point, sin } from '../../base/index.ts';
import { type MeantRun, nodeAt, onLine, type RunNode } from './meantRun.ts';
import { beyondEndMm, type EndPlaces, type SeenEnd, seenEnd } from './seenEnd.ts';

/** How a corner end came to its place: as it is seen, or carried out to a width that was given or is usual. */
export type CornerFrom = 'seen' | 'given' | 'usual';

/** A corner as meant: how far along their runs bout and waist reach, and the corner end between them. */
export interface MeantCorner {
  readonly boutAlongMm: number;
  readonly waistAlongMm: number;
  readonly boutTip: Point<'body'>;
  readonly waistTip: Point<'body'>;
  readonly widthMm: number;
  readonly from: CornerFrom;
  /** Half interval (k = 2) of how far out the corner reaches. */
  readonly plusMinusMm: number;
}

/** What is known of a corner besides the runs. */
export interface CornerKnown extends EndPlaces {
  readonly usualWidthMm: number;
  readonly usualSpreadMm: number;
  readonly givenWidthMm?: number;
  readonly endSigmaMm: number;
}

/** One arm of a corner: its run, whether it meets the corner at its start, and which line of it counts. */
export interface CornerArm {
  readonly run: MeantRun;
  readonly at: 'start' | 'end';
  readonly line: 'smooth' | 'arcs';
}

/** mm. How far inside the fitted tip an arm is followed. */
const INSIDE_MM = 12;
const STEP_MM = 0.25;
/** A corner end wider than usual by no more than so many spreads is whole; by so many it is a worn one. */
const WHOLE_SPREADS = 0.6;
const WORN_SPREADS = 2;
/** Spreads over the usual width that a worn end is carried out to. */
const WIDE_SIDE = 0.5;
/** mm, k = 2. Arms that do not draw together to the width leave open how far beyond its end a corner reached. */
const NOT_CLOSED_MM = 2;
/** mm. A corner end's own place is not read better than this. */
const SEEN_END_MM = 0.08;

/**
 * The corner at which two arms end. Their arcs are carried on past their tips; the corner end stands where it is seen
 * unless a width is given, or it is seen wider than is usual, as it becomes when a tip wears away: then where the arms
 * have drawn together to that width, the wider it is seen the more of the way. Undefined where the arms do not come to such a place.
 */
export function meantCorner(bout: CornerArm, waist: CornerArm, known: CornerKnown): MeantCorner | undefined {
  const boutNodes = outwards(bout);
  const waistNodes = outwards(waist);
  const seen = seenEnd(known);
  const heading = seen?.headingRad ?? known.headingRad;
  const seenCorner = seen && endThrough(seen, heading, boutNodes, waistNodes);
  if (seenCorner && known.givenWidthMm === undefined) {
    const share = wornShare(seenCorner.widthMm, known);
    const standing =
      share < 1 ? partlyCarried(seenCorner, heading, share, known, boutNodes, waistNodes) : null;
    if (standing) return standing;
  }
  const widthMm = known.givenWidthMm ?? carriedWidthMm(known);
  const closed = whereWide(widthMm, heading, boutNodes, waistNodes);
  if (closed === undefined)
    return seenCorner && { ...told(seenCorner), from: 'seen', plusMinusMm: NOT_CLOSED_MM };
  const plusMinusMm = closedPlusMinusMm(closed, known);
  // Wood is only ever lost: a corner reaches at least as far out as its end still stands. It may have reached farther.
  if (seenCorner && seen && beyondEndMm(seen, middleOf(closed)) < 0)
    return { ...told(seenCorner), from: 'seen', plusMinusMm };
  return { ...told(closed), from: known.givenWidthMm === undefined ? 'usual' : 'given', plusMinusMm };
}

/** How far out arms may truly meet a width: what they, the width and all that was rubbed off both leave open, by how fast they close. */
function closedPlusMinusMm({ bout, waist, closing }: Closed, { givenWidthMm, usualSpreadMm }: CornerKnown) {
  const widthSigma = givenWidthMm === undefined ? usualSpreadMm : 0;
  const arms = hypot(bout.node.sigmaMm, waist.node.sigmaMm, CARRIED_OFF_MM);
  const reach = hypot(arms, widthSigma, 2 * RUBBED_AT_TIP_MM) / Math.max(LEAST_CLOSING, closing);
  return 2 * hypot(reach, arms);
}

/** The width that a worn end is carried out to: one that is seen wide was most likely on the wide side when it was new. */
function carriedWidthMm({ usualWidthMm, usualSpreadMm }: CornerKnown): number {
  return usualWidthMm + WIDE_SIDE * usualSpreadMm;
}

/** How far an end as wide as this is taken for a worn one: not at all at 0, wholly at 1, and in between in part. */
function wornShare(widthMm: number, { usualWidthMm, usualSpreadMm }: CornerKnown): number {
  const wide = (widthMm - usualWidthMm) / usualSpreadMm;
  const share = Math.min(1, Math.max(0, (wide - WHOLE_SPREADS) / (WORN_SPREADS - WHOLE_SPREADS)));
  return share * share * (3 - 2 * share);
}

/** A seen end, carried out by a share of the way to where it would be worn from. */
function partlyCarried(
  seen: Ended,
  headingRad: number,
  share: number,
  known: CornerKnown,
  bout: readonly Outward[],
  waist: readonly Outward[],
): MeantCorner | undefined {
  const end =
    share === 0
      ? seen
      : whereWide(seen.widthMm + share * (carriedWidthMm(known) - seen.widthMm), headingRad, bout, waist);
  if (end === undefined) return undefined;
  const usual = whereWide(known.usualWidthMm, headingRad, bout, waist);
  // An end a little wider than usual may be a little worn, or not: the interval reaches to either.
  const mayReachMm =
    usual === undefined || seen.widthMm <= known.usualWidthMm
      ? 0
      : Math.max(apartMm(usual, end), apartMm(seen, end));
  return {
    ...told(end),
    from: share < 0.5 ? 'seen' : 'usual',
    plusMinusMm: hypot(mayReachMm, 2 * hypot(end.bout.node.sigmaMm, known.endSigmaMm, SEEN_END_MM)),
  };
}

function middleOf({ bout, waist }: Ended): Point<'body'> {
  return { x: (bout.at.x + waist.at.x) / 2, y: (bout.at.y + waist.at.y) / 2 };
}

function apartMm(a: Ended, b: Ended): number {
  return hypot(a.bout.at.x - b.bout.at.x, a.bout.at.y - b.bout.at.y);
}

/** mm, one standard deviation. What two arcs carried on over a few millimetres miss of real arms (tried on made bodies). */
const CARRIED_OFF_MM = 0.1;

/**
 * mm, root mean square. What hands and cloths have rubbed off an edge all round, which nothing shows: it is only ever
 * taken away, so the outline as meant lies outside by so much more often than inside (ours: simulated bodies that were
 * rubbed by 0.06 mm in the mean, give or take half of it);
 * and off either arm within a few millimetres of a corner tip, both at once (there the arms lie 0.1 mm inside in the
 * mean, and the tips that they are carried to 0.3 to 0.4 mm: set on seeds 41 to 80 of the simulator, where 94 of 100 tips are held).
 */
export const RUBBED_MM = 0.067;
const RUBBED_AT_TIP_MM = 0.24;

/** Least that a corner's arms draw together per millimetre outwards; flatter ones do not fix a place. */
const LEAST_CLOSING = 0.1;

interface Outward {
  readonly at: Point<'body'>;
  readonly node: RunNode;
}

interface Ended {
  readonly bout: Outward;
  readonly waist: Outward;
  readonly widthMm: number;
}

function told({ bout, waist, widthMm }: Ended) {
  return {
    boutAlongMm: bout.node.alongMm,
    waistAlongMm: waist.node.alongMm,
    boutTip: bout.at,
    waistTip: waist.at,
    widthMm,
  };
}

/** Where arms have drawn together to a width, and by how much they do so per millimetre outwards. */
interface Closed extends Ended {
  readonly closing: number;
}

/** Places of an arm from inside out, past its fitted tip as far as it is carried. */
function outwards({ run, at, line }: CornerArm): readonly Outward[] {
  const last = run.nodes[at === 'end' ? run.nodes.length - 1 : 0].alongMm;
  const first = at === 'end' ? run.lengthMm - INSIDE_MM : INSIDE_MM;
  const steps = Math.round(Math.abs(last - first) / STEP_MM);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const node = nodeAt(run, first + ((last - first) * i) / steps);
    return { at: onLine(node, line), node };
  });
}

/** Where both arms cross a line across the corner. */
function endThrough(
  { through }: SeenEnd,
  headingRad: number,
  bout: readonly Outward[],
  waist: readonly Outward[],
): Ended | undefined {
  // Outwards is the side of the line to which the arms run.
  const reach = ({ at }: Outward) =>
    -sin(headingRad) * (at.x - through.x) + cos(headingRad) * (at.y - through.y);
  const [a, b] = [crossing(bout, reach), crossing(waist, reach)];
  if (a === undefined || b === undefined) return undefined;
  return { bout: a, waist: b, widthMm: hypot(a.at.x - b.at.x, a.at.y - b.at.y) };
}

/** The last place of an arm where something passes 0, between two of its places. */
function crossing(arm: readonly Outward[], value: (place: Outward) => number): Outward | undefined {
  for (let i = arm.length - 1; i > 0; i--) {
    const [a, b] = [value(arm[i - 1]), value(arm[i])];
    if (a * b <= 0 && a !== b) return between(arm[i - 1], arm[i], a / (a - b));
  }
  return undefined;
}

function between(a: Outward, b: Outward, share: number): Outward {
  const mix = (p: number, q: number) => p + share * (q - p);
  return {
    at: { x: mix(a.at.x, b.at.x), y: mix(a.at.y, b.at.y) },
    node: {
      ...a.node,
      alongMm: mix(a.node.alongMm, b.node.alongMm),
      sigmaMm: mix(a.node.sigmaMm, b.node.sigmaMm),
    },
  };
}

/** Halvings that settle a step of an arm to far below what can be seen. */
const HALVINGS = 32;

/** Where the arms, walked outwards, have drawn together to a width measured in one direction. */
function whereWide(
  widthMm: number,
  headingRad: number,
  bout: readonly Outward[],
  waist: readonly Outward[],
): Closed | undefined {
  const [c, s] = [cos(headingRad), sin(headingRad)];
  const facing = (from: Outward) => {
    const place = crossing(waist, ({ at }) => -s * (at.x - from.at.x) + c * (at.y - from.at.y));
    return place && { place, wide: c * (place.at.x - from.at.x) + s * (place.at.y - from.at.y) };
  };
  let before: { readonly from: Outward; readonly wide: number } | undefined;
  for (const from of bout) {
    const met = facing(from);
    if (met === undefined) continue;
    if (met.wide <= widthMm && before !== undefined && before.wide > widthMm) {
      let [wider, narrower] = [before.from, from];
      for (let halving = 0; halving < HALVINGS; halving++) {
        const middle = between(wider, narrower, 0.5);
        const wide = facing(middle)?.wide ?? Number.POSITIVE_INFINITY;
        if (wide > widthMm) wider = middle;
        else narrower = middle;
      }
      const other = facing(narrower);
      if (other === undefined) return undefined;
      const outMm = Math.abs(-s * (from.at.x - before.from.at.x) + c * (from.at.y - before.from.at.y));
      return {
        bout: narrower,
        waist: other.place,
        widthMm: other.wide,
        closing: (before.wide - met.wide) / outMm,
      };
    }
    before = { from, wide: met.wide };
  }
  return undefined;
}
