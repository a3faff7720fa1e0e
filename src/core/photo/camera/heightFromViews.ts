import { accept, type Checked, cos, type Fault, hypot, type Point, refuse, sin } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import { type Slopes, slopesOnPlane } from './planeSlopes.ts';
import type { ScenePlane } from './scenePlane.ts';
import { cameraSlots } from './sceneUnknowns.ts';
import { CAMERA_UNKNOWNS } from './sight.ts';
import type { SolvedScene } from './solvedScene.ts';

/** One place of an edge seen in two photographs. */
export interface PlaceInTwoViews {
  readonly first: Point<'photo'>;
  readonly second: Point<'photo'>;
  /** Spread of one coordinate of either photo point. */
  readonly sigmaPx: number;
  /**
   * Across the edge, in the scene. With it only how far the rays pass each other across the edge counts, so that the
   * two points need not be the same place along it; without it they must be.
   */
  readonly acrossRad?: number;
}

export interface HeightFromViews {
  /** The plane in which the places lie, tied to the first shot's camera. */
  readonly plane: ScenePlane;
  /** The same plane, tied to the second shot's camera. */
  readonly planeInSecond: ScenePlane;
  /** Root mean square of how far the rays pass each other at that height. */
  readonly apartMm: number;
}

/**
 * The height over the paper at which an edge seen in two shots of a solved scene is one edge, with ± (k = 2) from its
 * points, from how they scatter, and from both cameras together. Fault `height.views` where the two photographs were
 * taken from places too near each other to tell (± beyond 5 mm).
 * Method: rays move apart linearly with height; least squares of the gaps between them, Huber weights.
 */
export function heightFromViews(
  scene: SolvedScene,
  shots: readonly [number, number],
  places: readonly PlaceInTwoViews[],
): Checked<HeightFromViews> {
  const low = gapsOf(scene, shots, places, 0);
  const high = gapsOf(scene, shots, places, PROBE_MM);
  const gaps = low.map(({ mm, sigmaMm }, place) => ({
    mm,
    sigmaMm,
    growth: (high[place].mm - mm) / PROBE_MM,
  }));
  const found = leastGaps(gaps);
  if (found === null) return refuse(viewsFault());
  const { heightMm, weights, noiseMm, apartMm } = found;
  const at = gapsOf(scene, shots, places, heightMm);
  const strength = weights.reduce((sum, weight, place) => sum + weight * gaps[place].growth ** 2, 0);
  const slopes = new Float64Array(scene.unknowns.size);
  const slots = shots.map((shot) => cameraSlots(scene.unknowns, shot));
  at.forEach(({ byFirst, bySecond }, place) => {
    const share = (-weights[place] * gaps[place].growth) / strength;
    for (let one = 0; one < CAMERA_UNKNOWNS; one++) {
      slopes[slots[0][one]] += share * byFirst[one];
      slopes[slots[1][one]] += share * bySecond[one];
    }
  });
  const together = scene.covariance.map((row) => row.reduce((sum, one, slot) => sum + one * slopes[slot], 0));
  const variance = together.reduce((sum, one, slot) => sum + one * slopes[slot], 0);
  const plusMinusMm = 2 * hypot(noiseMm, Math.sqrt(Math.max(0, variance)));
  if (!(plusMinusMm < WIDEST_MM)) return refuse(viewsFault());
  const planeIn = (shot: 0 | 1): ScenePlane => ({
    heightMm,
    plusMinusMm,
    withCamera: slots[shot].map((slot) => together[slot]),
  });
  return accept({ plane: planeIn(0), planeInSecond: planeIn(1), apartMm });
}

/** mm. Any second height does: gaps grow in a straight line with it. */
const PROBE_MM = 10;
/** mm. A height less sure than this tells nothing that a ruler would not tell better. */
const WIDEST_MM = 5;

interface Gap {
  readonly mm: number;
  readonly sigmaMm: number;
  readonly byFirst: Float64Array;
  readonly bySecond: Float64Array;
}

/** How far the two rays of each place pass each other at a height: across the edge, or along x and along y. */
function gapsOf(
  { shots: solved }: SolvedScene,
  shots: readonly [number, number],
  places: readonly PlaceInTwoViews[],
  heightMm: number,
): readonly Gap[] {
  const [first, second] = shots.map((shot) => solved[shot].camera);
  return places.flatMap(({ first: photo, second: otherPhoto, sigmaPx, acrossRad }) => {
    const a = slopesOnPlane(first, photo, heightMm);
    const b = slopesOnPlane(second, otherPhoto, heightMm);
    const along = acrossRad === undefined ? [0, Math.PI / 2] : [acrossRad];
    return along.map((angle): Gap => {
      const [c, s] = [cos(angle), sin(angle)];
      const slopesOf = ({ xBy, yBy }: Slopes, sign: 1 | -1) =>
        xBy.map((one, place) => sign * (c * one + s * yBy[place]));
      const noise = ({ byPhoto: [xx, xy, yx, yy] }: Slopes) => hypot(c * xx + s * yx, c * xy + s * yy);
      return {
        mm: c * (a.at.x - b.at.x) + s * (a.at.y - b.at.y),
        sigmaMm: sigmaPx * hypot(noise(a), noise(b)),
        byFirst: slopesOf(a, 1),
        bySecond: slopesOf(b, -1),
      };
    });
  });
}

const ROUNDS = 8;
const HUBER = 2.5;
const MEDIAN_TO_SPREAD = 1.4826;

/** The height that makes gaps least, with the weights that told it and the spread that the points leave. */
function leastGaps(
  gaps: readonly { readonly mm: number; readonly sigmaMm: number; readonly growth: number }[],
) {
  let weights = gaps.map(({ sigmaMm }) => 1 / sigmaMm ** 2);
  let heightMm = 0;
  let scale = 1;
  for (let round = 0; round < ROUNDS; round++) {
    const strength = gaps.reduce((sum, { growth }, place) => sum + weights[place] * growth ** 2, 0);
    const pull = gaps.reduce((sum, { mm, growth }, place) => sum - weights[place] * growth * mm, 0);
    if (!(strength > 0)) return null;
    heightMm = pull / strength;
    const misses = gaps.map(({ mm, growth, sigmaMm }) => (mm + heightMm * growth) / sigmaMm);
    scale = Math.max(1, MEDIAN_TO_SPREAD * medianOf(misses.map(Math.abs)));
    weights = gaps.map(({ sigmaMm }, place) => {
      const size = Math.abs(misses[place]) / scale;
      return (size <= HUBER ? 1 : HUBER / size) / (sigmaMm * scale) ** 2;
    });
  }
  const strength = gaps.reduce((sum, { growth }, place) => sum + weights[place] * growth ** 2, 0);
  const squares = gaps.reduce((sum, { mm, growth }) => sum + (mm + heightMm * growth) ** 2, 0);
  return { heightMm, weights, noiseMm: 1 / Math.sqrt(strength), apartMm: Math.sqrt(squares / gaps.length) };
}

function viewsFault(): Fault {
  return {
    code: 'height.views',
    at: 'photographs',
    found: 'both were taken from nearly one place, so they do not tell how high the edge stands',
    need: 'a second photograph tilted by 10° to 20°, the first one nearly square on',
    remedy: 'step aside, photograph once more without moving sheet or instrument, or measure the height',
  };
}
