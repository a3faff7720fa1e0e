import { Bug, hypot } from '../base/index.ts';
import { type BandedFactor, factorBanded, solveFactored, zeroBanded } from '../numeric/index.ts';
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
/** No unit. Rounds end once no place moves by more than this share of a step: on the next they would move by a hundredth of that. */
const SETTLED = 0.000_01;
const MOST_ROUNDS = 40;
/** Rounds in which the ties are weighed anew; later ones find the same directions but for a thousandth. */
const WEIGHED_ROUNDS = 2;

/**
 * Lays a patch of a surface flat so that it is stretched and pressed as little as can be.
 *
 * Method: along the sides and both diagonals of every cell the flat length is drawn to that on the surface, squared misses
 * summed and brought to their least by Gauss-Newton from the plan, the matrix of the second round kept for those after it. A side counts in each of its cells as much as a diagonal: so
 * the patch resists alike in every direction, as a sheet of one stuff with a Poisson's ratio of a third. Chords stand for
 * lengths on the surface: at steps of 2 mm and a radius of 60 mm they are short by 5 parts in 100 000.
 */
export function flattenPatch(field: HeightField): FlatPatch {
  const ties = besideEachOther(field);
  if (ties.length === 0) throw new Bug('no cell of the patch has a height at all its corners');
  const plan = planPlaces(field);
  const at = Float64Array.from(plan);
  let factor: BandedFactor | undefined;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (factor === undefined || round < WEIGHED_ROUNDS) factor = factorOf(at, ties, field.columns);
    if (drawTogether(at, ties, factor) < SETTLED * field.stepMm) break;
  }
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

/** How the ties hold the places where they are now, taken apart to be solved. */
function factorOf(at: Float64Array, ties: readonly Tie[], columns: number): BandedFactor {
  const band = 2 * (columns + 1) + 1;
  const matrix = zeroBanded(at.length, band);
  const { entries } = matrix;
  const width = band + 1;
  // Entry (row, column), the column not beyond the row.
  const add = (row: number, column: number, value: number): void => {
    entries[row * width + band - row + column] += value;
  };
  for (let index = 0; index < at.length; index++) add(index, index, HOLD);
  for (const { from, to, weight } of ties) {
    const flat = flatLength(at, from, to);
    const x = ((at[2 * to] as number) - (at[2 * from] as number)) / flat;
    const y = ((at[2 * to + 1] as number) - (at[2 * from + 1] as number)) / flat;
    const [xx, xy, yy] = [weight * x * x, weight * x * y, weight * y * y];
    for (const end of [2 * from, 2 * to]) {
      add(end, end, xx);
      add(end + 1, end, xy);
      add(end + 1, end + 1, yy);
    }
    const [near, far] = from < to ? [2 * from, 2 * to] : [2 * to, 2 * from];
    add(far, near, -xx);
    add(far, near + 1, -xy);
    add(far + 1, near, -xy);
    add(far + 1, near + 1, -yy);
  }
  const factor = factorBanded(matrix);
  if (factor === undefined) throw new Bug('the ties of a patch do not hold it together');
  return factor;
}

/** One round of Gauss-Newton; gives how far the place moved that moved most, mm. */
function drawTogether(at: Float64Array, ties: readonly Tie[], factor: BandedFactor): number {
  const right = new Float64Array(at.length);
  for (const { from, to, lengthMm, weight } of ties) {
    const flat = flatLength(at, from, to);
    const pull = (weight * (flat - lengthMm)) / flat;
    const x = pull * ((at[2 * to] as number) - (at[2 * from] as number));
    const y = pull * ((at[2 * to + 1] as number) - (at[2 * from + 1] as number));
    right[2 * from] += x;
    right[2 * from + 1] += y;
    right[2 * to] -= x;
    right[2 * to + 1] -= y;
  }
  const move = solveFactored(factor, right);
  let most = 0;
  for (let index = 0; index < at.length; index++) {
    at[index] = (at[index] as number) + (move[index] as number);
    most = Math.max(most, Math.abs(move[index] as number));
  }
  return most;
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
  const far = hypot(along, across);
  const [cos, sin] = [along / far, across / far];
  for (let place = 0; 2 * place < at.length; place++) {
    const [pu, pv] = [(at[2 * place] as number) - u, (at[2 * place + 1] as number) - v];
    at[2 * place] = x + cos * pu - sin * pv;
    at[2 * place + 1] = y + sin * pu + cos * pv;
  }
}

function flatLength(at: Float64Array, from: number, to: number): number {
  return hypot(
    (at[2 * to] as number) - (at[2 * from] as number),
    (at[2 * to + 1] as number) - (at[2 * from + 1] as number),
  );
}
