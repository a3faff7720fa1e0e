import { cbrt, letGo, norm, power } from '../../base/index.ts';
import { fitEdgeProfile, type ProfileEdge } from './edgeProfileFit.ts';
import { linearLightTable } from './linearPicture.ts';
import type { Picture } from './picture.ts';

/** Places along a curve in a picture near which an edge runs, px. */
export interface CurvePlaces {
  /** x, y and unit normal x, y of every place, outwards. */
  readonly places: Float64Array;
  /** Signed curvature, 1/px: positive where the outside is the hollow side's other, as on a disc. */
  readonly bend: Float64Array;
  /** px along the curve; grows with the index within a stretch. */
  readonly along: Float64Array;
  /** Which smooth stretch a place belongs to: profiles are averaged within one only. */
  readonly stretch: Int32Array;
}

/** What the picture shows across the curve at one place. */
export interface CurveEdge {
  /** Where the edge lies, px outwards from the place; null where no profile could be fitted. */
  readonly edge: ProfileEdge | null;
  /** Colour just inside the edge, cube root of linear light, for telling what lies there. */
  readonly inside: readonly [number, number, number];
}

/** How far the profiles reach from the curve, px, and how many are laid side by side at one place. */
export interface ProfileReach {
  readonly insidePx: number;
  readonly outsidePx: number;
  /** The curve misses the edge by no more than this, or two and a half pixels: a farther one is another's. */
  readonly nearPx: number;
  readonly lines: number;
  /** px to either side along the curve over which profiles are averaged, weighted to a triangle. */
  readonly averagedPx: number;
}

const STEP_PX = 0.5;
/** Most neighbours to either side that an average takes in. */
const MOST_NEIGHBOURS = 40;

/**
 * The edge across every place of a curve, on the picture's own pixels. Method: profiles along the normals, in linear
 * light, averaged along the curve, brought to one channel along the colour step, and fitted as a blurred step with
 * ramps, in a window about the edge that its blur needs; a curved edge's blur bias σ²κ/2 is taken off.
 */
export function edgesAcrossCurve(
  picture: Picture,
  curve: CurvePlaces,
  reach: ProfileReach,
): readonly CurveEdge[] {
  const profiles = sampleProfiles(picture, curve, reach);
  const mean = new Float64Array(3 * profiles.samples);
  const edges = Array.from(curve.bend, (bend, i): CurveEdge => {
    averageProfile(profiles, curve, i, reach.averagedPx, mean);
    return { edge: edgeIn(mean, profiles, reach.nearPx, bend), inside: colourInside(mean, profiles) };
  });
  letGo(profiles.values);
  return edges;
}

/** Profiles of all places in linear light: place by place, red, green and blue one after the other, `samples` each from `fromPx` outwards. */
interface Profiles {
  readonly samples: number;
  readonly fromPx: number;
  readonly values: Float64Array;
}

function sampleProfiles(picture: Picture, curve: CurvePlaces, reach: ProfileReach): Profiles {
  const before = Math.ceil(reach.insidePx / STEP_PX);
  const samples = before + Math.ceil(reach.outsidePx / STEP_PX) + 1;
  const { places, bend } = curve;
  const values = new Float64Array(bend.length * 3 * samples);
  const table = linearLightTable();
  const { lines } = reach;
  for (let i = 0; i < bend.length; i++) {
    const [x, y, nx, ny] = places.subarray(4 * i, 4 * i + 4);
    for (let line = 0; line < lines; line++) {
      const aside = line - (lines - 1) / 2;
      const shift = -0.5 * bend[i] * aside * aside;
      const x0 = x + shift * nx - aside * ny;
      const y0 = y + shift * ny + aside * nx;
      for (let j = 0; j < samples; j++) {
        const t = (j - before) * STEP_PX;
        addPixel(picture, table, x0 + t * nx, y0 + t * ny, values, i * 3 * samples + j, samples, 1 / lines);
      }
    }
  }
  return { samples, fromPx: -before * STEP_PX, values };
}

/** Adds a share of the light at a place between pixels to one sample of a profile: red, green and blue, `stride` apart in `into`. */
function addPixel(
  { widthPx, heightPx, rgb }: Picture,
  table: Float32Array,
  x: number,
  y: number,
  into: Float64Array,
  to: number,
  stride: number,
  weight: number,
): void {
  const cx = Math.min(widthPx - 1.001, Math.max(0, x));
  const cy = Math.min(heightPx - 1.001, Math.max(0, y));
  const x0 = Math.floor(cx);
  const y0 = Math.floor(cy);
  const fx = cx - x0;
  const fy = cy - y0;
  const row = 3 * widthPx;
  const at = y0 * row + 3 * x0;
  for (let c = 0; c < 3; c++) {
    const a = at + c;
    const top = table[rgb[a]] * (1 - fx) + table[rgb[a + 3]] * fx;
    const low = table[rgb[a + row]] * (1 - fx) + table[rgb[a + row + 3]] * fx;
    into[to + c * stride] += weight * (top * (1 - fy) + low * fy);
  }
}

/** Writes into `into` the mean of the profiles near place `i` along the same stretch, as far to one side as to the other. */
function averageProfile(
  { values }: Profiles,
  { along, stretch }: CurvePlaces,
  i: number,
  reachPx: number,
  into: Float64Array,
): void {
  const size = into.length;
  const isOwn = (k: number): boolean => k >= 0 && k < along.length && stretch[k] === stretch[i];
  into.fill(0);
  let total = 0;
  const add = (k: number): boolean => {
    const share = 1 - Math.abs(along[k] - along[i]) / reachPx;
    if (share <= 0) return false;
    total += share;
    for (let j = 0, from = k * size; j < size; j++, from++) into[j] += share * values[from];
    return true;
  };
  add(i);
  for (let step = 1; step <= MOST_NEIGHBOURS; step++) {
    if (!isOwn(i - step) || !isOwn(i + step)) break;
    const before = add(i - step);
    if (!add(i + step) && !before) break;
  }
  for (let j = 0; j < size; j++) into[j] /= total;
}

function colourInside(mean: Float64Array, { samples, fromPx }: Profiles): [number, number, number] {
  const deep = Math.max(2, Math.round(-fromPx / STEP_PX) >> 1);
  const of = (c: number) => cbrt(Math.max(0, meanOf(mean, c * samples, c * samples + deep)));
  return [of(0), of(1), of(2)];
}

/** px. Windows to either side of an edge: usual at least, narrow where another edge stands beside it. */
const USUAL_WINDOW_PX = 6;
const NARROW_WINDOW_PX = 3;
/** Blurs that a window shows to either side: enough to see both levels, no more shadow than needed. */
const WINDOW_BLURS = 4;
const LOOKS = 2;
/** px. What the curve may miss the edge by in any case. */
const LEAST_MISS_PX = 2.5;

/**
 * Which channel of a profile is looked at. Along the whole step of colour an edge stands out most. Free of shade, along
 * what of the step lies square to the colour inside, light and shade on the wood leave no mark: only what is not wood does.
 */
type Channel = 'wholeStep' | 'freeOfShade';

/** Power of the spread against which an edge counts: more than of pure scatter (2), since a profile that is ill told is also told aside. */
const ILL_TOLD = 4;

/**
 * The edge at a place. A rim that is rounded into the shade darkens before it ends, and may end on ground as dark as
 * itself: the whole step then lies where the shade begins, and is a poor one. So it is looked for in both channels, and
 * each counts by how well a single step tells its profile.
 */
function edgeIn(mean: Float64Array, profiles: Profiles, nearPx: number, bend: number): ProfileEdge | null {
  const whole = edgeInChannel(mean, profiles, nearPx, bend, 'wholeStep');
  const free = edgeInChannel(mean, profiles, nearPx, bend, 'freeOfShade');
  if (whole === null || free === null) return whole ?? free;
  const [ill, well] = [power(whole.sigmaPx, ILL_TOLD), power(free.sigmaPx, ILL_TOLD)];
  const share = ill / (ill + well);
  const mix = (of: (edge: ProfileEdge) => number) => of(whole) + share * (of(free) - of(whole));
  return {
    atPx: mix(({ atPx }) => atPx),
    sigmaPx: mix(({ sigmaPx }) => sigmaPx),
    blurPx: mix(({ blurPx }) => blurPx),
    roughness: mix(({ roughness }) => roughness),
  };
}

/** The edge that belongs to the curve: another one, however strong, lies farther off than the curve can miss its own. */
function edgeInChannel(
  mean: Float64Array,
  profiles: Profiles,
  nearPx: number,
  bend: number,
  channel: Channel,
): ProfileEdge | null {
  const miss = Math.max(nearPx, LEAST_MISS_PX);
  const inWindow = (fromPx: number, toPx: number): ProfileEdge | null => {
    const found = edgeInWindow(mean, profiles, fromPx, toPx, channel);
    return found !== null && Math.abs(found.atPx) <= miss ? found : null;
  };
  const near = Math.max(USUAL_WINDOW_PX, nearPx);
  let found =
    inWindow(-near, near) ?? inWindow(-NARROW_WINDOW_PX, NARROW_WINDOW_PX) ?? inWindow(-Infinity, Infinity);
  for (let look = 0; look < LOOKS && found !== null; look++) {
    const half = Math.max(USUAL_WINDOW_PX, WINDOW_BLURS * found.blurPx);
    found = inWindow(found.atPx - half, found.atPx + half) ?? found;
  }
  return found && { ...found, atPx: found.atPx + 0.5 * bend * found.blurPx ** 2 };
}

function edgeInWindow(
  mean: Float64Array,
  { samples, fromPx }: Profiles,
  leastPx: number,
  mostPx: number,
  channel: Channel,
): ProfileEdge | null {
  const from = Math.max(0, Math.ceil((leastPx - fromPx) / STEP_PX));
  const to = Math.min(samples, Math.floor((mostPx - fromPx) / STEP_PX) + 1);
  const count = to - from;
  if (count < FEWEST_SAMPLES) return null;
  const quarter = Math.max(2, count >> 2);
  const inside = [0, 1, 2].map((c) => meanOf(mean, c * samples + from, c * samples + from + quarter));
  const step = inside.map((level, c) => meanOf(mean, c * samples + to - quarter, c * samples + to) - level);
  const along = channel === 'wholeStep' ? step : squareTo(inside, step);
  const size = norm(along) || 1;
  const line = new Float64Array(count);
  for (let c = 0; c < 3; c++) {
    const share = along[c] / size;
    for (let j = 0; j < count; j++) line[j] += share * mean[c * samples + from + j];
  }
  const middle = Math.max(0, Math.min(count - 1, Math.round((count - 1) / 2)));
  const zeroPx = leastPx === -Infinity ? 0 : fromPx + (from + middle) * STEP_PX;
  const found = fitEdgeProfile(line, fromPx + from * STEP_PX - zeroPx, STEP_PX);
  return found && { ...found, atPx: found.atPx + zeroPx };
}

/** What of a step of colour lies square to a colour. */
function squareTo(colour: readonly number[], step: readonly number[]): readonly number[] {
  const square = colour.reduce((sum, level) => sum + level * level, 0);
  const share = square === 0 ? 0 : colour.reduce((sum, level, c) => sum + level * step[c], 0) / square;
  return step.map((level, c) => level - share * colour[c]);
}

const FEWEST_SAMPLES = 12;

function meanOf(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  return sum / (to - from);
}
