import { loftShape, netShape, type SurfaceShape } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import type { EdgeState } from './edgeShape.ts';
import { fadedMiss, fadeReach, plateSlopes } from './plateHeight.ts';
import { type Foot, footOn } from './smoothLine.ts';

/** mm on either side from which the bends of the scoop, and of the thousandths that are faded out, are taken. */
const BESIDE_MM = 0.02;

/**
 * Height, slopes and second derivatives of a plate's outside at a place on it (either side). At the channel, and where an
 * arch rises out of a flat edge, those of the arch.
 *
 * Method: loft and correction in closed form; in the scoop differences of the slopes, which are exact.
 */
export function plateShape(arch: PlateArch, xMm: number, yMm: number, state: EdgeState): SurfaceShape {
  const x = Math.abs(xMm);
  const foot = footOn(arch.channel.line, x, yMm);
  if (foot.distanceMm < 0) return state === 'arched' ? flatEdge(arch) : onSide(scoopShape(arch, x, yMm), xMm);
  const shape = insideShape(arch, x, yMm, foot);
  return state === 'arched' && shape.zMm < arch.numbers.edgeHeightMm ? flatEdge(arch) : onSide(shape, xMm);
}

function flatEdge(arch: PlateArch): SurfaceShape {
  return { zMm: arch.numbers.edgeHeightMm, slopeX: 0, slopeY: 0, bendXX: 0, bendXY: 0, bendYY: 0 };
}

/** The shape as it is on the side of x. */
function onSide(shape: SurfaceShape, x: number): SurfaceShape {
  if (x >= 0) return shape;
  return { ...shape, slopeX: -shape.slopeX || 0, bendXY: -shape.bendXY || 0 };
}

function insideShape(arch: PlateArch, x: number, yMm: number, foot: Foot): SurfaceShape {
  const loft = loftShape(arch.loft, x, yMm);
  const net = netShape(arch.correction, x, yMm);
  const body = {
    zMm: arch.channelZMm + loft.zMm + net.zMm,
    slopeX: loft.slopeX + net.slopeX,
    slopeY: loft.slopeY + net.slopeY,
    bendXX: loft.bendXX + net.bendXX,
    bendXY: loft.bendXY + net.bendXY,
    bendYY: loft.bendYY + net.bendYY,
  };
  if (foot.distanceMm >= fadeReach(arch)) return body;
  const faded = (right: number, up: number): number =>
    fadedMiss(arch, footOn(arch.channel.line, Math.abs(x + right * BESIDE_MM), yMm + up * BESIDE_MM)).fadedMm;
  const here = faded(0, 0);
  const [right, left, up, down] = [faded(1, 0), faded(-1, 0), faded(0, 1), faded(0, -1)];
  return {
    zMm: body.zMm - here,
    slopeX: body.slopeX - (right - left) / (2 * BESIDE_MM),
    slopeY: body.slopeY - (up - down) / (2 * BESIDE_MM),
    bendXX: body.bendXX - (right - 2 * here + left) / BESIDE_MM ** 2,
    bendXY: body.bendXY - (faded(1, 1) - faded(1, -1) - faded(-1, 1) + faded(-1, -1)) / (4 * BESIDE_MM ** 2),
    bendYY: body.bendYY - (up - 2 * here + down) / BESIDE_MM ** 2,
  };
}

function scoopShape(arch: PlateArch, x: number, yMm: number): SurfaceShape {
  const here = plateSlopes(arch, x, yMm);
  const [right, left] = [plateSlopes(arch, x + BESIDE_MM, yMm), plateSlopes(arch, x - BESIDE_MM, yMm)];
  const [up, down] = [plateSlopes(arch, x, yMm + BESIDE_MM), plateSlopes(arch, x, yMm - BESIDE_MM)];
  return {
    ...here,
    bendXX: (right.slopeX - left.slopeX) / (2 * BESIDE_MM),
    bendXY: (right.slopeY - left.slopeY + up.slopeX - down.slopeX) / (4 * BESIDE_MM),
    bendYY: (up.slopeY - down.slopeY) / (2 * BESIDE_MM),
  };
}
