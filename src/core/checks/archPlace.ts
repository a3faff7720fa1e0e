import type { PlateArch, StationName } from '../instrument/index.ts';
import { USUAL_LENGTH_MM } from './usualLength.ts';

/** mm on a body of 355 mm: a place this near to a corner station is at the corners. */
const AT_CORNER_MM = 12;

/** A place of a plate in words: which bout, how far from the lower end, how far from the centre line. */
export function archPlace(arch: PlateArch, xMm: number, yMm: number): string {
  const across =
    Math.abs(xMm) < 1 ? 'on the centre line' : `${Math.abs(xMm).toFixed(0)} mm from the centre line`;
  return `${boutOf(arch, yMm)}, ${yMm.toFixed(0)} mm from the lower end, ${across}`;
}

function boutOf(arch: PlateArch, yMm: number): string {
  const at = (name: StationName): number =>
    arch.stations.find((station) => station.name === name)?.yMm ?? arch.bodyLengthMm / 2;
  const reach = (AT_CORNER_MM * arch.bodyLengthMm) / USUAL_LENGTH_MM;
  const [lower, upper] = [at('lowerCorner'), at('upperCorner')];
  if (Math.abs(yMm - lower) < reach) return 'at the lower corners';
  if (Math.abs(yMm - upper) < reach) return 'at the upper corners';
  if (yMm < lower) return 'in the lower bout';
  return yMm < upper ? 'in the waist' : 'in the upper bout';
}
