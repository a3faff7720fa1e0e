import { atan2, cos, type Point, point, sin } from '../../base/index.ts';
import { type Chain, headingOn, pointOn, segmentLength, segments } from '../../curve/index.ts';

/** A place on the expected edge at which the photograph is looked at. */
export interface ShapeStation {
  readonly at: Point<'body'>;
  /** Unit, out of the material. */
  readonly normal: Point<'body'>;
  /** Run of the edge between two corners; runs do not share profiles. */
  readonly run: number;
  /** mm along the run's ends: how far the nearest corner is. */
  readonly fromCornerMm: number;
}

/** rad. A bend sharper than this at a joint is a corner. */
const CORNER_RAD = 0.17;

/**
 * Stations about `stepMm` apart on a closed chain of material (anticlockwise), in order along it, none on a corner.
 * Without any corner the whole edge is one run.
 */
export function shapeStations(chain: Chain<'body'>, stepMm: number): readonly ShapeStation[] {
  const all = segments(chain);
  const isCorner = all.map((segment, i) => {
    const before = all[(i - 1 + all.length) % all.length];
    const bend = headingOn(segment, 0) - headingOn(before, 1);
    return Math.abs(atan2(sin(bend), cos(bend))) > CORNER_RAD;
  });
  const first = Math.max(0, isCorner.indexOf(true));
  const closedRun = !isCorner.includes(true);
  const order = all.map((_, i) => (first + i) % all.length);
  const runs: number[][] = [];
  for (const index of order) {
    if (isCorner[index] || runs.length === 0) runs.push([]);
    runs.at(-1)?.push(index);
  }
  return runs.flatMap((run, number) => {
    const lengths = run.map((index) => segmentLength(all[index]));
    const total = lengths.reduce((sum, one) => sum + one, 0);
    const count = Math.max(1, Math.round(total / stepMm));
    const stations: ShapeStation[] = [];
    let [piece, before] = [0, 0];
    for (let step = 0; step < count; step++) {
      const alongMm = ((step + 0.5) * total) / count;
      while (piece < run.length - 1 && before + lengths[piece] < alongMm) before += lengths[piece++];
      const segment = all[run[piece]];
      const share = Math.min(1, (alongMm - before) / lengths[piece]);
      const heading = headingOn(segment, share);
      stations.push({
        at: pointOn(segment, share),
        normal: point(sin(heading), -cos(heading)),
        run: number,
        fromCornerMm: closedRun ? total : Math.min(alongMm, total - alongMm),
      });
    }
    return stations;
  });
}
