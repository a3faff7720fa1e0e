import { cos, distanceBetween, type Point, sin } from '../../base/index.ts';
import {
  type ArcRun,
  AT,
  addGradient,
  C_RUN,
  emptyRows,
  headingRad,
  LOWER_RUN,
  type Numbers,
  type Rows,
  UPPER_RUN,
  wayAlong,
} from './arcRun.ts';
import { layShape } from './layShape.ts';

/**
 * The numbers of a fitted shape: 13 logarithms of radii, 14 headings, the lean of the lower corner end, its
 * width, the height of the lower end and the body length. Nothing ties the waist to the upper corner: its
 * corner end is the line between wherever both come to stand.
 */
export const FIT_AT = { lowerEndWidth: 28, lowerEndY: 29, lengthMm: 30 } as const;
export const FIT_NUMBERS = 31;

/** The three tangent stretches of a half outline. */
export type HalfStretch = 'lowerBout' | 'cBout' | 'upperBout';

const RUNS: Readonly<Record<HalfStretch, ArcRun>> = {
  lowerBout: LOWER_RUN,
  cBout: C_RUN,
  upperBout: UPPER_RUN,
};

/** Number of arcs of a stretch. */
export function arcsOf(stretch: HalfStretch): number {
  return RUNS[stretch].turns.length;
}

/** A point that moves with the shape: where it is, its outward normal, how it answers to every number. */
export interface ShapePoint extends Point<'body'> {
  readonly normalX: number;
  readonly normalY: number;
  readonly gradient: Rows;
}

/** The point at `share` of arc `arc` of a stretch, arcs counted in the order they are laid. */
export function shapePoint(stretch: HalfStretch, u: Numbers, arc: number, share: number): ShapePoint {
  const run = RUNS[stretch];
  const a = headingRad(run.headings[arc], u);
  const at = a + share * (headingRad(run.headings[arc + 1], u) - a);
  const way = wayAlong(run, u, arc, at);
  const gradient = emptyRows(FIT_NUMBERS);
  const hangs = stretch === 'upperBout';
  const up = hangs ? -1 : 1;
  if (stretch === 'cBout') addStartOfC(gradient, u);
  addGradient(gradient, run, u, arc, at, { x: 1, y: up }, share);
  gradient.y[FIT_AT.lowerEndY] = 1;
  if (hangs) gradient.y[FIT_AT.lengthMm] = 1;
  const start = stretch === 'cBout' ? layShape(u, 0, u[FIT_AT.lowerEndWidth]).cStart : { x: 0, y: 0 };
  const originY = u[FIT_AT.lowerEndY] + (hangs ? u[FIT_AT.lengthMm] : start.y);
  return {
    x: start.x + way.x,
    y: originY + up * way.y,
    normalX: sin(at),
    normalY: -up * cos(at),
    gradient,
  };
}

/** The point at `share` of a corner end, counted from the lower end upwards. */
export function cornerEndPoint(which: 'lowerCorner' | 'upperCorner', u: Numbers, share: number): ShapePoint {
  const from = which === 'lowerCorner' ? shapePoint('lowerBout', u, 4, 1) : shapePoint('cBout', u, 2, 1);
  const to = which === 'lowerCorner' ? shapePoint('cBout', u, 0, 0) : shapePoint('upperBout', u, 4, 1);
  const mix = (a: Float64Array, b: Float64Array) => a.map((value, i) => (1 - share) * value + share * b[i]);
  const length = distanceBetween(from, to);
  return {
    x: (1 - share) * from.x + share * to.x,
    y: (1 - share) * from.y + share * to.y,
    normalX: (to.y - from.y) / length,
    normalY: -(to.x - from.x) / length,
    gradient: { x: mix(from.gradient.x, to.gradient.x), y: mix(from.gradient.y, to.gradient.y) },
  };
}

/** Adds how the waist side of the lower corner moves with each number. */
function addStartOfC(rows: Rows, u: Numbers): void {
  const last = LOWER_RUN.turns.length - 1;
  addGradient(rows, LOWER_RUN, u, last, headingRad(LOWER_RUN.headings[last + 1], u), { x: 1, y: 1 }, 1);
  const lean = u[AT.lowerEndHeading];
  const width = u[FIT_AT.lowerEndWidth];
  rows.x[AT.lowerEndHeading] -= width * sin(lean);
  rows.y[AT.lowerEndHeading] += width * cos(lean);
  rows.x[FIT_AT.lowerEndWidth] += cos(lean);
  rows.y[FIT_AT.lowerEndWidth] += sin(lean);
}
