import { hypot, type Point, point } from '../../base/index.ts';
import { containsPoint } from '../../curve/index.ts';
import { isCovered, OUTSIDE_MM, squareMask } from './coveredEdge.ts';
import { type LinesAcross, linesAcross } from './linesAcross.ts';
import { asSeenAt, placeAtHeight } from './lookedOver.ts';
import { type Look, type Outermost, outermost } from './outermost.ts';
import { type ShapeSeat, sceneToBody } from './shapeSeat.ts';
import type { ShapeStation } from './shapeStations.ts';
import type { PlaceState } from './tracedShape.ts';
import { AVERAGED_MM, type FineEdge, fineEdge } from './upperEdge.ts';

/** One station measured: the place over the paper of its upper edge, or why there is none. */
export interface MeasuredStation {
  readonly state: PlaceState;
  readonly place: Point<'scene'> | null;
  readonly sigmaMm: number;
}

/** mm between stations. */
export const FINE_STEP_MM = 0.5;
/** mm looked at inside the edge when it is fitted. */
const INSIDE_MM = 2.2;
/** mm of wall from which its upper edge and its foot are told apart. */
const TOLD_MM = 0.8;
/** mm. Nearer to a corner than this a normal meets the other side too. */
const CORNER_MM = 1.5;
/** Times what is looked over: how far along the edge the other wall of a corner is in the way. */
const OTHER_WALL = 1.3;
/** mm beyond an edge at which nothing of the thing may show, and shares of its height that are looked at. */
const BEYOND_MM = [0.6, 1.5];
const LEVELS = [0, 1 / 4, 1 / 2, 3 / 4, 1];
/** mm. A fitted edge farther than this from where it must be is another one. */
const ASTRAY_MM = 0.7;
/** mm, one standard deviation: an edge that is told no better tells nothing. */
const UNSURE_MM = 0.12;
const REACH_MM = 4;
/**
 * Share of a narrow wall: where it blurs with the upper face, a wall in its own shade draws the fitted edge outwards by
 * about so much, and leaves as much open. Seen on rendered pictures.
 */
const BLENDED = 0.25;

/** The edge at every station, to a fraction of a pixel, carried down or up to the height of the upper edge. */
export function measureEdge(
  look: Look,
  seat: ShapeSeat,
  stations: readonly ShapeStation[],
  rimMm: number,
): readonly MeasuredStation[] {
  const rough = outermost(look, seat, stations, REACH_MM);
  const silhouettes = linesAt(look, seat, stations, (i) => rough[i].offsetMm, {
    insideMm: Math.min(INSIDE_MM, rimMm),
    outsideMm: OUTSIDE_MM,
  });
  const uppers = linesAt(look, seat, stations, (i) => upperMm(rough[i]), {
    insideMm: Math.min(INSIDE_MM, rimMm),
    outsideMm: TOLD_MM,
  });
  const covered = squareMask(look);
  const overlooked = widened(
    rough.map((one) => isOverlooked(look, seat, one)),
    Math.ceil(AVERAGED_MM / FINE_STEP_MM),
  );
  return stations.map((station, i) => {
    if (station.fromCornerMm < CORNER_MM + lookedOverMm(look, rough[i]) || overlooked[i])
      return nothing('corner');
    if (!rough[i].place || isCovered(look, rough[i], silhouettes, i, covered)) return nothing('hidden');
    const fit = (lines: LinesAcross) =>
      fineEdge(lines, stations, i, FINE_STEP_MM, look.scene.rectified.mmPerPixel);
    const { wallMm } = rough[i].expected;
    const foot = near(fit(silhouettes));
    const upper = wallMm > TOLD_MM ? near(fit(uppers)) : wallMm > 0 ? null : foot;
    if (upper) {
      const centre = wallMm > 0 ? upperMm(rough[i]) : rough[i].offsetMm;
      return placed(look, rough[i], 'seen', centre + upper.offsetMm, upper.sigmaMm);
    }
    if (!foot) return nothing('hidden');
    const blur = wallMm < TOLD_MM ? BLENDED * wallMm : 0;
    return placed(
      look,
      rough[i],
      'by-foot',
      rough[i].offsetMm + foot.offsetMm - blur,
      hypot(foot.sigmaMm, blur),
    );
  });
}

/** mm along the normal to where the upper edge shows over the foot that was found. */
function upperMm({ offsetMm, expected }: Outermost): number {
  return offsetMm - Math.max(0, expected.wallMm);
}

/**
 * Whether another part of the thing shows just beyond a station's own edge or foot: the wall of a corner near by, seen
 * from above. Looked for on the expected shape, at several heights.
 */
function isOverlooked({ scene, shape }: Look, seat: ShapeSeat, { expected }: Outermost): boolean {
  const { at, normal, shownMm, wallMm, heightMm } = expected;
  return BEYOND_MM.some((beyondMm) => {
    const out = shownMm + Math.max(0, wallMm) + beyondMm;
    const shown = point<'scene'>(at.x + out * normal.x, at.y + out * normal.y);
    return LEVELS.some((share) => {
      const place = placeAtHeight(scene.stand, scene.planeHeightMm, shown, share * heightMm);
      return containsPoint(shape.chain, sceneToBody(seat, place));
    });
  });
}

/** mm by which the foot of the thing shows beside its upper edge: about so far the other wall of a corner can reach. */
function lookedOverMm({ scene }: Look, { expected: { at, heightMm } }: Outermost): number {
  const foot = asSeenAt(scene.stand, scene.planeHeightMm, at, 0);
  const edge = asSeenAt(scene.stand, scene.planeHeightMm, at, heightMm);
  const overMm = hypot(foot.x - edge.x, foot.y - edge.y);
  return overMm < TOLD_MM ? 0 : OTHER_WALL * overMm;
}

/** True also for the neighbours of what is true, so far to either side. */
function widened(flags: readonly boolean[], by: number): readonly boolean[] {
  return flags.map((_, i) => {
    for (let k = i - by; k <= i + by; k++) if (flags[(k + flags.length) % flags.length]) return true;
    return false;
  });
}

function near(edge: FineEdge | null): FineEdge | null {
  return edge && Math.abs(edge.offsetMm) < ASTRAY_MM && edge.sigmaMm < UNSURE_MM ? edge : null;
}

function nothing(state: 'hidden' | 'corner'): MeasuredStation {
  return { state, place: null, sigmaMm: 0 };
}

function placed(
  { scene }: Look,
  { expected: { at, normal, heightMm } }: Outermost,
  state: 'seen' | 'by-foot',
  offsetMm: number,
  sigmaMm: number,
): MeasuredStation {
  const shown = { x: at.x + offsetMm * normal.x, y: at.y + offsetMm * normal.y };
  const place = placeAtHeight(scene.stand, scene.planeHeightMm, shown, state === 'seen' ? heightMm : 0);
  return { state, place, sigmaMm };
}

function linesAt(
  { scene, shares }: Look,
  seat: ShapeSeat,
  stations: readonly ShapeStation[],
  centreMm: (i: number) => number,
  reach: { readonly insideMm: number; readonly outsideMm: number },
): LinesAcross {
  const stepMm = scene.rectified.mmPerPixel / 2;
  const centre = (i: number) => (Number.isNaN(centreMm(i)) ? 0 : centreMm(i));
  return linesAcross(shares, scene.rectified, seat, stations, { ...reach, stepMm }, centre);
}
