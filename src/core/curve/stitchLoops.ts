import { Bug, distanceBetween, type Frame, type Point, WELD_MM } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { areaOf, lengthOf } from './measure.ts';
import { headingOn, pointOn, type Segment, wrapAngle } from './segment.ts';

/** mm. Ends this near are one end: a piece left out between them may be WELD_MM long, and so may either gap. */
const STITCH_MM = 4 * WELD_MM;

/**
 * Closed chains of directed pieces, each piece used once, largest area first. Where several pieces leave a
 * point, the sharpest turn to the left is taken, so that loops which touch stay apart and simple. Pieces that
 * lie on each other cancel when opposed and count once when alike; loops without area are left out.
 */
export function stitchLoops<F extends Frame>(pieces: readonly Segment<F>[]): readonly Chain<F>[] {
  const open = withoutDoubles(pieces);
  const loops: Chain<F>[] = [];
  for (let first = open.pop(); first; first = open.pop()) {
    const run = [first];
    for (
      let last = first;
      distanceBetween(last.end, first.start) > STITCH_MM || touches(open, last, first);
    ) {
      const next = takeNext(open, last);
      if (!next)
        throw new Bug(`a run of ${run.length} pieces ends at ${last.end.x}, ${last.end.y} without closing`);
      run.push(next);
      last = next;
    }
    const loop = chainOfLoop(run);
    if (Math.abs(areaOf(loop)) > WELD_MM * lengthOf(loop)) loops.push(loop);
  }
  return loops.sort((one, other) => Math.abs(areaOf(other)) - Math.abs(areaOf(one)));
}

/** Whether, at the point where a run could close, another piece turns more sharply to the left. */
function touches<F extends Frame>(open: readonly Segment<F>[], last: Segment<F>, first: Segment<F>): boolean {
  const closing = leftTurn(last, first);
  return open.some(
    (piece) => distanceBetween(last.end, piece.start) <= STITCH_MM && leftTurn(last, piece) > closing,
  );
}

function takeNext<F extends Frame>(open: Segment<F>[], last: Segment<F>): Segment<F> | undefined {
  let best = -1;
  let sharpest = -Infinity;
  for (const [index, piece] of open.entries()) {
    const apart = Math.abs(piece.start.x - last.end.x) + Math.abs(piece.start.y - last.end.y);
    if (apart > 2 * STITCH_MM || distanceBetween(last.end, piece.start) > STITCH_MM) continue;
    const turn = leftTurn(last, piece);
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

function chainOfLoop<F extends Frame>(run: readonly Segment<F>[]): Chain<F> {
  return { closed: true, vertices: run.map(({ start, bulge }) => ({ x: start.x, y: start.y, bulge })) };
}

function withoutDoubles<F extends Frame>(pieces: readonly Segment<F>[]): Segment<F>[] {
  const kept: (Segment<F> | null)[] = [...pieces];
  const middles = pieces.map((piece) => pointOn(piece, 0.5));
  const order = pieces.map((_, index) => index).sort((a, b) => (middles[a]?.x ?? 0) - (middles[b]?.x ?? 0));
  for (const [place, index] of order.entries()) {
    const piece = kept[index];
    const middle = middles[index];
    if (!piece || !middle) continue;
    for (const other of order.slice(place + 1)) {
      const twin = kept[other];
      const at = middles[other];
      if (!at || at.x > middle.x + STITCH_MM) break;
      if (!twin || Math.abs(at.y - middle.y) > STITCH_MM) continue;
      if (near(piece.start, twin.start) && near(piece.end, twin.end)) kept[other] = null;
      else if (near(piece.start, twin.end) && near(piece.end, twin.start)) {
        kept[other] = null;
        kept[index] = null;
        break;
      }
    }
  }
  return kept.filter((piece) => piece !== null);
}

function near<F extends Frame>(a: Point<F>, b: Point<F>): boolean {
  return distanceBetween(a, b) <= STITCH_MM;
}
