import { atan2, distanceBetween, type Frame, hypot, type Point } from '../base/index.ts';

/** One circle through a run of points, by its heading and curvature where the run starts and ends. */
export interface Window {
  readonly from: number;
  readonly to: number;
  readonly startRad: number;
  readonly endRad: number;
}

/**
 * The run of points cut into the fewest windows that one circle each follows within a tolerance, by going as
 * far as possible each time. Windows share their end points.
 */
export function greedyWindows<F extends Frame>(points: readonly Point<F>[], toleranceMm: number): Window[] {
  const windows: Window[] = [];
  const last = points.length - 1;
  for (let from = 0; from < last; ) {
    let good = Math.min(from + 2, last);
    let step = 4;
    let bad = last + 1;
    while (good < last && bad > last) {
      const reach = Math.min(good + step, last);
      if (circleFits(points, from, reach, toleranceMm)) good = reach;
      else bad = reach;
      step *= 2;
    }
    while (bad - good > 1 && bad <= last) {
      const middle = (good + bad) >> 1;
      if (circleFits(points, from, middle, toleranceMm)) good = middle;
      else bad = middle;
    }
    windows.push(windowOf(points, from, good));
    from = good;
  }
  return windows;
}

/**
 * As many windows as asked for, cut so that the worst of them departs as little from its circle as can be; null
 * where the line turns too far for so few.
 */
export function balancedWindows<F extends Frame>(
  points: readonly Point<F>[],
  count: number,
  toleranceMm: number,
): Window[] | null {
  let high = toleranceMm;
  let windows = greedyWindows(points, high);
  for (let step = 0; windows.length > count; step++) {
    if (step === WIDEN_STEPS) return null;
    high *= 2;
    windows = greedyWindows(points, high);
  }
  let low = 0;
  for (let step = 0; step < BALANCE_STEPS; step++) {
    const middle = (low + high) / 2;
    const tried = greedyWindows(points, middle);
    if (tried.length > count) low = middle;
    else {
      high = middle;
      windows = tried;
    }
  }
  return splitLongest(points, windows, count);
}

/** Doublings of the tolerance: a thousand times it, and no line worth fitting needs more. */
const WIDEN_STEPS = 10;

/** Halvings of the tolerance: the balance is then good to a thousandth of it. */
const BALANCE_STEPS = 10;

function splitLongest<F extends Frame>(
  points: readonly Point<F>[],
  windows: Window[],
  count: number,
): Window[] {
  const cut = [...windows];
  while (cut.length < count) {
    const longest = cut.reduce((best, each, index) => {
      const held = cut[best];
      return held && each.to - each.from > held.to - held.from ? index : best;
    }, 0);
    const window = cut[longest];
    if (!window || window.to - window.from < 2) break;
    const middle = (window.from + window.to) >> 1;
    cut.splice(longest, 1, windowOf(points, window.from, middle), windowOf(points, middle, window.to));
  }
  return cut;
}

interface LocalCircle {
  readonly originX: number;
  readonly originY: number;
  readonly cos: number;
  readonly sin: number;
  /** The circle as v = δ + α u + κ (u² + v²) / 2, u along the chord and v to its left. */
  readonly offset: number;
  readonly slope: number;
  readonly curvature: number;
}

function circleFits<F extends Frame>(
  points: readonly Point<F>[],
  from: number,
  to: number,
  toleranceMm: number,
): boolean {
  if (to - from < 3) return true;
  if (turnsTooFar(points, from, to)) return false;
  const circle = fitCircle(points, from, to);
  const { originX, originY, cos, sin, offset, slope, curvature } = circle;
  for (let index = from; index <= to; index++) {
    const x = points[index].x - originX;
    const y = points[index].y - originY;
    const u = cos * x + sin * y;
    const v = cos * y - sin * x;
    const off = v - offset - slope * u - (curvature * (u * u + v * v)) / 2;
    const steepX = slope + curvature * u;
    const steepY = 1 - curvature * v;
    if (!(off * off <= toleranceMm * toleranceMm * (steepX * steepX + steepY * steepY))) return false;
  }
  return true;
}

/** Whether a run comes back towards its start: a window then has no chord to be measured from. */
function turnsTooFar<F extends Frame>(points: readonly Point<F>[], from: number, to: number): boolean {
  const [start, middle, end] = [points[from], points[(from + to) >> 1], points[to]];
  return !!start && !!middle && !!end && distanceBetween(start, end) < distanceBetween(start, middle);
}

function windowOf<F extends Frame>(points: readonly Point<F>[], from: number, to: number): Window {
  const circle = fitCircle(points, from, to);
  const chordRad = atan2(circle.sin, circle.cos);
  const headingAt = (index: number) => {
    const [u, v] = local(circle, points[index]);
    return chordRad + atan2(circle.slope + circle.curvature * u, 1 - circle.curvature * v);
  };
  return { from, to, startRad: headingAt(from), endRad: headingAt(to) };
}

/** Least squares of the circle's equation scaled to distance, in the frame of the chord about the middle point. */
function fitCircle<F extends Frame>(points: readonly Point<F>[], from: number, to: number): LocalCircle {
  const middle = points[(from + to) >> 1];
  const start = points[from];
  const end = points[to];
  const chordX = (end?.x ?? 0) - (start?.x ?? 0);
  const chordY = (end?.y ?? 0) - (start?.y ?? 0);
  const chord = hypot(chordX, chordY) || 1;
  const frame = {
    originX: middle?.x ?? 0,
    originY: middle?.y ?? 0,
    cos: chordX / chord,
    sin: chordY / chord,
    offset: 0,
    slope: 0,
    curvature: 0,
  };
  let [n, su, sw, suu, suw, sww, sv, suv, swv] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (let index = from; index <= to; index++) {
    const x = points[index].x - frame.originX;
    const y = points[index].y - frame.originY;
    const u = frame.cos * x + frame.sin * y;
    const v = frame.cos * y - frame.sin * x;
    const w = (u * u + v * v) / 2;
    n += 1;
    su += u;
    sw += w;
    suu += u * u;
    suw += u * w;
    sww += w * w;
    sv += v;
    suv += u * v;
    swv += w * v;
  }
  // The mean is taken out first; two unknowns are left.
  const uu = suu - (su * su) / n;
  const uw = suw - (su * sw) / n;
  const ww = sww - (sw * sw) / n;
  const uv = suv - (su * sv) / n;
  const wv = swv - (sw * sv) / n;
  const determinant = uu * ww - uw * uw;
  const curvature = n > 2 && determinant > 0 ? (uu * wv - uw * uv) / determinant : 0;
  const slope = uu > 0 ? (uv - uw * curvature) / uu : 0;
  return { ...frame, curvature, slope, offset: (sv - slope * su - curvature * sw) / n };
}

function local<F extends Frame>(frame: LocalCircle, p: Point<F> | undefined): [number, number] {
  const x = (p?.x ?? 0) - frame.originX;
  const y = (p?.y ?? 0) - frame.originY;
  return [frame.cos * x + frame.sin * y, frame.cos * y - frame.sin * x];
}
