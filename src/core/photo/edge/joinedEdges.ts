import type { Frame } from '../../base/index.ts';
import { edgeLine } from './edgeLine.ts';
import type { EdgeSpot, FoundEdge } from './foundEdge.ts';

/** One edge from several photographs of it, and how far they lay apart before they were joined. */
export interface JoinedEdges<F extends Frame> {
  readonly edge: FoundEdge<F>;
  /** Root mean square and largest distance of the others from the first, over places that both show; null for one. */
  readonly apart: { readonly rmsMm: number; readonly maxMm: number } | null;
}

/** mm. Farther apart than this two photographs do not show the same line at a place, and the first is kept there. */
const SAME_LINE_MM = 1.5;
/** mm, added to each place's own spread: camera, height and light differ from photograph to photograph. */
const EACH_ALONE_MM = 0.05;

/**
 * Edges of one body as several photographs show it, joined place by place: across the edge the mean by 1/σ², along it
 * the first's stations; a place that the first does not see is taken from one that does.
 */
export function joinedEdges<F extends Frame>(
  edges: readonly [FoundEdge<F>, ...FoundEdge<F>[]],
): JoinedEdges<F> {
  const [first, ...others] = edges;
  if (others.length === 0) return { edge: first, apart: null };
  const gaps: number[] = [];
  const side = (name: 'left' | 'right', outward: 1 | -1): readonly EdgeSpot<F>[] => {
    const lines = others.map((edge) => ({ spots: edge[name], line: edgeLine(edge[name], outward) }));
    return first[name].map((spot) => joinedSpot(spot, lines, gaps));
  };
  const edge = { left: side('left', -1), right: side('right', 1) };
  const square = gaps.reduce((sum, gap) => sum + gap * gap, 0);
  const apart = {
    rmsMm: Math.sqrt(square / Math.max(1, gaps.length)),
    maxMm: gaps.reduce((most, gap) => Math.max(most, Math.abs(gap)), 0),
  };
  return { edge, apart };
}

interface OtherHalf<F extends Frame> {
  readonly spots: readonly EdgeSpot<F>[];
  readonly line: ReturnType<typeof edgeLine>;
}

function joinedSpot<F extends Frame>(
  spot: EdgeSpot<F>,
  others: readonly OtherHalf<F>[],
  gaps: number[],
): EdgeSpot<F> {
  if (!spot.seen) return seenElsewhere(spot, others) ?? spot;
  let weight = weightOf(spot);
  let [moveX, moveY] = [0, 0];
  for (const { spots, line } of others) {
    const link = line.nearest(spot.x, spot.y, spot.alongMm);
    if (link === null) continue;
    gaps.push(link.distanceMm);
    if (Math.abs(link.distanceMm) > SAME_LINE_MM) continue;
    const theirs = weightOf(nearestSpot(spots, spot.alongMm));
    moveX -= theirs * link.distanceMm * link.normalX;
    moveY -= theirs * link.distanceMm * link.normalY;
    weight += theirs;
  }
  return {
    ...spot,
    x: spot.x + moveX / weight,
    y: spot.y + moveY / weight,
    sigmaMm: Math.min(spot.sigmaMm, Math.sqrt(1 / weight)),
  };
}

function weightOf({ sigmaMm }: { readonly sigmaMm: number }): number {
  return 1 / (sigmaMm * sigmaMm + EACH_ALONE_MM * EACH_ALONE_MM);
}

function nearestSpot<F extends Frame>(spots: readonly EdgeSpot<F>[], alongMm: number): EdgeSpot<F> {
  return spots.reduce((best, one) =>
    Math.abs(one.alongMm - alongMm) < Math.abs(best.alongMm - alongMm) ? one : best,
  );
}

/** mm along the edge. A place is taken from another photograph only where that one saw it as near as this. */
const SAME_PLACE_MM = 2;

function seenElsewhere<F extends Frame>(
  spot: EdgeSpot<F>,
  others: readonly OtherHalf<F>[],
): EdgeSpot<F> | null {
  for (const { spots } of others) {
    const seen = spots.filter((one) => one.seen && one.section === spot.section);
    if (seen.length === 0) continue;
    const other = nearestSpot(seen, spot.alongMm);
    if (Math.abs(other.alongMm - spot.alongMm) <= SAME_PLACE_MM) return { ...other, alongMm: spot.alongMm };
  }
  return null;
}
