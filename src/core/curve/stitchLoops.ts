import { atan2, Bug, distanceBetween, type Frame, type Point, WELD_MM } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { areaOf } from './measure.ts';
import type { Run } from './offsetRuns.ts';
import { headingOn, middleOf, pointOn, type Segment, wrapAngle } from './segment.ts';

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
  for (const run of closed ? runs : joinedRuns(withoutDoubles(runs))) {
    const loop: Chain<F> = {
      closed: true,
      vertices: run.map(({ start, bulge }) => ({ x: start.x, y: start.y, bulge })),
    };
    const sizeMm2 = Math.abs(areaOf(loop));
    if (sizeMm2 > WELD_MM * lengthBound(run)) found.push({ loop, sizeMm2 });
  }
  return found.sort((one, other) => other.sizeMm2 - one.sizeMm2).map(({ loop }) => loop);
}

/** At least the length of a run, and not much more: no arc is longer than (1 + bulge²) times its chord. */
function lengthBound<F extends Frame>(run: Run<F>): number {
  let sum = 0;
  for (const { start, end, bulge } of run) {
    const chordX = end.x - start.x;
    const chordY = end.y - start.y;
    sum += Math.sqrt(chordX * chordX + chordY * chordY) * (1 + bulge * bulge);
  }
  return sum;
}

function joinedRuns<F extends Frame>(runs: readonly Run<F>[]): readonly Run<F>[] {
  const starts = Float64Array.from(runs.flatMap(([first]) => [first.start.x, first.start.y]));
  const used = new Uint8Array(runs.length);
  const loops: Run<F>[] = [];
  for (let first = 0; first < runs.length; first++) {
    if (used[first] === 1) continue;
    const pieces: Segment<F>[] = [];
    for (let at = first, length = 1; ; length++) {
      used[at] = 1;
      for (const piece of runs[at]) pieces.push(piece);
      const next = nextRun(runs, starts, used, pieces[pieces.length - 1], first);
      if (next === undefined) {
        const { x, y } = pieces[pieces.length - 1].end;
        throw new Bug(`a line of ${length} runs ends at ${x}, ${y} without closing`);
      }
      if (next === first) break;
      at = next;
    }
    loops.push(pieces);
  }
  return loops;
}

/** The run that goes on from a piece by the sharpest turn to the left: one that is free, or the first, which closes. */
function nextRun<F extends Frame>(
  runs: readonly Run<F>[],
  starts: Float64Array,
  used: Uint8Array,
  last: Segment<F>,
  first: number,
): number | undefined {
  const { x, y } = last.end;
  let best: number | undefined;
  let sharpest: number | undefined;
  for (let run = 0; run < runs.length; run++) {
    if (used[run] === 1 && run !== first) continue;
    const apartX = starts[2 * run] - x;
    const apartY = starts[2 * run + 1] - y;
    if (apartX * apartX + apartY * apartY > STITCH_MM * STITCH_MM) continue;
    if (best === undefined) {
      best = run;
      continue;
    }
    sharpest ??= leftTurn(last, runs[best][0]);
    const turn = leftTurn(last, runs[run][0]);
    // Of equal turns the closing one is taken.
    if (turn < sharpest || (turn === sharpest && run !== first)) continue;
    sharpest = turn;
    best = run;
  }
  return best;
}

/** The turn from one piece into the next, left positive; of tangent ones the one that bends more to the left turns more. */
function leftTurn<F extends Frame>(last: Segment<F>, next: Segment<F>): number {
  const ahead = pointOn(next, 0.1);
  const straight = headingOn(last, 1);
  const towards = atan2(ahead.y - last.end.y, ahead.x - last.end.x);
  return wrapAngle(towards - straight);
}

/** The runs less those that double another. Only single pieces can: meetings cut all others. */
function withoutDoubles<F extends Frame>(runs: readonly Run<F>[]): readonly Run<F>[] {
  const single = runs.filter(({ length }) => length === 1).map(([piece]) => ({ piece, at: middleOf(piece) }));
  single.sort((one, other) => one.at.x - other.at.x);
  const dropped = new Set<Segment<F>>();
  for (const [place, { piece, at }] of single.entries()) {
    if (dropped.has(piece)) continue;
    for (let next = place + 1; next < single.length && single[next].at.x <= at.x + STITCH_MM; next++) {
      const other = single[next];
      if (dropped.has(other.piece) || Math.abs(other.at.y - at.y) > STITCH_MM) continue;
      if (near(piece.start, other.piece.start) && near(piece.end, other.piece.end)) dropped.add(other.piece);
      else if (near(piece.start, other.piece.end) && near(piece.end, other.piece.start)) {
        dropped.add(other.piece);
        dropped.add(piece);
        break;
      }
    }
  }
  return dropped.size === 0 ? runs : runs.filter(([piece]) => !dropped.has(piece));
}

function near<F extends Frame>(a: Point<F>, b: Point<F>): boolean {
  return distanceBetween(a, b) <= STITCH_MM;
}
