import { type Fault, hypot, type Point, WELD_MM } from '../../base/index.ts';
import type { PlateArch } from '../arching/index.ts';
import type { ThickArea } from './plateArea.ts';
import { thicknessNames } from './thicknessNames.ts';
import type { ThicknessNumbers, ThicknessPoint } from './thicknessNumbers.ts';

/** What is wrong with the numbers of a map: `thickness.number`, `thickness.order`. */
export function numberFaults(arch: PlateArch, numbers: ThicknessNumbers): readonly Fault[] {
  const faults = Object.entries(numbers)
    .filter(([, value]) => !(value > 0 && Number.isFinite(value)))
    .map(([name, value]) => ({
      code: 'thickness.number',
      at: thicknessNames(arch.plate)[name as keyof ThicknessNumbers],
      found: `a thickness of ${value} mm`,
      need: 'a thickness above 0 mm',
      remedy: 'give it in millimetres',
    }));
  const { middleMm, boutsMm, flanksMm, channelMm } = numbers;
  if (faults.length > 0 || channelMm <= Math.min(middleMm, boutsMm, flanksMm)) return faults;
  return [
    {
      code: 'thickness.order',
      at: thicknessNames(arch.plate).channelMm,
      found: `${channelMm} mm in the channel, with ${middleMm} in the middle, ${boutsMm} in the bouts and ${flanksMm} at the flanks`,
      need: 'a channel no thicker than the rest',
      remedy: 'make the channel thinner, or ask for more at single places with points',
    },
  ];
}

/** What is wrong with the wood at post and bar: `thickness.area`. */
export function areaFaults(
  arch: PlateArch,
  numbers: ThicknessNumbers,
  areas: readonly ThickArea[],
): readonly Fault[] {
  const leastMm = Math.min(...Object.values(numbers));
  // Where reaches overlap both are taken off.
  const thinnerMm = areas.reduce((sum, { extraMm }) => sum + Math.min(0, extraMm), 0);
  return areas
    .filter(
      ({ extraMm, reachMm }) =>
        !(Number.isFinite(extraMm) && reachMm > 0 && (extraMm >= 0 || leastMm + thinnerMm > 0)),
    )
    .map(({ name, extraMm, reachMm }) => ({
      code: 'thickness.area',
      at: `thickness.${arch.plate}.${name}`,
      found: `${extraMm} mm more at the ${name} over ${reachMm} mm, on a plate of ${leastMm} mm at its thinnest`,
      need: 'wood left everywhere: if thinner, then by less than the plate is thick, over a reach above 0 mm',
      remedy: 'correct extra and reach',
    }));
}

/** What is wrong with its points: `thickness.point`, `thickness.twice`. */
export function pointFaults(
  arch: PlateArch,
  points: readonly ThicknessPoint[],
  isOnPlate: (at: Point<'body'>) => boolean,
): readonly Fault[] {
  return points.flatMap((point, index): readonly Fault[] => {
    const { x, y, thicknessMm } = point;
    const at = `${arch.plate}, thickness point ${index + 1}`;
    if (!(thicknessMm > 0 && Number.isFinite(thicknessMm) && isOnPlate(point)))
      return [
        {
          code: 'thickness.point',
          at,
          found: `${thicknessMm} mm at ${x}, ${y}`,
          need: 'a thickness above 0 mm at a place on the plate, across from the centre line and up from the lower end',
          remedy: 'correct it',
        },
      ];
    const same = points.slice(0, index).some((other) => sameOnHalf(other, point));
    return same ? [twice(arch, point)] : [];
  });
}

function sameOnHalf(a: Point<'body'>, b: Point<'body'>): boolean {
  return hypot(Math.abs(a.x) - Math.abs(b.x), a.y - b.y) < WELD_MM;
}

function twice(arch: PlateArch, point: Point<'body'>): Fault {
  return {
    code: 'thickness.twice',
    at: `${arch.plate}, thickness points`,
    found: `two thicknesses at ${point.x}, ${point.y}, or at that place on both sides`,
    need: 'one thickness at a place; both halves are alike',
    remedy: 'leave one of them out',
  };
}
