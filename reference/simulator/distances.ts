import type { Spot } from './bentLine.ts';

/** Distance from a place to a closed (or open) line of places. */
export function distanceTo(line: readonly Spot[], at: Spot, isClosed: boolean): number {
  let least = Number.POSITIVE_INFINITY;
  const last = isClosed ? line.length : line.length - 1;
  for (let i = 0; i < last; i++) {
    const a = line[i] as Spot;
    const b = line[i + 1 === line.length ? 0 : i + 1] as Spot;
    const ex = b.x - a.x;
    const ey = b.y - a.y;
    const px = at.x - a.x;
    const py = at.y - a.y;
    const t = Math.max(0, Math.min(1, (px * ex + py * ey) / Math.max(ex * ex + ey * ey, 1e-12)));
    const square = (px - t * ex) ** 2 + (py - t * ey) ** 2;
    if (square < least) least = square;
  }
  return Math.sqrt(least);
}

/** Places along a closed line, even steps apart. */
export function evenly(line: readonly Spot[], stepMm: number): Spot[] {
  const out: Spot[] = [];
  let carried = 0;
  for (let i = 0; i < line.length; i++) {
    const a = line[i] as Spot;
    const b = line[(i + 1) % line.length] as Spot;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    for (; carried < long; carried += stepMm)
      out.push({ x: a.x + ((b.x - a.x) * carried) / long, y: a.y + ((b.y - a.y) * carried) / long });
    carried -= long;
  }
  return out;
}

export interface Rigid {
  readonly x: number;
  readonly y: number;
  readonly turnRad: number;
}

export function moved({ x, y, turnRad }: Rigid, at: Spot): Spot {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return { x: c * at.x - s * at.y + x, y: s * at.x + c * at.y + y };
}

/**
 * The shift (and turn, unless `along` only) that lays places onto a closed line best; places more than `gateMm` away do
 * not count. Method: nearest segment by nearest segment, Gauss-Newton on distances to its line.
 */
export function laidOnto(
  places: readonly Spot[],
  line: readonly Spot[],
  gateMm: number,
  along: boolean,
): Rigid {
  let now: Rigid = { x: 0, y: 0, turnRad: 0 };
  for (let round = 0; round < 8; round++) {
    const normal = new Float64Array(9);
    const right = new Float64Array(3);
    for (const place of places) {
      const at = moved(now, place);
      const { nx, ny, off } = nearestLine(line, at);
      if (Math.abs(off) > (round < 2 ? 3 * gateMm : gateMm)) continue;
      const row = along ? [0, ny, 0] : [nx, ny, ny * at.x - nx * at.y];
      for (let a = 0; a < 3; a++) {
        right[a] = (right[a] as number) - (row[a] as number) * off;
        for (let b = 0; b < 3; b++)
          normal[3 * a + b] = (normal[3 * a + b] as number) + (row[a] as number) * (row[b] as number);
      }
    }
    if (along) now = { ...now, y: now.y + (right[1] as number) / (normal[4] as number) };
    else {
      const [dx, dy, turn] = solve3(normal, right);
      const spun = moved({ x: dx, y: dy, turnRad: turn }, now);
      now = { ...spun, turnRad: now.turnRad + turn };
    }
  }
  return now;
}

function nearestLine(line: readonly Spot[], at: Spot): { nx: number; ny: number; off: number } {
  let least = Number.POSITIVE_INFINITY;
  let best = { nx: 1, ny: 0, off: 0 };
  for (let i = 0; i < line.length; i++) {
    const a = line[i] as Spot;
    const b = line[(i + 1) % line.length] as Spot;
    const ex = b.x - a.x;
    const ey = b.y - a.y;
    const long = Math.hypot(ex, ey);
    if (long < 1e-9) continue;
    const px = at.x - a.x;
    const py = at.y - a.y;
    const t = Math.max(0, Math.min(1, (px * ex + py * ey) / (long * long)));
    const square = (px - t * ex) ** 2 + (py - t * ey) ** 2;
    if (square >= least) continue;
    least = square;
    const [nx, ny] = [ey / long, -ex / long];
    best = { nx, ny, off: px * nx + py * ny };
  }
  return best;
}

function solve3(m: Float64Array, r: Float64Array): readonly [number, number, number] {
  const [a, b, c, , e, f, , , i] = m as unknown as number[] as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const det = a * (e * i - f * f) - b * (b * i - f * c) + c * (b * f - e * c);
  const [p, q, s] = r as unknown as [number, number, number];
  return [
    (p * (e * i - f * f) - b * (q * i - f * s) + c * (q * f - e * s)) / det,
    (a * (q * i - f * s) - p * (b * i - f * c) + c * (b * s - q * c)) / det,
    (a * (e * s - f * q) - b * (b * s - c * q) + p * (b * f - e * c)) / det,
  ];
}

export function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / Math.max(1, values.length));
}

/** The value below which this share of all lies. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
