interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Signed distance to a closed line on a grid, mm: negative inside; beyond `BAND_MM` only the sign is true. */
export interface Field {
  distanceAt(x: number, y: number): number;
}

const BAND_MM = 60;
const STEP_MM = 0.25;
const MARGIN_MM = 70;

/** The field of a closed line given by close-lying points. Exact to the chord error near the line. */
export function distanceField(line: readonly Spot[]): Field {
  const minX = Math.min(...line.map((p) => p.x)) - MARGIN_MM;
  const minY = Math.min(...line.map((p) => p.y)) - MARGIN_MM;
  const columns = Math.ceil((Math.max(...line.map((p) => p.x)) + MARGIN_MM - minX) / STEP_MM) + 1;
  const rows = Math.ceil((Math.max(...line.map((p) => p.y)) + MARGIN_MM - minY) / STEP_MM) + 1;
  const nearest = nearestSegments(line, minX, minY, columns, rows);
  const distance = new Float32Array(columns * rows);
  for (let r = 0; r < rows; r++)
    for (let c = 0; c < columns; c++) {
      const x = minX + c * STEP_MM;
      const y = minY + r * STEP_MM;
      const i = nearest[r * columns + c];
      distance[r * columns + c] =
        i < 0 ? BAND_MM : segmentDistance(x, y, line[i], line[(i + 1) % line.length]);
    }
  signByScanline(line, distance, minX, minY, columns, rows);
  return {
    distanceAt(x, y) {
      const u = (x - minX) / STEP_MM;
      const v = (y - minY) / STEP_MM;
      if (u < 0 || v < 0 || u >= columns - 1 || v >= rows - 1) return BAND_MM;
      const c = Math.floor(u);
      const r = Math.floor(v);
      const a = u - c;
      const b = v - r;
      const at = r * columns + c;
      return (
        (1 - b) * ((1 - a) * distance[at] + a * distance[at + 1]) +
        b * ((1 - a) * distance[at + columns] + a * distance[at + columns + 1])
      );
    },
  };
}

/** For each cell the nearest segment, carried outward from the line by two sweeps (each cell asks its neighbours). */
function nearestSegments(
  line: readonly Spot[],
  minX: number,
  minY: number,
  columns: number,
  rows: number,
): Int32Array {
  const nearest = new Int32Array(columns * rows).fill(-1);
  const best = new Float32Array(columns * rows).fill(1e9);
  const offer = (c: number, r: number, i: number): void => {
    if (i < 0 || c < 0 || r < 0 || c >= columns || r >= rows) return;
    const d = segmentDistance(minX + c * STEP_MM, minY + r * STEP_MM, line[i], line[(i + 1) % line.length]);
    if (d < best[r * columns + c]) {
      best[r * columns + c] = d;
      nearest[r * columns + c] = i;
    }
  };
  line.forEach((p, i) => {
    const c = Math.round((p.x - minX) / STEP_MM);
    const r = Math.round((p.y - minY) / STEP_MM);
    for (let dr = -3; dr <= 3; dr++) for (let dc = -3; dc <= 3; dc++) offer(c + dc, r + dr, i);
  });
  for (let pass = 0; pass < 2; pass++) {
    for (let r = 0; r < rows; r++)
      for (let c = 0; c < columns; c++) {
        offer(c, r, c > 0 ? nearest[r * columns + c - 1] : -1);
        offer(c, r, r > 0 ? nearest[(r - 1) * columns + c] : -1);
      }
    for (let r = rows - 1; r >= 0; r--)
      for (let c = columns - 1; c >= 0; c--) {
        offer(c, r, c < columns - 1 ? nearest[r * columns + c + 1] : -1);
        offer(c, r, r < rows - 1 ? nearest[(r + 1) * columns + c] : -1);
      }
  }
  return nearest;
}

function signByScanline(
  line: readonly Spot[],
  distance: Float32Array,
  minX: number,
  minY: number,
  columns: number,
  rows: number,
): void {
  for (let r = 0; r < rows; r++) {
    const y = minY + r * STEP_MM;
    const crossings: number[] = [];
    for (let i = 0; i < line.length; i++) {
      const a = line[i];
      const b = line[(i + 1) % line.length];
      if (a.y > y !== b.y > y) crossings.push(a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y));
    }
    crossings.sort((p, q) => p - q);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const from = Math.max(0, Math.ceil((crossings[k] - minX) / STEP_MM));
      const to = Math.min(columns - 1, Math.floor((crossings[k + 1] - minX) / STEP_MM));
      for (let c = from; c <= to; c++) distance[r * columns + c] *= -1;
    }
  }
}

function segmentDistance(x: number, y: number, a: Spot, b: Spot): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const t = square > 0 ? Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / square)) : 0;
  return Math.hypot(x - a.x - t * dx, y - a.y - t * dy);
}
