import type { Point } from '../../base/index.ts';
import type { CalibrationSheet } from './calibrationSheet.ts';
import { convexHull, polygonArea } from './convexHull.ts';

/** A side with fewer of its points in view than this is named as hidden. */
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

/** How much of the sheet the saddles seen enclose, 0 to 1: what lies outside is only extrapolated. */
export function enclosedShare(sheet: CalibrationSheet, seen: readonly Point<'sheet'>[]): number {
  if (seen.length < 3) return 0;
  return polygonArea(convexHull(seen)) / polygonArea(convexHull(sheet.saddles));
}
