import { hypot } from '../../base/index.ts';
import { fitCircle } from '../../numeric/index.ts';
import type { LoopPoint } from './bridgeLoops.ts';

/** A circle found on a stretch of a hole's edge, in the frame's units. */
export interface EyeCircle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly turnShare: number;
  readonly rough: number;
}

/** 355ths: the stretch either way that starts the circle, and how far its edge may lie off it. */
const START = 2.4;
const OFF = 0.16;
const ROUNDS = 8;
/** Points off the circle in a row that end it. */
const PATIENCE = 4;
/** Radii of eyes, 355ths, and the least share of the turn that makes a circle of it. */
const [LEAST_RADIUS, MOST_RADIUS] = [1.8, 8];
const LEAST_TURN = 0.3;
/** 355ths round the outermost place in which the eye's far end from the stem is looked for. */
const ROUND_TIP = 9;

/**
 * The upper or lower eye of a hole's edge (anticlockwise, x outward); null where none is plainly a circle. Method: from
 * the point of the eye that faces away from the hook, a circle by least squares grows along the edge while it fits.
 */
export function holeEye(
  loop: readonly LoopPoint[],
  which: 'upper' | 'lower',
  nickY: number,
): EyeCircle | null {
  const start = startAt(loop, which, nickY);
  if (start < 0) return null;
  let span = spanRound(loop, start, START);
  let circle = circleThrough(loop, span);
  for (let round = 0; round < ROUNDS && circle; round++) {
    const grown = grow(loop, start, circle);
    if (grown.from === span.from && grown.to === span.to) break;
    span = grown;
    circle = circleThrough(loop, span);
  }
  const fits = circle && circle.radius > LEAST_RADIUS && circle.radius < MOST_RADIUS;
  return circle && fits && circle.turnShare >= LEAST_TURN ? circle : null;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

function startAt(loop: readonly LoopPoint[], which: 'upper' | 'lower', nickY: number): number {
  const up = which === 'upper';
  const own = (point: LoopPoint): boolean => (up ? point.y > nickY + 10 : point.y < nickY - 8);
  let tip = -1;
  loop.forEach((point, i) => {
    if (own(point) && (tip < 0 || (up ? point.x < loop[tip].x : point.x > loop[tip].x))) tip = i;
  });
  if (tip < 0) return -1;
  let end = tip;
  loop.forEach((point, i) => {
    const near = hypot(point.x - loop[tip].x, point.y - loop[tip].y) < ROUND_TIP;
    const beside = Math.abs(point.x - loop[tip].x) < ROUND_TIP - 1;
    if (near && beside && own(point) && (up ? point.y < loop[end].y : point.y > loop[end].y)) end = i;
  });
  return end;
}

function spanRound(loop: readonly LoopPoint[], start: number, reach: number): Span {
  let [from, to] = [start, start];
  for (let way = 0; way < reach && start - from < loop.length / 4; from--) way += stepLength(loop, from - 1);
  for (let way = 0; way < reach && to - start < loop.length / 4; to++) way += stepLength(loop, to);
  return { from, to };
}

function pointAt(loop: readonly LoopPoint[], i: number): LoopPoint {
  return loop[((i % loop.length) + loop.length) % loop.length];
}

function stepLength(loop: readonly LoopPoint[], i: number): number {
  const [a, b] = [pointAt(loop, i), pointAt(loop, i + 1)];
  return hypot(b.x - a.x, b.y - a.y);
}

function grow(loop: readonly LoopPoint[], start: number, circle: EyeCircle): Span {
  const reach = (way: 1 | -1): number => {
    let last = start;
    let off = 0;
    for (let i = start; Math.abs(i - start) < loop.length / 2 && off < PATIENCE; i += way) {
      const { x, y, bridged } = pointAt(loop, i);
      if (!bridged && Math.abs(hypot(x - circle.x, y - circle.y) - circle.radius) < OFF) {
        last = i;
        off = 0;
      } else off++;
    }
    return last;
  };
  return { from: reach(-1), to: reach(1) };
}

/** The circle through a stretch of the edge, and how much of its round the stretch makes. */
function circleThrough(loop: readonly LoopPoint[], { from, to }: Span): EyeCircle | null {
  const points: LoopPoint[] = [];
  for (let i = from; i <= to; i++) points.push(pointAt(loop, i));
  const circle = fitCircle(points);
  if (circle === null) return null;
  let length = 0;
  for (let i = from; i < to; i++) length += stepLength(loop, i);
  const { x, y, radius, rms } = circle;
  return { x, y, radius, turnShare: Math.min(1, length / (2 * Math.PI * radius)), rough: rms };
}
