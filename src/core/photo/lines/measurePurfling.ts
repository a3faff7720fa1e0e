import { hypot, point } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { EdgeStrips } from './edgeStrips.ts';
import { type DoubleLine, fitDoubleLine, type LineShape } from './fitDoubleLine.ts';
import type { PurflingPlace } from './purflingTrace.ts';

/** mm along the edge over which profiles are averaged, either way. */
const AVERAGED_MM = 1.6;
/** mm beyond each dark line's middle that the fit looks at. */
const BESIDE_MM = 0.85;
/** Places whose width and blur are measured freely. */
const MOST_FREE = 160;
const FEWEST_FREE = 12;
const START_BLUR_MM = 0.14;
/** mm. Besides noise: how far a dark line's own middle wanders in real inlay (an estimate). */
const LEAST_SIGMA_MM = 0.01;
/** px. What grain and pixels leave on painted lines, and where the two dark lines have melted into one. */
const LEAST_SIGMA_PX = 0.08;
const MELTED_SIGMA_PX = 0.15;

export interface MeasuredPurfling {
  readonly places: readonly (PurflingPlace | null)[];
  readonly shape: LineShape;
  readonly widthSigmaMm: number;
  /** Whether the two dark lines are parted in the picture. */
  readonly parted: boolean;
}

/**
 * The middle line at sub-pixel places near the followed one (`depthMm`, NaN where there is none). First width and blur
 * are measured freely on many places; with their medians every place is fitted again.
 */
export function measurePurfling(
  strips: EdgeStrips,
  edge: readonly EdgePoint[],
  depthMm: Float64Array,
  widthMm: number,
  pxPerMm: number,
): MeasuredPurfling {
  const start = { widthMm, blurMm: Math.max(START_BLUR_MM, 1 / 2 / pxPerMm) };
  const rows = Array.from(depthMm.keys()).filter((i) => !Number.isNaN(depthMm[i]));
  const every = Math.max(1, Math.floor(rows.length / MOST_FREE));
  const fits = rows
    .filter((_, k) => k % every === 0)
    .flatMap((row) => {
      const fit = fitAt(strips, edge, depthMm, row, start, true);
      return fit ? [fit] : [];
    });
  const enough = fits.length >= FEWEST_FREE;
  const shape = enough
    ? { widthMm: medianOf(fits.map((fit) => fit.widthMm)), blurMm: medianOf(fits.map((fit) => fit.blurMm)) }
    : start;
  const scatter = 1.4826 * medianOf([...fits.map((fit) => Math.abs(fit.widthMm - shape.widthMm)), 0]);
  const parted = enough && shape.widthMm > PARTED_BLURS * shape.blurMm;
  const least = hypot(LEAST_SIGMA_MM, (parted ? LEAST_SIGMA_PX : MELTED_SIGMA_PX) / pxPerMm);
  const places = edge.map((place, row): PurflingPlace | null => {
    if (Number.isNaN(depthMm[row])) return null;
    const fit = fitAt(strips, edge, depthMm, row, shape, false);
    return fit && placeAt(place, depthMm[row] + fit.middleMm, hypot(least, fit.sigmaMm), pxPerMm);
  });
  return {
    places,
    shape,
    widthSigmaMm: hypot(WIDTH_SIGMA_PX / pxPerMm, scatter / Math.sqrt(Math.max(1, fits.length))),
    parted,
  };
}

/** Nearer than this the two bells and the strip between them trade light, and their distance reads too small. */
const PARTED_BLURS = 4;
/** px. What pixels and the bells' own shape leave of error in the width (simulated photographs). */
const WIDTH_SIGMA_PX = 0.2;

function placeAt(place: EdgePoint, depthMm: number, sigmaMm: number, pxPerMm: number): PurflingPlace {
  const depthPx = depthMm * pxPerMm;
  return {
    point: point(place.point.x - depthPx * place.normal.x, place.point.y - depthPx * place.normal.y),
    normal: place.normal,
    side: place.side,
    section: place.section,
    along: place.along,
    depthPx,
    sigmaPx: sigmaMm * pxPerMm,
  };
}

function fitAt(
  strips: EdgeStrips,
  edge: readonly EdgePoint[],
  depthMm: Float64Array,
  row: number,
  shape: LineShape,
  free: boolean,
): DoubleLine | null {
  const { fromMm, stepMm } = strips;
  const reach = Math.round((shape.widthMm / 2 + BESIDE_MM) / stepMm);
  const profile = new Float64Array(2 * reach + 1);
  let total = 0;
  const own = edge[row];
  // The place itself and its neighbours on the same section, each with a share that falls to nothing.
  for (let way = -1; way <= 1; way += 2)
    for (let k = way < 0 ? row : row + 1; k >= 0 && k < edge.length; k += way) {
      const other = edge[k];
      const away = Math.abs(other.along - own.along);
      if (away >= AVERAGED_MM || other.side !== own.side || other.section !== own.section) break;
      const share = 1 - away / AVERAGED_MM;
      if (addStrip(strips, k, (depthMm[k] - fromMm) / stepMm, share, profile)) total += share;
    }
  if (total === 0) return null;
  for (let j = 0; j < profile.length; j++) profile[j] /= total;
  return fitDoubleLine(profile, -reach * stepMm, stepMm, shape, free);
}

/** Adds a share of a row of the strips about `middle` to the profile; false where the row does not reach so far, or has no middle. */
function addStrip(
  { samples, light }: EdgeStrips,
  row: number,
  middle: number,
  share: number,
  profile: Float64Array,
): boolean {
  const reach = (profile.length - 1) / 2;
  if (!(middle - reach >= 0 && middle + reach + 1 < samples)) return false;
  const first = Math.floor(middle) - reach;
  const between = middle - Math.floor(middle);
  for (let j = 0; j < profile.length; j++) {
    const at = row * samples + first + j;
    profile[j] += share * (light[at] * (1 - between) + light[at + 1] * between);
  }
  return true;
}
