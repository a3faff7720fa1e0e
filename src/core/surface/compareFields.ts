import { Bug, hypot } from '../base/index.ts';
import type { HeightField } from './heightField.ts';

/** Where two fields differ most, and by how much altogether. */
export interface FieldDifference {
  /** The second less the first over the grid of the first; NaN where either has no height. */
  readonly field: HeightField;
  /** Places that both have. */
  readonly count: number;
  readonly rmsMm: number;
  /** Places of the largest differences, the largest first, none nearer to another than asked. */
  readonly worst: readonly DifferencePlace[];
}

export interface DifferencePlace {
  readonly xMm: number;
  readonly yMm: number;
  readonly differenceMm: number;
}

/** How worst places are chosen. */
export interface WorstChoice {
  readonly most: number;
  readonly apartMm: number;
  /** Smaller differences are no place at all. */
  readonly leastMm: number;
}

/**
 * The difference of two fields of equal step whose places coincide, as those of two plates do. Of a symmetric pair of
 * places the one with the larger x is named.
 */
export function compareFields(first: HeightField, second: HeightField, choice: WorstChoice): FieldDifference {
  const { stepMm } = first;
  const across = (first.fromXMm - second.fromXMm) / stepMm;
  const along = (first.fromYMm - second.fromYMm) / stepMm;
  if (second.stepMm !== stepMm || !isWhole(across) || !isWhole(along))
    throw new Bug('fields are compared whose places do not coincide');
  const [right, up] = [Math.round(across), Math.round(along)];
  const zMm = new Float64Array(first.zMm.length).fill(Number.NaN);
  let count = 0;
  let squares = 0;
  for (let row = 0; row < first.rows; row++)
    for (let column = 0; column < first.columns; column++) {
      const [r, c] = [row + up, column + right];
      if (r < 0 || c < 0 || r >= second.rows || c >= second.columns) continue;
      const at = row * first.columns + column;
      const difference = (second.zMm[r * second.columns + c] as number) - (first.zMm[at] as number);
      if (Number.isNaN(difference)) continue;
      zMm[at] = difference;
      count++;
      squares += difference * difference;
    }
  const field = { ...first, zMm };
  return {
    field,
    count,
    rmsMm: count === 0 ? 0 : Math.sqrt(squares / count),
    worst: worstPlaces(field, choice),
  };
}

/** Share of a step by which places may miss each other. */
const PLACE_SHARE = 0.000001;

function isWhole(steps: number): boolean {
  return Math.abs(steps - Math.round(steps)) < PLACE_SHARE;
}

function worstPlaces(
  field: HeightField,
  { most, apartMm, leastMm }: WorstChoice,
): readonly DifferencePlace[] {
  const { columns, rows, fromXMm, fromYMm, stepMm, zMm } = field;
  const places: DifferencePlace[] = [];
  const isFree = (x: number, y: number): boolean =>
    places.every((place) => hypot(Math.abs(place.xMm) - Math.abs(x), place.yMm - y) >= apartMm);
  while (places.length < most) {
    let worst: DifferencePlace | null = null;
    for (let row = 0; row < rows; row++)
      for (let column = columns - 1; column >= 0; column--) {
        const differenceMm = zMm[row * columns + column] as number;
        if (!(Math.abs(differenceMm) > Math.max(leastMm, Math.abs(worst?.differenceMm ?? 0)))) continue;
        const [xMm, yMm] = [fromXMm + column * stepMm, fromYMm + row * stepMm];
        if (isFree(xMm, yMm)) worst = { xMm, yMm, differenceMm };
      }
    if (worst === null) break;
    places.push(worst);
  }
  return places;
}
