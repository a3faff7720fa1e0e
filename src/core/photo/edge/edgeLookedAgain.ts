import { hypot, type Point, point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import { LONGEST_LINK_MM } from './edgeLine.ts';

/** mm by which a worn edge may lie inside the expected outline, and by which a good one may lie outside it. */
const NEAR_MM = { inside: 3, outside: 1.2 };
/** Stations to either side that may lie opposite an expected place. */
const WINDOW = 40;

/** What a first trace has to say at a station of the expected outline. */
export interface TracedThere {
  /** The traced edge on the station's normal; null where it is to be looked for again from the expected place. */
  readonly place: EdgePoint | null;
  /** Whether the trace saw nothing there: something lies over the edge. */
  readonly wasBridged: boolean;
}

/**
 * The traced edge at the stations of the expected outline, wherever it is seen on the near plate's own silhouette and near
 * to the expected line. The stations are the expected outline's throughout: a trace has its own by the usual outline's
 * shares, and half way round a C bout the two may lie ten millimetres apart along the edge, so that places of both kinds
 * beside each other would leave out a stretch of the edge, or tell of it twice.
 */
export function tracedAtExpected(
  traced: readonly EdgePoint[],
  expected: readonly EdgePoint[],
  overlookPx: (place: Point<'photo'>, normal: Point<'photo'>) => number,
  leastPx: number,
  pxPerMm: number,
): readonly TracedThere[] {
  const stands = traced.map(
    (place) => place.state === 'seen' && overlookPx(place.point, place.normal) < leastPx,
  );
  return expected.map((station, i): TracedThere => {
    const from = Math.max(0, i - WINDOW);
    const to = Math.min(traced.length - 1, i + WINDOW);
    const isOf = ({ side, section }: EdgePoint) => side === station.side && section === station.section;
    let [nearest, leastAwayPx]: [EdgePoint | null, number] = [null, Number.POSITIVE_INFINITY];
    let [place, leastOutPx]: [EdgePoint | null, number] = [null, Number.POSITIVE_INFINITY];
    for (let j = from; j <= to; j++) {
      const one = traced[j];
      if (!isOf(one)) continue;
      const awayPx = hypot(one.point.x - station.point.x, one.point.y - station.point.y);
      if (awayPx < leastAwayPx) [nearest, leastAwayPx] = [one, awayPx];
      const next = traced[j + 1];
      if (j === to || !stands[j] || !stands[j + 1] || !isOf(next)) continue;
      const crossing = onNormal(station, one, next, pxPerMm);
      if (crossing === null || Math.abs(crossing.outPx) >= leastOutPx) continue;
      [place, leastOutPx] = [crossing.place, Math.abs(crossing.outPx)];
    }
    const isClear = overlookPx(station.point, station.normal) < leastPx;
    return { place: isClear ? place : null, wasBridged: (nearest ?? traced[i]).state === 'bridged' };
  });
}

/** Where the line from one traced place to the next crosses a station's normal near the station; null where it does not. */
function onNormal(
  station: EdgePoint,
  one: EdgePoint,
  next: EdgePoint,
  pxPerMm: number,
): { readonly place: EdgePoint; readonly outPx: number } | null {
  const { point: at, normal } = station;
  const beside = ({ point: p }: EdgePoint) => (p.y - at.y) * normal.x - (p.x - at.x) * normal.y;
  const [before, after] = [beside(one), beside(next)];
  if (before === after || before * after > 0) return null;
  const linkPx = hypot(next.point.x - one.point.x, next.point.y - one.point.y);
  if (linkPx > LONGEST_LINK_MM * pxPerMm) return null;
  const share = before / (before - after);
  const x = one.point.x + share * (next.point.x - one.point.x);
  const y = one.point.y + share * (next.point.y - one.point.y);
  const outPx = (x - at.x) * normal.x + (y - at.y) * normal.y;
  if (outPx <= -NEAR_MM.inside * pxPerMm || outPx >= NEAR_MM.outside * pxPerMm) return null;
  const nearer = share < 0.5 ? one : next;
  return { place: { ...nearer, along: station.along, point: point(x, y) }, outPx };
}
