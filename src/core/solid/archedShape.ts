import { accept, type Checked, type Point, point, refuse } from '../base/index.ts';
import { boundsOf, type Chain, containsPoint, lengthOf, pointAlong } from '../curve/index.ts';
import { continuedArchHeight, levelLines, type PlateArch, plateHeight } from '../instrument/index.ts';
import {
  cubicKnots,
  longArchJoints,
  type SplineCurve,
  type SplineSurface,
  splineCurve,
  splineCurveAt,
  splineSurface,
  splineSurfaceAt,
} from '../surface/index.ts';
import { crossingsAt } from './rowCrossings.ts';

/**
 * An arched plate, flat below, bounded by true surfaces: upright walls along its outline, the flat edge, and one smooth
 * surface inside the line on which the arch rises out of the edge. Heights above the gluing face; even in x.
 */
export interface ArchedShape {
  readonly outline: Chain<'body'>;
  readonly edgeHeightMm: number;
  readonly arch: SplineSurface;
  /** Where `arch` stands as high as the edge: treble half, end to end from the centre line at the lower end up. */
  readonly crease: readonly SplineCurve<'body'>[];
  /** The most by which the shape stands off the plate, as measured all over it. */
  readonly offMm: number;
}

/** mm that a surface of a solid may stand off the plate's: a tenth of what a mill holds in wood. */
export const SURFACE_MM = 0.005;

/** mm that the edge of a face may stand off the faces that it joins. */
export const FACE_EDGE_MM = 0.0001;

/** Share of a tolerance that the places which are measured keep to, so that those between them keep to the whole. */
export const MEASURED_SHARE = 0.8;

/** Shares of the body length between knots of the arch, each tried until one keeps to the tolerance; 3 mm on a violin. */
export const KNOT_SHARES = [3, 2, 1.4, 1].map((stepMm) => stepMm / 355);

/** What closer knots must leave of a miss for still closer ones to be tried: of a smooth arch they leave a quarter. */
const WORTH_FINER = 0.7;

/** Share of the body length between places at which the shape is measured: several between any two knots. */
export const PROBE_SHARE = 0.77 / 355;

/**
 * The arched state of a plate in true surfaces.
 *
 * Faults: `solid.surface` where no surface keeps to {@link SURFACE_MM}, as when an arch dips below its edge once more;
 * `solid.crease` where there is no line on which it rises out of the edge, as above a channel that is not deepened.
 */
export function archedShape(plate: PlateArch, outline: Chain<'body'>): Checked<ArchedShape> {
  let leastMm = Number.POSITIVE_INFINITY;
  for (const share of KNOT_SHARES) {
    const shape = shapeAt(plate, outline, share * plate.bodyLengthMm);
    if (!shape) break;
    if (shape.offMm < MEASURED_SHARE * SURFACE_MM) return accept(shape);
    const hasHelped = shape.offMm < WORTH_FINER * leastMm;
    leastMm = Math.min(leastMm, shape.offMm);
    if (!hasHelped) break;
  }
  const isCreased = leastMm < Number.POSITIVE_INFINITY;
  return refuse({
    code: isCreased ? 'solid.surface' : 'solid.crease',
    at: plate.plate,
    found: isCreased
      ? `an arch that a smooth surface misses by ${leastMm.toFixed(3)} mm`
      : 'an arch without one clear line on which it rises out of its edge',
    need: `an arch that rises out of its edge once all round and is met within ${SURFACE_MM} mm, to be written as STEP`,
    remedy: isCreased
      ? 'use the STL or 3MF of this plate, or smooth the arch'
      : 'use the STL or 3MF of this plate, or make its channel deeper',
  });
}

function shapeAt(plate: PlateArch, outline: Chain<'body'>, stepMm: number): ArchedShape | null {
  const { startMm, endMm } = plate.longArch;
  const widestMm = plate.channel.line.points.reduce((most, { x }) => Math.max(most, x), 0);
  const arch = splineSurface(
    { stopsX: [-widestMm, widestMm], stopsY: [startMm, ...longArchJoints(plate.longArch), endMm], stepMm },
    (x, y) => continuedArchHeight(plate, x, y),
  );
  const crease = creaseOf(plate, arch);
  if (!crease) return null;
  const shape = { outline, edgeHeightMm: plate.numbers.edgeHeightMm, arch, crease };
  return { ...shape, offMm: mostOff(plate, shape) };
}

/** mm between knots of the crease at first, halved until it keeps to {@link FACE_EDGE_MM}. */
const CREASE_STEPS_MM = [2, 1, 0.5, 0.25];

/** The line where a surface has the height of the edge, found on the surface itself; null where it has none. */
function creaseOf(plate: PlateArch, arch: SplineSurface): ArchedShape['crease'] | null {
  const { edgeHeightMm } = plate.numbers;
  const [near] = levelLines(plate, [edgeHeightMm]);
  if (!near || near.vertices.length < 2) return null;
  const lengthMm = lengthOf(near);
  const onto = (at: Point<'body'>): Point<'body'> => ontoLevel(arch, at, edgeHeightMm);
  const ends = Array.from({ length: CREASE_PIECES + 1 }, (_, piece) => (lengthMm * piece) / CREASE_PIECES);
  const placeAt = (along: number): Point<'body'> => onto(pointAlong(near, along));
  for (const stepMm of CREASE_STEPS_MM) {
    const crease = ends
      .slice(1)
      .map((to, index) => splineCurve(cubicKnots([ends[index] as number, to], stepMm), placeAt));
    const offMm = crease
      .flatMap((curve) => evenlyOn(curve, stepMm / PROBES_A_KNOT))
      .reduce(
        (most, { x, y }) => Math.max(most, Math.abs(splineSurfaceAt(arch, x, y).zMm - edgeHeightMm)),
        0,
      );
    if (offMm < MEASURED_SHARE * FACE_EDGE_MM) return crease;
  }
  return null;
}

/** Places along a curve, its ends among them. */
function evenlyOn({ knots, ...rest }: SplineCurve<'body'>, stepMm: number): readonly Point<'body'>[] {
  const [from, to] = [knots[0] as number, knots.at(-1) as number];
  const count = Math.ceil((to - from) / stepMm);
  return Array.from({ length: count + 1 }, (_, at) =>
    splineCurveAt({ knots, ...rest }, from + ((to - from) * at) / count),
  );
}

/** Curves that the crease of one half is written in: readers that sum along few places of a curve come out closer with more. */
const CREASE_PIECES = 8;

/** Places on which a crease is measured between two of its knots. */
const PROBES_A_KNOT = 3.3;

/** Newton's steps up or down the surface: from a few hundredths of a millimetre off the third is past a double's last digit. */
const NEWTON_STEPS = 5;

/** The place of a surface's level line reached straight up or down its slope; on the centre line along it. */
function ontoLevel(arch: SplineSurface, from: Point<'body'>, levelMm: number): Point<'body'> {
  let { x, y } = from;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const { zMm, slopeX, slopeY } = splineSurfaceAt(arch, x, y);
    const acrossSlope = x === 0 ? 0 : slopeX;
    const move = (levelMm - zMm) / (acrossSlope ** 2 + slopeY ** 2);
    x += move * acrossSlope;
    y += move * slopeY;
  }
  return point(x, y);
}

/** mm between places of the crease that tell what stands inside it. */
const CREASE_PROBE_MM = 0.5;

/** The most by which a shape stands off the plate, looked for on a grid over its treble half. */
function mostOff(plate: PlateArch, shape: Omit<ArchedShape, 'offMm'>): number {
  const stepMm = PROBE_SHARE * plate.bodyLengthMm;
  const { min, max } = boundsOf(shape.outline);
  const crease = shape.crease.flatMap((curve) => evenlyOn(curve, CREASE_PROBE_MM));
  let most = 0;
  for (let y = min.y + stepMm / 2; y < max.y; y += stepMm) {
    const crossings = crossingsAt(crease, y);
    for (let x = 0; x < max.x; x += stepMm) {
      const isArched = crossings.filter((crossing) => crossing > x).length % 2 === 1;
      if (!isArched && !containsPoint(shape.outline, point(x, y))) continue;
      const zMm = isArched ? splineSurfaceAt(shape.arch, x, y).zMm : shape.edgeHeightMm;
      most = Math.max(most, Math.abs(zMm - plateHeight(plate, x, y, 'arched')));
    }
  }
  return most;
}
