import type { Point } from '../../base/index.ts';
import type { CalibrationSheet } from './calibrationSheet.ts';

/** A side with fewer of its points in view than this does not hold the camera. */
const LEAST_SHARE = 1 / 3;

/** The sides of the band, by name, of which fewer than a third of the saddles are among `seen`. */
export function hiddenSides(sheet: CalibrationSheet, seen: readonly Point<'sheet'>[]): readonly string[] {
  const { min, max } = sheet.band;
  const inset = sheet.squareMm * 1.5;
  const sides: readonly (readonly [string, (place: Point<'sheet'>) => boolean])[] = [
    ['lower long side', (place) => place.y < min.y + inset],
    ['upper long side', (place) => place.y > max.y - inset],
    ['left short side', (place) => place.x < min.x + inset],
    ['right short side', (place) => place.x > max.x - inset],
  ];
  return sides
    .filter(([, isOn]) => seen.filter(isOn).length < LEAST_SHARE * sheet.saddles.filter(isOn).length)
    .map(([name]) => name);
}
