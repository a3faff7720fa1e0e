import { accept, type Checked, type Point, refuse } from '../../base/index.ts';
import { solveSquare, zeroMatrix } from '../../numeric/index.ts';
import { bodyHalfWidth } from '../../surface/index.ts';
import type { PlateArch } from '../arching/index.ts';
import { levelCurve } from './levelCurve.ts';
import { numberFaults, pointFaults, twice } from './thicknessFaults.ts';
import type { ThicknessNumbers, ThicknessPoint } from './thicknessNumbers.ts';

/**
 * `concentric`: thickest in the middle of the plate, thinner toward the bouts and the sides. `longitudinal`: as thick as
 * the middle all along the centre line from bout to bout, thinner to the sides.
 */
export type ThicknessPattern = 'concentric' | 'longitudinal';

/** Thickness all over a plate, mm, symmetric about the centre line, continuous with its slope. */
export interface ThicknessMap {
  readonly numbers: ThicknessNumbers;
  readonly pattern: ThicknessPattern;
  readonly arch: PlateArch;
  /** Where the middle stands. */
  readonly middleYMm: number;
  readonly points: readonly ThicknessPoint[];
  /** How much each point adds round itself, and how far it reaches. */
  readonly weights: readonly number[];
  readonly reachMm: number;
}

/** Share of the half width at which the flanks are told. */
const FLANK_SHARE = 0.75;

/** Share of the half width at which a longitudinal pattern has the thickness of its bouts. */
const SIDE_SHARE = 0.5;

/** Share of the body length (about 70 mm on a violin) beyond which a point is no longer felt; chosen by us. */
const REACH_SHARE = 0.2;

/**
 * A map of thickness: a pattern through the few numbers that makers print, pulled through the points that are asked for.
 *
 * Faults: `thickness.number` (a number that is no thickness), `thickness.order` (the channel thicker than the rest),
 * `thickness.point` (a point that has none, or lies off the plate), `thickness.twice` (two points at one place).
 */
export function thicknessMap(
  arch: PlateArch,
  middleYMm: number,
  numbers: ThicknessNumbers,
  pattern: ThicknessPattern,
  points: readonly ThicknessPoint[],
  isOnPlate: (at: Point<'body'>) => boolean,
): Checked<ThicknessMap> {
  const faults = [...numberFaults(arch, numbers), ...pointFaults(arch, points, isOnPlate)];
  if (faults.length > 0) return refuse(...faults);
  const reachMm = REACH_SHARE * arch.bodyLengthMm;
  const plain = { numbers, pattern, arch, middleYMm, points: [], weights: [], reachMm };
  const weights = pull(plain, points, reachMm);
  return weights ? accept({ ...plain, points, weights }) : refuse(twice(arch, points[0]));
}

/** Thickness at a place of the plate, mm, square to the outside. */
export function thicknessAt(map: ThicknessMap, xMm: number, yMm: number): number {
  const x = Math.abs(xMm);
  let thicknessMm = patternAt(map, x, yMm);
  map.points.forEach((point, index) => {
    thicknessMm += (map.weights[index] as number) * feltOf(point, x, yMm, map.reachMm);
  });
  return thicknessMm;
}

function patternAt({ numbers, pattern, arch, middleYMm }: ThicknessMap, x: number, yMm: number): number {
  const { middleMm, boutsMm, flanksMm, channelMm } = numbers;
  const { startMm, endMm } = arch.longArch;
  const lowerMm = stationY(arch, 'lowerBout');
  const upperMm = stationY(arch, 'upperBout');
  const width = bodyHalfWidth(arch.loft, yMm);
  const u = width > 0 ? Math.min(1, x / width) : 1;
  /** From the channel's thickness at the end, through the bout's, to the middle's and back. */
  const ridge = (boutMm: number): number =>
    levelCurve(
      [startMm, lowerMm, middleYMm, upperMm, endMm],
      [channelMm, boutMm, middleMm, boutMm, channelMm],
      yMm,
    );
  // How much of what stands over the channel's thickness is left at the flanks.
  const flankLeft = middleMm > channelMm ? (flanksMm - channelMm) / (middleMm - channelMm) : 1;
  if (pattern === 'concentric') {
    const left = levelCurve([0, FLANK_SHARE, 1], [1, flankLeft, 0], u);
    return channelMm + (ridge(boutsMm) - channelMm) * left;
  }
  const sideLeft = middleMm > channelMm ? (boutsMm - channelMm) / (middleMm - channelMm) : 1;
  const share = (lowest: number, waist: number): number =>
    levelCurve([lowerMm, middleYMm, upperMm], [lowest, waist, lowest], yMm);
  const left = levelCurve([0, share(SIDE_SHARE, FLANK_SHARE), 1], [1, share(sideLeft, flankLeft), 0], u);
  return channelMm + (ridge(middleMm) - channelMm) * left;
}

function stationY(arch: PlateArch, name: 'lowerBout' | 'upperBout'): number {
  return arch.stations.find((station) => station.name === name)?.yMm ?? Number.NaN;
}

/** What a point is felt at a place, 1 on it, 0 beyond its reach, smooth (Wendland, 1995): together with its mirror image. */
function feltOf(point: Point<'body'>, x: number, y: number, reachMm: number): number {
  const felt = (across: number): number => {
    const r = Math.hypot(across, y - point.y) / reachMm;
    return r < 1 ? (1 - r) ** 4 * (4 * r + 1) : 0;
  };
  return felt(x - point.x) + felt(x + point.x);
}

function pull(
  plain: ThicknessMap,
  given: readonly ThicknessPoint[],
  reachMm: number,
): readonly number[] | null {
  if (given.length === 0) return [];
  const matrix = zeroMatrix(given.length, given.length);
  const right = new Float64Array(given.length);
  given.forEach((at, row) => {
    right[row] = at.thicknessMm - patternAt(plain, Math.abs(at.x), at.y);
    given.forEach((point, column) => {
      (matrix[row] as Float64Array)[column] = feltOf(point, Math.abs(at.x), at.y, reachMm);
    });
  });
  const weights = solveSquare(matrix, right);
  return weights ? [...weights] : null;
}
