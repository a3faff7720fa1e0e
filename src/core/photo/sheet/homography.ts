import { hypot, type Point, point } from '../../base/index.ts';
import { addRow, emptyEquations, type Matrix3, solveEquations } from '../../numeric/index.ts';

/** One place on the sheet and where it shows. */
export interface SheetPair {
  readonly sheet: Point<'sheet'>;
  readonly photo: Point<'photo'>;
}

/**
 * The plane perspective from sheet to photo that fits the pairs best, row by row; null for fewer than four pairs or
 * pairs in a line. Method: linear least squares in coordinates brought to the middle and to unit size.
 */
export function fitHomography(pairs: readonly SheetPair[]): Matrix3 | null {
  if (pairs.length < 4) return null;
  const sheet = spreadOf(pairs.map((pair) => pair.sheet));
  const photo = spreadOf(pairs.map((pair) => pair.photo));
  if (!(sheet.size > 0 && photo.size > 0)) return null;
  const equations = emptyEquations(UNKNOWNS);
  for (const pair of pairs) {
    const [x, y] = [(pair.sheet.x - sheet.x) / sheet.size, (pair.sheet.y - sheet.y) / sheet.size];
    const [u, v] = [(pair.photo.x - photo.x) / photo.size, (pair.photo.y - photo.y) / photo.size];
    addRow(equations, Float64Array.of(x, y, 1, 0, 0, 0, -u * x, -u * y), u, 1);
    addRow(equations, Float64Array.of(0, 0, 0, x, y, 1, -v * x, -v * y), v, 1);
  }
  if (!solveEquations(equations)) return null;
  return unnormalised([...equations.right, 1] as unknown as Matrix3, sheet, photo);
}

export function applyHomography(h: Matrix3, { x, y }: Point<'sheet'>): Point<'photo'> {
  const depth = h[6] * x + h[7] * y + h[8];
  return point((h[0] * x + h[1] * y + h[2]) / depth, (h[3] * x + h[4] * y + h[5]) / depth);
}

const UNKNOWNS = 8;

interface Spread {
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

function spreadOf(points: readonly { x: number; y: number }[]): Spread {
  const x = points.reduce((sum, one) => sum + one.x, 0) / points.length;
  const y = points.reduce((sum, one) => sum + one.y, 0) / points.length;
  const size = points.reduce((sum, one) => sum + hypot(one.x - x, one.y - y), 0) / points.length;
  return { x, y, size };
}

function unnormalised(h: Matrix3, sheet: Spread, photo: Spread): Matrix3 {
  const column = (a: number, b: number, c: number) =>
    [a / sheet.size, b / sheet.size, c - (a * sheet.x + b * sheet.y) / sheet.size] as const;
  const [u, v, w] = [column(h[0], h[1], h[2]), column(h[3], h[4], h[5]), column(h[6], h[7], h[8])];
  const row = (a: readonly number[], middle: number) => a.map((one, i) => one * photo.size + middle * w[i]);
  return [...row(u, photo.x), ...row(v, photo.y), ...w] as unknown as Matrix3;
}
