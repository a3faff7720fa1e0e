import { cos, point, sin } from '../../base/index.ts';
import { loftAt, loftHeight, loftRow, netAt, type SurfacePoint } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { missInside } from './channelMiss.ts';
import {
  type EdgeState,
  edgeAway,
  finishedEdgeHeight,
  finishedEdgeHeightAt,
  finishedEdgeSlopes,
} from './edgeShape.ts';
import { type Foot, footOn, footPlace, isLeft, isSurelyLeft, leftOfPlace } from './smoothLine.ts';

/** Share of the body length, 5 mm on a violin, over which what the correction misses at the channel is faded out. */
const FADE_SHARE = 5 / 355;

/**
 * Height of the plate's outside above its gluing face at a point on the plate (either side; x is taken as |x|), mm.
 *
 * Continuous everywhere; the slope is continuous but for the ridge of the finished edge, and for the line where an arch
 * rises out of the flat edge.
 */
export function plateHeight(arch: PlateArch, xMm: number, yMm: number, state: EdgeState): number {
  const x = Math.abs(xMm);
  if (!isSurelyLeft(arch.channel.line, x, yMm, fadeReach(arch)))
    return heightAtFoot(arch, x, yMm, footBeside(arch, x, yMm), state);
  const bodyMm = loftHeight(loftRow(arch.loft, yMm), x) + netAt(arch.correction, x, yMm).zMm;
  return Math.max(
    state === 'arched' ? arch.numbers.edgeHeightMm : Number.NEGATIVE_INFINITY,
    arch.channelZMm + bodyMm,
  );
}

/** The foot on the channel without its place. */
function footBeside({ channel }: PlateArch, x: number, yMm: number): Pick<Foot, 'at' | 'distanceMm'> {
  const at = footPlace(channel.line, x, yMm);
  return { at, distanceMm: leftOfPlace(channel.line, at, x, yMm) };
}

/** {@link plateHeight} where the nearest place of the channel is known already; x not below 0. */
function heightAtFoot(
  arch: PlateArch,
  x: number,
  yMm: number,
  foot: Pick<Foot, 'at' | 'distanceMm'>,
  state: EdgeState,
): number {
  const { edgeHeightMm } = arch.numbers;
  if (foot.distanceMm >= 0) {
    const finished = arch.channelZMm + insideHeight(arch, x, yMm, foot);
    return state === 'finished' ? finished : Math.max(edgeHeightMm, finished);
  }
  return heightOutside(arch, x, yMm, -foot.distanceMm, state);
}

/** {@link plateHeight} so far outside the channel. */
export function heightOutside(
  { numbers, edge }: PlateArch,
  x: number,
  yMm: number,
  outsideMm: number,
  state: EdgeState,
): number {
  if (state === 'arched') return numbers.edgeHeightMm;
  return finishedEdgeHeightAt(numbers, edge, point(x, yMm), outsideMm);
}

/** Share of the body length, 10 mm on a violin, to which an arch is mirrored beyond its channel; farther out it stays level. */
const MIRROR_SHARE = 10 / 355;

/**
 * Height above the gluing face of the arch alone, carried on beyond its channel as its own mirror image there: smooth where
 * the outside of the plate bends, so that a surface can be fitted through it. Inside the channel {@link plateHeight}.
 */
export function continuedArchHeight(arch: PlateArch, xMm: number, yMm: number): number {
  const x = Math.abs(xMm);
  const foot = footOn(arch.channel.line, x, yMm);
  if (foot.distanceMm >= 0) return heightAtFoot(arch, x, yMm, foot, 'finished');
  const insideMm = Math.min(-foot.distanceMm, MIRROR_SHARE * arch.bodyLengthMm);
  const mirrored = {
    x: Math.abs(foot.x - insideMm * sin(foot.headingRad)),
    y: foot.y + insideMm * cos(foot.headingRad),
  };
  const over = footOn(arch.channel.line, mirrored.x, mirrored.y);
  if (over.distanceMm < 0) return arch.channelZMm;
  return heightAtFoot(arch, mirrored.x, mirrored.y, over, 'finished');
}

/** Whether a place lies outside the channel, where an arch is carried on. */
export function isBeyondChannel(arch: PlateArch, xMm: number, yMm: number): boolean {
  return !isLeft(arch.channel.line, Math.abs(xMm), yMm);
}

/** mm to either side over which the slope of an arch that is carried on is taken. */
const SLOPE_STEP_MM = 0.01;

/** {@link continuedArchHeight} with its slopes; inside the channel {@link plateSlopes}. */
export function continuedArchSlopes(arch: PlateArch, xMm: number, yMm: number): SurfacePoint {
  if (!isBeyondChannel(arch, xMm, yMm)) return plateSlopes(arch, xMm, yMm);
  const heightAt = (x: number, y: number): number => continuedArchHeight(arch, x, y);
  const step = SLOPE_STEP_MM;
  return {
    zMm: heightAt(xMm, yMm),
    slopeX: (heightAt(xMm + step, yMm) - heightAt(xMm - step, yMm)) / (2 * step),
    slopeY: (heightAt(xMm, yMm + step) - heightAt(xMm, yMm - step)) / (2 * step),
  };
}

/**
 * Loft and correction, less the few thousandths that they miss at the channel: height and slope at the foot, faded out.
 * Above the channel, so that it is exactly level with the scoop there.
 */
function insideHeight(
  arch: PlateArch,
  x: number,
  yMm: number,
  foot: Pick<Foot, 'at' | 'distanceMm'>,
): number {
  const height = loftHeight(loftRow(arch.loft, yMm), x) + netAt(arch.correction, x, yMm).zMm;
  return foot.distanceMm >= fadeReach(arch) ? height : height - fadedMiss(arch, foot).fadedMm;
}

/** mm inside the channel beyond which the surface is loft and correction and nothing else. */
export function fadeReach(arch: PlateArch): number {
  return FADE_SHARE * arch.bodyLengthMm;
}

/**
 * Height and slopes of a plate's finished outside at a place on it (either side). On the ridge of the edge the slopes are
 * those of its outer side.
 */
export function plateSlopes(arch: PlateArch, xMm: number, yMm: number): SurfacePoint {
  const x = Math.abs(xMm);
  const { zMm, slopeX, slopeY } = isSurelyLeft(arch.channel.line, x, yMm, fadeReach(arch))
    ? liftedBody(arch, x, yMm)
    : slopesAtFoot(arch, x, yMm, footOn(arch.channel.line, x, yMm));
  return { zMm, slopeX: Math.sign(xMm) * slopeX || 0, slopeY };
}

/** Share of the body length, 40 mm on a violin: edges farther off shape a scoop by less than a ten-thousandth of a millimetre. */
const FAR_EDGE_SHARE = 40 / 355;

/**
 * Height of the finished outside but for what is faded out beside the channel, a thousandth of a millimetre at most: for
 * sums over the whole plate.
 */
export function nearPlateHeight(arch: PlateArch, xMm: number, yMm: number): number {
  const x = Math.abs(xMm);
  const { line } = arch.channel;
  if (isLeft(line, x, yMm))
    return arch.channelZMm + loftHeight(loftRow(arch.loft, yMm), x) + netAt(arch.correction, x, yMm).zMm;
  const outsideMm = Math.max(0, -leftOfPlace(line, footPlace(line, x, yMm), x, yMm));
  const farMm = FAR_EDGE_SHARE * arch.bodyLengthMm;
  return finishedEdgeHeightAt(arch.numbers, arch.edge, point(x, yMm), outsideMm, farMm);
}

/** {@link plateSlopes} as near as {@link nearPlateHeight}. */
export function nearPlateSlopes(arch: PlateArch, xMm: number, yMm: number): SurfacePoint {
  const x = Math.abs(xMm);
  const { line } = arch.channel;
  const { zMm, slopeX, slopeY } = isLeft(line, x, yMm)
    ? liftedBody(arch, x, yMm)
    : edgeSlopes(arch, x, yMm, footOn(line, x, yMm), FAR_EDGE_SHARE * arch.bodyLengthMm);
  return { zMm, slopeX: Math.sign(xMm) * slopeX || 0, slopeY };
}

function slopesAtFoot(arch: PlateArch, x: number, yMm: number, foot: Foot): SurfacePoint {
  return foot.distanceMm >= 0 ? insideSlopes(arch, x, yMm, foot) : edgeSlopes(arch, x, yMm, foot);
}

/** Loft and correction over the gluing face: the whole surface where nothing is faded out. */
function liftedBody(arch: PlateArch, x: number, yMm: number): SurfacePoint {
  const body = bodyAt(arch, x, yMm);
  return { ...body, zMm: arch.channelZMm + body.zMm };
}

function insideSlopes(arch: PlateArch, x: number, yMm: number, foot: Foot): SurfacePoint {
  const body = liftedBody(arch, x, yMm);
  const fadeMm = fadeReach(arch);
  const t = foot.distanceMm / fadeMm;
  if (t >= 1) return body;
  const [alongX, alongY] = [cos(foot.headingRad), sin(foot.headingRad)];
  const here = fadedMiss(arch, foot);
  const beside = (step: number): number =>
    fadedMiss(arch, footOn(arch.channel.line, x + step * alongX, yMm + step * alongY)).fadedMm;
  const inward = here.inwardSlope * here.left - (here.missMm * 6 * t * (1 - t)) / fadeMm;
  const along = (beside(BESIDE_MM) - beside(-BESIDE_MM)) / (2 * BESIDE_MM);
  return {
    zMm: body.zMm - here.fadedMm,
    slopeX: body.slopeX + inward * alongY - along * alongX,
    slopeY: body.slopeY - inward * alongX - along * alongY,
  };
}

/** mm on either side from which the slope along the channel of what is faded out is taken. */
const BESIDE_MM = 0.1;

/** What loft and correction miss at the channel, carried inwards with its slope, and what of it is taken away. */
export function fadedMiss(arch: PlateArch, { at, distanceMm }: Pick<Foot, 'at' | 'distanceMm'>) {
  const t = Math.min(1, distanceMm / fadeReach(arch));
  const { mm, inwardSlope } = missInside(arch.miss, arch.channel.line, at, distanceMm);
  const left = (1 - t) * (1 - t) * (1 + 2 * t);
  return { inwardSlope, missMm: mm, left, fadedMm: mm * left };
}

function edgeSlopes(arch: PlateArch, x: number, yMm: number, foot: Foot, withinMm?: number): SurfacePoint {
  const fromEdge = edgeAway(arch.edge, point(x, yMm), withinMm);
  const outside = {
    distanceMm: -foot.distanceMm,
    x: sin(foot.headingRad),
    y: -cos(foot.headingRad),
  };
  const distances = fromEdge.map(({ distanceMm }) => distanceMm);
  const [slopeX, slopeY] = finishedEdgeSlopes(arch.numbers, fromEdge, outside);
  return { zMm: finishedEdgeHeight(arch.numbers, distances, -foot.distanceMm), slopeX, slopeY };
}

/** Loft and correction together: height above the channel and slopes. */
function bodyAt(arch: PlateArch, x: number, yMm: number): SurfacePoint {
  const loft = loftAt(arch.loft, x, yMm);
  const correction = netAt(arch.correction, x, yMm);
  return {
    zMm: loft.zMm + correction.zMm,
    slopeX: loft.slopeX + correction.slopeX,
    slopeY: loft.slopeY + correction.slopeY,
  };
}
