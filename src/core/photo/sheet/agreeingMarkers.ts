import { distanceBetween } from '../../base/index.ts';
import type { Matrix3 } from '../camera/camera.ts';
import { applyHomography, fitHomography, type SheetPair } from '../camera/homography.ts';
import type { CalibrationSheet, SheetMarker } from './calibrationSheet.ts';
import type { FoundMarker } from './markerFinder.ts';

/** The found codes that lie on one perspective of the sheet, as corner pairs, and that perspective. */
export interface AgreeingMarkers {
  readonly count: number;
  readonly corners: readonly SheetPair[];
  readonly homography: Matrix3;
}

/** Share of the sheet's size in the picture that a lens may bend a code away from a plain perspective. */
const LENS_SHARE = 0.02;

/**
 * The largest set of found codes that one perspective explains, up to what a lens bends; null when no four agree.
 *
 * Method: perspectives through two codes far apart, each code taken as the first one in turn; the perspective with the
 * most codes near it is fitted again to all of them.
 */
export function agreeingMarkers(
  found: readonly FoundMarker[],
  sheet: CalibrationSheet,
): AgreeingMarkers | null {
  const placed = new Map(sheet.markers.map((marker) => [marker.id, marker]));
  const known = found.flatMap((one) => {
    const marker = placed.get(one.id);
    return marker ? [cornersOf(marker, one)] : [];
  });
  let best: readonly SheetPair[][] = [];
  for (const [place, first] of known.entries())
    for (const share of [1 / 2, 1 / 3]) {
      const second = known[(place + Math.floor(known.length * share)) % known.length];
      const trial = second && fitHomography([...first, ...second]);
      if (!trial) continue;
      const near = nearTo(trial, known, sheet);
      if (near.length > best.length) best = near;
    }
  const first = fitHomography(best.flat());
  if (best.length < FEWEST || !first) return null;
  const kept = nearTo(first, known, sheet);
  const homography = fitHomography(kept.flat());
  return homography && kept.length >= FEWEST
    ? { count: kept.length, corners: kept.flat(), homography }
    : null;
}

const FEWEST = 4;

function cornersOf(marker: SheetMarker, found: FoundMarker): SheetPair[] {
  return marker.corners.flatMap((sheet, place) => {
    const photo = found.corners[place];
    return photo ? [{ sheet, photo }] : [];
  });
}

function nearTo(homography: Matrix3, known: readonly SheetPair[][], sheet: CalibrationSheet): SheetPair[][] {
  const { min, max } = sheet.band;
  const sizePx = distanceBetween(applyHomography(homography, min), applyHomography(homography, max));
  return known.filter((corners) =>
    corners.every(
      (pair) => distanceBetween(applyHomography(homography, pair.sheet), pair.photo) < LENS_SHARE * sizePx,
    ),
  );
}
