import {
  accept,
  type Checked,
  distanceBetween,
  type Fault,
  type Frame,
  type Point,
  refuse,
  WELD_MM,
} from '../base/index.ts';
import { splineChain } from './arcSpline.ts';
import type { Chain, Vertex } from './chain.ts';
import { fitSpan } from './fitSpan.ts';
import { greedyWindows } from './fitWindows.ts';
import { nearestOnSpans } from './nearestOn.ts';
import { segments } from './segment.ts';
import type { SettledSpline } from './settleSpline.ts';
import { spanOf } from './span.ts';
import type { SplineEnds } from './splineEnds.ts';

/** What a fit keeps to. */
export interface FitOptions {
  /** No point may lie further than this from the chain, mm; choose it above the noise of the points. */
  readonly toleranceMm: number;
  /** Indices of points where the line may turn sharply; the chain passes them exactly. */
  readonly corners?: readonly number[];
  /** Headings to keep exactly at the first and last point of an open run, rad. */
  readonly startHeadingRad?: number;
  readonly endHeadingRad?: number;
  /** The points run round: the last is followed by the first, which is not repeated. */
  readonly closed?: boolean;
}

/** A fitted chain and how far the points lie from it. */
export interface ArcFit<F extends Frame> {
  readonly chain: Chain<F>;
  readonly rmsMm: number;
  readonly maxMm: number;
}

/**
 * A chain of arcs, as few as were found, that passes every point within the tolerance: tangent at every joint
 * but the corners. An open chain starts and ends at the first and last point, exactly; a closed one without
 * corners passes no point exactly. Points stand in order, closer together than the smallest radius.
 *
 * Faults: `fit.points` for too few points or a corner that is none of them, `fit.rough` where the points
 * scatter so much that no chain of arcs with two points to each keeps the tolerance.
 */
export function fitArcs<F extends Frame>(
  points: readonly Point<F>[],
  options: FitOptions,
): Checked<ArcFit<F>> {
  const faults = inputFaults(points, options);
  if (faults.length > 0) return refuse(...faults);
  const runs = runsOf(points, options);
  const fitted: SettledSpline[] = [];
  for (const run of runs) {
    const settled = fitSpan(run.points, run.ends, options.toleranceMm);
    if (settled) fitted.push(settled);
    else faults.push(tooRough(run.first, options.toleranceMm));
  }
  if (faults.length > 0) return refuse(...faults);
  const chain = joined<F>(fitted, runs, options.closed === true);
  return accept({ chain, ...measured(chain, points) });
}

interface Run<F extends Frame> {
  readonly first: number;
  readonly points: readonly Point<F>[];
  readonly ends: SplineEnds<F>;
}

/** The smooth runs between corners, each with its end points; a closed line without corners is one run. */
function runsOf<F extends Frame>(points: readonly Point<F>[], options: FitOptions): readonly Run<F>[] {
  const corners = [...new Set(options.corners ?? [])].sort((a, b) => a - b);
  const closed = options.closed === true;
  if (closed && corners.length === 0) return [smoothLoop(points, options.toleranceMm)];
  const cuts = closed
    ? corners
    : [0, ...corners.filter((c) => c > 0 && c < points.length - 1), points.length - 1];
  const laps = closed ? [...cuts, (cuts[0] ?? 0) + points.length] : cuts;
  return laps.slice(1).flatMap((to, index) => {
    const from = laps[index] ?? 0;
    const run = distinct(Array.from({ length: to - from + 1 }, (_, k) => points[(from + k) % points.length]));
    const start = run[0];
    const end = run.at(-1);
    if (!start || !end || run.length < 2) return [];
    const ends: SplineEnds<F> = {
      start,
      end,
      closed: false,
      ...(!closed && index === 0 && options.startHeadingRad !== undefined
        ? { startHeadingRad: options.startHeadingRad }
        : {}),
      ...(!closed && index === laps.length - 2 && options.endHeadingRad !== undefined
        ? { endHeadingRad: options.endHeadingRad }
        : {}),
    };
    return [{ first: from, points: run, ends }];
  });
}

/** A loop is opened where an arc ends anyway, so that its first joint costs no arc. */
function smoothLoop<F extends Frame>(points: readonly Point<F>[], toleranceMm: number): Run<F> {
  const around = distinct([...points, points[0]]);
  const first = greedyWindows(around, toleranceMm)[1]?.from ?? 0;
  const loop = around.slice(0, -1);
  const turned = [...loop.slice(first), ...loop.slice(0, first)];
  return { first, points: distinct([...turned, turned[0]]), ends: { closed: true } };
}

function distinct<F extends Frame>(points: readonly (Point<F> | undefined)[]): Point<F>[] {
  const kept: Point<F>[] = [];
  for (const p of points) {
    const last = kept.at(-1);
    if (p && (!last || distanceBetween(last, p) > WELD_MM)) kept.push(p);
  }
  return kept;
}

function joined<F extends Frame>(
  fitted: readonly SettledSpline[],
  runs: readonly Run<F>[],
  closed: boolean,
): Chain<F> {
  const vertices: Vertex<F>[] = [];
  for (const [index, { spline }] of fitted.entries()) {
    const part = splineChain<F>(spline).vertices;
    const start = runs[index]?.ends.start;
    vertices.push(
      ...part.slice(0, -1).map((v, k) => (k === 0 && start ? { ...v, x: start.x, y: start.y } : v)),
    );
  }
  const end = runs.at(-1)?.ends.end;
  if (!closed && end) vertices.push({ x: end.x, y: end.y, bulge: 0 });
  return { closed, vertices };
}

function measured<F extends Frame>(
  chain: Chain<F>,
  points: readonly Point<F>[],
): { readonly rmsMm: number; readonly maxMm: number } {
  const spans = segments(chain).map(spanOf);
  let square = 0;
  let maxMm = 0;
  for (const p of points) {
    const { distanceMm } = nearestOnSpans(spans, p);
    square += distanceMm * distanceMm;
    maxMm = Math.max(maxMm, distanceMm);
  }
  return { rmsMm: Math.sqrt(square / points.length), maxMm };
}

function inputFaults<F extends Frame>(points: readonly Point<F>[], options: FitOptions): Fault[] {
  const faults: Fault[] = [];
  const least = options.closed ? 3 : 2;
  const finite = points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y));
  if (distinct(points).length < least || !finite) {
    faults.push({
      code: 'fit.points',
      at: 'points',
      found: finite ? `${points.length} points` : 'a point without a number',
      need: `at least ${least} different points`,
      remedy: 'give more points along the line',
    });
  }
  for (const corner of options.corners ?? []) {
    if (Number.isInteger(corner) && corner >= 0 && corner < points.length) continue;
    faults.push({
      code: 'fit.points',
      at: `corner ${corner}`,
      found: `no point of that number among ${points.length}`,
      need: 'the number of a point',
      remedy: 'count the points from 0',
    });
  }
  if (!(options.toleranceMm > 0)) {
    faults.push({
      code: 'fit.tolerance',
      at: 'tolerance',
      found: `${options.toleranceMm} mm`,
      need: 'a distance greater than 0',
      remedy: 'give about three times the noise of the points',
    });
  }
  return faults;
}

function tooRough(first: number, toleranceMm: number): Fault {
  return {
    code: 'fit.rough',
    at: `the run of points from number ${first}`,
    found: `points that scatter by more than ${toleranceMm} mm round any smooth line`,
    need: 'points that a line of tangent arcs can pass within the tolerance',
    remedy: 'raise the tolerance, mark the corner that the run turns, or measure it again',
  };
}
