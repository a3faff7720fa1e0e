import { log } from '../../base/index.ts';
import { poseSlot, type SceneState, type SceneUnknowns } from './sceneUnknowns.ts';
import { POSE_UNKNOWNS } from './sight.ts';

/**
 * How far from a sheet people stand: a stretched arm to a ladder, 0.45 to 2.8 m in 95 of a hundred (from memory; a wide
 * belief, which a view that leans by a few degrees overrules). In logarithm, as stands are compared by shares.
 */
export const USUAL_STAND = { mm: 1120, sigma: 0.45 } as const;

/**
 * Adds the belief about how far each camera stands to a sum of squares; returns its cost. A view nearly square on tells
 * focal length and distance only together, and without it a lens of any shortness would do.
 * Method: the depth of the scene's origin before the camera stands for the distance; slopes by its turns are exact.
 */
export function addStandBeliefs(
  unknowns: SceneUnknowns,
  { values }: SceneState,
  matrix: readonly Float64Array[],
  right: Float64Array,
): number {
  const weight = 1 / USUAL_STAND.sigma ** 2;
  return unknowns.lensOfShot.reduce((cost, _, shot) => {
    const turn = poseSlot(unknowns, shot);
    const shift = turn + POSE_UNKNOWNS / 2;
    const [x, y, depth] = [values[shift], values[shift + 1], values[shift + 2]];
    if (!(depth > 0)) return Number.POSITIVE_INFINITY;
    const off = log(depth / USUAL_STAND.mm);
    const slopes = [
      [turn, y / depth],
      [turn + 1, -x / depth],
      [shift + 2, 1 / depth],
    ] as const;
    for (const [slot, by] of slopes) {
      right[slot] -= weight * by * off;
      for (const [other, byOther] of slopes) matrix[slot][other] += weight * by * byOther;
    }
    return cost + (off * off * weight) / 2;
  }, 0);
}
