import { hypot } from '../base/index.ts';
import type { HeightField } from './heightField.ts';

/** Two neighbouring places of a field, by their index, and how far apart they are on the surface. */
export interface Tie {
  readonly from: number;
  readonly to: number;
  readonly lengthMm: number;
  /** In how many cells it stands. */
  readonly weight: number;
}

/** The sides and diagonals of all cells whose four corners have heights; a side between two cells stands in both. */
export function besideEachOther({ columns, rows, stepMm, zMm }: HeightField): readonly Tie[] {
  const ties = new Map<number, Tie>();
  const places = columns * rows;
  const tie = (from: number, to: number, planMm: number): void => {
    const key = from * places + to;
    const lengthMm = hypot(planMm, (zMm[to] as number) - (zMm[from] as number));
    ties.set(key, { from, to, lengthMm, weight: (ties.get(key)?.weight ?? 0) + 1 });
  };
  for (let row = 0; row + 1 < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const a = row * columns + column;
      const [b, c, d] = [a + 1, a + columns, a + columns + 1];
      if ([a, b, c, d].some((place) => Number.isNaN(zMm[place]))) continue;
      tie(a, b, stepMm);
      tie(c, d, stepMm);
      tie(a, c, stepMm);
      tie(b, d, stepMm);
      tie(a, d, stepMm * Math.SQRT2);
      tie(b, c, stepMm * Math.SQRT2);
    }
  return [...ties.values()];
}
