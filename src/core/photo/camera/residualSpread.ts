import { hypot } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import { missesOf, type Sighting } from './adjustment.ts';
import type { SceneState, SceneUnknowns } from './sceneUnknowns.ts';

/** From the median size of normal residuals to their spread; a few strays do not move it. */
const MEDIAN_TO_SPREAD = 1.4826;
/** No spread is a smaller share than this of the one that a point came with. */
const LEAST_SCALE = 0.02;
/** How far, in spreads, a point may lie before it is taken for something that covers the sheet. */
const STRAY = 5;

/** Per shot, the spread of its residuals over those that its points came with. */
export function robustScales(
  unknowns: SceneUnknowns,
  state: SceneState,
  sightings: readonly Sighting[],
): readonly number[] {
  return unknowns.lensOfShot.map((_, shot) => {
    const sizes = normalisedMisses(unknowns, state, sightings, shot).map(Math.abs);
    return sizes.length === 0 ? 1 : Math.max(LEAST_SCALE, MEDIAN_TO_SPREAD * medianOf(sizes));
  });
}

/** The sightings without the points that lie off by more than five spreads. */
export function withoutStrays(
  unknowns: SceneUnknowns,
  state: SceneState,
  sightings: readonly Sighting[],
  scales: readonly number[],
): readonly Sighting[] {
  return sightings.map((sighting) => {
    const misses = missesOf(unknowns, state, sighting);
    const most = STRAY * scales[sighting.shot];
    const pairs = sighting.pairs.filter(
      ({ sigmaPx }, place) => hypot(misses[2 * place], misses[2 * place + 1]) < most * sigmaPx,
    );
    return { ...sighting, pairs };
  });
}

/** How the points of a shot miss in the end. */
export interface Spread {
  /**
   * What the spreads that points came with are to be multiplied by before a covariance is taken: their root mean square
   * with the unknowns allowed for, widened where neighbouring points miss alike. A sheet that bows moves whole stretches
   * together, and many points of a stretch then tell no more than one.
   */
  readonly scale: number;
  /** px. The part of the misses of one coordinate that neighbours share. */
  readonly togetherPx: number;
}

/** How the points of each shot miss: `kept` without strays, `all` with them, since a bow makes strays of its ends. */
export function finalSpreads(
  unknowns: SceneUnknowns,
  state: SceneState,
  kept: readonly Sighting[],
  all: readonly Sighting[],
): readonly Spread[] {
  const shared = unknowns.size / unknowns.lensOfShot.length;
  return unknowns.lensOfShot.map((_, shot) => {
    const misses = normalisedMisses(unknowns, state, kept, shot);
    if (misses.length === 0) return { scale: 1, togetherPx: 0 };
    const square = misses.reduce((sum, one) => sum + one * one, 0);
    const freedom = Math.max(misses.length - shared, misses.length / 2);
    const scale = Math.max(LEAST_SCALE, Math.sqrt(square / freedom));
    const parts = all
      .filter((one) => one.shot === shot)
      .map((one) => {
        const most = BOW_CLIP * scale;
        const clipped = normalised(unknowns, state, one).map((miss) => Math.min(most, Math.max(-most, miss)));
        const { share, squareOfOne } = sharedPart(one, clipped);
        const sigmaPx = medianOf(one.pairs.map((pair) => pair.sigmaPx));
        const wider = 1 + share * Math.max(0, one.pairs.length / STRETCHES - 1);
        return { wider, togetherPx: sigmaPx * Math.sqrt(share * squareOfOne) };
      });
    return {
      scale: scale * Math.sqrt(Math.max(...parts.map(({ wider }) => wider))),
      togetherPx: Math.max(...parts.map(({ togetherPx }) => togetherPx)),
    };
  });
}

/** Spreads beyond which a miss counts no more towards a bow: glare and fingers are no bow. */
const BOW_CLIP = 12;

/** Root mean square of one coordinate's misses in a shot, px. */
export function rmsPxOf(
  unknowns: SceneUnknowns,
  state: SceneState,
  sightings: readonly Sighting[],
  shot: number,
): number {
  const own = sightings.filter((one) => one.shot === shot);
  const misses = own.flatMap((one) => [...missesOf(unknowns, state, one)]);
  return Math.sqrt(misses.reduce((sum, one) => sum + one * one, 0) / misses.length);
}

/** Stretches of a sheet that bow each on their own: about three along each side. */
const STRETCHES = 12;
/** Spacings within which points are neighbours: next ones and those across a square. */
const NEIGHBOUR = 1.5;

/**
 * The share of the misses' variance that neighbours have in common, from 0 to 1, what chance alone gives not counted; and
 * that variance, of one coordinate.
 */
function sharedPart({ pairs }: Sighting, misses: Float64Array) {
  const spacing = spacingOf(pairs.map(({ sheet }) => sheet));
  let [alike, count, square] = [0, 0, 0];
  pairs.forEach(({ sheet: a }, i) => {
    square += misses[2 * i] ** 2 + misses[2 * i + 1] ** 2;
    for (let j = i + 1; j < pairs.length; j++) {
      const { sheet: b } = pairs[j];
      if (Math.abs(a.x - b.x) > NEIGHBOUR * spacing || Math.abs(a.y - b.y) > NEIGHBOUR * spacing) continue;
      alike += misses[2 * i] * misses[2 * j] + misses[2 * i + 1] * misses[2 * j + 1];
      count += 2;
    }
  });
  const squareOfOne = square / Math.max(1, 2 * pairs.length);
  if (count === 0 || square === 0) return { share: 0, squareOfOne };
  const byChance = 2 / Math.sqrt(count);
  const share = alike / count / squareOfOne - byChance;
  return { share: Math.min(1, Math.max(0, share)), squareOfOne };
}

/** The usual distance from a point to the nearest other. */
function spacingOf(points: readonly { readonly x: number; readonly y: number }[]): number {
  if (points.length < 2) return 0;
  return medianOf(
    points.map((a) =>
      points.reduce(
        (least, b) => (a === b ? least : Math.min(least, hypot(a.x - b.x, a.y - b.y))),
        Number.POSITIVE_INFINITY,
      ),
    ),
  );
}

function normalisedMisses(
  unknowns: SceneUnknowns,
  state: SceneState,
  sightings: readonly Sighting[],
  shot: number,
): readonly number[] {
  const own = sightings.filter((one) => one.shot === shot);
  return own.flatMap((one) => [...normalised(unknowns, state, one)]);
}

function normalised(unknowns: SceneUnknowns, state: SceneState, sighting: Sighting): Float64Array {
  return missesOf(unknowns, state, sighting).map((one, place) => one / sighting.pairs[place >> 1].sigmaPx);
}
