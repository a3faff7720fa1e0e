import { Bug, distanceBetween, type Frame, type Point, WELD_MM } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { areaOf, lengthOf } from './measure.ts';
import type { Run } from './offsetRuns.ts';
import { headingOn, pointOn, type Segment, wrapAngle } from './segment.ts';

/** mm. Ends this near are one end: a piece left out between them may be WELD_MM long, and so may either gap. */
const STITCH_MM = 4 * WELD_MM;

/**
 * Closed chains of directed runs, each run used once, largest area first. Where several runs leave a point,
 * the sharpest turn to the left is taken, so that loops which touch stay apart and simple. Runs that lie on
 * each other cancel when opposed and count once when alike; loops without area are left out. With `closed`
 * each run is a loop already.
 */
export function stitchLoops<F extends Frame>(runs: readonly Run<F>[], closed: boolean): readonly Chain<F>[] {
  const found: { readonly loop: Chain<F>; readonly sizeMm2: number }[] = [];
  for (const run of closed ? runs : joinedRuns(runs)) {
    const loop: Chain<F> = {
      closed: true,
      vertices: run.map(({ start, bulge }) => ({ x: start.x, y: start.y, bulge })),
    };
    const sizeMm2 = Math.abs(areaOf(loop));
    if (sizeMm2 > WELD_MM * lengthOf(loop)) found.push({ loop, sizeMm2 });
  }
  return found.sort((one, other) => other.sizeMm2 - one.sizeMm2).map(({ loop }) => loop);
}

interface OpenRun<F extends Frame> {
  readonly pieces: Run<F>;
  readonly first: Segment<F>;
  readonly last: Segment<F>;
}

function joinedRuns<F extends Frame>(runs: readonly Run<F>[]): readonly Run<F>[] {
  const open = withoutDoubles(runs);
  const loops: Run<F>[] = [];
  for (let start = open.pop(); start; start = open.pop()) {
    const pieces = [...start.pieces];
    for (
      let last = start.last;
      distanceBetween(last.end, start.first.start) > STITCH_MM || touches(open, last, start.first);
    ) {
      const next = takeNext(open, last);
      if (!next)
        throw new Bug(
          `a run of ${pieces.length} pieces ends at ${last.end.x}, ${last.end.y} without closing`,
        );
      pieces.push(...next.pieces);
      last = next.last;
    }
    loops.push(pieces);
  }
  return loops;
}

/** Whether, at the point where a loop could close, another run turns more sharply to the left. */
function touches<F extends Frame>(open: readonly OpenRun<F>[], last: Segment<F>, first: Segment<F>): boolean {
  const others = open.filter((run) => distanceBetween(last.end, run.first.start) <= STITCH_MM);
  if (others.length === 0) return false;
  const closing = leftTurn(last, first);
  return others.some((run) => leftTurn(last, run.first) > closing);
}

function takeNext<F extends Frame>(open: OpenRun<F>[], last: Segment<F>): OpenRun<F> | undefined {
  let best = -1;
  let sharpest = -Infinity;
  for (const [index, { first }] of open.entries()) {
    const apart = Math.abs(first.start.x - last.end.x) + Math.abs(first.start.y - last.end.y);
    if (apart > 2 * STITCH_MM || distanceBetween(last.end, first.start) > STITCH_MM) continue;
    const turn = leftTurn(last, first);
    if (turn > sharpest) {
      sharpest = turn;
      best = index;
    }
  }
  return best < 0 ? undefined : open.splice(best, 1)[0];
}

/** The turn from one piece into the next, left positive; of tangent ones the one that bends more to the left turns more. */
function leftTurn<F extends Frame>(last: Segment<F>, next: Segment<F>): number {
  const ahead = pointOn(next, 0.1);
  const straight = headingOn(last, 1);
  const towards = Math.atan2(ahead.y - last.end.y, ahead.x - last.end.x);
  return wrapAngle(towards - straight);
}

/** The runs with their first and last pieces, less those that double another. Only single pieces can: meetings cut the rest. */
function withoutDoubles<F extends Frame>(runs: readonly Run<F>[]): OpenRun<F>[] {
  const kept: (Run<F> | null)[] = [...runs];
  const single = runs
    .map((run, index) => ({ index, piece: run[0], at: run[0] && pointOn(run[0], 0.5), length: run.length }))
    .filter(({ length }) => length === 1)
    .sort((one, other) => (one.at?.x ?? 0) - (other.at?.x ?? 0));
  for (const [place, { index, piece, at }] of single.entries()) {
    if (!piece || !at || !kept[index]) continue;
    for (const other of single.slice(place + 1)) {
      if (!other.at || !other.piece || other.at.x > at.x + STITCH_MM) break;
      if (!kept[other.index] || Math.abs(other.at.y - at.y) > STITCH_MM) continue;
      if (near(piece.start, other.piece.start) && near(piece.end, other.piece.end)) kept[other.index] = null;
      else if (near(piece.start, other.piece.end) && near(piece.end, other.piece.start)) {
        kept[other.index] = null;
        kept[index] = null;
        break;
      }
    }
  }
  return kept.flatMap((run) => {
    const first = run?.[0];
    const last = run?.at(-1);
    return run && first && last ? [{ pieces: run, first, last }] : [];
  });
}

function near<F extends Frame>(a: Point<F>, b: Point<F>): boolean {
  return distanceBetween(a, b) <= STITCH_MM;
}
