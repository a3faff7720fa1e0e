interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * Points along the cubic spline through the knots, about `stepMm` apart, both ends exact. Parameter:
 * the summed chords. An end with a given unit direction runs out in it; the others end without bending.
 */
export function splineThrough(
  knots: readonly Spot[],
  stepMm: number,
  start: Spot | undefined,
  end: Spot | undefined,
): Spot[] {
  const along = [0];
  for (let i = 1; i < knots.length; i++)
    along.push(along[i - 1] + Math.hypot(knots[i].x - knots[i - 1].x, knots[i].y - knots[i - 1].y));
  const xs = cubic(
    along,
    knots.map((k) => k.x),
    start?.x,
    end?.x,
  );
  const ys = cubic(
    along,
    knots.map((k) => k.y),
    start?.y,
    end?.y,
  );
  const total = along[along.length - 1];
  const count = Math.ceil(total / stepMm);
  return Array.from({ length: count + 1 }, (_, i) => {
    const t = (total * i) / count;
    return { x: xs(t), y: ys(t) };
  });
}

/** One coordinate of the spline; a missing end slope means zero second derivative there. */
function cubic(
  t: readonly number[],
  v: readonly number[],
  startSlope: number | undefined,
  endSlope: number | undefined,
): (at: number) => number {
  const n = t.length;
  const below = new Array<number>(n).fill(0);
  const middle = new Array<number>(n).fill(1);
  const above = new Array<number>(n).fill(0);
  const right = new Array<number>(n).fill(0);
  for (let i = 1; i < n - 1; i++) {
    const h0 = t[i] - t[i - 1];
    const h1 = t[i + 1] - t[i];
    below[i] = h0;
    middle[i] = 2 * (h0 + h1);
    above[i] = h1;
    right[i] = 6 * ((v[i + 1] - v[i]) / h1 - (v[i] - v[i - 1]) / h0);
  }
  if (startSlope !== undefined) {
    const h = t[1] - t[0];
    middle[0] = 2 * h;
    above[0] = h;
    right[0] = 6 * ((v[1] - v[0]) / h - startSlope);
  }
  if (endSlope !== undefined) {
    const h = t[n - 1] - t[n - 2];
    middle[n - 1] = 2 * h;
    below[n - 1] = h;
    right[n - 1] = 6 * (endSlope - (v[n - 1] - v[n - 2]) / h);
  }
  for (let i = 1; i < n; i++) {
    const factor = below[i] / middle[i - 1];
    middle[i] -= factor * above[i - 1];
    right[i] -= factor * right[i - 1];
  }
  const bend = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--)
    bend[i] = (right[i] - (i < n - 1 ? above[i] * bend[i + 1] : 0)) / middle[i];
  return (at) => {
    let i = 0;
    while (i < n - 2 && at > t[i + 1]) i++;
    const h = t[i + 1] - t[i];
    const a = (t[i + 1] - at) / h;
    const b = (at - t[i]) / h;
    return (
      a * v[i] + b * v[i + 1] + (((a * a * a - a) * bend[i] + (b * b * b - b) * bend[i + 1]) * h * h) / 6
    );
  };
}
