import { type Rectified, sceneToRectified } from '../camera/rectify.ts';
import type { PaperShares } from '../paper/paperLight.ts';
import { planeField } from '../picture/planeField.ts';
import { bodyToScene, directionToScene, type ShapeSeat } from './shapeSeat.ts';
import type { ShapeStation } from './shapeStations.ts';

/** Lines across the edge, one a station: three colours of `count` samples each, from `fromMm` outwards. */
export interface LinesAcross {
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
export function linesAcross(
  shares: PaperShares,
  rectified: Rectified,
  seat: ShapeSeat,
  stations: readonly ShapeStation[],
  reach: { readonly insideMm: number; readonly outsideMm: number; readonly stepMm: number },
  centreMm: (station: number) => number,
): LinesAcross {
  const { stepMm } = reach;
  const before = Math.ceil(reach.insideMm / stepMm);
  const count = before + Math.ceil(reach.outsideMm / stepMm) + 1;
  const values = new Float32Array(stations.length * 3 * count);
  const stepPx = stepMm / rectified.mmPerPixel;
  const fields = shares.planes.map((plane) => planeField(plane, shares.widthPx, shares.heightPx));
  stations.forEach((station, i) => {
    const start = sceneToRectified(rectified, bodyToScene(seat, station.at));
    const out = directionToScene(seat, station.normal);
    const offsetPx = centreMm(i) / rectified.mmPerPixel;
    for (let j = 0; j < count; j++) {
      const t = offsetPx + (j - before) * stepPx;
      fields.forEach((field, colour) => {
        values[(3 * i + colour) * count + j] = field(start.x + t * out.x, start.y - t * out.y);
      });
    }
  });
  return { fromMm: -before * stepMm, stepMm, count, values };
}
