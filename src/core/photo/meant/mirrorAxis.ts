import { accept, type Checked, type Frame, type Point, point, refuse } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import { edgeLine } from '../edge/edgeLine.ts';
import { type EdgeSpot, type FoundEdge, isCornerEnd } from '../edge/foundEdge.ts';

/** The line that the two halves mirror each other about, heading from the lower to the upper end. */
export interface MirrorAxis<F extends Frame> {
  readonly through: Point<F>;
  /** Anticlockwise from x. */
  readonly headingRad: number;
  /** Half intervals (k = 2) of its place across, at `through`, and of its heading. */
  readonly plusMinus: { readonly acrossMm: number; readonly headingRad: number };
  /** Robust spread (1.48 MAD) of how far the mirrored halves lie apart. */
  readonly spreadMm: number;
  readonly rounds: number;
}

const ROUNDS = 24;
const FIRST_CUT = 10;
const LAST_CUT = 3;
const LEAST_SPOTS = 40;
/** mm. Neighbouring spots err together over about this length of edge. */
const ERR_TOGETHER_MM = 15;
/** mm. Below this spread spots are taken as equally good. */
const LEAST_SPREAD_MM = 0.02;

interface Pull {
  readonly r: number;
  readonly a: number;
  readonly b: number;
}

/**
 * The mirror axis of a found edge, from a start that is near it. The left half is mirrored onto the right half and
 * the axis moved until the halves lie on each other, spots that disagree counting less and less (Tukey's weight with
 * a cut that narrows from 10 to 3 spreads), so that local wear does not pull it. Corner ends take no part.
 * Faults: `axis.too-little`.
 */
export function mirrorAxis<F extends Frame>(
  edge: FoundEdge<F>,
  start: { readonly through: Point<F>; readonly headingRad: number },
): Checked<MirrorAxis<F>> {
  const right = edgeLine(upright(edge.right, start), 1);
  const left = upright(edge.left, start).filter((spot) => spot.seen && !isCornerEnd(spot.section));
  let across = 0;
  let turn = 0;
  let spread = 0;
  let normal = [0, 0, 0];
  for (let round = 0; round < ROUNDS; round++) {
    const pulls = left.flatMap((spot) => pullOf(spot, right, across, turn));
    if (pulls.length < LEAST_SPOTS) return refuse(tooLittle(pulls.length));
    spread = Math.max(LEAST_SPREAD_MM, 1.4826 * medianOf(pulls.map((pull) => Math.abs(pull.r))));
    const cut = spread * Math.max(LAST_CUT, FIRST_CUT * (LAST_CUT / FIRST_CUT) ** (round / (ROUNDS / 2)));
    normal = [0, 0, 0];
    let ga = 0;
    let gb = 0;
    for (const { r, a, b } of pulls) {
      const share = Math.abs(r) < cut ? (1 - (r / cut) ** 2) ** 2 : 0;
      normal[0] += share * a * a;
      normal[1] += share * a * b;
      normal[2] += share * b * b;
      ga += share * a * r;
      gb += share * b * r;
    }
    const determinant = normal[0] * normal[2] - normal[1] * normal[1];
    across -= (normal[2] * ga - normal[1] * gb) / determinant;
    turn -= (normal[0] * gb - normal[1] * ga) / determinant;
  }
  return accept(settled(start, across, turn, spread, normal, left));
}

/** How far one mirrored left spot lies outside the right edge, and how that changes with the axis. */
function pullOf<F extends Frame>(
  spot: EdgeSpot<F>,
  right: ReturnType<typeof edgeLine>,
  across: number,
  turn: number,
): Pull[] {
  const mirrored = mirror(spot.x, spot.y, across, turn);
  const link = right.nearest(mirrored.x, mirrored.y, spot.alongMm);
  if (link === null) return [];
  const c = Math.cos(turn);
  const a = 2 * c * (link.normalX * c - link.normalY * Math.sin(turn));
  const b = 2 * (link.normalX * mirrored.y - link.normalY * (mirrored.x - across));
  return [{ r: link.distanceMm, a, b }];
}

/** Mirror about the line through (across, 0) that leans `turn` to the right of y. */
function mirror(x: number, y: number, across: number, turn: number): { x: number; y: number } {
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const off = (x - across) * c - y * s;
  return { x: x - 2 * off * c, y: y + 2 * off * s };
}

/** Into a frame with the start axis as y (x to the right of it). */
function upright<F extends Frame>(
  spots: readonly EdgeSpot<F>[],
  start: { readonly through: Point<F>; readonly headingRad: number },
): EdgeSpot<F>[] {
  const c = Math.cos(start.headingRad);
  const s = Math.sin(start.headingRad);
  return spots.map((spot) => {
    const dx = spot.x - start.through.x;
    const dy = spot.y - start.through.y;
    return { ...spot, x: s * dx - c * dy, y: c * dx + s * dy };
  });
}

function settled<F extends Frame>(
  start: { readonly through: Point<F>; readonly headingRad: number },
  across: number,
  turn: number,
  spread: number,
  normal: readonly number[],
  left: readonly EdgeSpot<F>[],
): MirrorAxis<F> {
  const c = Math.cos(start.headingRad);
  const s = Math.sin(start.headingRad);
  const step = (left[left.length - 1].alongMm - left[0].alongMm) / Math.max(1, left.length - 1);
  const together = Math.max(1, ERR_TOGETHER_MM / step);
  const determinant = normal[0] * normal[2] - normal[1] * normal[1];
  const scale = 2 * spread * Math.sqrt(together / determinant);
  return {
    through: point(start.through.x + s * across, start.through.y - c * across),
    headingRad: start.headingRad - turn,
    plusMinus: { acrossMm: scale * Math.sqrt(normal[2]), headingRad: scale * Math.sqrt(normal[0]) },
    spreadMm: spread,
    rounds: ROUNDS,
  };
}

function tooLittle(count: number) {
  return {
    code: 'axis.too-little',
    at: 'photograph',
    found: `only ${count} places of the edge are seen on both halves`,
    need: `at least ${LEAST_SPOTS}`,
    remedy: 'photograph the instrument with less over its edge, or mark the edge by hand',
  };
}
