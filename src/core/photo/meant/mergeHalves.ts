import { hypot } from '../../base/index.ts';
import { type FarPlateAside, farPlateAside } from './farPlateAside.ts';
import type { FoldedPlace } from './foldHalves.ts';
import { halvesDifference } from './halvesDifference.ts';
import type { RestPlace } from './lostStretches.ts';
import type { SeenSide, StretchRule } from './meantWishes.ts';
import { purflingWitness, type Witness } from './purflingWitness.ts';
import { runLength } from './runLength.ts';

/** What a place stands on: both halves, one (the other worn there, not seen or overruled), the purfling, or none seen. */
export type StandsOn = 'both' | SeenSide | 'purfling' | 'bridged';

/** How far outside the middle place an edge as meant lies, and how surely. */
export interface MeantOffset {
  readonly outMm: number;
  readonly from: StandsOn;
  /** Scatter of this one place, and what it shares with its neighbours; one standard deviation each. */
  readonly sigmaMm: number;
  readonly sharedSigmaMm: number;
}

/** A folded place with the edge as meant: symmetric, and of each half for itself. */
export interface MergedPlace extends FoldedPlace {
  readonly symmetric: MeantOffset;
  readonly own: Readonly<Record<SeenSide, MeantOffset>>;
  /** Which half has lost wood here by the other's witness, and how much each half lost. */
  readonly restoredMm: Readonly<Record<SeenSide, number>>;
  /** Half the slow difference of the halves: + the right half stands out. */
  readonly leanMm: number;
  /** The half that was set aside here, as followed on ribs or far plate. */
  readonly aside: FarPlateAside | null;
}

/** Both halves merged, and how many neighbouring stations scatter together. */
export interface MergedHalves {
  readonly places: readonly MergedPlace[];
  readonly together: number;
}

/** What the maker rules, by halves as seen. */
export interface MergeRules {
  readonly follow: 'average' | SeenSide;
  /** Heights count in the folded places' y. */
  readonly rules: readonly StretchRule<SeenSide>[];
}

/**
 * Both halves merged by two facts: wear only takes wood away, so where one half lies inside the other by more than
 * their slow difference explains, the outer one is right; string load only moves it, so the slow difference is averaged
 * out, or one side followed. Where both halves are worn, the purfling tells. A half that stands on ribs or far plate is
 * set aside, unless the maker has ruled the stretch.
 */
export function mergeHalves(
  found: readonly FoldedPlace[],
  { follow, rules }: MergeRules = { follow: 'average', rules: [] },
): MergedHalves {
  const aside = farPlateAside(found, (place) => isRuled(place, rules));
  const places = found.map((place, i) => {
    const side = aside[i]?.side;
    return side === undefined ? place : { ...place, [side]: { ...place[side], edgeMm: null } };
  });
  const { slow, rest, lost } = halvesDifference(places);
  const witness = purflingWitness(places);
  const doubt = doubtsMm(rest, lost, slow.spreadMm);
  const lean = { average: 0, right: 1, left: -1 }[follow];
  const merged = places.map((place, i): MergedPlace => {
    const stand: Stand = {
      place,
      slowMm: slow.values[i],
      slowSigmaMm: slow.sigmasMm[i],
      spreadMm: slow.spreadMm,
      restMm: rest[i].restMm,
      doubtMm: doubt[i],
      lost: ruledLoss(place, rest[i].restMm, lost[i], rules),
      witness: isRuled(place, rules) ? null : witness[i],
    };
    const middle = symmetricOffset(stand);
    return {
      ...place,
      symmetric: { ...middle, outMm: middle.outMm + (lean * slow.values[i]) / 2 },
      own: { left: ownOffset(stand, 'left', rules), right: ownOffset(stand, 'right', rules) },
      restoredMm: restored(stand),
      leanMm: slow.values[i] / 2,
      aside: aside[i] ?? null,
    };
  });
  return { places: merged, together: togetherOf(rest) };
}

/** mm to either side over which a rest is averaged before its own scatter is taken. */
const SCATTER_WITHIN_MM = 25;

/** How many neighbouring stations scatter together: what is left of the rests after a running mean. */
function togetherOf(rest: readonly RestPlace[]): number {
  const known = rest.filter((place) => place.restMm !== null && !place.section.endsWith('Corner'));
  const scatter = known.map(({ alongMm, restMm }, i) => {
    let [sum, count] = [0, 0];
    const add = (j: number) => {
      sum += known[j].restMm ?? 0;
      count++;
    };
    for (let j = i; j >= 0 && alongMm - known[j].alongMm <= SCATTER_WITHIN_MM; j--) add(j);
    for (let j = i + 1; j < known.length && known[j].alongMm - alongMm <= SCATTER_WITHIN_MM; j++) add(j);
    return (restMm ?? 0) - sum / count;
  });
  // The running mean took its share of what goes together.
  const seenTogether = runLength(scatter);
  const window = known.length < 2 ? 1 : 1 + (2 * SCATTER_WITHIN_MM * (known.length - 1)) / spanMm(known);
  return seenTogether / Math.max(LEAST_LEFT, 1 - seenTogether / window);
}

/** Share of the scatter that a running mean leaves at least. */
const LEAST_LEFT = 0.3;

function spanMm(known: readonly RestPlace[]): number {
  return Math.max(1, known[known.length - 1].alongMm - known[0].alongMm);
}

interface Stand {
  readonly place: FoldedPlace;
  readonly slowMm: number;
  readonly slowSigmaMm: number;
  readonly spreadMm: number;
  readonly restMm: number | null;
  /** How far halves disagree here that no loss explains. */
  readonly doubtMm: number;
  readonly lost: SeenSide | null;
  readonly witness: Witness;
}

const OTHER = { left: 'right', right: 'left' } as const;

function ruleOf(
  { y }: FoldedPlace,
  side: SeenSide,
  rules: readonly StretchRule<SeenSide>[],
): StretchRule<SeenSide> | undefined {
  return rules.find((rule) => rule.side === side && y >= rule.fromMm && y <= rule.toMm);
}

function isRuled(place: FoldedPlace, rules: readonly StretchRule<SeenSide>[]): boolean {
  return ruleOf(place, 'left', rules) !== undefined || ruleOf(place, 'right', rules) !== undefined;
}

/** Which half counts as worn once the maker has spoken: a side taken as found is right, so the other is not. */
function ruledLoss(
  place: FoldedPlace,
  restMm: number | null,
  lost: SeenSide | null,
  rules: readonly StretchRule<SeenSide>[],
): SeenSide | null {
  for (const side of ['left', 'right'] as const) {
    const rule = ruleOf(place, side, rules);
    if (rule === undefined) continue;
    if (rule.take === 'mean') return null;
    if (rule.take === 'asFound') return OTHER[side];
    if (rule.take === 'other') return side;
    return (restMm ?? 0) > 0 ? 'left' : 'right';
  }
  return lost;
}

/** Offsets of a half and of the slow difference brought over to it from the other: + for the right half. */
const SIGN = { left: -1, right: 1 } as const;

function symmetricOffset(stand: Stand): MeantOffset {
  const { place, slowMm, lost, witness } = stand;
  const [left, right] = [place.left.edgeMm, place.right.edgeMm];
  if (left === null && right === null) return { outMm: 0, from: 'bridged', ...unsure(stand, 'one') };
  if (witness !== null) {
    const told = (['left', 'right'] as const).flatMap((side) => {
      const mm = witness[side];
      return mm === null ? [] : [mm - (SIGN[side] * slowMm) / 2];
    });
    const outMm = told.reduce((sum, mm) => sum + mm, 0) / told.length;
    return { outMm, from: 'purfling', ...unsure(stand, 'one') };
  }
  const only = left === null ? 'right' : right === null ? 'left' : lost === null ? null : OTHER[lost];
  if (only === null)
    return { outMm: ((left ?? 0) + (right ?? 0)) / 2, from: 'both', ...unsure(stand, 'both') };
  return {
    outMm: (place[only].edgeMm ?? 0) - (SIGN[only] * slowMm) / 2,
    from: only,
    ...unsure(stand, 'one'),
  };
}

/** The edge of one half for itself: as found where it is sound, else brought over from the other or from the purfling. */
function ownOffset(stand: Stand, side: SeenSide, rules: readonly StretchRule<SeenSide>[]): MeantOffset {
  const { place, slowMm, lost, witness } = stand;
  const [mine, theirs] = [place[side].edgeMm, place[OTHER[side]].edgeMm];
  const brought = theirs === null ? null : theirs + SIGN[side] * slowMm;
  const told = witness?.[side] ?? null;
  const as = (outMm: number, from: StandsOn): MeantOffset => ({ outMm, from, ...unsure(stand, 'own') });
  if (mine === null) {
    return brought === null
      ? { outMm: 0, from: 'bridged', ...unsure(stand, 'one') }
      : { ...as(brought, OTHER[side]), ...unsure(stand, 'brought') };
  }
  if (told !== null) return { ...as(told, 'purfling'), ...unsure(stand, 'one') };
  const take = ruleOf(place, side, rules)?.take ?? (lost === side ? 'other' : 'asFound');
  if (brought === null || take === 'asFound') return as(mine, side);
  if (take === 'mean') return as((mine + brought) / 2, 'both');
  if (take === 'outer' && mine >= brought) return as(mine, side);
  return { ...as(brought, OTHER[side]), ...unsure(stand, 'brought') };
}

/** Scatter of a single place, and what the slow difference adds wherever one half speaks for the other. */
function unsure(
  { spreadMm, slowSigmaMm, doubtMm }: Stand,
  how: 'both' | 'one' | 'own' | 'brought',
): Pick<MeantOffset, 'sigmaMm' | 'sharedSigmaMm'> {
  const single = spreadMm / Math.SQRT2;
  const slow = hypot(slowSigmaMm, SHORTER_WAVES * spreadMm);
  if (how === 'own') return { sigmaMm: single, sharedSigmaMm: 0 };
  // Of two that disagree either may be right: their mean is off by half of it, and so is one of them alone.
  const sigmaMm = Math.max(how === 'both' ? spreadMm / 2 : single, doubtMm / 2);
  return { sigmaMm, sharedSigmaMm: how === 'both' ? 0 : how === 'one' ? slow / 2 : slow };
}

/** Halves apart by more spreads than this disagree: either was followed on something else, or lost wood over too short a way to tell. */
const DISAGREE_SPREADS = 3;
/** mm along the edge. So near to places where halves disagree one half alone is no surer than they are. */
const DOUBT_REACHES_MM = 2.5;

/** How far the halves of each place disagree by more than a scatter, mm; where one is seen alone, those beside it. */
function doubtsMm(
  rest: readonly RestPlace[],
  lost: readonly (SeenSide | null)[],
  spreadMm: number,
): readonly number[] {
  const own = rest.map(({ restMm }, i) => {
    if (restMm === null) return null;
    const apartMm = Math.abs(restMm);
    return lost[i] === null && apartMm > DISAGREE_SPREADS * spreadMm ? apartMm : 0;
  });
  const beside = (from: number, step: 1 | -1): number => {
    for (let i = from + step; i >= 0 && i < rest.length; i += step) {
      if (Math.abs(rest[i].alongMm - rest[from].alongMm) > DOUBT_REACHES_MM) return 0;
      const mm = own[i];
      if (mm !== null) return mm;
    }
    return 0;
  };
  return own.map((mm, i) => mm ?? Math.max(beside(i, 1), beside(i, -1)));
}

/** Part of the scatter of the halves' difference that is waves too short to be slow, shared by neighbours. */
const SHORTER_WAVES = 0.5;

function restored({ place, restMm, lost, witness }: Stand): Readonly<Record<SeenSide, number>> {
  const told = (side: SeenSide) => {
    const edge = place[side].edgeMm;
    const mm = witness?.[side] ?? null;
    if (mm !== null && edge !== null) return Math.max(0, mm - edge);
    if (lost !== side || restMm === null) return 0;
    return Math.max(0, -SIGN[side] * restMm);
  };
  return { left: told('left'), right: told('right') };
}
