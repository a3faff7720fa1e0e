import { hypot, type Point, point } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import { fitEdgeProfile } from '../picture/edgeProfileFit.ts';
import type { Field } from '../picture/planeField.ts';

/** A place of a contour with its spread across it, px; `fitted` is false where only the level told. */
export interface FinePlace extends Point<'photo'> {
  readonly sigmaPx: number;
  readonly fitted: boolean;
  /** How soft the edge is, as the spread of the blur that fits it; 0 where none was fitted. */
  readonly blurPx: number;
}

/** How a contour is looked at, mm; `mmPerPixel` brings it to px. */
interface Reach {
  readonly mmPerPixel: number;
  readonly closed: boolean;
}

const LOOK_IN_MM = 4;
const LOOK_OUT_MM = 2;
/** mm compared to either side of an edge when the sharpest is looked for; left out for blur. */
const SIDE_MM = 0.5;
const BLUR_MM = 0.1;
const FIT_MM = 2;
/** mm along the edge over which a profile is averaged, to each side. */
const ALONG_MM = 0.4;
const STEP_PX = 0.5;
/** mm. A fit farther than this from the sharpest step found another edge. */
const ASTRAY_MM = 0.6;
/** mm. What an edge is good to where no profile could be fitted. */
const UNFITTED_MM = 0.1;

/**
 * A contour brought onto the edge of a thing, to a fraction of a pixel. `field` is 1 on the thing and 0 on the paper; the thing lies
 * to the right of the contour (y down). Method: the sharpest fall near each place (a shadow's border is soft), agreed with its
 * neighbours, then a blurred step with ramps fitted there; twice, so that the normals are those of the edge.
 */
export function fineContour(
  field: Field,
  contour: readonly Point<'photo'>[],
  reach: Reach,
): readonly FinePlace[] {
  const rough = onSharpest(field, contour, reach);
  return fittedPlaces(field, rough, reach);
}

function onSharpest(
  field: Field,
  contour: readonly Point<'photo'>[],
  { mmPerPixel, closed }: Reach,
): readonly Point<'photo'>[] {
  const normals = outwardNormals(contour, closed);
  const side = Math.max(2, SIDE_MM / mmPerPixel);
  const gap = Math.max(0.5, BLUR_MM / mmPerPixel);
  const inner = LOOK_IN_MM / mmPerPixel;
  const outer = LOOK_OUT_MM / mmPerPixel;
  const offsets = contour.map((at, i) => {
    const n = normals[i];
    const levelAt = (t: number) => field(at.x + t * n.x, at.y + t * n.y);
    let best = 0;
    let most = Number.NEGATIVE_INFINITY;
    for (let t = -inner; t <= outer; t += STEP_PX) {
      let fall = 0;
      for (let k = 0; k < SAMPLES; k++) {
        const away = gap + ((k + 0.5) / SAMPLES) * side;
        fall += levelAt(t - away) - levelAt(t + away);
      }
      // A little dearer with distance, so that of two equal edges the nearer one is taken.
      const worth = fall / SAMPLES - Math.abs(t) * (FARTHER_COSTS / inner);
      if (worth > most) [most, best] = [worth, t];
    }
    return best;
  });
  return contour.map((at, i) => {
    const near: number[] = [];
    for (let k = -AGREEING; k <= AGREEING; k++) {
      const j = closed ? (i + k + contour.length) % contour.length : i + k;
      if (j >= 0 && j < contour.length) near.push(offsets[j]);
    }
    const t = medianOf(near);
    return point(at.x + t * normals[i].x, at.y + t * normals[i].y);
  });
}

const SAMPLES = 4;
const FARTHER_COSTS = 0.15;
const AGREEING = 3;

function fittedPlaces(
  field: Field,
  contour: readonly Point<'photo'>[],
  { mmPerPixel, closed }: Reach,
): readonly FinePlace[] {
  const normals = outwardNormals(contour, closed);
  const half = Math.max(4, FIT_MM / mmPerPixel);
  const lines = Math.max(1, Math.round((2 * ALONG_MM) / mmPerPixel));
  const count = 2 * Math.ceil(half / STEP_PX) + 1;
  const fromPx = -Math.ceil(half / STEP_PX) * STEP_PX;
  return contour.map((at, i) => {
    const n = normals[i];
    const samples = new Float64Array(count);
    for (let line = 0; line < lines; line++) {
      const aside = line - (lines - 1) / 2;
      for (let j = 0; j < count; j++) {
        const t = fromPx + j * STEP_PX;
        samples[j] += field(at.x + t * n.x - aside * n.y, at.y + t * n.y + aside * n.x) / lines;
      }
    }
    const found = fitEdgeProfile(samples, fromPx, STEP_PX);
    if (found === null || Math.abs(found.atPx) > ASTRAY_MM / mmPerPixel)
      return { ...point<'photo'>(at.x, at.y), sigmaPx: UNFITTED_MM / mmPerPixel, fitted: false, blurPx: 0 };
    return {
      ...point<'photo'>(at.x + found.atPx * n.x, at.y + found.atPx * n.y),
      sigmaPx: found.sigmaPx,
      fitted: true,
      blurPx: found.blurPx,
    };
  });
}

/** Unit normals to the left of a line (y down): away from what lies to its right. */
export function outwardNormals(line: readonly Point<'photo'>[], closed: boolean): readonly Point<'photo'>[] {
  const count = line.length;
  const at = (i: number) => line[closed ? (i + count) % count : Math.min(count - 1, Math.max(0, i))];
  return line.map((_, i) => {
    const [a, b] = [at(i - 2), at(i + 2)];
    const length = hypot(b.x - a.x, b.y - a.y) || 1;
    return point((b.y - a.y) / length, (a.x - b.x) / length);
  });
}
