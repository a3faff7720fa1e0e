import type { HeightField } from './heightField.ts';

/** Where the edges of a grid cross levels, and which crossing follows which with the higher side on the left. */
export interface Crossings {
  count: number;
  xMm: Float64Array;
  yMm: Float64Array;
  /** Index of the crossed level. */
  level: Int32Array;
  /** The crossing that follows, or −1. */
  next: Int32Array;
  /** 1 where another crossing comes before. */
  led: Uint8Array;
}

/** Number of levels at or below a height; this for none at all. */
const NO_HEIGHT = -1;

/** All crossings of a field with rising levels, in one pass. */
export function crossCells(field: HeightField, levelsMm: readonly number[]): Crossings {
  const { columns, rows, zMm } = field;
  const found = emptyCrossings(columns + rows);
  const levels = Float64Array.from(levelsMm);
  let below = new Int32Array(columns);
  let above = new Int32Array(columns);
  // First crossing of every edge in use: along the lower and the upper side of the row of cells, and across it.
  let lowerSide = new Int32Array(columns);
  let upperSide = new Int32Array(columns);
  if (rows > 0) countLevels(zMm, 0, columns, levels, below);
  crossRow(field, 0, below, levels, lowerSide, found);
  for (let row = 0; row + 1 < rows; row++) {
    countLevels(zMm, (row + 1) * columns, columns, levels, above);
    crossRow(field, row + 1, above, levels, upperSide, found);
    crossCellsOfRow(field, row, { below, above, lowerSide, upperSide }, levels, found);
    [below, above] = [above, below];
    [lowerSide, upperSide] = [upperSide, lowerSide];
  }
  return found;
}

/** For a row of heights, how many levels each has reached. */
function countLevels(
  zMm: Float64Array,
  from: number,
  columns: number,
  levels: Float64Array,
  into: Int32Array,
): void {
  const count = levels.length;
  let k = 0;
  for (let column = 0; column < columns; column++) {
    const z = zMm[from + column] as number;
    if (Number.isNaN(z)) {
      into[column] = NO_HEIGHT;
      continue;
    }
    // Neighbours lie near each other: the count walks from one to the next.
    while (k < count && z >= (levels[k] as number)) k++;
    while (k > 0 && z < (levels[k - 1] as number)) k--;
    into[column] = k;
  }
}

/** Crossings of the edges along a row of the grid. */
function crossRow(
  field: HeightField,
  row: number,
  reached: Int32Array,
  levels: Float64Array,
  first: Int32Array,
  found: Crossings,
): void {
  const { columns, zMm, fromXMm, fromYMm, stepMm } = field;
  const y = fromYMm + row * stepMm;
  for (let column = 0; column + 1 < columns; column++) {
    const ka = reached[column] as number;
    const kb = reached[column + 1] as number;
    if (ka === kb || ka < 0 || kb < 0) continue;
    first[column] = found.count;
    const a = zMm[row * columns + column] as number;
    const perHeight = stepMm / ((zMm[row * columns + column + 1] as number) - a);
    const x = fromXMm + column * stepMm;
    const last = Math.max(ka, kb);
    for (let k = Math.min(ka, kb); k < last; k++)
      addCrossing(found, x + ((levels[k] as number) - a) * perHeight, y, k);
  }
}

interface RowOfCells {
  readonly below: Int32Array;
  readonly above: Int32Array;
  readonly lowerSide: Int32Array;
  readonly upperSide: Int32Array;
}

function crossCellsOfRow(
  field: HeightField,
  row: number,
  { below, above, lowerSide, upperSide }: RowOfCells,
  levels: Float64Array,
  found: Crossings,
): void {
  const { columns, zMm, fromXMm, fromYMm, stepMm } = field;
  const lower = row * columns;
  const y = fromYMm + row * stepMm;
  let left = 0;
  for (let column = 0; column < columns; column++) {
    const ka = below[column] as number;
    const kd = above[column] as number;
    let right = left;
    if (ka !== kd && ka >= 0 && kd >= 0) {
      right = found.count;
      const a = zMm[lower + column] as number;
      const perHeight = stepMm / ((zMm[lower + columns + column] as number) - a);
      const x = fromXMm + column * stepMm;
      const last = Math.max(ka, kd);
      for (let k = Math.min(ka, kd); k < last; k++)
        addCrossing(found, x, y + ((levels[k] as number) - a) * perHeight, k);
    }
    // The edge just crossed is the right side of the cell before it.
    if (column > 0) {
      const kl = below[column - 1] as number;
      const ku = above[column - 1] as number;
      const same = kl === ka && ku === ka && kd === ka;
      if (!same && kl >= 0 && ku >= 0 && ka >= 0 && kd >= 0) {
        const sides = {
          lower: (lowerSide[column - 1] as number) - Math.min(kl, ka),
          right: right - Math.min(ka, kd),
          upper: (upperSide[column - 1] as number) - Math.min(ku, kd),
          left: left - Math.min(kl, ku),
        };
        joinCell(zMm, lower + column - 1, columns, [kl, ka, kd, ku], sides, levels, found);
      }
    }
    left = right;
  }
}

/** First crossing of each side, less the level it belongs to: adding a level's index gives its crossing. */
interface CellSides {
  readonly lower: number;
  readonly right: number;
  readonly upper: number;
  readonly left: number;
}

/** Joins the crossings of one cell, level by level. Corners anticlockwise from the lower left. */
function joinCell(
  zMm: Float64Array,
  at: number,
  columns: number,
  reached: readonly [number, number, number, number],
  { lower, right, upper, left }: CellSides,
  levels: Float64Array,
  found: Crossings,
): void {
  const [ka, kb, kc, kd] = reached;
  const last = Math.max(ka, kb, kc, kd);
  for (let k = Math.min(ka, kb, kc, kd); k < last; k++) {
    const high = (ka > k ? 1 : 0) | (kb > k ? 2 : 0) | (kc > k ? 4 : 0) | (kd > k ? 8 : 0);
    if (high === 5 || high === 10) {
      const joined = middleIsHigh(zMm, at, columns, levels[k] as number, high === 5);
      if (high === 5) {
        link(found, lower + k, (joined ? right : left) + k);
        link(found, upper + k, (joined ? left : right) + k);
      } else {
        link(found, left + k, (joined ? lower : upper) + k);
        link(found, right + k, (joined ? upper : lower) + k);
      }
      continue;
    }
    const from = FROM[high] as number;
    const to = TO[high] as number;
    const start = from === 0 ? lower : from === 1 ? right : from === 2 ? upper : left;
    const end = to === 0 ? lower : to === 1 ? right : to === 2 ? upper : left;
    link(found, start + k, end + k);
  }
}

/** By which corners are high: the side a line comes in through, and the side it leaves by (0 lower, 1 right, 2 upper, 3 left). */
const FROM = [0, 0, 1, 1, 2, 0, 2, 2, 3, 0, 0, 1, 3, 0, 3, 0];
const TO = [0, 3, 0, 3, 1, 0, 0, 3, 2, 2, 0, 2, 1, 1, 0, 0];

/** Whether the saddle of the bilinear surface lies above the level. */
function middleIsHigh(
  zMm: Float64Array,
  at: number,
  columns: number,
  level: number,
  lowerLeftIsHigh: boolean,
): boolean {
  const first = ((zMm[at] as number) - level) * ((zMm[at + columns + 1] as number) - level);
  const second = ((zMm[at + 1] as number) - level) * ((zMm[at + columns] as number) - level);
  return lowerLeftIsHigh ? first > second : second > first;
}

function link(found: Crossings, from: number, to: number): void {
  found.next[from] = to;
  found.led[to] = 1;
}

function emptyCrossings(room: number): Crossings {
  const size = Math.max(room, 1);
  return {
    count: 0,
    xMm: new Float64Array(size),
    yMm: new Float64Array(size),
    level: new Int32Array(size),
    next: new Int32Array(size).fill(-1),
    led: new Uint8Array(size),
  };
}

function addCrossing(found: Crossings, xMm: number, yMm: number, level: number): void {
  if (found.count === found.xMm.length) grow(found);
  const index = found.count++;
  found.xMm[index] = xMm;
  found.yMm[index] = yMm;
  found.level[index] = level;
}

function grow(found: Crossings): void {
  const larger = emptyCrossings(2 * found.xMm.length);
  larger.xMm.set(found.xMm);
  larger.yMm.set(found.yMm);
  larger.level.set(found.level);
  larger.next.set(found.next);
  larger.led.set(found.led);
  Object.assign(found, { ...larger, count: found.count });
}
