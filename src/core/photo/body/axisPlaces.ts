import { cos, exp, hypot, sin } from '../../base/index.ts';
import { AT_ANGLE, AT_LN_SCALE, AT_X, AT_Y, type BodyFit } from './bodySeat.ts';
import { TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';

/** The photo place on the centre line at `share` of the length from the body's middle, + towards the neck. */
export function alongAxis(fit: BodyFit, share: number): { readonly x: number; readonly y: number } {
  const length = exp(fit[AT_LN_SCALE]) * TEMPLATE_LENGTH_MM * share;
  const angle = fit[AT_ANGLE];
  return { x: fit[AT_X] + length * sin(angle), y: fit[AT_Y] - length * cos(angle) };
}

/** How far two fits lie apart in middle and ends, in template mm. */
export function positionGapMm(a: BodyFit, b: BodyFit): number {
  const scale = exp(a[AT_LN_SCALE]);
  return Math.max(
    ...[-0.5, 0, 0.5].map((end) => {
      const p = alongAxis(a, end);
      const q = alongAxis(b, end);
      return hypot(p.x - q.x, p.y - q.y) / scale;
    }),
  );
}

/** Template mm between middles from which on two fits lie on two bodies: a body is wider than this. */
const OTHER_BODY_MM = 150;

/** Whether two fits lie on two bodies, not one over the other. */
export function lieApart(a: BodyFit, b: BodyFit): boolean {
  const scale = exp(Math.max(a[AT_LN_SCALE], b[AT_LN_SCALE]));
  return hypot(a[AT_X] - b[AT_X], a[AT_Y] - b[AT_Y]) / scale > OTHER_BODY_MM;
}
