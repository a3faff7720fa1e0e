import { accept, type Checked, type Point, point, refuse } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import { type Rectified, rectifiedToScene, sceneToRectified } from '../camera/rectify.ts';
import { type PaperShares, paperShares } from '../paper/paperLight.ts';
import { fillPolygon } from '../picture/fillPolygon.ts';
import { largestPiece } from '../picture/largestPiece.ts';
import { type Field, planeField } from '../picture/planeField.ts';
import { outwardNormals } from './fineContour.ts';
import { farthestPath, nearestDark, pathBetween } from './linePath.ts';
import { noLine, noPaper } from './profileTrouble.ts';
import { evenOpen } from './thingContour.ts';
import type { ProfileScene } from './tracedProfile.ts';
import type { ContourPlace } from './traceSilhouette.ts';

const STEP_MM = 0.5;
/** Share of the paper's light that a line must take away, and the share of the darkest line's. */
const LEAST_DARK = 0.1;
const DARK_SHARE = 0.4;
/** Share of all looked at that is darker than the darkness a line is measured by. */
const DARKEST_SHARE = 0.0005;
/** mm. The line is weighed this far to each side; the paper beside it is read beyond. */
const WEIGHED_MM = 0.7;
const BESIDE_MM = 1.4;
const ALONG_MM = 0.5;
const SMOOTH_MM = 0.6;
/** The way along a line wanders within its width: it is brought to the middle some times, smoothed over 2 mm between. */
const CENTRINGS = 3;
const SMOOTHED_PLACES = 2;
const LEAST_LENGTH_MM = 20;
/** mm left out at each end, where a line thins out. */
const END_MM = 0.8;

/**
 * The middle of the dark line drawn on the sheet's white, from end to end, about every half millimetre; between `ends` where they are
 * given. Faults: `profile.no-paper`, `profile.no-line`.
 * Method: the darkest connected piece; the way along it between its two farthest places; then the balance point of the darkness across
 * it, less the paper's own on both sides.
 */
export function traceLine(
  { rectified, ground }: ProfileScene,
  ends?: readonly [Point<'scene'>, Point<'scene'>],
): Checked<readonly ContourPlace[]> {
  const shares = paperShares(rectified, ground.whites);
  if (shares === null) return refuse(noPaper('line'));
  const { widthPx, heightPx } = shares;
  const dark = darkness(shares);
  const open = calmPixels(rectified, ground.calm, widthPx, heightPx);
  const level = darkLevel(dark, open);
  const inside = Uint8Array.from(dark, (value, i) => (open[i] && value > level ? 1 : 0));
  const piece = largestPiece({ widthPx, heightPx, inside: closedGaps(inside, widthPx) });
  const path = ends
    ? pathBetween(
        piece,
        ...(ends.map((end) => nearestDark(piece, sceneToRectified(rectified, end))) as [number, number]),
      )
    : farthestPath(piece);
  const { mmPerPixel } = rectified;
  if (path.length * mmPerPixel < LEAST_LENGTH_MM) return refuse(noLine());
  const even = evenOpen(
    smoothed(path, Math.max(1, Math.round(SMOOTH_MM / mmPerPixel))),
    STEP_MM / mmPerPixel,
  );
  const skip = Math.ceil(END_MM / STEP_MM);
  const field = planeField(dark, widthPx, heightPx);
  let line: readonly Point<'photo'>[] = even;
  for (let turn = 0; turn < CENTRINGS; turn++)
    line = evenOpen(smoothed(onMiddle(field, line, mmPerPixel), SMOOTHED_PLACES), STEP_MM / mmPerPixel);
  const centred = onMiddle(field, line, mmPerPixel);
  return accept(
    centred.slice(skip, -skip).map((place) => ({
      ...rectifiedToScene(rectified, place),
      sigmaMm: place.sigmaPx * mmPerPixel,
      soft: false,
    })),
  );
}

function darkness({ planes }: PaperShares): Float32Array {
  const [r, g, b] = planes;
  return r.map((share, i) => 1 - (share + g[i] + b[i]) / 3);
}

/** The white middle of the sheet, less a rim where the squares' blur reaches. */
function calmPixels(
  rectified: Rectified,
  calm: readonly Point<'scene'>[],
  widthPx: number,
  heightPx: number,
): Uint8Array {
  const middle = calm.reduce(
    (sum, { x, y }) => ({ x: sum.x + x / calm.length, y: sum.y + y / calm.length }),
    { x: 0, y: 0 },
  );
  const open = new Uint8Array(widthPx * heightPx);
  const corners = calm.flatMap(({ x, y }) => {
    const inner = point<'scene'>(x - Math.sign(x - middle.x) * RIM_MM, y - Math.sign(y - middle.y) * RIM_MM);
    const { x: px, y: py } = sceneToRectified(rectified, inner);
    return [px, py];
  });
  fillPolygon(open, widthPx, heightPx, corners, 1);
  return open;
}

const RIM_MM = 1;

function darkLevel(dark: Float32Array, open: Uint8Array): number {
  const bins = new Float64Array(256);
  let total = 0;
  for (let i = 0; i < dark.length; i++) {
    if (!open[i]) continue;
    bins[Math.min(255, Math.max(0, Math.floor(dark[i] * 256)))]++;
    total++;
  }
  let above = 0;
  let bin = 255;
  while (bin > 0 && above < DARKEST_SHARE * total) above += bins[bin--];
  return Math.max(LEAST_DARK, (DARK_SHARE * bin) / 256);
}

/** Pixels beside dark ones joined to them, so that a thin pencil line does not fall apart. */
function closedGaps(inside: Uint8Array, widthPx: number): Uint8Array {
  const wide = inside.slice();
  for (let i = widthPx + 1; i < inside.length - widthPx - 1; i++) {
    if (!inside[i]) continue;
    for (const row of [-widthPx, 0, widthPx]) for (const column of [-1, 0, 1]) wide[i + row + column] = 1;
  }
  return wide;
}

function smoothed(path: readonly Point<'photo'>[], reach: number): readonly Point<'photo'>[] {
  return path.map((_, i) => {
    const width = Math.min(reach, i, path.length - 1 - i);
    const near = path.slice(i - width, i + width + 1);
    return point(
      near.reduce((sum, { x }) => sum + x, 0) / near.length,
      near.reduce((sum, { y }) => sum + y, 0) / near.length,
    );
  });
}

function onMiddle(field: Field, line: readonly Point<'photo'>[], mmPerPixel: number) {
  const normals = outwardNormals(line, false);
  const weighed = WEIGHED_MM / mmPerPixel;
  const beside = BESIDE_MM / mmPerPixel;
  const lines = Math.max(1, Math.round((2 * ALONG_MM) / mmPerPixel));
  const found = line.map((at, i) => {
    const n = normals[i];
    const levelAt = (t: number): number => {
      let sum = 0;
      for (let k = 0; k < lines; k++) {
        const aside = k - (lines - 1) / 2;
        sum += field(at.x + t * n.x - aside * n.y, at.y + t * n.y + aside * n.x);
      }
      return sum / lines;
    };
    const paper: number[] = [];
    for (let t = weighed; t <= beside; t += 0.5) paper.push(levelAt(-t), levelAt(t));
    const ground = paper.reduce((sum, value) => sum + value, 0) / paper.length;
    const spread = Math.sqrt(paper.reduce((sum, value) => sum + (value - ground) ** 2, 0) / paper.length);
    let [weight, moment, arm] = [0, 0, 0];
    const half = Math.round(2 * weighed);
    for (let k = -half; k <= half; k++) {
      const t = k / 2;
      const value = Math.max(0, levelAt(t) - ground);
      weight += value;
      moment += value * t;
      arm += t * t;
    }
    const sure = weight > LEAST_DARK;
    return {
      t: sure ? Math.min(weighed, Math.max(-weighed, moment / weight)) : Number.NaN,
      sigmaPx: sure ? Math.max(LEAST_SIGMA_PX, (spread * Math.sqrt(2 * arm)) / weight) : weighed,
    };
  });
  return line.map((at, i) => {
    const near = found
      .slice(Math.max(0, i - AGREEING), i + AGREEING + 1)
      .map(({ t }) => t)
      .filter(Number.isFinite);
    const middle = near.length > 0 ? medianOf(near) : 0;
    const { t, sigmaPx } = found[i];
    const agrees = Math.abs(t - middle) * mmPerPixel < ASTRAY_MM;
    const moved = agrees ? t : middle;
    return {
      ...point<'photo'>(at.x + moved * normals[i].x, at.y + moved * normals[i].y),
      sigmaPx: agrees ? sigmaPx : weighed,
    };
  });
}

/** Places on either side that a place is held against, and how far it may lie from their middle one before that is taken. */
const AGREEING = 3;
const ASTRAY_MM = 0.25;
/** px. No line's middle is known better than this. */
const LEAST_SIGMA_PX = 0.02;
