import { distanceBetween } from '../../base/index.ts';
import type { Matrix3 } from '../../numeric/index.ts';
import { applyHomography, fitHomography, type SheetPair } from './homography.ts';
import type { MarkedPattern, SheetMarker } from './markedPattern.ts';
import type { FoundMarker } from './markerFinder.ts';

/** The found codes that lie on one perspective of the sheet, as corner pairs, and that perspective. */
export interface AgreeingMarkers {
  readonly count: number;
  readonly ids: ReadonlySet<number>;
  readonly corners: readonly SheetPair[];
  readonly homography: Matrix3;
  /** The found codes of the pattern that lie elsewhere. */
  readonly others: readonly FoundMarker[];
}

/** Share of the sheet's size in the picture that a lens may bend a code away from a plain perspective. */
const LENS_SHARE = 0.02;

/**
 * The largest set of found codes that one perspective explains, up to what a lens bends; null when fewer
 * than `fewest` agree.
 *
 * Method: perspectives through two codes far apart, each code taken as the first one in turn; the perspective with the
 * most codes near it is fitted again to all of them.
 */
export function agreeingMarkers(
  found: readonly FoundMarker[],
  sheet: MarkedPattern,
  fewest = FEWEST_ON_A_SHEET,
): AgreeingMarkers | null {
  const placed = new Map(sheet.markers.map((marker) => [marker.id, marker]));
  const known = found.flatMap((one) => {
    const marker = placed.get(one.id);
    return marker ? [{ found: one, corners: cornersOf(marker, one) }] : [];
  });
  let best: readonly KnownMarker[] = [];
  for (const [place, first] of known.entries())
    for (const share of [1 / 2, 1 / 3]) {
      const second = known[(place + Math.max(1, Math.floor(known.length * share))) % known.length];
      const trial = second && fitHomography([...first.corners, ...second.corners]);
      if (!trial) continue;
      const near = nearTo(trial, known, sheet);
      if (near.length > best.length) best = near;
    }
  const first = fitHomography(best.flatMap((one) => one.corners));
  if (best.length < fewest || !first) return null;
  const kept = nearTo(first, known, sheet);
  const corners = kept.flatMap((one) => one.corners);
  const homography = fitHomography(corners);
  if (!homography || kept.length < fewest) return null;
  const others = known.filter((one) => !kept.includes(one)).map((one) => one.found);
  const ids = new Set(kept.map((one) => one.found.id));
  return { count: kept.length, ids, corners, homography, others };
}

const FEWEST_ON_A_SHEET = 4;

interface KnownMarker {
  readonly found: FoundMarker;
  readonly corners: readonly SheetPair[];
}

function cornersOf(marker: SheetMarker, found: FoundMarker): SheetPair[] {
  return marker.corners.flatMap((sheet, place) => {
    const photo = found.corners[place];
    return photo ? [{ sheet, photo }] : [];
  });
}

function nearTo(
  homography: Matrix3,
  known: readonly KnownMarker[],
  { band: { min, max } }: MarkedPattern,
): readonly KnownMarker[] {
  const sizePx = distanceBetween(applyHomography(homography, min), applyHomography(homography, max));
  return known.filter(({ corners }) =>
    corners.every(
      (pair) => distanceBetween(applyHomography(homography, pair.sheet), pair.photo) < LENS_SHARE * sizePx,
    ),
  );
}
