import type { SurfaceShape } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import type { EdgeState } from './edgeShape.ts';
import { plateHeight } from './plateHeight.ts';

/** mm on either side from which slopes and bends are taken. */
const REACH_MM = 0.05;

/**
 * Height, slopes and second derivatives of a plate's outside at a place on it (either side). Beside a ridge or a bend
 * of the surface (crest of the edge, channel) the second derivatives are those of one side.
 */
export function plateShape(arch: PlateArch, xMm: number, yMm: number, state: EdgeState): SurfaceShape {
  const z = (x: number, y: number): number =>
    plateHeight(arch, xMm + x * REACH_MM, yMm + y * REACH_MM, state);
  const here = z(0, 0);
  const [right, left, up, down] = [z(1, 0), z(-1, 0), z(0, 1), z(0, -1)];
  return {
    zMm: here,
    slopeX: (right - left) / (2 * REACH_MM),
    slopeY: (up - down) / (2 * REACH_MM),
    bendXX: (right - 2 * here + left) / REACH_MM ** 2,
    bendXY: (z(1, 1) - z(1, -1) - z(-1, 1) + z(-1, -1)) / (4 * REACH_MM ** 2),
    bendYY: (up - 2 * here + down) / REACH_MM ** 2,
  };
}
