import { Bug } from '../base/index.ts';
import { cubicBasis } from './cubicBasis.ts';
import type { SurfacePoint } from './loft.ts';
import type { SurfaceShape } from './surfaceShape.ts';

/** Where a net lies: x from 0 to `columns` steps, y from `fromMm` in `rows` steps; it is even in x. */
export interface NetGrid {
  readonly stepMm: number;
  readonly fromMm: number;
  readonly columns: number;
  readonly rows: number;
}

/** A smooth surface over a rectangle: bicubic B-spline, twice continuously differentiable. */
export interface FairNet extends NetGrid {
  /** Row by row along y, columns 0 to one past the last step of each. */
  readonly coefficients: Float64Array;
}

/** Two nets over one grid added up. */
export function sumOfNets(a: FairNet, b: FairNet): FairNet {
  if (a.columns !== b.columns || a.rows !== b.rows || a.stepMm !== b.stepMm || a.fromMm !== b.fromMm)
    throw new Bug('nets over different grids added up');
  return { ...a, coefficients: a.coefficients.map((value, at) => value + (b.coefficients[at] as number)) };
}

/** Height and slopes of a net; x may be of either sign. Promises a place on its rectangle. */
export function netAt(net: FairNet, xMm: number, yMm: number): SurfacePoint {
  const { spanX, spanY, tX, tY } = placeOf(net, Math.abs(xMm), yMm);
  const inX = cubicBasis(tX, 0);
  const inY = cubicBasis(tY, 0);
  const slopeInX = cubicBasis(tX, 1);
  const slopeInY = cubicBasis(tY, 1);
  const { coefficients, stepMm } = net;
  const stride = net.columns + 2;
  // Even in x: column −1 is column 1.
  const before = spanX === 0 ? 1 : spanX - 1;
  let z = 0;
  let byX = 0;
  let byY = 0;
  for (let row = 0; row < 4; row++) {
    const first = (spanY + row) * stride;
    const a = coefficients[first + before] as number;
    const b = coefficients[first + spanX] as number;
    const c = coefficients[first + spanX + 1] as number;
    const d = coefficients[first + spanX + 2] as number;
    const along = a * inX[0] + b * inX[1] + c * inX[2] + d * inX[3];
    const share = inY[row] as number;
    z += along * share;
    byX += (a * slopeInX[0] + b * slopeInX[1] + c * slopeInX[2] + d * slopeInX[3]) * share;
    byY += along * (slopeInY[row] as number);
  }
  return { zMm: z, slopeX: (Math.sign(xMm) * byX) / stepMm || 0, slopeY: byY / stepMm };
}

/** {@link netAt} with its second derivatives. */
export function netShape(net: FairNet, xMm: number, yMm: number): SurfaceShape {
  const { spanX, spanY, tX, tY } = placeOf(net, Math.abs(xMm), yMm);
  const x0 = cubicBasis(tX, 0);
  const x1 = cubicBasis(tX, 1);
  const x2 = cubicBasis(tX, 2);
  const y0 = cubicBasis(tY, 0);
  const y1 = cubicBasis(tY, 1);
  const y2 = cubicBasis(tY, 2);
  const { coefficients, stepMm } = net;
  const stride = net.columns + 2;
  const before = spanX === 0 ? 1 : spanX - 1;
  const shape = { zMm: 0, slopeX: 0, slopeY: 0, bendXX: 0, bendXY: 0, bendYY: 0 };
  for (let row = 0; row < 4; row++) {
    const first = (spanY + row) * stride;
    const a = coefficients[first + before] as number;
    const b = coefficients[first + spanX] as number;
    const c = coefficients[first + spanX + 1] as number;
    const d = coefficients[first + spanX + 2] as number;
    const value = a * x0[0] + b * x0[1] + c * x0[2] + d * x0[3];
    const slope = a * x1[0] + b * x1[1] + c * x1[2] + d * x1[3];
    const bend = a * x2[0] + b * x2[1] + c * x2[2] + d * x2[3];
    const share = y0[row] as number;
    const change = y1[row] as number;
    shape.zMm += value * share;
    shape.slopeX += slope * share;
    shape.slopeY += value * change;
    shape.bendXX += bend * share;
    shape.bendXY += slope * change;
    shape.bendYY += value * (y2[row] as number);
  }
  const side = Math.sign(xMm);
  return {
    zMm: shape.zMm,
    slopeX: (side * shape.slopeX) / stepMm || 0,
    slopeY: shape.slopeY / stepMm,
    bendXX: shape.bendXX / stepMm ** 2,
    bendXY: (side * shape.bendXY) / stepMm ** 2 || 0,
    bendYY: shape.bendYY / stepMm ** 2,
  };
}

/** A net cut at one y: the coefficients across, from column −1 on. */
export function netRow(net: FairNet, yMm: number): Float64Array {
  const { spanY, tY } = placeOf(net, 0, yMm);
  const [a, b, c, d] = cubicBasis(tY, 0);
  const { coefficients } = net;
  const stride = net.columns + 2;
  const first = spanY * stride;
  const row = new Float64Array(net.columns + 3);
  for (let column = 0; column < stride; column++) {
    const at = first + column;
    row[column + 1] =
      a * (coefficients[at] as number) +
      b * (coefficients[at + stride] as number) +
      c * (coefficients[at + 2 * stride] as number) +
      d * (coefficients[at + 3 * stride] as number);
  }
  // Even in x: column −1 is column 1.
  row[0] = row[2] as number;
  return row;
}

/** Height at a place of a row, mm. */
export function netRowHeight(net: NetGrid, row: Float64Array, xMm: number): number {
  const across = Math.abs(xMm) / net.stepMm;
  const span = Math.max(0, Math.min(net.columns - 1, Math.floor(across)));
  const [a, b, c, d] = cubicBasis(across - span, 0);
  return (
    a * (row[span] as number) +
    b * (row[span + 1] as number) +
    c * (row[span + 2] as number) +
    d * (row[span + 3] as number)
  );
}

/** The span that a place lies in, and how far across it. */
export function placeOf(
  grid: NetGrid,
  x: number,
  y: number,
): { spanX: number; spanY: number; tX: number; tY: number } {
  const [alongX, alongY] = [x / grid.stepMm, (y - grid.fromMm) / grid.stepMm];
  const spanX = Math.max(0, Math.min(grid.columns - 1, Math.floor(alongX)));
  const spanY = Math.max(0, Math.min(grid.rows - 1, Math.floor(alongY)));
  return { spanX, spanY, tX: alongX - spanX, tY: alongY - spanY };
}
