import { Bug } from '../base/index.ts';
import { factorBanded, solveFactored, zeroBanded } from '../numeric/index.ts';
import { besideEachOther, type Tie } from './flattenTies.ts';
import type { HeightField } from './heightField.ts';

/**
 * A patch of a surface laid flat: every place (x, y) of its grid that has cells with heights has gone to (u, v), turned and
 * shifted so that as a whole it lies as near to where it was in plan as can be. Millimetres.
 */
export interface FlatPatch extends Omit<HeightField, 'zMm'> {
  /** Row by row; NaN where the surface has no height. */
  readonly uMm: Float64Array;
  readonly vMm: Float64Array;
  /**
   * What the flat patch is stretched or pressed by against the surface, as shares of length: along the sides and diagonals
   * of its cells, the largest and the root mean square. A surface that can be unrolled has none.
   */
  readonly strainMost: number;
  readonly strainRms: number;
}

/** No unit. Weight that holds each place where it is in a round: keeps the patch from floating away, and changes nothing that shows. */
const HOLD = 0.000_000_1;
/** No unit. Rounds end once no place moves by more than this share of a step. */
const SETTLED = 0.000_000_01;
const MOST_ROUNDS = 40;

/**
 * Lays a patch of a surface flat so that it is stretched and pressed as little as can be.
 *
 * Method: along the sides and both diagonals of every cell the flat length is drawn to that on the surface, squared misses
 * summed and brought to their least by Gauss-Newton from the plan. A side counts in each of its cells as much as a diagonal: so
 * the patch resists alike in every direction, as a sheet of one stuff with a Poisson's ratio of a third. Chords stand for
 * lengths on the surface: at steps of 2 mm and a radius of 60 mm they are short by 5 parts in 100 000.
 */
export function flattenPatch(field: HeightField): FlatPatch {
  const ties = besideEachOther(field);
  if (ties.length === 0) throw new Bug('no cell of the patch has a height at all its corners');
  const plan = planPlaces(field);
  const at = Float64Array.from(plan);
  for (let round = 0; round < MOST_ROUNDS; round++)
    if (drawTogether(at, ties, field.columns) < SETTLED * field.stepMm) break;
  const known = new Set(ties.flatMap(({ from, to }) => [from, to]));
  setBack(at, plan, [...known]);
  const strains = ties.map(({ from, to, lengthMm }) => flatLength(at, from, to) / lengthMm - 1);
  const places = field.columns * field.rows;
  const part = (offset: 0 | 1) =>
    Float64Array.from({ length: places }, (_, place) =>
      known.has(place) ? (at[2 * place + offset] as number) : Number.NaN,
    );
  const { fromXMm, fromYMm, stepMm, columns, rows } = field;
  return {
    fromXMm,
    fromYMm,
    stepMm,
    columns,
    rows,
    uMm: part(0),
    vMm: part(1),
    strainMost: strains.reduce((most, strain) => Math.max(most, Math.abs(strain)), 0),
    strainRms: Math.sqrt(strains.reduce((sum, strain) => sum + strain * strain, 0) / strains.length),
  };
}

function planPlaces({ columns, rows, stepMm, fromXMm, fromYMm }: HeightField): Float64Array {
  const at = new Float64Array(2 * columns * rows);
  for (let place = 0; place < columns * rows; place++) {
    at[2 * place] = fromXMm + (place % columns) * stepMm;
    at[2 * place + 1] = fromYMm + Math.floor(place / columns) * stepMm;
  }
  return at;
}

/** One round of Gauss-Newton; gives how far the place moved that moved most, mm. */
function drawTogether(at: Float64Array, ties: readonly Tie[], columns: number): number {
  const band = 2 * (columns + 1) + 1;
  const matrix = zeroBanded(at.length, band);
  const right = new Float64Array(at.length);
  const add = (row: number, column: number, value: number): void => {
    if (column > row) return;
    const index = row * (band + 1) + band - (row - column);
    matrix.entries[index] = (matrix.entries[index] as number) + value;
  };
  for (let index = 0; index < at.length; index++) add(index, index, HOLD);
  for (const { from, to, lengthMm, weight } of ties) {
    const flat = flatLength(at, from, to);
    const x = ((at[2 * to] as number) - (at[2 * from] as number)) / flat;
    const y = ((at[2 * to + 1] as number) - (at[2 * from + 1] as number)) / flat;
    const ends = [2 * from, 2 * from + 1, 2 * to, 2 * to + 1];
    const slopes = [-x, -y, x, y];
    const miss = weight * (flat - lengthMm);
    for (const [one, row] of ends.entries()) {
      const slope = slopes[one] as number;
      right[row] = (right[row] as number) - slope * miss;
      for (const [other, column] of ends.entries())
        add(row, column, weight * slope * (slopes[other] as number));
    }
  }
  const factor = factorBanded(matrix);
  if (factor === undefined) throw new Bug('the ties of a patch do not hold it together');
  const move = solveFactored(factor, right);
  for (let index = 0; index < at.length; index++) at[index] = (at[index] as number) + (move[index] as number);
  return move.reduce((most, by) => Math.max(most, Math.abs(by)), 0);
}

/** Turns and shifts the places so that they lie as near to the plan as can be: the least sum of squared distances. */
function setBack(at: Float64Array, plan: Float64Array, known: readonly number[]): void {
  const middle = (of: Float64Array, offset: 0 | 1) =>
    known.reduce((sum, place) => sum + (of[2 * place + offset] as number), 0) / known.length;
  const [x, y, u, v] = [middle(plan, 0), middle(plan, 1), middle(at, 0), middle(at, 1)];
  let [along, across] = [0, 0];
  for (const place of known) {
    const [px, py] = [(plan[2 * place] as number) - x, (plan[2 * place + 1] as number) - y];
    const [pu, pv] = [(at[2 * place] as number) - u, (at[2 * place + 1] as number) - v];
    along += px * pu + py * pv;
    across += py * pu - px * pv;
  }
  const far = Math.hypot(along, across);
  const [cos, sin] = [along / far, across / far];
  for (let place = 0; 2 * place < at.length; place++) {
    const [pu, pv] = [(at[2 * place] as number) - u, (at[2 * place + 1] as number) - v];
    at[2 * place] = x + cos * pu - sin * pv;
    at[2 * place + 1] = y + sin * pu + cos * pv;
  }
}

function flatLength(at: Float64Array, from: number, to: number): number {
  return Math.hypot(
    (at[2 * to] as number) - (at[2 * from] as number),
    (at[2 * to + 1] as number) - (at[2 * from + 1] as number),
  );
}
