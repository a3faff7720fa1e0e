import { atan2, cos, hypot, sin } from '../../base/index.ts';
import type { LoopPoint } from './bridgeLoops.ts';

/** How one hole's edge lies to the other's, mirrored and laid on it, in the frame's units. */
export interface HoleDifference {
  readonly rms: number;
  readonly most: number;
  /** Distance from each point of either loop to the other. */
  readonly first: Float64Array;
  readonly second: Float64Array;
}

const ROUNDS = 12;
/** Points of the edge that are laid on the other. */
const LAID = 400;
/** Units. Places farther off than this do not pull. */
const PULLS_WITHIN = 2;

/** Both loops in frames with x outward, so that one lies on the other after a shift and a turn. */
export function compareHoles(first: readonly LoopPoint[], second: readonly LoopPoint[]): HoleDifference {
  let placed = second.map(({ x, y }) => ({ x, y }));
  const steps = { first: longestStep(first), second: longestStep(second) };
  const every = Math.max(1, Math.floor(first.length / LAID));
  const pulled = first.filter((point, i) => i % every === 0 && !point.bridged);
  for (let round = 0; round < ROUNDS; round++) {
    const pairs = pulled.flatMap((point) => {
      const other = nearestOf(point, placed, steps.second);
      const near = hypot(point.x - other.x, point.y - other.y) < (round < ROUNDS / 2 ? 4 : 1) * PULLS_WITHIN;
      return near ? [{ to: point, from: other }] : [];
    });
    if (pairs.length < 3) break;
    placed = moved(placed, pairs);
  }
  const own = Float64Array.from(first, (point) => away(point, placed, steps.second));
  const theirs = Float64Array.from(placed, (point) => away(point, first, steps.first));
  const all = [...own, ...theirs];
  return {
    rms: Math.sqrt(all.reduce((sum, one) => sum + one * one, 0) / all.length),
    most: all.reduce((a, b) => Math.max(a, b), 0),
    first: own,
    second: theirs,
  };
}

interface XY {
  readonly x: number;
  readonly y: number;
}

/** The loop's point nearest to one. Points follow one another along the loop, so the step to the best so far tells how many cannot be nearer. */
function nearestOf(point: XY, loop: readonly XY[], longest: number): XY {
  let best = loop[0];
  let least = Number.POSITIVE_INFINITY;
  for (let place = 0; place < loop.length; ) {
    const other = loop[place];
    const dx = other.x - point.x;
    const dy = other.y - point.y;
    const square = dx * dx + dy * dy;
    if (square < least) {
      least = square;
      best = other;
    }
    place += Math.max(1, Math.floor((Math.sqrt(square) - Math.sqrt(least)) / longest));
  }
  return best;
}

/** The farthest that a point of a loop lies from the one before it. */
function longestStep(loop: readonly XY[]): number {
  return loop.reduce((most, { x, y }, i) => {
    const before = loop[i - 1] ?? loop[0];
    return Math.max(most, hypot(x - before.x, y - before.y));
  }, Number.MIN_VALUE);
}

function away(point: XY, loop: readonly XY[], longest: number): number {
  const other = nearestOf(point, loop, longest);
  return hypot(other.x - point.x, other.y - point.y);
}

/** The points shifted and turned so that `from` comes nearest to `to`. */
function moved(points: readonly XY[], pairs: readonly { readonly to: XY; readonly from: XY }[]): XY[] {
  const mean = (pick: (pair: (typeof pairs)[number]) => number): number =>
    pairs.reduce((sum, pair) => sum + pick(pair), 0) / pairs.length;
  const [tx, ty] = [mean((pair) => pair.to.x), mean((pair) => pair.to.y)];
  const [fx, fy] = [mean((pair) => pair.from.x), mean((pair) => pair.from.y)];
  let [cross, along] = [0, 0];
  for (const { to, from } of pairs) {
    cross += (from.x - fx) * (to.y - ty) - (from.y - fy) * (to.x - tx);
    along += (from.x - fx) * (to.x - tx) + (from.y - fy) * (to.y - ty);
  }
  const turn = atan2(cross, along);
  const [c, s] = [cos(turn), sin(turn)];
  return points.map(({ x, y }) => ({
    x: tx + c * (x - fx) - s * (y - fy),
    y: ty + s * (x - fx) + c * (y - fy),
  }));
}
