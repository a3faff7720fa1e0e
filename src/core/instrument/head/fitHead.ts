import { accept, type Checked, cos, type Fault, type Point, point, refuse, sin } from '../../base/index.ts';
import { type Chain, joinChains, nearestOnSpans, spansContain, spansOf } from '../../curve/index.ts';
import { addHold, addRow, emptyEquations, solveEquations } from '../../numeric/index.ts';
import { type HeadProfile, headProfile } from './headProfile.ts';
import { type StretchMisfit, stretchesOf } from './headStretches.ts';
import type { ProfileSizes } from './profileSizes.ts';

/** A place of a head's silhouette, nearly in the head's frame, and its spread (one standard deviation). */
export interface SilhouettePlace extends Point<'head'> {
  readonly sigmaMm: number;
}

/** Names of what is fitted; eye, turns and quickening cannot be seen from outside and stay. */
export const FITTED = [
  'lengthMm',
  'topMm',
  'depthMm',
  'scrollHeightMm',
  'scrollFrontMm',
  'leanRad',
  'hollowRadiusMm',
  'chinBehindMm',
  'chinRad',
  'chinReachMm',
  'neckBehindMm',
  'frontRad',
  'throatGapMm',
] as const satisfies readonly (keyof ProfileSizes)[];

export type FittedName = (typeof FITTED)[number];

/** A side view fitted to a silhouette. */
export interface FittedHead {
  readonly profile: HeadProfile;
  /** Half intervals (k = 2) of what was fitted. */
  readonly plusMinus: Readonly<Record<FittedName, number>>;
  readonly stretches: readonly StretchMisfit[];
  readonly rmsMm: number;
  readonly mostMm: number;
  /** Share of the places that the fit could use. */
  readonly usedShare: number;
  /** Each used place in the head's frame, and how far outside the side view it lies. */
  readonly residuals: readonly { readonly at: Point<'head'>; readonly mm: number }[];
}

/** Unknowns besides the sizes: how the silhouette is moved, mm, and turned, rad. */
const POSE = 3;

/** One standard deviation within which the start is believed, on a head of 107 mm: lengths in mm, angles in rad. Chosen by us. */
const BELIEVED: Readonly<Record<FittedName, number>> = {
  lengthMm: 5,
  topMm: 2.5,
  depthMm: 3,
  scrollHeightMm: 3,
  scrollFrontMm: 2,
  leanRad: 0.12,
  hollowRadiusMm: 8,
  chinBehindMm: 3,
  chinRad: 0.15,
  chinReachMm: 4,
  neckBehindMm: 2,
  frontRad: 0.12,
  throatGapMm: 0.8,
};
const BELIEVED_FOR_MM = 107;
/** mm and rad. One standard deviation of how the silhouette was laid: how well a nut and a gluing face are seen. */
const BELIEVED_POSE = [3, 1, 0.03] as const;

/** mm. Places farther out weigh less; a head whose edge is worn or a nut left on must not pull the whole. */
const FAR_MM = 0.6;
/** mm. Places farther off belong to something else: a nut, the end of the neck. */
const FOREIGN_MM = 4;
/** mm. Least spread that a place is believed to have. */
const LEAST_SIGMA_MM = 0.1;
/** mm from the lowest place of the silhouette that belong to the cut end of the neck. */
const CUT_END_MM = 1.5;
/** mm of neck beyond the chin that the side view is carried on by. */
const NECK_MM = 60;

const MOST_ROUNDS = 40;
/** No unit. Relative gain below which the fit has settled. */
const SETTLED_GAIN = 0.000_01;
/** Share of a size's belief by which it is moved to see what that changes. */
const NUDGE = 0.001;
/** No unit. Damping: what it starts from, its factor, and beyond which no step helps. */
const DAMPING = { start: 0.001, factor: 8, most: 1_000_000 };
/** Fewer places tell nothing. */
const LEAST_PLACES = 60;

/**
 * The side view that lies nearest to a silhouette, from a start: sizes and pose by least squares of the distances square to the
 * outline, far places weighing less, each size held to the start as loosely as heads differ.
 *
 * Method: Levenberg and Marquardt, 1944 and 1963, differences for the derivatives; weights of Huber, 1964.
 * Faults: those of the start's side view; `head.no-fit` (too little of the silhouette lies near a head).
 */
export function fitHead(silhouette: readonly SilhouettePlace[], start: ProfileSizes): Checked<FittedHead> {
  const first = headProfile(start);
  if (!first.ok) return first;
  const scale = start.lengthMm / BELIEVED_FOR_MM;
  const lowest = Math.min(...silhouette.map(({ y }) => y));
  const places = silhouette.filter(({ y }) => y > lowest + CUT_END_MM);
  const beliefs = [
    ...FITTED.map((name) => BELIEVED[name] * (name.endsWith('Mm') ? scale : 1)),
    ...BELIEVED_POSE,
  ];
  const origin = [...FITTED.map((name) => start[name]), 0, 0, 0];
  let state = stateAt(origin, start, places);
  if (state === null || state.used < LEAST_PLACES) return refuse(noFit(state?.used ?? 0, places.length));
  let cost = costOf(state, origin, origin, beliefs);
  let damping = DAMPING.start;
  let unknowns = origin;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const slopes = slopesAt(state, unknowns, start, places, beliefs);
    let gained = 0;
    while (damping < DAMPING.most) {
      const step = stepFrom(state, slopes, unknowns, origin, beliefs, damping);
      const next = step && unknowns.map((value, index) => value + (step[index] ?? 0));
      const there = next && stateAt(next, start, places);
      const costThere = next && there ? costOf(there, next, origin, beliefs) : Number.POSITIVE_INFINITY;
      if (next && there && costThere < cost && there.used >= LEAST_PLACES) {
        gained = (cost - costThere) / cost;
        [unknowns, state, cost] = [next, there, costThere];
        damping /= DAMPING.factor;
        break;
      }
      damping *= DAMPING.factor;
    }
    if (gained < SETTLED_GAIN) break;
  }
  return accept(fittedAt(state, unknowns, start, places, beliefs));
}

interface State {
  readonly profile: HeadProfile;
  /** Outside positive; NaN for a place that is not used. */
  readonly offMm: Float64Array;
  readonly feet: readonly number[];
  readonly moved: readonly Point<'head'>[];
  readonly weights: Float64Array;
  readonly used: number;
}

function sizesAt(unknowns: readonly number[], start: ProfileSizes): ProfileSizes {
  return { ...start, ...Object.fromEntries(FITTED.map((name, index) => [name, unknowns[index]])) };
}

/** Where the side view of these unknowns leaves each place; null where there is none. */
function stateAt(
  unknowns: readonly number[],
  start: ProfileSizes,
  places: readonly SilhouettePlace[],
): State | null {
  const made = headProfile(sizesAt(unknowns, start));
  if (!made.ok) return null;
  const profile = made.value;
  const line = carriedOn(profile);
  const spans = spansOf(line);
  const closed = spansOf({ ...line, closed: true });
  const [dx = 0, dy = 0, turn = 0] = unknowns.slice(FITTED.length);
  const [cosine, sine] = [cos(turn), sin(turn)];
  const offMm = new Float64Array(places.length);
  const weights = new Float64Array(places.length);
  const feet: number[] = [];
  const moved: Point<'head'>[] = [];
  let used = 0;
  for (const [index, { x, y, sigmaMm }] of places.entries()) {
    const at = point<'head'>(dx + x * cosine - y * sine, dy + x * sine + y * cosine);
    const near = nearestOnSpans(spans, at, FOREIGN_MM);
    const isEnd =
      (near.segment === 0 && near.fraction === 0) ||
      (near.segment === spans.length - 1 && near.fraction === 1);
    const isUsed = near.segment >= 0 && !isEnd;
    const off = isUsed ? (spansContain(closed, at) ? -near.distanceMm : near.distanceMm) : Number.NaN;
    offMm[index] = off;
    feet.push(isUsed ? near.segment : -1);
    moved.push(at);
    const sigma = Math.max(LEAST_SIGMA_MM, sigmaMm);
    weights[index] = isUsed ? Math.min(1, FAR_MM / Math.max(FAR_MM, Math.abs(off))) / (sigma * sigma) : 0;
    if (isUsed) used++;
  }
  return { profile, offMm, feet, moved, weights, used };
}

/** The outline with the neck carried on below the chin, front and back. */
function carriedOn({ outline, sizes }: HeadProfile): Chain<'head'> {
  const lowMm = -sizes.chinReachMm - NECK_MM;
  const straight = (x: number, from: number, to: number): Chain<'head'> => ({
    closed: false,
    vertices: [from, to].map((y) => ({ x, y, bulge: 0 })),
  });
  return joinChains(straight(sizes.neckBehindMm, lowMm, -sizes.chinReachMm), outline, straight(0, 0, lowMm));
}

/** Half the sum of squares, with a fixed price for each place that is not used, and what departs from the start. */
function costOf(
  { offMm, weights }: State,
  unknowns: readonly number[],
  origin: readonly number[],
  beliefs: readonly number[],
): number {
  let sum = 0;
  for (let index = 0; index < offMm.length; index++) {
    const off = Math.abs(offMm[index]);
    if (Number.isNaN(off)) {
      sum += (FAR_MM * (2 * FOREIGN_MM - FAR_MM)) / LEAST_SIGMA_MM ** 2;
      continue;
    }
    const weight = weights[index] / Math.min(1, FAR_MM / Math.max(FAR_MM, off));
    sum += weight * (off <= FAR_MM ? off * off : FAR_MM * (2 * off - FAR_MM));
  }
  for (const [index, value] of unknowns.entries())
    sum += ((value - (origin[index] ?? 0)) / (beliefs[index] ?? 1)) ** 2;
  return sum;
}

/** What each unknown changes at each place. */
function slopesAt(
  state: State,
  unknowns: readonly number[],
  start: ProfileSizes,
  places: readonly SilhouettePlace[],
  beliefs: readonly number[],
): readonly (Float64Array | null)[] {
  return unknowns.map((value, index) => {
    const nudge = NUDGE * (beliefs[index] ?? 1);
    const there = stateAt(
      unknowns.map((other, at) => (at === index ? value + nudge : other)),
      start,
      places,
    );
    if (there === null) return null;
    return state.offMm.map((off, at) => {
      const slope = (there.offMm[at] - off) / nudge;
      return Number.isFinite(slope) ? slope : 0;
    });
  });
}

function stepFrom(
  { offMm, weights }: State,
  slopes: readonly (Float64Array | null)[],
  unknowns: readonly number[],
  origin: readonly number[],
  beliefs: readonly number[],
  damping: number,
): Float64Array | null {
  const equations = emptyEquations(unknowns.length);
  const row = new Float64Array(unknowns.length);
  for (let place = 0; place < offMm.length; place++) {
    if (weights[place] === 0) continue;
    for (let index = 0; index < row.length; index++) row[index] = slopes[index]?.[place] ?? 0;
    addRow(equations, row, -offMm[place], weights[place]);
  }
  for (const [index, value] of unknowns.entries()) {
    const weight = 1 / (beliefs[index] ?? 1) ** 2;
    addHold(equations, index, (origin[index] ?? 0) - value, weight);
    const own = index * unknowns.length + index;
    equations.matrix[own] *= 1 + damping;
    // A size without a slope stays.
    if (slopes[index] === null) addHold(equations, index, 0, weight * DAMPING.most);
  }
  return solveEquations(equations) ? equations.right : null;
}

function fittedAt(
  state: State,
  unknowns: readonly number[],
  start: ProfileSizes,
  places: readonly SilhouettePlace[],
  beliefs: readonly number[],
): FittedHead {
  const used = [...state.offMm.keys()].filter((index) => !Number.isNaN(state.offMm[index]));
  const offs = used.map((index) => state.offMm[index]);
  const rmsMm = Math.sqrt(offs.reduce((sum, off) => sum + off * off, 0) / Math.max(1, offs.length));
  return {
    profile: state.profile,
    plusMinus: plusMinusOf(state, slopesAt(state, unknowns, start, places, beliefs), beliefs, rmsMm),
    stretches: stretchesOf(state.profile, state.offMm, state.feet),
    rmsMm,
    mostMm: Math.max(0, ...offs.map(Math.abs)),
    usedShare: used.length / Math.max(1, places.length),
    residuals: used.map((index) => ({ at: state.moved[index] as Point<'head'>, mm: state.offMm[index] })),
  };
}

/** mm along an outline over which misfits of neighbouring places are alike, so that they count as one. From memory. */
const ALIKE_PLACES = 8;

/** Half intervals from the curvature of the sum of squares, spread by what is left over. */
function plusMinusOf(
  { weights }: State,
  slopes: readonly (Float64Array | null)[],
  beliefs: readonly number[],
  rmsMm: number,
): Readonly<Record<FittedName, number>> {
  const size = FITTED.length + POSE;
  const spread = Math.max(rmsMm, LEAST_SIGMA_MM) ** 2 * ALIKE_PLACES;
  const column = (index: number): Float64Array | null => {
    const equations = emptyEquations(size);
    const row = new Float64Array(size);
    for (let place = 0; place < weights.length; place++) {
      if (weights[place] === 0) continue;
      for (let at = 0; at < size; at++) row[at] = slopes[at]?.[place] ?? 0;
      addRow(equations, row, 0, 1 / spread);
    }
    for (const [at, belief] of beliefs.entries()) addHold(equations, at, 0, 1 / belief ** 2);
    equations.right.fill(0);
    equations.right[index] = 1;
    return solveEquations(equations) ? equations.right : null;
  };
  return Object.fromEntries(
    FITTED.map((name, index) => [name, 2 * Math.sqrt(column(index)?.[index] ?? (beliefs[index] ?? 0) ** 2)]),
  ) as Record<FittedName, number>;
}

function noFit(used: number, count: number): Fault {
  return {
    code: 'head.no-fit',
    at: 'scrollSide',
    found: `a silhouette of ${count} places of which ${used} lie near the side of a head`,
    need: 'the whole side of a head, seen square on',
    remedy: 'trace it again with the head flat on its side, and look at the traced line',
  };
}
