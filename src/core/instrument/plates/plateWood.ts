import { point } from '../../base/index.ts';
import { type Chain, chainThrough, offsetChain } from '../../curve/index.ts';
import { integrateInside } from '../../surface/index.ts';
import { nearPlateHeight, type PlateArch } from '../arching/index.ts';
import { type HollowPlate, nearInsideHeight } from './hollow.ts';

/** The wood of a finished plate, sound holes and bar not counted. Heights above the gluing face. */
export interface PlateWood {
  readonly volumeMm3: number;
  /** Of the air between its gluing face and its inside. */
  readonly hollowMm3: number;
  readonly massG: number;
  /** Where it balances: on the centre line, so far above the lower end and the gluing face. */
  readonly centreYMm: number;
  readonly centreZMm: number;
  /** Moments of inertia about lines through that place, g mm²: across the plate, along it, and square to it. */
  readonly aboutAcross: number;
  readonly aboutAlong: number;
  readonly aboutSquare: number;
}

/** Share of the body length (16 mm on a violin) that panels are long; halving it moves no mass by a part in 10 000. */
const PANEL_SHARE = 16 / 355;

/** Volume, mass and balance of a plate inside its outline whose wood has a density in kg/m³. */
export function plateWood(plate: HollowPlate, outline: Chain<'body'>, densityKgM3: number): PlateWood {
  const { arch, line, rampMm } = plate;
  const ridge = offsetChain(outline, -arch.numbers.crestInsetMm, { join: 'mitre' });
  const solid = columns(plate, outline, [...ridge, channelChain(arch)], (x, y) =>
    nearPlateHeight(arch, x, y),
  );
  const ramp = offsetChain(line, -rampMm, { join: 'mitre' });
  const hollow = columns(plate, line, [...ramp, channelChain(arch)], (x, y) => nearInsideHeight(plate, x, y));
  const sums = solid.map((sum, index) => sum - (hollow[index] as number));
  // 1 kg/m³ is a millionth of a gram in a cubic millimetre.
  const density = densityKgM3 / 1_000_000;
  const [volumeMm3, byY, byZ, byXX, byYY, byZZ] = [...sums] as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const [y, z] = [byY / volumeMm3, byZ / volumeMm3];
  const [xx, yy, zz] = [density * byXX, density * (byYY - y * byY), density * (byZZ - z * byZ)];
  return {
    volumeMm3,
    hollowMm3: hollow[0] as number,
    massG: density * volumeMm3,
    centreYMm: y,
    centreZMm: z,
    aboutAcross: yy + zz,
    aboutAlong: xx + zz,
    aboutSquare: xx + yy,
  };
}

/** Volume and moments of columns that stand on the gluing face; both halves are alike, so that one is asked. */
function columns(
  plate: HollowPlate,
  outline: Chain<'body'>,
  cuts: readonly Chain<'body'>[],
  heightAt: (x: number, y: number) => number,
): Float64Array {
  const sums = new Float64Array(6);
  const panelMm = PANEL_SHARE * plate.arch.bodyLengthMm;
  const add = (x: number, y: number, areaMm2: number): void => {
    const z = heightAt(x, y);
    const column = 2 * areaMm2 * z;
    sums[0] += column;
    sums[1] += column * y;
    sums[2] += (column * z) / 2;
    sums[3] += column * x * x;
    sums[4] += column * y * y;
    sums[5] += (column * z * z) / 3;
  };
  integrateInside([outline], panelMm, add, cuts, 0);
  return sums;
}

/** The channel's lowest line as a closed polygon. */
function channelChain({ channel }: PlateArch): Chain<'body'> {
  const treble = channel.line.points.map(({ x, y }) => point<'body'>(x, y));
  const bass = treble
    .slice(1, -1)
    .toReversed()
    .map(({ x, y }) => point<'body'>(-x, y));
  return chainThrough([...treble, ...bass], true);
}
