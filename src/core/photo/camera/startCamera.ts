import { norm, type Point } from '../../base/index.ts';
import type { Matrix3 } from '../../numeric/index.ts';
import type { Pose } from './sight.ts';

/** How a camera of a focal length stands to a sheet, from the sheet's plane perspective; no lens distortion. */
export function poseFromHomography(h: Matrix3, focalPx: number, centre: Point<'photo'>): Pose {
  const column = (i: 0 | 1 | 2) =>
    [(h[i] - centre.x * h[6 + i]) / focalPx, (h[3 + i] - centre.y * h[6 + i]) / focalPx, h[6 + i]] as const;
  const [first, second, third] = [column(0), column(1), column(2)];
  const size = (norm(first) + norm(second)) / 2;
  const scale = (third[2] < 0 ? -1 : 1) / size;
  const x = unit(first.map((one) => one * scale));
  const ySkew = second.map((one) => one * scale);
  const lean = x[0] * ySkew[0] + x[1] * ySkew[1] + x[2] * ySkew[2];
  const y = unit(ySkew.map((one, i) => one - lean * x[i]));
  const z = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]];
  return {
    turn: [x[0], y[0], z[0], x[1], y[1], z[1], x[2], y[2], z[2]],
    shift: [third[0] * scale, third[1] * scale, third[2] * scale],
  };
}

/**
 * The focal length that makes the sides of all sheets square and equal, or null when every view is too nearly square
 * on. Source of the conditions: Z. Zhang, "A flexible new technique for camera calibration", 2000.
 */
export function focalFromHomographies(
  views: readonly { readonly h: Matrix3; readonly centre: Point<'photo'> }[],
): number | null {
  let [against, square] = [0, 0];
  for (const { h, centre } of views) {
    const across = (i: 0 | 1) => h[i] - centre.x * h[6 + i];
    const down = (i: 0 | 1) => h[3 + i] - centre.y * h[6 + i];
    const size = across(0) ** 2 + down(0) ** 2 + across(1) ** 2 + down(1) ** 2;
    const skew = (across(0) * across(1) + down(0) * down(1)) / size;
    const unequal = (across(0) ** 2 + down(0) ** 2 - across(1) ** 2 - down(1) ** 2) / size;
    against -= (skew * h[6] * h[7] + unequal * (h[6] ** 2 - h[7] ** 2)) / size;
    square += skew ** 2 + unequal ** 2;
  }
  const share = against / square;
  return share > 0 && Number.isFinite(share) ? 1 / Math.sqrt(share) : null;
}

function unit(v: readonly number[]): number[] {
  const length = norm(v);
  return v.map((one) => one / length);
}
