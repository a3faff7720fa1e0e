import { type Point, point } from '../base/index.ts';
import { boundsOf, type Chain, nearestOnSpans, type Span, spansContain, spansOf } from '../curve/index.ts';

/** Beside these lines, to this far, places stand on every so manieth line of the grid. */
export interface PlaceBand {
  readonly lines: readonly Chain<'body'>[];
  readonly reachMm: number;
  readonly every: number;
}

/** A grid of places, even about the centre line, inside a line that is even too. */
export interface PlaceGrid {
  readonly edge: Chain<'body'>;
  readonly stepMm: number;
  /** Every so manieth line of the grid away from all bands. */
  readonly every: number;
  /** From the most to the least dense. */
  readonly bands: readonly PlaceBand[];
  /** Lines beside the edge that places stand clear of, and how far. */
  readonly clearOf: readonly Chain<'body'>[];
  readonly clearMm: number;
}

/** The places of a grid. */
export function gridPlaces({
  edge,
  stepMm,
  every,
  bands,
  clearOf,
  clearMm,
}: PlaceGrid): readonly Point<'body'>[] {
  const { max } = boundsOf(edge);
  const columns = Math.ceil(max.x / stepMm);
  const rows = Math.ceil(max.y / stepMm);
  const edgeSpans = spansOf(edge);
  const inside = walked((at) => {
    const { distanceMm } = nearestOnSpans(edgeSpans, at);
    return spansContain(edgeSpans, at) ? distanceMm : -distanceMm;
  });
  const besides = bands.map((band) => ({ ...band, away: awayFrom(band.lines) }));
  const awayFromClear = awayFrom(clearOf);
  const places: Point<'body'>[] = [];
  for (let row = 1; row < rows; row++)
    for (let column = 0; column <= columns; column++) {
      const at = point<'body'>(column * stepMm, row * stepMm);
      const isOn = (lines: number): boolean => column % lines === 0 && row % lines === 0;
      const needed =
        isOn(every) || besides.some((band) => isOn(band.every) && band.away(at, band.reachMm) < band.reachMm);
      if (!needed || inside(at, clearMm) < clearMm || awayFromClear(at, clearMm) < clearMm) continue;
      places.push(at, ...(column > 0 ? [point<'body'>(-at.x, at.y)] : []));
    }
  return places;
}

/** A distance, signed or not: exact where its size is below `reachMm`, else some length of that sign that is not. */
type Walked = (at: Point<'body'>, reachMm: number) => number;

function awayFrom(lines: readonly Chain<'body'>[]): Walked {
  const spans: readonly Span<'body'>[] = lines.flatMap((line) => spansOf(line));
  return walked((at) => nearestOnSpans(spans, at).distanceMm);
}

/**
 * A distance that is asked of places along rows: who stands d away need not ask again before d is walked.
 */
function walked(distanceMm: (at: Point<'body'>) => number): Walked {
  let [known, x, y] = [0, Number.NaN, Number.NaN];
  return (at, reachMm) => {
    const leftMm = Math.abs(known) - Math.abs(at.x - x);
    if (at.y === y && leftMm >= reachMm && leftMm > 0) return known > 0 ? leftMm : -leftMm;
    [known, x, y] = [distanceMm(at), at.x, at.y];
    return known;
  };
}
