import { hypot } from '../../base/index.ts';

/** A place of a hole's edge in a frame's units; bridged where something crosses the hole there. */
export interface LoopPoint {
  readonly x: number;
  readonly y: number;
  readonly bridged: boolean;
}

/** How much farther than at the narrowest two edges of a crossing lie apart, and still belong to it. */
const WIDENS = 1.35;
const WIDENS_BY = 0.5;
/** Units between the points of a bridge. */
const BRIDGE_STEP = 0.25;

/**
 * The pieces that crossing strings leave of one hole, joined into a single loop: nearest first, up to `mostGap` apart.
 * Straight bridges stand in for the crossed stretches. Null where no piece is left; pieces too far off are dropped.
 */
export function bridgeLoops(
  loops: readonly (readonly LoopPoint[])[],
  mostGap: number,
): readonly LoopPoint[] | null {
  let rest = [...loops].sort((a, b) => b.length - a.length);
  while (rest.length > 1) {
    const pair = nearestPair(rest);
    if (pair.gap > mostGap) return rest[0];
    const [a, b] = [rest[pair.a], rest[pair.b]];
    const joined = joinLoops(a, b, pair.gap * WIDENS + WIDENS_BY);
    rest = [joined, ...rest.filter((_, i) => i !== pair.a && i !== pair.b)];
  }
  return rest[0] ?? null;
}

/** Units along the edge beside a bridge in which what crosses still draws it aside. */
const BESIDE = 1.2;

/** The loop with the stretches beside its bridges marked as bridged too. */
export function widenBridges(loop: readonly LoopPoint[]): readonly LoopPoint[] {
  const bridged = loop.map((point) => point.bridged);
  for (const way of [1, -1])
    loop.forEach((start, i) => {
      if (!start.bridged) return;
      let last = start;
      let gone = 0;
      for (let step = 1; step < loop.length && gone < BESIDE; step++) {
        const at = (i + way * step + loop.length) % loop.length;
        gone += hypot(loop[at].x - last.x, loop[at].y - last.y);
        last = loop[at];
        if (loop[at].bridged) break;
        bridged[at] = true;
      }
    });
  return loop.map((point, i) => ({ ...point, bridged: bridged[i] }));
}

function nearestPair(loops: readonly (readonly LoopPoint[])[]) {
  let best = { a: 0, b: 1, gap: Number.POSITIVE_INFINITY };
  for (let a = 0; a < loops.length; a++)
    for (let b = a + 1; b < loops.length; b++) {
      const gap = Math.min(...loops[a].map((point) => away(point, loops[b])));
      if (gap < best.gap) best = { a, b, gap };
    }
  return best;
}

function away(point: LoopPoint, loop: readonly LoopPoint[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const other of loop) {
    const [dx, dy] = [other.x - point.x, other.y - point.y];
    least = Math.min(least, dx * dx + dy * dy);
  }
  return Math.sqrt(least);
}

/** Each loop opened along its stretch that faces the other; the ends joined crosswise keep the way round. */
function joinLoops(a: readonly LoopPoint[], b: readonly LoopPoint[], facing: number): readonly LoopPoint[] {
  const [first, second] = [opened(a, b, facing), opened(b, a, facing)];
  return [
    ...first,
    ...bridge(first[first.length - 1], second[0]),
    ...second,
    ...bridge(second[second.length - 1], first[0]),
  ];
}

/** The loop without its longest stretch nearer than `facing` to the other, from that stretch's end to its start. */
function opened(
  loop: readonly LoopPoint[],
  other: readonly LoopPoint[],
  facing: number,
): readonly LoopPoint[] {
  const near = loop.map((point) => away(point, other) <= facing);
  const far = near.indexOf(false);
  if (far < 0) return loop.slice(0, 1);
  let best = { from: far, count: 0 };
  let count = 0;
  for (let step = 1; step <= loop.length; step++) {
    const at = (far + step) % loop.length;
    count = near[at] ? count + 1 : 0;
    if (count > best.count) best = { from: (at - count + 1 + loop.length) % loop.length, count };
  }
  return Array.from(
    { length: loop.length - best.count },
    (_, i) => loop[(best.from + best.count + i) % loop.length],
  );
}

function bridge(from: LoopPoint, to: LoopPoint): readonly LoopPoint[] {
  const count = Math.max(1, Math.ceil(hypot(to.x - from.x, to.y - from.y) / BRIDGE_STEP));
  return Array.from({ length: count - 1 }, (_, i) => {
    const share = (i + 1) / count;
    return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y), bridged: true };
  });
}
