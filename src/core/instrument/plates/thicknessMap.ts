import { accept, type Checked, hypot, type Point, point, power, refuse } from '../../base/index.ts';
import { levelCurve } from '../../numeric/index.ts';
import { bodyHalfWidth } from '../../surface/index.ts';
import type { PlateArch } from '../arching/index.ts';
import { extraAt, type ThickArea } from './plateArea.ts';
import { areaFaults, numberFaults, pointFaults } from './thicknessFaults.ts';
import type { ThicknessNumbers, ThicknessPoint } from './thicknessNumbers.ts';

/**
 * `concentric`: thickest in the middle of the plate, thinner toward the bouts and the sides. `longitudinal`: as thick as
 * the middle all along the centre line from bout to bout, thinner to the sides.
 */
export type ThicknessPattern = 'concentric' | 'longitudinal';

/** Thickness all over a plate, mm, continuous with its slope; both halves are alike but for the wood at post and bar. */
export interface ThicknessMap {
  readonly numbers: ThicknessNumbers;
  readonly pattern: ThicknessPattern;
  readonly arch: PlateArch;
  /** Where the middle stands. */
  readonly middleYMm: number;
  readonly points: readonly ThicknessPoint[];
  /** How far a point is felt. */
  readonly reachMm: number;
  /** Where post and bar stand, in the plate's frame: as one looks at its outside. */
  readonly areas: readonly ThickArea[];
  /** The half that both are made like, to look at one of them by itself; each its own where none is named. */
  readonly mirrored?: 'right' | 'left';
}

/** Share of the half width at which the flanks are told. */
const FLANK_SHARE = 0.75;

/** Share of the half width at which a longitudinal pattern has the thickness of its bouts. */
const SIDE_SHARE = 0.5;

/** Share of the body length (about 70 mm on a violin) beyond which a point is no longer felt; chosen by us. */
const REACH_SHARE = 0.2;

/**
 * A map of thickness: a pattern through the few numbers that makers print, thicker or thinner at post and bar as wished, and
 * pulled through the points that are asked for.
 *
 * Faults: `thickness.number` (a number that is no thickness), `thickness.order` (the channel thicker than the rest),
 * `thickness.point` (a point that has none, or lies off the plate), `thickness.twice` (two points at one place), `thickness.area` (wood so much
 * thinner at post or bar that none is left).
 */
export function thicknessMap(
  arch: PlateArch,
  middleYMm: number,
  numbers: ThicknessNumbers,
  pattern: ThicknessPattern,
  points: readonly ThicknessPoint[],
  isOnPlate: (at: Point<'body'>) => boolean,
  areas: readonly ThickArea[] = [],
): Checked<ThicknessMap> {
  const faults = [
    ...numberFaults(arch, numbers),
    ...pointFaults(arch, points, isOnPlate),
    ...areaFaults(arch, numbers, areas),
  ];
  if (faults.length > 0) return refuse(...faults);
  const reachMm = REACH_SHARE * arch.bodyLengthMm;
  return accept({ numbers, pattern, arch, middleYMm, points, reachMm, areas });
}

/** Whether both halves of a map are alike. */
export function isEven({ areas, mirrored }: ThicknessMap): boolean {
  return mirrored !== undefined || areas.every(({ extraMm }) => extraMm === 0);
}

/** The map with one of its halves on both sides. */
export function withMirroredHalf(map: ThicknessMap, side: 'right' | 'left'): ThicknessMap {
  return { ...map, mirrored: side };
}

/**
 * Thickness at a place of the plate, mm, square to the outside: the mean of the pattern, with what post and bar add to it, and
 * of the points near by, weighed by their distance, so that it never leaves their range.
 */
export function thicknessAt(map: ThicknessMap, xMm: number, yMm: number): number {
  const x = Math.abs(xMm);
  let [sum, weights] = [patternAt(map, x, yMm) + extrasAt(map, xMm, yMm), 1];
  for (const asked of map.points) {
    const weight = weightOf(asked, x, yMm, map.reachMm);
    if (weight === Number.POSITIVE_INFINITY) return asked.thicknessMm;
    sum += weight * asked.thicknessMm;
    weights += weight;
  }
  return sum / weights;
}

function extrasAt({ areas, mirrored }: ThicknessMap, xMm: number, yMm: number): number {
  const side = mirrored === 'left' ? -1 : 1;
  const x = mirrored ? side * Math.abs(xMm) : xMm;
  let extraMm = 0;
  for (const area of areas) if (area.extraMm !== 0) extraMm += extraAt(area, x, yMm);
  return extraMm;
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

/**
 * A place for each of the few numbers, on the right half, where the pattern alone has just that thickness: the middle, the widest
 * lower bout, the flank beside the middle, and the edge at the widest upper bout.
 */
export function zonePlaces({
  pattern,
  arch,
  middleYMm,
}: ThicknessMap): Readonly<Record<keyof ThicknessNumbers, Point<'body'>>> {
  const across = (share: number, y: number) => point<'body'>(share * bodyHalfWidth(arch.loft, y), y);
  const lowerMm = stationY(arch, 'lowerBout');
  return {
    middleMm: across(0, middleYMm),
    boutsMm: across(pattern === 'concentric' ? 0 : SIDE_SHARE, lowerMm),
    flanksMm: across(FLANK_SHARE, middleYMm),
    channelMm: across(1, stationY(arch, 'upperBout')),
  };
}

function stationY(arch: PlateArch, name: 'lowerBout' | 'upperBout'): number {
  return arch.stations.find((station) => station.name === name)?.yMm ?? Number.NaN;
}

/**
 * What a point weighs at a place against the pattern's 1: without end on it, 0 beyond its reach, smooth between. Of it and
 * its mirror image the nearer counts. From Wendland's function (1995), felt as 1 on the point and 0 beyond.
 */
function weightOf(at: Point<'body'>, x: number, y: number, reachMm: number): number {
  const r = hypot(x - Math.abs(at.x), y - at.y) / reachMm;
  if (r >= 1) return 0;
  const felt = power(1 - r, 4) * (4 * r + 1);
  return felt / (1 - felt);
}
