import type { Spot } from './bentLine.ts';

/** Distance to a closed line by place, mm, negative inside, kept at the knots of a grid. */
export interface DistanceGrid {
  readonly at: (x: number, y: number) => number;
  readonly fromX: number;
  readonly fromY: number;
  readonly cellMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly values: Float32Array;
}

const CELL_MM = 0.5;
const NEAR_MM = 7;
const COARSE_MM = 4;

/** The distance field of a closed outline whose places lie close together, out to `marginMm` beside it. */
export function distanceGrid(outline: readonly Spot[], marginMm: number): DistanceGrid {
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  const fromX = Math.min(...xs) - marginMm;
  const fromY = Math.min(...ys) - marginMm;
  const columns = Math.ceil((Math.max(...xs) + marginMm - fromX) / CELL_MM) + 1;
  const rows = Math.ceil((Math.max(...ys) + marginMm - fromY) / CELL_MM) + 1;
  const values = new Float32Array(columns * rows);
  const grid = { fromX, fromY, cellMm: CELL_MM, columns, rows, values };
  fillFar(grid, outline);
  fillNear(grid, outline);
  signInside(grid, outline);
  return { ...grid, at: sampler(grid) };
}

type Bare = Omit<DistanceGrid, 'at'>;

/** Bilinear between the knots; outside the grid the value at its border plus the way there. */
function sampler({ fromX, fromY, cellMm, columns, rows, values }: Bare): (x: number, y: number) => number {
  const [mostU, mostV] = [columns - 1.001, rows - 1.001];
  return (x, y) => {
    const u = (x - fromX) / cellMm;
    const v = (y - fromY) / cellMm;
    const cu = u < 0 ? 0 : u > mostU ? mostU : u;
    const cv = v < 0 ? 0 : v > mostV ? mostV : v;
    const i = cu | 0;
    const j = cv | 0;
    const fu = cu - i;
    const fv = cv - j;
    const k = j * columns + i;
    const low = (values[k] as number) * (1 - fu) + (values[k + 1] as number) * fu;
    const high = (values[k + columns] as number) * (1 - fu) + (values[k + columns + 1] as number) * fu;
    const inside = low * (1 - fv) + high * fv;
    return cu === u && cv === v
      ? inside
      : inside + Math.max(Math.abs(u - cu), Math.abs(v - cv)) * cellMm * 0.7;
  };
}

/** Rough distances everywhere, from every eighth place of the outline on a coarse grid. */
function fillFar({ fromX, fromY, columns, rows, values }: Bare, outline: readonly Spot[]): void {
  const ratio = COARSE_MM / CELL_MM;
  const wide = Math.ceil(columns / ratio) + 1;
  const high = Math.ceil(rows / ratio) + 1;
  const coarse = new Float64Array(wide * high).fill(Number.POSITIVE_INFINITY);
  const px = Float64Array.from(outline.filter((_, i) => i % 12 === 0).map(({ x }) => x));
  const py = Float64Array.from(outline.filter((_, i) => i % 12 === 0).map(({ y }) => y));
  for (let j = 0; j < high; j++)
    for (let i = 0; i < wide; i++) {
      const x = fromX + i * COARSE_MM;
      const y = fromY + j * COARSE_MM;
      let least = Number.POSITIVE_INFINITY;
      for (let k = 0; k < px.length; k++) {
        const dx = x - (px[k] as number);
        const dy = y - (py[k] as number);
        const square = dx * dx + dy * dy;
        if (square < least) least = square;
      }
      coarse[j * wide + i] = Math.sqrt(least);
    }
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++) {
      const [u, v] = [i / ratio, j / ratio];
      const [a, b] = [Math.floor(u), Math.floor(v)];
      const [fu, fv] = [u - a, v - b];
      const k = b * wide + a;
      values[j * columns + i] =
        (coarse[k] as number) * (1 - fu) * (1 - fv) +
        (coarse[k + 1] as number) * fu * (1 - fv) +
        (coarse[k + wide] as number) * (1 - fu) * fv +
        (coarse[k + wide + 1] as number) * fu * fv;
    }
}

/** True distances to the segments in a band along the line. */
function fillNear({ fromX, fromY, columns, rows, values }: Bare, outline: readonly Spot[]): void {
  const exact = new Float32Array(values.length).fill(NEAR_MM);
  for (let s = 0; s < outline.length; s++) {
    const a = outline[s] as Spot;
    const b = outline[(s + 1) % outline.length] as Spot;
    const ex = b.x - a.x;
    const ey = b.y - a.y;
    const square = Math.max(ex * ex + ey * ey, 1e-12);
    const i0 = Math.max(0, Math.floor((Math.min(a.x, b.x) - NEAR_MM - fromX) / CELL_MM));
    const i1 = Math.min(columns - 1, Math.ceil((Math.max(a.x, b.x) + NEAR_MM - fromX) / CELL_MM));
    const j0 = Math.max(0, Math.floor((Math.min(a.y, b.y) - NEAR_MM - fromY) / CELL_MM));
    const j1 = Math.min(rows - 1, Math.ceil((Math.max(a.y, b.y) + NEAR_MM - fromY) / CELL_MM));
    for (let j = j0; j <= j1; j++) {
      const py = fromY + j * CELL_MM - a.y;
      for (let i = i0; i <= i1; i++) {
        const px = fromX + i * CELL_MM - a.x;
        let t = (px * ex + py * ey) / square;
        t = t < 0 ? 0 : t > 1 ? 1 : t;
        const dx = px - t * ex;
        const dy = py - t * ey;
        const d = Math.sqrt(dx * dx + dy * dy);
        const k = j * columns + i;
        if (d < (exact[k] as number)) exact[k] = d;
      }
    }
  }
  for (let k = 0; k < values.length; k++) if ((exact[k] as number) < NEAR_MM) values[k] = exact[k] as number;
}

function signInside({ fromX, fromY, columns, rows, values }: Bare, outline: readonly Spot[]): void {
  const crossings: number[][] = Array.from({ length: rows }, () => []);
  for (let s = 0; s < outline.length; s++) {
    const a = outline[s] as Spot;
    const b = outline[(s + 1) % outline.length] as Spot;
    const low = Math.min(a.y, b.y);
    const high = Math.max(a.y, b.y);
    for (let j = Math.ceil((low - fromY) / CELL_MM); fromY + j * CELL_MM < high; j++) {
      const share = (fromY + j * CELL_MM - a.y) / (b.y - a.y);
      crossings[j]?.push(a.x + share * (b.x - a.x));
    }
  }
  crossings.forEach((row, j) => {
    row.sort((a, b) => a - b);
    for (let c = 0; c + 1 < row.length; c += 2) {
      const i0 = Math.ceil(((row[c] as number) - fromX) / CELL_MM);
      const i1 = Math.floor(((row[c + 1] as number) - fromX) / CELL_MM);
      for (let i = i0; i <= i1; i++) values[j * columns + i] = -(values[j * columns + i] as number);
    }
  });
}
