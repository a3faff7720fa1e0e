import { cos, exp, type Point, sin } from '../../base/index.ts';

/** A heading as a number of the shape: `base + factor · u[index]`, or the constant `base` when `factor` is 0. */
export interface Heading {
  readonly baseRad: number;
  readonly factor: -1 | 0 | 1;
  readonly index: number;
}

/**
 * Arcs that follow each other without a kink, told by radius and heading alone: arc `i` runs from heading
 * `i` to heading `i + 1`, so the next arc leaves as this one arrives, whatever the numbers are. `turns` is
 * 1 for an arc with its centre on the left (full), -1 for a hollow one. Radii stand in `u` as logarithms.
 */
export interface ArcRun {
  readonly radiusIndex: readonly number[];
  readonly turns: readonly (1 | -1)[];
  readonly headings: readonly Heading[];
}

/** Where each number of the shape stands; the first 27 are the same in a draft and in a tracing. */
export const AT = {
  lowerRadii: 0,
  cRadii: 5,
  upperRadii: 8,
  lowerHeadings: 13,
  upperHeadings: 18,
  cHeadings: 23,
  lowerEndHeading: 27,
} as const;

const count = (from: number, length: number): number[] => Array.from({ length }, (_, i) => from + i);
const free = (index: number): Heading => ({ baseRad: 0, factor: 1, index });
const LEVEL: Heading = { baseRad: 0, factor: 0, index: 0 };

/** From the lower end, level at the centre line, to the lower corner. */
export const LOWER_RUN: ArcRun = {
  radiusIndex: count(AT.lowerRadii, 5),
  turns: [1, 1, 1, 1, -1],
  headings: [LEVEL, ...count(AT.lowerHeadings, 5).map(free)],
};

/** From the upper end to the upper corner, in the frame that looks down from the upper end (y' = length - y). */
export const UPPER_RUN: ArcRun = {
  radiusIndex: count(AT.upperRadii, 5),
  turns: [1, 1, 1, 1, -1],
  headings: [LEVEL, ...count(AT.upperHeadings, 5).map(free)],
};

/** From the waist side of the lower corner to that of the upper corner, all three arcs hollow. */
export const C_RUN: ArcRun = {
  radiusIndex: count(AT.cRadii, 3),
  turns: [-1, -1, -1],
  headings: [
    { baseRad: Math.PI, factor: 1, index: AT.cHeadings },
    free(AT.cHeadings + 1),
    free(AT.cHeadings + 2),
    { baseRad: 0, factor: -1, index: AT.cHeadings + 3 },
  ],
};

export type Numbers = ArrayLike<number>;

export function headingRad(heading: Heading, u: Numbers): number {
  return heading.baseRad + heading.factor * (heading.factor === 0 ? 0 : u[heading.index]);
}

function signedRadiusMm(run: ArcRun, u: Numbers, arc: number): number {
  return run.turns[arc] * exp(u[run.radiusIndex[arc]]);
}

/** The way from the run's start to the point of `arc` where the curve heads `atRad`. */
export function wayAlong(run: ArcRun, u: Numbers, arc: number, atRad: number): Point<'body'> {
  let x = 0;
  let y = 0;
  for (let i = 0; i <= arc; i += 1) {
    const radius = signedRadiusMm(run, u, i);
    const a = headingRad(run.headings[i], u);
    const b = i === arc ? atRad : headingRad(run.headings[i + 1], u);
    x += radius * (sin(b) - sin(a));
    y += radius * (cos(a) - cos(b));
  }
  return { x, y };
}

/** The way over the whole run. */
export function wayOver(run: ArcRun, u: Numbers): Point<'body'> {
  const last = run.turns.length - 1;
  return wayAlong(run, u, last, headingRad(run.headings[last + 1], u));
}

/** A pair of gradient rows: how x and y answer to each number of the shape. */
export interface Rows {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

export function emptyRows(length: number): Rows {
  return { x: new Float64Array(length), y: new Float64Array(length) };
}

/**
 * Adds to `rows` the gradient of {@link wayAlong}, times `factor`. Where the heading at the point moves with
 * the arc's ends, `share` says how (0 at the arc's start, 1 at its end); without it the heading stays fixed.
 */
export function addGradient(
  rows: Rows,
  run: ArcRun,
  u: Numbers,
  arc: number,
  atRad: number,
  factor: Readonly<Point<'body'>>,
  share?: number,
): void {
  const turn = (heading: Heading, radius: number, angle: number): void => {
    if (heading.factor === 0) return;
    rows.x[heading.index] += factor.x * heading.factor * radius * cos(angle);
    rows.y[heading.index] += factor.y * heading.factor * radius * sin(angle);
  };
  for (let i = 0; i <= arc; i += 1) {
    const radius = signedRadiusMm(run, u, i);
    const a = headingRad(run.headings[i], u);
    const b = i === arc ? atRad : headingRad(run.headings[i + 1], u);
    rows.x[run.radiusIndex[i]] += factor.x * radius * (sin(b) - sin(a));
    rows.y[run.radiusIndex[i]] += factor.y * radius * (cos(a) - cos(b));
    turn(run.headings[i], -radius, a);
    if (i < arc) turn(run.headings[i + 1], radius, b);
    else if (share !== undefined) {
      turn(run.headings[i], (1 - share) * radius, b);
      turn(run.headings[i + 1], share * radius, b);
    }
  }
}
