import { BAR_VALUES } from './values/barValues.ts';
import { BODY_VALUES } from './values/bodyValues.ts';
import { HEAD_VALUES } from './values/headValues.ts';
import { NECK_VALUES } from './values/neckValues.ts';
import { PLATE_VALUES } from './values/plateValues.ts';
import { RIB_VALUES } from './values/ribValues.ts';
import { SETUP_VALUES } from './values/setupValues.ts';
import { SOUND_HOLE_VALUES } from './values/soundHoleValues.ts';
import { STRING_VALUES } from './values/stringValues.ts';
import { TOOL_VALUES } from './values/toolValues.ts';

/**
 * Every number a maker may give, by the name it has in MEASUREMENTS.json, in a design and in the register, in the order
 * in which they are listed to a maker.
 */
export const VALUES = {
  ...BODY_VALUES,
  ...RIB_VALUES,
  ...PLATE_VALUES,
  ...SOUND_HOLE_VALUES,
  ...BAR_VALUES,
  ...NECK_VALUES,
  ...SETUP_VALUES,
  ...STRING_VALUES,
  ...HEAD_VALUES,
  ...TOOL_VALUES,
} as const;

/** Name of a number that a maker may give; {@link VALUES} says what it is. */
export type ValueName = keyof typeof VALUES;

/** All of them, in the order in which they are listed to a maker. */
export const VALUE_NAMES = Object.keys(VALUES) as readonly ValueName[];

/** The names that a whole design always holds. */
export const NEEDED_VALUES: readonly ValueName[] = VALUE_NAMES.filter(
  (name) => !('optional' in VALUES[name]),
);

/**
 * Numbers that neither the parts in the plane nor the outsides of the plates rest on: thicknesses, and whatever is cut into a plate
 * or set on it.
 */
export const VALUES_OVER_PLATES: ReadonlySet<string> = new Set([
  ...Object.keys(PLATE_VALUES).filter((name) => name.startsWith('thickness')),
  ...[SOUND_HOLE_VALUES, BAR_VALUES, NECK_VALUES, STRING_VALUES, HEAD_VALUES].flatMap(Object.keys),
]);
