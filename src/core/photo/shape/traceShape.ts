import { accept, type Checked, hypot, type Point, refuse } from '../../base/index.ts';
import { paperShares } from '../paper/paperLight.ts';
import { standOut } from '../paper/standOut.ts';
import { thingColour } from '../paper/thingColour.ts';
import { FINE_STEP_MM, measureEdge } from './measureShape.ts';
import { type Look, outermost, type ShapeScene } from './outermost.ts';
import { missesFrom, settleSeat, sizeMisfit } from './rigidPlace.ts';
import { type CoarseSeat, coarseSeat, type ShapeSeat } from './shapeSeat.ts';
import { shapeStations } from './shapeStations.ts';
import {
  hiddenFault,
  mistakenFault,
  nothingFault,
  otherFault,
  paperFault,
  sizeFault,
  unsettledFault,
} from './shapeTrouble.ts';
import type { ExpectedShape, ShapePlace, TracedShape } from './tracedShape.ts';

export interface ShapeOptions {
  /** What the thing may be; the one that covers it best is measured. */
  readonly shapes: readonly ExpectedShape[];
  /** Other things that it might be by mistake: one that covers it plainly better is named in the fault. */
  readonly others?: readonly ExpectedShape[];
  /** Height of the upper edge over the paper; the plane's where left out. */
  readonly upperEdgeMm?: (at: Point<'body'>) => number;
  /** Least width of the upper face at the edge: that of the ribs where a garland stands. */
  readonly rimMm: number;
}

/**
 * A made thing that lies or stands on the sheet, measured along the edge that is expected of it. Its size is never
 * changed to fit: what it is off is part of what is measured.
 *
 * Faults: `shape.paper`, `shape.nothing`, `shape.other`, `shape.mistaken`, `shape.size`, `shape.hidden`, `shape.unsettled`.
 * Method: what stands out from the paper, seated by its moments; its outermost edge looked for along the normals,
 * twice, each time seated anew; there a blurred step is fitted; where the camera looks down on a wall, upper edge and
 * foot are told apart by where each must show.
 */
export function traceShape(scene: ShapeScene, options: ShapeOptions): Checked<TracedShape> {
  const shares = paperShares(scene.rectified, scene.ground.whites);
  if (!shares) return refuse(paperFault());
  const seen = standOut(shares, scene.rectified, scene.ground);
  const colour = seen && thingColour(shares, seen);
  if (!seen || !colour || seen.cells < LEAST_CELLS) return refuse(nothingFault());
  const seatOf = (one: ExpectedShape) => coarseSeat(one.chain, one.mirrored, seen, scene.rectified);
  const { shape, coarse } = bestShape(options.shapes, seatOf);
  const other = options.others?.find((one) => seatOf(one).overlap > coarse.overlap + PLAINLY_BETTER);
  if (other) return refuse(mistakenFault(shape.name, other.name));
  const growth = Math.sqrt(coarse.areaRatio) - 1;
  if (coarse.overlap < LEAST_OVERLAP) return refuse(otherFault(shape.name, coarse.overlap));
  if (Math.abs(growth) > MOST_GROWTH) return refuse(sizeFault(shape.name, growth));
  const look: Look = {
    scene,
    shape,
    shares,
    colour,
    upperEdgeMm: options.upperEdgeMm ?? (() => scene.planeHeightMm),
  };
  const first = seatedAnew(look, coarse.seat, FIRST_REACH_MM);
  const second = first && seatedAnew(look, first, SECOND_REACH_MM);
  if (!second) return refuse(unsettledFault(shape.name));
  return measured(look, second, options.rimMm);
}

/** Cells of a square millimetre: a smaller thing is none of ours. */
const LEAST_CELLS = 3000;
/** Share of the area in common: another shape than the expected one stays below. */
const LEAST_OVERLAP = 0.8;
/** Share of the area by which another shape must cover the thing better to be held for it. */
const PLAINLY_BETTER = 0.03;
/** Share by which a made thing may be too large or small and still be that thing. */
const MOST_GROWTH = 0.1;
const FIRST_REACH_MM = 12;
const SECOND_REACH_MM = 5;
/** Cosine between the normals of one side, and mm along it, by which a place may leave its station. */
const SAME_SIDE = 0.9;
const STRAYED_MM = 2;
/** mm between stations while the seat is looked for, and when it is measured. */
const COARSE_STEP_MM = 1.5;

/** Share of the edge that must be measured. */
const LEAST_SEEN = 0.5;

function bestShape(shapes: readonly ExpectedShape[], seatOf: (shape: ExpectedShape) => CoarseSeat) {
  const seats = shapes.map((shape) => ({ shape, coarse: seatOf(shape) }));
  return seats.reduce((a, b) => (b.coarse.overlap > a.coarse.overlap ? b : a));
}

/** The seat after one look along the normals for the outermost edge. */
function seatedAnew(look: Look, seat: ShapeSeat, reachMm: number): ShapeSeat | null {
  const stations = shapeStations(look.shape.chain, COARSE_STEP_MM).filter(
    ({ fromCornerMm }) => fromCornerMm > COARSE_STEP_MM,
  );
  const places = outermost(look, seat, stations, reachMm).flatMap(({ place }) => (place ? [place] : []));
  return places.length > stations.length * LEAST_SEEN
    ? settleSeat(look.shape.chain, seat, places, 'resized')
    : null;
}

function measured(look: Look, seat: ShapeSeat, rimMm: number): Checked<TracedShape> {
  const { shape } = look;
  const stations = shapeStations(shape.chain, FINE_STEP_MM);
  const edge = measureEdge(look, seat, stations, rimMm);
  const found = edge.flatMap(({ place }) => (place ? [place] : []));
  const away = edge.filter(({ state }) => state !== 'corner').length;
  const seenShare = found.length / Math.max(1, away);
  if (seenShare < LEAST_SEEN) return refuse(hiddenFault(shape.name, seenShare));
  const rigid = settleSeat(shape.chain, seat, found, 'rigid');
  if (!rigid) return refuse(unsettledFault(shape.name));
  const misses = missesFrom(shape.chain, rigid, found);
  let next = 0;
  const places = edge.map((one, i): ShapePlace => {
    const { at, normal } = stations[i];
    if (!one.place) return { expected: at, normal, state: one.state, missMm: 0, sigmaMm: 0 };
    const { expected, missMm, normal: out } = misses[next++];
    // A place that came to lie at another side of a corner tells of neither side.
    const isOwn =
      out.x * normal.x + out.y * normal.y > SAME_SIDE &&
      hypot(expected.x - at.x, expected.y - at.y) < STRAYED_MM + MOST_GROWTH * hypot(at.x, at.y);
    if (!isOwn) return { expected: at, normal, state: 'corner', missMm: 0, sigmaMm: 0 };
    return { expected, normal: out, state: one.state, missMm, sigmaMm: one.sigmaMm };
  });
  return accept({ shape, seat: rigid, places, size: sizeMisfit(misses), seenShare });
}
