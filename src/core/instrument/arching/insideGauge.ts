import { accept, type Checked, type Point, point, refuse } from '../../base/index.ts';
import { type Chain, chainThrough, fitArcs } from '../../curve/index.ts';
import type { PlateArch } from './archedPlate.ts';
import type { GaugePlace } from './gaugePlace.ts';
import type { GaugeStuff } from './gaugeProfile.ts';
import { mirroredBoth } from './mirroredBoth.ts';

/** Height of a plate's inside over its gluing face, mm: 0 on the gluing face itself. */
export type InsideHeight = (xMm: number, yMm: number) => number;

/** The edge of a gauge that hangs into a hollow. */
export interface InsideEdge {
  /** From rim to rim, across in arcs where they fit, along in short straight pieces: x (or y along the body) and the depth below the gluing face, counted upward. */
  readonly chain: Chain<'section'>;
  /** Where the hollow begins. */
  readonly rims: readonly [number, number];
  readonly deepestMm: number;
}

/** Points of a profile on one side of the crest, and mm between them at least. */
const PLACES = 240;
const LEAST_STEP_MM = 0.25;

/** mm between two places where a rim is looked for. */
const RIM_STEP_MM = 1;

/** Halvings of a step in which a rim is found: to a thousandth of a millimetre. */
const HALVINGS = 10;

/** Sections through the stuff of a square-edged gauge, one face to the other. */
const SECTIONS = 4;

/** mm. A hollow shallower than this under the whole gauge is none. */
const LEAST_DEPTH_MM = 0.2;

/**
 * The edge of a gauge across the inside at a place, symmetric; with thickness, the edge that clears the wood all through
 * it: at every x the shallowest place of the inside. Faults: `gauge.inside` (no hollow there), `gauge.thickness` (so thick
 * that the inside has no shape).
 */
export function insideStationEdge(
  arch: PlateArch,
  place: GaugePlace,
  inside: InsideHeight,
  behindMm = 0,
): Checked<InsideEdge> {
  const depthAt = (x: number): number => shallowest(inside, x, place.yMm, behindMm);
  const rim = rimBetween(depthAt, 0, place.edgeHalfWidthMm);
  if (rim === null) return noHollow(arch, `${place.yMm.toFixed(1)} mm above the lower end`);
  const points = profile(depthAt, 0, rim);
  if (!points.every(({ y }) => Number.isFinite(y))) return tooThick(arch);
  const chain = mirroredBoth(asArcs(points));
  return accept({ chain, rims: [-rim, rim], deepestMm: deepest(points) });
}

/** The edge of a gauge along the inside of the centre line. Faults as across. */
export function insideLongEdge(arch: PlateArch, inside: InsideHeight): Checked<InsideEdge> {
  const depthAt = (y: number): number => inside(0, y);
  const { startMm, endMm } = arch.longArch;
  const crest = (startMm + endMm) / 2;
  const lower = rimBetween(depthAt, crest, 0);
  const upper = rimBetween(depthAt, crest, arch.bodyLengthMm);
  if (lower === null || upper === null) return noHollow(arch, 'the centre line');
  const points = profile(depthAt, lower, upper);
  if (!points.every(({ y }) => Number.isFinite(y))) return tooThick(arch);
  // So short that they leave the line by less than arcs would: its steep ends let few arcs pass.
  return accept({ chain: chainThrough(points, false), rims: [lower, upper], deepestMm: deepest(points) });
}

/** mm. Arcs leave the inside by no more than this: a tenth of what a calliper tells of a thickness. */
const ARC_FIT_MM = 0.01;

/** Tangent arcs along a profile that starts level; straight pieces from point to point where its rim lets none pass. */
function asArcs(points: readonly Point<'section'>[]): Chain<'section'> {
  const fitted = fitArcs(points, { toleranceMm: ARC_FIT_MM, startHeadingRad: 0 });
  return fitted.ok ? fitted.value.chain : chainThrough(points, false);
}

/** Places across half a plate where the ride is looked at. */
const RIDE_PLACES = 20;

/** How the stuff of a gauge lies in a hollow, laid to the side on which a square edge would ride less, and how much. */
export function insideStuff(
  place: GaugePlace,
  inside: InsideHeight,
  rimMm: number,
  thicknessMm: number,
): GaugeStuff {
  const [toNeck, toLowerEnd] = [thicknessMm, -thicknessMm].map((behindMm) => {
    let most: GaugeStuff = { behindMm, rideMm: 0, rideAtMm: 0 };
    for (let step = 0; step < RIDE_PLACES; step++) {
      const x = (rimMm * step) / RIDE_PLACES;
      const ride = inside(x, place.yMm) - shallowest(inside, x, place.yMm, behindMm);
      if (ride > most.rideMm) most = { behindMm, rideMm: ride, rideAtMm: x };
    }
    return most;
  }) as [GaugeStuff, GaugeStuff];
  return toNeck.rideMm < toLowerEnd.rideMm ? toNeck : toLowerEnd;
}

function shallowest(inside: InsideHeight, x: number, yMm: number, behindMm: number): number {
  if (behindMm === 0) return inside(x, yMm);
  let least = Number.POSITIVE_INFINITY;
  for (let section = 0; section <= SECTIONS; section++)
    least = Math.min(least, inside(x, yMm + (behindMm * section) / SECTIONS));
  return least;
}

/** On the way inward from an outer place, where the hollow begins; none where there is none before the inner place. */
function rimBetween(depthAt: (at: number) => number, inner: number, outer: number): number | null {
  if (!(depthAt(inner) > LEAST_DEPTH_MM)) return null;
  const steps = Math.ceil(Math.abs(outer - inner) / RIM_STEP_MM);
  for (let step = 1; step <= steps; step++) {
    const at = outer + ((inner - outer) * step) / steps;
    if (!(depthAt(at) > 0)) continue;
    let [low, high] = [at, outer + ((inner - outer) * (step - 1)) / steps];
    for (let halving = 0; halving < HALVINGS; halving++) {
      const middle = (low + high) / 2;
      if (depthAt(middle) > 0) low = middle;
      else high = middle;
    }
    return high;
  }
  return null;
}

function profile(depthAt: (at: number) => number, from: number, to: number): readonly Point<'section'>[] {
  const places = from === 0 ? PLACES : 2 * PLACES;
  const count = Math.max(1, Math.min(places, Math.ceil((to - from) / LEAST_STEP_MM)));
  return Array.from({ length: count + 1 }, (_, index) => {
    const at = from + ((to - from) * index) / count;
    return point<'section'>(at, depthAt(at));
  });
}

function deepest(points: readonly Point<'section'>[]): number {
  return Math.max(...points.map(({ y }) => y));
}

function noHollow(arch: PlateArch, where: string): Checked<never> {
  return refuse({
    code: 'gauge.inside',
    at: '--gauge-at',
    found: `a gauge for the inside of the ${arch.plate} at ${where}`,
    need: 'a place where the plate is hollowed out',
    remedy: 'name a height farther from the blocks',
  });
}

function tooThick(arch: PlateArch): Checked<never> {
  return refuse({
    code: 'gauge.thickness',
    at: arch.plate,
    found: `a ${arch.plate} so thick that its inside has no shape in places`,
    need: 'a thickness less than the outside is rounded',
    remedy: 'make it thinner there',
  });
}
