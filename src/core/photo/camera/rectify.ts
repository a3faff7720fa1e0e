import { type Box, hypot, letGo, type Point, point } from '../../base/index.ts';
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
  const samples = Math.max(1, Math.min(MOST_SAMPLES, Math.round(ways.photoPxPerPixel)));
  const rgb = new Uint8Array(3 * widthPx * heightPx);
  const rows = wayRows(ways, samples);
  for (let y = 0; y < heightPx; y += TILE_PX) {
    const high = Math.min(TILE_PX, heightPx - y);
    for (let row = 0; row < high * samples; row++) fillWayRow(ways, y + spot(row, samples), rows, row);
    for (let x = 0; x < widthPx; x += TILE_PX)
      fillTile(picture, rows, { x, y, wide: Math.min(TILE_PX, widthPx - x), high, widthPx }, rgb);
  }
  letGo(ways.places, rows.x, rows.y);
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
/** px. A side of the tiles that the picture is filled by. */
const TILE_PX = 64;

/** Where every eighth pixel of the rectified picture lies in the photograph; one step of margin to the left and above, two beyond. */
interface WayGrid {
  readonly columns: number;
  /** Photo x and y, px, row by row. */
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
    hypot(places[middle + by] - places[middle], places[middle + by + 1] - places[middle + 1]);
  return { columns, places, photoPxPerPixel: Math.max(step(-2), step(-2 * columns)) / GRID_PX };
}

/** Where the `step`-th of the look-ups that lie `samples` a pixel stands, px. */
function spot(step: number, samples: number): number {
  return (step + 1 / 2) / samples - 1 / 2;
}

/** The ways of the rows of look-ups in one band of tiles, written anew for each: photo x and y, px, at every column of the grid, row by row. */
interface WayRows {
  readonly columns: number;
  readonly samples: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

function wayRows({ columns }: WayGrid, samples: number): WayRows {
  const size = columns * samples * TILE_PX;
  return { columns, samples, x: new Float64Array(size), y: new Float64Array(size) };
}

/** Writes one row of look-ups, at `y` px of the rectified picture. */
function fillWayRow({ places, columns }: WayGrid, y: number, rows: WayRows, row: number): void {
  const gridY = y / GRID_PX + 1;
  const gridRow = Math.floor(gridY);
  const down = gridY - gridRow;
  const upper = 2 * gridRow * columns;
  const lower = upper + 2 * columns;
  const to = row * columns;
  for (let column = 0; column < columns; column++) {
    const at = 2 * column;
    rows.x[to + column] = places[upper + at] * (1 - down) + places[lower + at] * down;
    rows.y[to + column] = places[upper + at + 1] * (1 - down) + places[lower + at + 1] * down;
  }
}

/** A tile of the rectified picture, px, in a picture `widthPx` wide. */
interface Tile {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
  readonly widthPx: number;
}

/** Writes one tile of `rgb`: small enough that the photograph's pixels stay at hand, however it was turned. */
function fillTile(picture: Picture, rows: WayRows, tile: Tile, rgb: Uint8Array): void {
  const { samples } = rows;
  const sum = new Float32Array(3 * tile.wide);
  const weight = 1 / (samples * samples);
  for (let row = 0; row < tile.high; row++) {
    sum.fill(0);
    for (let j = 0; j < samples; j++)
      for (let i = 0; i < samples; i++)
        addColours(picture, rows, row * samples + j, tile.x + spot(i, samples), sum);
    const to = 3 * ((tile.y + row) * tile.widthPx + tile.x);
    for (let i = 0; i < sum.length; i++) rgb[to + i] = (sum[i] * weight + 1 / 2) | 0;
  }
}

/** Adds to `sum` the photograph's colours, 0 to 255, each between its four nearest pixels, at steps of a pixel from `fromX`. */
function addColours(
  { widthPx, heightPx, rgb }: Picture,
  rows: WayRows,
  row: number,
  fromX: number,
  sum: Float32Array,
): void {
  const [lastX, lastY] = [widthPx - 1, heightPx - 1];
  const [lastLeft, lastUpper] = [Math.max(0, widthPx - 2), Math.max(0, heightPx - 2)];
  const right3 = widthPx > 1 ? 3 : 0;
  const below3 = heightPx > 1 ? 3 * widthPx : 0;
  const base = row * rows.columns;
  const { x: waysX, y: waysY } = rows;
  for (let to = 0, i = fromX; to < sum.length; to += 3, i++) {
    const gridX = i / GRID_PX + 1;
    const column = gridX | 0;
    const along = gridX - column;
    const way = base + column;
    const x = Math.min(lastX, Math.max(0, waysX[way] + (waysX[way + 1] - waysX[way]) * along));
    const y = Math.min(lastY, Math.max(0, waysY[way] + (waysY[way + 1] - waysY[way]) * along));
    const left = Math.min(lastLeft, x | 0);
    const upper = Math.min(lastUpper, y | 0);
    const right = x - left;
    const down = y - upper;
    const at = 3 * (upper * widthPx + left);
    const beside = at + right3;
    const below = at + below3;
    const across = below + right3;
    const shareBeside = right * (1 - down);
    const shareBelow = down * (1 - right);
    const shareAcross = right * down;
    const shareHere = 1 - right - down + shareAcross;
    for (let c = 0; c < 3; c++) {
      const upperMix = rgb[at + c] * shareHere + rgb[beside + c] * shareBeside;
      const lowerMix = rgb[below + c] * shareBelow + rgb[across + c] * shareAcross;
      sum[to + c] += upperMix + lowerMix;
    }
  }
}
