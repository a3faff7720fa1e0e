import type { Quantity } from '../quantity/index.ts';
import { FAMILIES, type Family } from './family.ts';
import { lengthOf, type Size } from './size.ts';
import { sizesOf } from './sizes.ts';

/** The values of one plate that a map of thickness is drawn through. */
export const THICKNESS_VALUES = {
  back: ['thicknessBackMiddle', 'thicknessBackBouts', 'thicknessBackFlanks', 'thicknessBackChannel'],
  top: ['thicknessTopMiddle', 'thicknessTopBouts', 'thicknessTopFlanks', 'thicknessTopChannel'],
} as const;

type ThicknessValue = (typeof THICKNESS_VALUES)['back' | 'top'][number];

/** Thicknesses of both plates as one column of a table prints them, each with the table as its origin. */
export interface NamedThicknesses {
  readonly name: string;
  readonly family: Family;
  /** Body that the table prints them for. */
  readonly bodyLengthMm: number;
  readonly values: Readonly<Record<ThicknessValue, Quantity>>;
}

/** Every size whose own thicknesses are known, by family and size; sizes scaled from another one have no map of their own. */
export const THICKNESS_MAPS: readonly NamedThicknesses[] = FAMILIES.flatMap((family) =>
  sizesOf(family).flatMap((size) => {
    const values = ownThicknesses(size);
    return values ? [{ name: `${family} ${size.name}`, family, bodyLengthMm: lengthOf(size), values }] : [];
  }),
);

/** Names that a design may choose from. */
export const THICKNESS_MAP_NAMES: readonly string[] = THICKNESS_MAPS.map(({ name }) => name);

function ownThicknesses(size: Size): NamedThicknesses['values'] | undefined {
  const names = [...THICKNESS_VALUES.back, ...THICKNESS_VALUES.top];
  const entries = names.flatMap((name) => {
    const quantity = size.values[name];
    return quantity && quantity.origin.kind !== 'derived' ? [[name, quantity] as const] : [];
  });
  return entries.length === names.length
    ? (Object.fromEntries(entries) as NamedThicknesses['values'])
    : undefined;
}
