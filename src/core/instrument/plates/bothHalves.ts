import type { HollowPlate } from './hollow.ts';
import { insideHeight } from './hollow.ts';
import type { PlateWood } from './plateWood.ts';
import { isEven, withMirroredHalf } from './thicknessMap.ts';

/**
 * Height of a plate's inside that neither half goes below, mm: what is drilled or gauged alike on both halves must spare the
 * thicker wood of post or bar.
 */
export function insideOfBothHalves(plate: HollowPlate, xMm: number, yMm: number): number {
  const own = insideHeight(plate, xMm, yMm);
  return isEven(plate.thickness) ? own : Math.min(own, insideHeight(plate, -xMm, yMm));
}

/**
 * The wood of a plate from the wood of one whose halves are alike. Where they differ each half is weighed as if the other were
 * its mirror image, and the plate is half of both together; its balance is told on the centre line.
 */
export function woodOfBothHalves(plate: HollowPlate, woodOf: (even: HollowPlate) => PlateWood): PlateWood {
  if (isEven(plate.thickness)) return woodOf(plate);
  const [right, left] = (['right', 'left'] as const).map((side) =>
    woodOf({ ...plate, thickness: withMirroredHalf(plate.thickness, side) }),
  ) as [PlateWood, PlateWood];
  const mean = (a: number, b: number): number => (a + b) / 2;
  const massG = mean(right.massG, left.massG);
  const share = right.massG / (right.massG + left.massG);
  const balance = (of: (wood: PlateWood) => number): number => share * of(right) + (1 - share) * of(left);
  const centreYMm = balance((wood) => wood.centreYMm);
  const centreZMm = balance((wood) => wood.centreZMm);
  /** A half's moment brought to the common balance: mass times the squared distance between both. */
  const moment = (of: (wood: PlateWood) => number, squared: (wood: PlateWood) => number): number =>
    mean(of(right) + right.massG * squared(right), of(left) + left.massG * squared(left));
  const alongY = (wood: PlateWood): number => (wood.centreYMm - centreYMm) ** 2;
  const alongZ = (wood: PlateWood): number => (wood.centreZMm - centreZMm) ** 2;
  return {
    volumeMm3: mean(right.volumeMm3, left.volumeMm3),
    hollowMm3: mean(right.hollowMm3, left.hollowMm3),
    massG,
    centreYMm,
    centreZMm,
    aboutAcross: moment(
      (wood) => wood.aboutAcross,
      (wood) => alongY(wood) + alongZ(wood),
    ),
    aboutAlong: moment((wood) => wood.aboutAlong, alongZ),
    aboutSquare: moment((wood) => wood.aboutSquare, alongY),
  };
}
