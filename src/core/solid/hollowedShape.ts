import { accept, type Checked, point, power, refuse, WELD_MM } from '../base/index.ts';
import {
  areaOf,
  boundsOf,
  type Chain,
  distanceToSpans,
  headingOn,
  offsetChain,
  reverseChain,
  type Span,
  segments,
  spansContain,
  spansOf,
  wrapAngle,
} from '../curve/index.ts';
import {
  continuedDepthAt,
  fullDepthAt,
  type HollowPlate,
  isEven,
  plateSlopes,
  thicknessAt,
} from '../instrument/index.ts';
import {
  longArchJoints,
  type SplinePatch,
  type SplineSurface,
  splineSurface,
  splineSurfaceAt,
  upwardNormal,
} from '../surface/index.ts';
import { MEASURED_SHARE } from './archedShape.ts';
import { rampEdgeOff, rampOff, rampPatch } from './rampPatch.ts';

/** The hollow of a plate, bounded by true surfaces: the ramp down from its gluing face, and the floor inside the ramp's foot. */
export interface HollowedShape {
  /** Where the gluing face ends: anticlockwise, without a corner. */
  readonly border: Chain<'body'>;
  /** A ramp over each side of the border, anticlockwise: u from the border (0) to the foot (1), v along the side. */
  readonly ramps: readonly SplinePatch[];
  readonly floor: SplineSurface;
  /** The most by which ramps and floor stand off the inside of the plate, as measured all over them. */
  readonly offMm: number;
}

/** mm that a surface of the inside may stand off the plate's: a tenth of what a calliper tells of a thickness. */
export const INSIDE_MM = 0.01;

/** mm that the edges of a ramp may stand off the faces beside it. */
export const RAMP_EDGE_MM = 0.0005;

/** mm of body length that the lengths below are for. */
const REFERENCE_LENGTH_MM = 355;

/** Shares of the body length between knots of the floor, each tried until one keeps to the tolerance; 2 mm on a violin. */
const FLOOR_SHARES = [2, 1.4, 1].map((stepMm) => stepMm / REFERENCE_LENGTH_MM);

/** What closer knots must leave of a miss for still closer ones to be tried. */
const WORTH_FINER = 0.7;

/** Share of the body length between places at which the floor is measured: no even part of its knots' steps. */
const FLOOR_PROBE_SHARE = 1.13 / REFERENCE_LENGTH_MM;

/**
 * mm that knots along the ramp stand apart on a body so long, so that its foot follows the floor; on larger ones, which bend
 * less, as many times as far as the root of their length.
 */
const ALONG_MM = 0.7;

/**
 * The inside of a plate in true surfaces.
 *
 * Faults: `solid.hollow` (the inside would break through the gluing face, or its ramps run into each other), `solid.inside` (no
 * surfaces keep to {@link INSIDE_MM}).
 */
export function hollowedShape(plate: HollowPlate): Checked<HollowedShape> {
  const border = areaOf(plate.line) < 0 ? reverseChain(plate.line) : plate.line;
  const foot = footOf(plate, border);
  if (!foot) return refuse(hollowFault(plate, 'ramps that run into each other'));
  if (!hasDepth(plate, border, foot))
    return refuse(hollowFault(plate, 'an inside that its gluing face cuts off'));
  const alongMm = ALONG_MM * Math.sqrt(plate.arch.bodyLengthMm / REFERENCE_LENGTH_MM);
  let leastMm = Number.POSITIVE_INFINITY;
  for (const share of FLOOR_SHARES) {
    const stepMm = share * plate.arch.bodyLengthMm;
    const floor = floorOf(plate, foot, stepMm);
    const floorMm = floorOff(plate, foot, floor);
    const isFloorNear = floorMm < MEASURED_SHARE * INSIDE_MM;
    // No ramp comes closer than the floor that it joins.
    const ramps = isFloorNear ? segments(border).map((side) => rampPatch(plate, side, floor, alongMm)) : [];
    const offMm = Math.max(floorMm, ...ramps.map((ramp) => rampOff(plate, ramp)));
    const edgeMm = Math.max(0, ...ramps.map((ramp) => rampEdgeOff(plate, floor, ramp)));
    if (isFloorNear && offMm < MEASURED_SHARE * INSIDE_MM && edgeMm < MEASURED_SHARE * RAMP_EDGE_MM)
      return accept({ border, ramps, floor, offMm });
    const hasHelped = offMm < WORTH_FINER * leastMm;
    leastMm = Math.min(leastMm, Math.max(offMm, edgeMm));
    if (!hasHelped) break;
  }
  if (leastMm === Number.POSITIVE_INFINITY)
    return refuse(hollowFault(plate, 'an outside somewhere rounder than the plate is thick'));
  return refuse({
    code: 'solid.inside',
    at: plate.arch.plate,
    found: `an inside whose smooth surfaces and their edges miss by up to ${leastMm.toFixed(3)} mm`,
    need: `an inside that is met within ${INSIDE_MM} mm, to be written as STEP`,
    remedy: 'use the STL or 3MF of this plate, or thin it more evenly',
  });
}

/** The foot of the ramp, side by side with the border; null where it does not follow that. */
function footOf({ rampMm }: HollowPlate, border: Chain<'body'>): Chain<'body'> | null {
  const sides = segments(border);
  const isSmooth = sides.every((side, at) => {
    const before = sides.at(at - 1) ?? side;
    const turnRad = wrapAngle(headingOn(side, 0) - headingOn(before, 1));
    return Math.abs(turnRad) * rampMm < MEASURED_SHARE * RAMP_EDGE_MM;
  });
  const feet = offsetChain(border, -rampMm, { join: 'round' });
  const [foot] = feet;
  return isSmooth && foot && feet.length === 1 && segments(foot).length === sides.length ? foot : null;
}

/** Whether the inside lies above the gluing face all along its ramp. */
function hasDepth(plate: HollowPlate, border: Chain<'body'>, foot: Chain<'body'>): boolean {
  return [border, foot].every(({ vertices }) =>
    vertices.every(({ x, y }) => fullDepthAt(plate, x, y).zMm > LEAST_DEPTH_MM),
  );
}

/** mm. A hollow less deep than this beside its border is none. */
const LEAST_DEPTH_MM = 0.05;

function hollowFault({ arch }: HollowPlate, found: string) {
  return {
    code: 'solid.hollow',
    at: arch.plate,
    found,
    need: 'a hollow that goes down from its gluing face all round, to be written as STEP',
    remedy: 'use the STL or 3MF of this plate, or make it thinner along its linings',
  };
}

/** mm beyond the border that the floor's surface reaches: the ramps ask it on their way down to the foot. */
const MARGIN_MM = 1;

function floorOf(plate: HollowPlate, foot: Chain<'body'>, stepMm: number): SplineSurface {
  const { min, max } = boundsOf(foot);
  const marginMm = plate.rampMm + MARGIN_MM;
  const [fromY, toY] = [min.y - marginMm, max.y + marginMm];
  const joints = longArchJoints(plate.arch.longArch)
    .map((yMm) => underOutside(plate, yMm))
    .filter((yMm) => yMm > fromY + marginMm && yMm < toY - marginMm);
  const grid = { stopsX: [min.x - marginMm, max.x + marginMm], stopsY: [fromY, ...joints, toY], stepMm };
  const spans = spansOf(foot);
  const depthAt = (x: number, y: number): number => carriedDepth(plate, spans, x, y);
  return splineSurface(grid, isEven(plate.thickness) ? onceForBothHalves(depthAt) : depthAt);
}

/** What is even in x and asked for row by row, asked once for a place and its mirror image. */
function onceForBothHalves(heightAt: (x: number, y: number) => number): (x: number, y: number) => number {
  const known = new Map<number, number>();
  let row = Number.NaN;
  return (x, y) => {
    if (y !== row) known.clear();
    row = y;
    const place = Math.round(Math.abs(x) / WELD_MM);
    const found = known.get(place) ?? heightAt(Math.abs(x), y);
    known.set(place, found);
    return found;
  };
}

/** Shares of the ramp outside its foot to which the inside is the plate's own, and over which it then becomes the carried one. */
const OWN_SHARE = 0.4;
const CHANGE_SHARE = 1.6;

/**
 * The inside at its full depth, carried on smoothly outside the foot of the ramp: near by as the plate has it, farther out as
 * it would be under an arch without an edge.
 */
function carriedDepth(plate: HollowPlate, foot: readonly Span<'body'>[], x: number, y: number): number {
  if (spansContain(foot, point(x, y))) return fullDepthAt(plate, x, y).zMm;
  const [ownMm, changeMm] = [OWN_SHARE * plate.rampMm, CHANGE_SHARE * plate.rampMm];
  const t = (distanceToSpans(foot, x, y, ownMm + changeMm) - ownMm) / changeMm;
  if (t >= 1) return continuedDepthAt(plate, x, y);
  const own = fullDepthAt(plate, x, y).zMm;
  if (t <= 0) return own;
  const beyond = continuedDepthAt(plate, x, y);
  return Number.isNaN(own) ? beyond : own + (beyond - own) * power(t, 3) * (10 - 15 * t + 6 * t ** 2);
}

/** Where on the centre line the inside lies that is measured from a place of the outside there. */
function underOutside({ arch, thickness }: HollowPlate, yMm: number): number {
  const [, normalY] = upwardNormal(plateSlopes(arch, 0, yMm));
  return yMm - thicknessAt(thickness, 0, yMm) * normalY;
}

/** The most by which the floor stands off the inside of the plate, looked for all over it; infinite where that has a gap. */
function floorOff(plate: HollowPlate, foot: Chain<'body'>, floor: SplineSurface): number {
  const stepMm = FLOOR_PROBE_SHARE * plate.arch.bodyLengthMm;
  const { min, max } = boundsOf(foot);
  const spans = spansOf(foot);
  let most = 0;
  const firstX = isEven(plate.thickness) ? 0 : min.x + stepMm / 2;
  for (let y = min.y + stepMm / 2; y < max.y; y += stepMm)
    for (let x = firstX; x < max.x; x += stepMm) {
      if (!spansContain(spans, point(x, y))) continue;
      const offMm = Math.abs(splineSurfaceAt(floor, x, y).zMm - fullDepthAt(plate, x, y).zMm);
      if (Number.isNaN(offMm)) return Number.POSITIVE_INFINITY;
      most = Math.max(most, offMm);
    }
  return most;
}
