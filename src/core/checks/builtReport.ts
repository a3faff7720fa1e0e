import { distanceBetween, type Point } from '../base/index.ts';
import type { PlanParts } from '../instrument/index.ts';
import { type BuiltPart, builtPlaceName } from './builtPlaceName.ts';

/** One measured place of a made thing's edge, in order along it; body frame, mm. */
export interface BuiltPlace {
  readonly at: Point<'body'>;
  /** + wood stands proud of the design, − wood is missing; 0 where nothing was measured. */
  readonly missMm: number;
  readonly isMeasured: boolean;
  /** At a corner nothing can be measured; elsewhere an unmeasured place was hidden. */
  readonly isCorner: boolean;
}

/** What was measured on a made thing, its size held. */
export interface BuiltMeasure {
  readonly places: readonly BuiltPlace[];
  /** Half interval (k = 2) of a single deviation. */
  readonly plusMinusMm: number;
  /** Shares by which it is large along and across, with the half interval of both (k = 2). */
  readonly along: number;
  readonly across: number;
  readonly sizePlusMinus: number;
  readonly allRoundMm: number;
  readonly rmsAfterSizeMm: number;
  readonly rmsAfterAllRoundMm: number;
}

/** A stretch that leaves the design by more than is allowed, at its worst place. */
export interface BuiltFault {
  readonly at: Point<'body'>;
  readonly name: string;
  readonly missMm: number;
  readonly extentMm: number;
}

/** A made thing against its design. */
export interface BuiltReport {
  readonly part: BuiltPart;
  readonly maxMm: number;
  readonly rmsMm: number;
  readonly meanMm: number;
  readonly plusMinusMm: number;
  readonly toleranceMm: number;
  readonly verdict: 'within' | 'beyond';
  /** Whether the ± leaves the verdict no doubt. */
  readonly isSure: boolean;
  /** Stretches beyond the tolerance, the worst first. */
  readonly faults: readonly BuiltFault[];
  /** The worst place, whether beyond the tolerance or not. */
  readonly worst: BuiltFault;
  /** The thing's own two sides against each other; none for half a template. */
  readonly sides?: { readonly maxMm: number; readonly rmsMm: number; readonly name: string };
  readonly hiddenShare: number;
}

/** mm. Neighbours that are averaged before the largest deviation is told: a speck is not a fault of the wood. */
const SPECK_MM = 1.5;
/** mm. Gaps of a stretch that do not part it. */
const PARTED_MM = 4;
/** mm. How far apart two places may lie that are held against each other across the centre line. */
const OPPOSITE_MM = 1;

/** The deviations of a made thing summed up: how far, where, how even, and whether that is allowed. */
export function builtReport(
  plan: PlanParts,
  part: BuiltPart,
  measure: BuiltMeasure,
  toleranceMm: number,
): BuiltReport {
  const calm = withoutSpecks(measure.places);
  const seen = calm.filter(({ isMeasured }) => isMeasured);
  const name = (at: Point<'body'>) => builtPlaceName(plan, part, at);
  const worst = seen.reduce((a, b) => (Math.abs(b.missMm) > Math.abs(a.missMm) ? b : a));
  const maxMm = Math.abs(worst.missMm);
  const rest = measure.places.filter(({ isCorner }) => !isCorner);
  const sides = sidesOf(calm, name);
  return {
    part,
    maxMm,
    rmsMm: rmsOf(seen.map(({ missMm }) => missMm)),
    meanMm: seen.reduce((sum, { missMm }) => sum + missMm, 0) / seen.length,
    plusMinusMm: measure.plusMinusMm,
    toleranceMm,
    verdict: maxMm <= toleranceMm ? 'within' : 'beyond',
    isSure: Math.abs(maxMm - toleranceMm) > measure.plusMinusMm,
    faults: faultsOf(calm, toleranceMm, name),
    worst: { at: worst.at, name: name(worst.at), missMm: worst.missMm, extentMm: 0 },
    ...(sides && { sides }),
    hiddenShare: 1 - seen.length / Math.max(1, rest.length),
  };
}

function rmsOf(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / Math.max(1, values.length));
}

/** Each miss the middle one of its near neighbours on either side. */
function withoutSpecks(places: readonly BuiltPlace[]): readonly BuiltPlace[] {
  return places.map((place, i) => {
    if (!place.isMeasured) return place;
    const near = [i - 2, i - 1, i, i + 1, i + 2]
      .map((k) => places[k])
      .filter((one) => one?.isMeasured && distanceBetween(one.at, place.at) <= SPECK_MM)
      .map((one) => (one as BuiltPlace).missMm)
      .sort((a, b) => a - b);
    return { ...place, missMm: near[near.length >> 1] as number };
  });
}

/** Runs of one sign beyond the tolerance, the worst first. */
function faultsOf(
  places: readonly BuiltPlace[],
  toleranceMm: number,
  name: (at: Point<'body'>) => string,
): readonly BuiltFault[] {
  const runs: BuiltPlace[][] = [];
  for (const place of places) {
    if (!place.isMeasured || !(Math.abs(place.missMm) > toleranceMm)) continue;
    const last = runs.at(-1)?.at(-1);
    const goes = last && Math.sign(last.missMm) === Math.sign(place.missMm);
    if (goes && distanceBetween(last.at, place.at) < PARTED_MM) runs.at(-1)?.push(place);
    else runs.push([place]);
  }
  return runs
    .map((run): BuiltFault => {
      const worst = run.reduce((a, b) => (Math.abs(b.missMm) > Math.abs(a.missMm) ? b : a));
      const extentMm = run.reduce(
        (sum, place, i) => sum + (i > 0 ? distanceBetween(place.at, (run[i - 1] as BuiltPlace).at) : 0),
        0,
      );
      return { at: worst.at, name: name(worst.at), missMm: worst.missMm, extentMm };
    })
    .sort((a, b) => Math.abs(b.missMm) - Math.abs(a.missMm));
}

/** How unlike the two sides are, place against mirrored place. */
function sidesOf(
  places: readonly BuiltPlace[],
  name: (at: Point<'body'>) => string,
): BuiltReport['sides'] | null {
  const seen = places.filter(({ isMeasured }) => isMeasured);
  const bass = seen.filter(({ at }) => at.x < 0);
  const pairs = seen
    .filter(({ at }) => at.x > 0)
    .flatMap((treble) => {
      const mirrored = { x: -treble.at.x, y: treble.at.y };
      let best: BuiltPlace | undefined;
      let least = OPPOSITE_MM;
      for (const one of bass) {
        const away = distanceBetween(one.at, mirrored);
        if (away < least) [best, least] = [one, away];
      }
      return best ? [{ at: treble.at, unlikeMm: treble.missMm - best.missMm }] : [];
    });
  const first = pairs[0];
  if (!first) return null;
  const worst = pairs.reduce((a, b) => (Math.abs(b.unlikeMm) > Math.abs(a.unlikeMm) ? b : a), first);
  return {
    maxMm: Math.abs(worst.unlikeMm),
    rmsMm: rmsOf(pairs.map(({ unlikeMm }) => unlikeMm)),
    name: name(worst.at).replace(/^(treble|bass) side, /, ''),
  };
}
