import { distanceBetween, hypot, type Point, point, WELD_MM } from '../../base/index.ts';
import { type Chain, circleChain } from '../../curve/index.ts';

/** What a plate carries at an area: the sound post, or the bass bar. */
export type AreaName = 'post' | 'bar';

/**
 * The wood that post or bar stand on: all places within a half width of a straight stretch. A post's is a disc, its stretch a
 * single place; a bar's is a strip with rounded ends. Plate frame: x to the right as one looks at the plate's outside with the
 * neck up, so that the post stands right of the centre line of the top, left of that of the back.
 */
export interface PlateArea {
  readonly name: AreaName;
  readonly from: Point<'body'>;
  readonly to: Point<'body'>;
  readonly halfWidthMm: number;
}

/** An area, how much thicker than the map its wood is, and how far beyond it that is felt. */
export interface ThickArea extends PlateArea {
  /** Below 0 where the wood is thinner. */
  readonly extraMm: number;
  readonly reachMm: number;
}

/** The area as it lies on the other plate: what the top has right of its centre line the back has left of its own. */
export function onOtherPlate(area: PlateArea): PlateArea {
  return { ...area, from: point(-area.from.x, area.from.y), to: point(-area.to.x, area.to.y) };
}

/** mm from a place to an area; 0 in it. */
export function distanceToArea({ from, to, halfWidthMm }: PlateArea, x: number, y: number): number {
  const [alongX, alongY] = [to.x - from.x, to.y - from.y];
  const squared = alongX * alongX + alongY * alongY;
  const share = squared > 0 ? ((x - from.x) * alongX + (y - from.y) * alongY) / squared : 0;
  const t = Math.min(1, Math.max(0, share));
  return Math.max(0, hypot(x - from.x - t * alongX, y - from.y - t * alongY) - halfWidthMm);
}

/** mm that an area adds at a place: all of it in the area, falling level to nothing where its reach ends. */
export function extraAt(area: ThickArea, x: number, y: number): number {
  const t = distanceToArea(area, x, y) / area.reachMm;
  return t >= 1 ? 0 : area.extraMm * (1 - t * t * (3 - 2 * t));
}

/** Half widths between two places that are looked at across an area, and the most of them along it. */
const STEP_SHARE = 0.5;
const MOST_ALONG = 64;

/** Places all over an area, its middle line and edges among them. */
export function placesInArea(area: PlateArea): readonly Point<'body'>[] {
  const { from, to, halfWidthMm: half } = area;
  const lengthMm = distanceBetween(from, to);
  const [alongX, alongY] = heading(area);
  const rows = Math.min(MOST_ALONG, Math.ceil((lengthMm / 2 + half) / (STEP_SHARE * half)));
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const places: Point<'body'>[] = [];
  for (let row = -rows; row <= rows; row++)
    for (let across = -half; across <= half; across += STEP_SHARE * half) {
      const along = ((lengthMm / 2 + half) * row) / rows;
      const at = point<'body'>(
        middle.x + along * alongX + across * alongY,
        middle.y + along * alongY - across * alongX,
      );
      if (distanceToArea(area, at.x, at.y) < WELD_MM) places.push(at);
    }
  return places;
}

/** The edge of an area, closed and anticlockwise. */
export function areaChain(area: PlateArea): Chain<'body'> {
  const { from, to, halfWidthMm: half } = area;
  if (distanceBetween(from, to) < WELD_MM) return circleChain(from, half);
  const [alongX, alongY] = heading(area);
  const beside = ({ x, y }: Point<'body'>, side: 1 | -1, bulge: number) => ({
    x: x + side * half * alongY,
    y: y - side * half * alongX,
    bulge,
  });
  return {
    closed: true,
    vertices: [beside(from, 1, 0), beside(to, 1, 1), beside(to, -1, 0), beside(from, -1, 1)],
  };
}

/** Direction of an area's stretch; up the body for a single place. */
function heading({ from, to }: PlateArea): readonly [number, number] {
  const lengthMm = distanceBetween(from, to);
  return lengthMm < WELD_MM ? [0, 1] : [(to.x - from.x) / lengthMm, (to.y - from.y) / lengthMm];
}
