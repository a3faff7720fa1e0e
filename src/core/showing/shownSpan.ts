/** A length in a view between two places of it, in mm; `name` is the number it shows. */
export interface ShownSpan {
  readonly name: string;
  readonly from: readonly [xMm: number, yMm: number];
  readonly to: readonly [xMm: number, yMm: number];
  readonly valueMm: number;
}
