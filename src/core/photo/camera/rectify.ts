import { type Box, type Point, point } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import { type View, type ViewMap, viewMap } from './view.ts';

/** A picture of the scene square on, every pixel `mmPerPixel` wide and high. */
export interface Rectified {
  readonly picture: Picture;
  readonly mmPerPixel: number;
  /** The scene place at the centre of the upper left pixel; scene y runs up, the picture's y down. */
  readonly origin: Point<'scene'>;
}

export interface RectifyOptions {
  readonly mmPerPixel: number;
  readonly box: Box<'scene'>;
}

/**
 * The part of the scene in `box`, seen square on. Places outside the photograph take the colour of its nearest pixel.
 * Method: each pixel is looked up in the photograph between its four nearest pixels, or the mean of several such
 * look-ups where the photograph is finer; the way there is exact every eighth pixel and straight between.
 */
export function rectify(picture: Picture, view: View, { mmPerPixel, box }: RectifyOptions): Rectified {
  const widthPx = Math.max(1, Math.round((box.max.x - box.min.x) / mmPerPixel));
  const heightPx = Math.max(1, Math.round((box.max.y - box.min.y) / mmPerPixel));
  const origin = point<'scene'>(box.min.x + mmPerPixel / 2, box.max.y - mmPerPixel / 2);
  const ways = wayGrid(viewMap(view), origin, mmPerPixel, widthPx, heightPx);
  const rgb = new Uint8Array(3 * widthPx * heightPx);
  const samples = Math.max(1, Math.min(MOST_SAMPLES, Math.round(ways.photoPxPerPixel)));
  const sum = new Float64Array(3);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) {
      sum.fill(0);
      for (let j = 0; j < samples; j++)
        for (let i = 0; i < samples; i++) {
          const share = (step: number) => (step + 1 / 2) / samples - 1 / 2;
          addColour(sum, picture, ways, x + share(i), y + share(j));
        }
      for (let c = 0; c < 3; c++) rgb[3 * (y * widthPx + x) + c] = Math.round(sum[c] / (samples * samples));
    }
  return { picture: { widthPx, heightPx, rgb }, mmPerPixel, origin };
}

/** The scene place at a point of the rectified picture. */
export function rectifiedToScene(rectified: Rectified, at: Point<'photo'>): Point<'scene'> {
  const { origin, mmPerPixel } = rectified;
  return point(origin.x + at.x * mmPerPixel, origin.y - at.y * mmPerPixel);
}

/** Where a scene place lies in the rectified picture. */
export function sceneToRectified(rectified: Rectified, place: Point<'scene'>): Point<'photo'> {
  const { origin, mmPerPixel } = rectified;
  return point((place.x - origin.x) / mmPerPixel, (origin.y - place.y) / mmPerPixel);
}

/** The upright box in the scene round everything that the picture shows. */
export function sceneBounds(picture: Pick<Picture, 'widthPx' | 'heightPx'>, view: View): Box<'scene'> {
  const map = viewMap(view);
  const [right, lower] = [picture.widthPx - 1, picture.heightPx - 1];
  const rim = Array.from({ length: RIM_STEPS + 1 }, (_, step) => step / RIM_STEPS).flatMap((share) => [
    map.toScene(point(share * right, 0)),
    map.toScene(point(share * right, lower)),
    map.toScene(point(0, share * lower)),
    map.toScene(point(right, share * lower)),
  ]);
  const [xs, ys] = [rim.map((place) => place.x), rim.map((place) => place.y)];
  return { min: point(Math.min(...xs), Math.min(...ys)), max: point(Math.max(...xs), Math.max(...ys)) };
}

/** Points along each side of the picture: the sides bow by far less than a pixel between them. */
const RIM_STEPS = 32;
const GRID_PX = 8;
const MOST_SAMPLES = 6;

interface WayGrid {
  readonly columns: number;
  readonly places: Float64Array;
  /** Photo pixels to a rectified one, in the middle. */
  readonly photoPxPerPixel: number;
}

function wayGrid(
  map: ViewMap,
  origin: Point<'scene'>,
  mmPerPixel: number,
  widthPx: number,
  heightPx: number,
): WayGrid {
  const columns = Math.ceil(widthPx / GRID_PX) + 3;
  const rows = Math.ceil(heightPx / GRID_PX) + 3;
  const places = new Float64Array(2 * columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const x = origin.x + (column - 1) * GRID_PX * mmPerPixel;
      const y = origin.y - (row - 1) * GRID_PX * mmPerPixel;
      const seen = map.toPhoto(point(x, y));
      places[2 * (row * columns + column)] = seen.x;
      places[2 * (row * columns + column) + 1] = seen.y;
    }
  const middle = 2 * (Math.floor(rows / 2) * columns + Math.floor(columns / 2));
  const step = (by: number) =>
    Math.hypot(places[middle + by] - places[middle], places[middle + by + 1] - places[middle + 1]);
  return { columns, places, photoPxPerPixel: Math.max(step(-2), step(-2 * columns)) / GRID_PX };
}

function addColour(sum: Float64Array, picture: Picture, ways: WayGrid, x: number, y: number): void {
  const [gridX, gridY] = [x / GRID_PX + 1, y / GRID_PX + 1];
  const [column, row] = [Math.floor(gridX), Math.floor(gridY)];
  const [right, down] = [gridX - column, gridY - row];
  const at = 2 * (row * ways.columns + column);
  const below = at + 2 * ways.columns;
  const p = ways.places;
  const mix = (place: 0 | 1) =>
    (p[at + place] * (1 - right) + p[at + 2 + place] * right) * (1 - down) +
    (p[below + place] * (1 - right) + p[below + 2 + place] * right) * down;
  addBetween(sum, picture, mix(0), mix(1));
}

function addBetween(sum: Float64Array, { widthPx, heightPx, rgb }: Picture, x: number, y: number): void {
  const inX = Math.min(Math.max(x, 0), widthPx - 1);
  const inY = Math.min(Math.max(y, 0), heightPx - 1);
  const column = Math.max(0, Math.min(Math.floor(inX), widthPx - 2));
  const row = Math.max(0, Math.min(Math.floor(inY), heightPx - 2));
  const [right, down] = [inX - column, inY - row];
  const at = 3 * (row * widthPx + column);
  const below = at + 3 * widthPx;
  for (let c = 0; c < 3; c++)
    sum[c] +=
      (rgb[at + c] * (1 - right) + rgb[at + 3 + c] * right) * (1 - down) +
      (rgb[below + c] * (1 - right) + rgb[below + 3 + c] * right) * down;
}
