import type { Point } from '../../base/index.ts';
import { type Rectified, sceneToRectified } from '../camera/rectify.ts';
import type { PaperShares } from './paperLight.ts';
import { bodyToScene, directionToScene, type ShapeSeat } from './shapeSeat.ts';
import type { ShapeStation } from './shapeStations.ts';

/** Lines across the edge, one a station: three colours of `count` samples each, from `fromMm` outwards. */
export interface EdgeProfiles {
  readonly fromMm: number;
  readonly stepMm: number;
  readonly count: number;
  /** Station by station, colour by colour. */
  readonly values: Float32Array;
}

/**
 * Lines across the edge of a seated shape, centred `centreMm` beyond its stations along the outward normals, in
 * shares of the paper's light.
 */
export function edgeProfiles(
  shares: PaperShares,
  rectified: Rectified,
  seat: ShapeSeat,
  stations: readonly ShapeStation[],
  reach: { readonly insideMm: number; readonly outsideMm: number; readonly stepMm: number },
  centreMm: (station: number) => number,
): EdgeProfiles {
  const { stepMm } = reach;
  const before = Math.ceil(reach.insideMm / stepMm);
  const count = before + Math.ceil(reach.outsideMm / stepMm) + 1;
  const values = new Float32Array(stations.length * 3 * count);
  const stepPx = stepMm / rectified.mmPerPixel;
  stations.forEach((station, i) => {
    const start = sceneToRectified(rectified, bodyToScene(seat, station.at));
    const out = directionToScene(seat, station.normal);
    const offsetPx = centreMm(i) / rectified.mmPerPixel;
    for (let j = 0; j < count; j++) {
      const t = offsetPx + (j - before) * stepPx;
      addShare(shares, start.x + t * out.x, start.y - t * out.y, values, 3 * count * i + j, count);
    }
  });
  return { fromMm: -before * stepMm, stepMm, count, values };
}

function addShare(
  { widthPx, heightPx, planes }: PaperShares,
  x: number,
  y: number,
  into: Float32Array,
  to: number,
  stride: number,
): void {
  const inX = Math.min(Math.max(x, 0), widthPx - 1.001);
  const inY = Math.min(Math.max(y, 0), heightPx - 1.001);
  const [column, row] = [Math.floor(inX), Math.floor(inY)];
  const [right, down] = [inX - column, inY - row];
  const at = row * widthPx + column;
  for (let c = 0; c < 3; c++) {
    const plane = planes[c];
    into[to + c * stride] =
      (plane[at] * (1 - right) + plane[at + 1] * right) * (1 - down) +
      (plane[at + widthPx] * (1 - right) + plane[at + widthPx + 1] * right) * down;
  }
}

/** The expected place of a station in the scene. */
export function stationInScene(
  seat: ShapeSeat,
  station: ShapeStation,
  offsetMm: number,
): { readonly at: Point<'scene'>; readonly normal: Point<'scene'> } {
  const start = bodyToScene(seat, station.at);
  const normal = directionToScene(seat, station.normal);
  return { at: { x: start.x + offsetMm * normal.x, y: start.y + offsetMm * normal.y }, normal };
}
