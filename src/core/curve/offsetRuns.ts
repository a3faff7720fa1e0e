import { type Frame, WELD_MM } from '../base/index.ts';
import {
  ARRIVE_X,
  ARRIVE_Y,
  type ArcTable,
  areApart,
  BLOCK,
  BOX,
  BULGE,
  blockBoxes,
  END_X,
  END_Y,
  LEAVE_X,
  LEAVE_Y,
  ROW,
  START_X,
  START_Y,
  segmentOf,
} from './arcTable.ts';
import { crossSpans } from './crossSpans.ts';
import { bulgeOfSweep, type Segment, sweepOf } from './segment.ts';
import { type Span, spanOf } from './span.ts';

/** Pieces that follow each other with no crossing between them: all of them belong to the offset, or none. */
export type Run<F extends Frame> = readonly Segment<F>[];

interface Cut {
  readonly piece: number;
  readonly fraction: number;
  readonly x: number;
  readonly y: number;
}

interface Breaks {
  /** Meetings within pieces, piece by piece, in order along each. */
  readonly cuts: readonly Cut[];
  /** 1 where a run may not pass from a piece into the next. */
  readonly after: Uint8Array;
}

/**
 * The raw pieces of an offset, cut wherever two of them meet and where one does not start as the one before
 * ends. Both sides of a cut share its point exactly; pieces shorter than WELD_MM are left out. `closed` says
 * that nothing was cut at all: the single run then closes on itself.
 */
export function offsetRuns<F extends Frame>(
  pieces: ArcTable,
): { readonly runs: readonly Run<F>[]; readonly closed: boolean } {
  const { cuts, after } = breaksOf(pieces);
  const runs: Segment<F>[][] = [];
  let run: Segment<F>[] = [];
  let nextCut = 0;
  for (let piece = 0; piece < pieces.count; piece++) {
    const whole = segmentOf<F>(pieces, piece);
    let from = { fraction: 0, x: whole.start.x, y: whole.start.y };
    for (let cut = cuts[nextCut]; cut?.piece === piece; cut = cuts[++nextCut]) {
      if (isShort(from.x, from.y, cut.x, cut.y)) continue;
      run.push(part(whole, from, cut));
      runs.push(run);
      run = [];
      from = cut;
    }
    if (!isShort(from.x, from.y, whole.end.x, whole.end.y)) {
      run.push(
        from.fraction === 0 ? whole : part(whole, from, { fraction: 1, x: whole.end.x, y: whole.end.y }),
      );
    }
    if (after[piece] === 1 && run.length > 0) {
      runs.push(run);
      run = [];
    }
  }
  if (run.length === 0) return { runs, closed: false };
  const first = runs[0];
  if (!first) return { runs: [run], closed: true };
  // The last run goes on into the first, past the place where the counting began.
  runs[0] = [...run, ...first];
  return { runs, closed: false };
}

function isShort(fromX: number, fromY: number, toX: number, toY: number): boolean {
  return (toX - fromX) * (toX - fromX) + (toY - fromY) * (toY - fromY) <= WELD_MM * WELD_MM;
}

function part<F extends Frame>(
  whole: Segment<F>,
  from: Omit<Cut, 'piece'>,
  to: Omit<Cut, 'piece'>,
): Segment<F> {
  return {
    start: { x: from.x, y: from.y },
    end: { x: to.x, y: to.y },
    bulge: whole.bulge === 0 ? 0 : bulgeOfSweep(sweepOf(whole) * (to.fraction - from.fraction)),
  };
}

function breaksOf<F extends Frame>(pieces: ArcTable): Breaks {
  const { count, rows } = pieces;
  const after = new Uint8Array(count);
  for (let piece = 0, row = 0; piece < count; piece++, row += ROW) {
    const next = piece + 1 === count ? 0 : row + ROW;
    if (!isShort(rows[row + END_X], rows[row + END_Y], rows[next + START_X], rows[next + START_Y])) {
      after[piece] = 1;
    }
  }
  const linked = after.slice();
  const cuts: Cut[] = [];
  const spans: Span<F>[] = [];
  const spanAt = (piece: number) => {
    spans[piece] ??= spanOf(segmentOf<F>(pieces, piece));
    return spans[piece];
  };
  const meet = (piece: number, fraction: number, x: number, y: number) => {
    if (fraction === 1) after[piece] = 1;
    else if (fraction === 0) after[piece === 0 ? count - 1 : piece - 1] = 1;
    else cuts.push({ piece, fraction, x, y });
  };
  nearPieces(pieces, (first, second) => {
    const follows = second === first + 1 && linked[first] === 0;
    const returns = first === 0 && second === count - 1 && linked[second] === 0;
    if (
      (follows && goesOn(rows, first * ROW, second * ROW)) ||
      (returns && goesOn(rows, second * ROW, first * ROW))
    )
      return;
    for (const { point, onFirst, onSecond } of crossSpans(spanAt(first), spanAt(second))) {
      if (follows && onFirst === 1 && onSecond === 0) continue;
      if (returns && onFirst === 0 && onSecond === 1) continue;
      meet(first, onFirst, point.x, point.y);
      meet(second, onSecond, point.x, point.y);
    }
  });
  cuts.sort((one, other) => one.piece - other.piece || one.fraction - other.fraction);
  return { cuts, after };
}

/**
 * Whether two pieces in line can share no point but their joint: neither turns by more than a right angle and
 * the joint by less than one, so that one lies behind the joint and the other ahead of it.
 */
function goesOn(rows: Float64Array, first: number, second: number): boolean {
  const along =
    rows[first + ARRIVE_X] * rows[second + LEAVE_X] + rows[first + ARRIVE_Y] * rows[second + LEAVE_Y];
  return (
    along > 0 &&
    Math.abs(rows[first + BULGE]) <= RIGHT_ANGLE_BULGE &&
    Math.abs(rows[second + BULGE]) <= RIGHT_ANGLE_BULGE
  );
}

const RIGHT_ANGLE_BULGE = Math.SQRT2 - 1;

/** Every pair of pieces whose boxes come within WELD_MM of each other, the earlier first; by blocks, then one by one. */
function nearPieces(pieces: ArcTable, visit: (first: number, second: number) => void): void {
  const { count, rows } = pieces;
  const blocks = blockBoxes(pieces);
  for (let block = 0; block * BLOCK < count; block++) {
    for (let other = block; other * BLOCK < count; other++) {
      if (areApart(blocks, block * BOX, other * BOX)) continue;
      const last = Math.min(count, (block + 1) * BLOCK);
      const otherLast = Math.min(count, (other + 1) * BLOCK);
      for (let first = block * BLOCK; first < last; first++) {
        for (let second = Math.max(first + 1, other * BLOCK); second < otherLast; second++) {
          if (!areApart(rows, first * ROW, second * ROW)) visit(first, second);
        }
      }
    }
  }
}
