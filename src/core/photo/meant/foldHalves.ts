import { hypot, type Point, point } from '../../base/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';
import { edgeLine } from '../edge/edgeLine.ts';
import type { EdgeSpot, FoundEdge } from '../edge/foundEdge.ts';
import type { PurflingSpot, SeenSide } from './meantWishes.ts';
import { type Heading, turnedUpright, uprightSpots } from './uprightSpots.ts';

/** What one half shows at a place: how far outside the middle place its edge and its purfling lie. */
export interface HalfOffset {
  readonly edgeMm: number | null;
  readonly purflingMm: number | null;
  readonly sigmaMm: number;
  /** How far ribs and far plate can show beyond the near plate here. */
  readonly overlookMm: number;
  /** Where the edge was found, on the side of x ≥ 0. */
  readonly found: Point<'body'>;
}

/**
 * One station of both halves folded onto each other, on the side of x ≥ 0, y along the axis from its `through`: the
 * middle place of the two (of the one where only one is seen), its outward normal, and what each half shows.
 */
export interface FoldedPlace extends Point<'body'> {
  readonly alongMm: number;
  readonly section: OutlineSection;
  readonly normalX: number;
  readonly normalY: number;
  readonly left: HalfOffset;
  readonly right: HalfOffset;
}

/** Both halves folded about the axis. Stations that only one half has are left out. */
export function foldHalves(
  edge: FoundEdge<'scene'>,
  axis: Heading<'scene'>,
  purfling: Readonly<Record<SeenSide, readonly PurflingSpot[]>> = { left: [], right: [] },
): readonly FoldedPlace[] {
  const halves = { right: uprightSpots(edge.right, axis), left: mirrored(uprightSpots(edge.left, axis)) };
  const lines = { right: edgeLine(halves.right, 1), left: edgeLine(halves.left, 1) };
  const witness = {
    right: purfling.right.map((spot) => ({ ...turnedUpright(spot, axis), sigmaMm: spot.sigmaMm })),
    left: purfling.left.map((spot) => {
      const at = turnedUpright(spot, axis);
      return { x: -at.x, y: at.y, sigmaMm: spot.sigmaMm };
    }),
  };
  return middlePlaces(halves).map(({ right, left, ...place }) => {
    const offset = (side: SeenSide, spot: EdgeSpot<'body'>): HalfOffset => {
      const link = spot.seen ? lines[side].nearest(place.x, place.y, place.alongMm) : null;
      return {
        edgeMm: link === null ? null : -link.distanceMm,
        purflingMm: purflingOffset(witness[side], place),
        sigmaMm: spot.sigmaMm,
        overlookMm: spot.overlookMm ?? 0,
        found: point(spot.x, spot.y),
      };
    };
    return { ...place, left: offset('left', left), right: offset('right', right) };
  });
}

function mirrored(spots: readonly EdgeSpot<'body'>[]): readonly EdgeSpot<'body'>[] {
  return spots.map((spot) => ({ ...spot, x: -spot.x }));
}

function middlePlaces(halves: Readonly<Record<SeenSide, readonly EdgeSpot<'body'>[]>>) {
  const byStation = new Map(halves.left.map((spot) => [spot.alongMm, spot]));
  const both = halves.right.flatMap((right) => {
    const left = byStation.get(right.alongMm);
    return left === undefined ? [] : [{ right, left, at: middleOf(right, left) }];
  });
  return both.map(({ right, left, at }, i) => {
    const before = both[i - 1]?.right.section === right.section ? i - 1 : i;
    const after = both[i + 1]?.right.section === right.section ? i + 1 : i;
    const dx = both[after].at.x - both[before].at.x;
    const dy = both[after].at.y - both[before].at.y;
    const length = hypot(dx, dy) || 1;
    return {
      ...at,
      alongMm: right.alongMm,
      section: right.section,
      normalX: dy / length,
      normalY: -dx / length,
      right,
      left,
    };
  });
}

function middleOf(a: EdgeSpot<'body'>, b: EdgeSpot<'body'>): Point<'body'> {
  if (a.seen && !b.seen) return point(a.x, a.y);
  if (b.seen && !a.seen) return point(b.x, b.y);
  return point((a.x + b.x) / 2, (a.y + b.y) / 2);
}

/** mm along the edge. Purfling seen this near to both sides of a place, or at it, tells of it. */
const PURFLING_REACH_MM = 2.5;
/** mm. No purfling lies nearer to the edge or farther in. */
const PURFLING_WITHIN_MM = { least: 1, most: 9 };

/** How far outside a place its purfling lies (negative: inside), the mean of the spots opposite it; null for none. */
function purflingOffset(
  spots: readonly (Point<'body'> & { readonly sigmaMm: number })[],
  place: Point<'body'> & { readonly normalX: number; readonly normalY: number },
): number | null {
  let [sum, whole] = [0, 0];
  for (const { x, y, sigmaMm } of spots) {
    const along = (y - place.y) * place.normalX - (x - place.x) * place.normalY;
    if (Math.abs(along) >= PURFLING_REACH_MM) continue;
    const out = (x - place.x) * place.normalX + (y - place.y) * place.normalY;
    if (-out < PURFLING_WITHIN_MM.least || -out > PURFLING_WITHIN_MM.most) continue;
    const weight = (1 - Math.abs(along) / PURFLING_REACH_MM) / (sigmaMm * sigmaMm);
    sum += weight * out;
    whole += weight;
  }
  return whole === 0 ? null : sum / whole;
}
