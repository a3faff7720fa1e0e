import {
  chosen,
  commonPractice,
  derivedFrom,
  fromMemory,
  type Origin,
  originText,
  published,
  type Quantity,
  type Unit,
} from '../quantity/index.ts';
import type { Family } from './family.ts';
import { citation, type SourceName } from './sources.ts';

/** One size of a family, every value with its origin, named as in VALUES of the design. */
export interface Size {
  readonly family: Family;
  /** What the trade calls it: `4/4`, `medium`. */
  readonly name: string;
  readonly values: Readonly<Record<string, Quantity>>;
}

/** A value of a table: the number, and the note that makes its origin. */
export type Cell = readonly [value: number, origin: Origin];

/** A figure as a source prints it. */
export const read = (value: number, source: SourceName): Cell => [value, published(citation(source))];
/** A figure that a source prints for another place, or another case, than the one it is used for here. */
export const readFor = (value: number, source: SourceName, where: string): Cell => [
  value,
  published(`${citation(source)}, printed for ${where}`),
];
/** A figure from memory, with its spread where that is remembered too. */
export const recalled = (value: number, note?: string): Cell => [value, fromMemory(note)];
/** A figure of common practice. */
export const practised = (value: number, note?: string): Cell => [value, commonPractice(note)];
/** A figure that we chose, with the reason. */
export const ours = (value: number, why: string): Cell => [value, chosen(`by us: ${why}`)];
/** A figure worked out from others of the same size. */
export const worked = (value: number, from: readonly string[], how: string): Cell => [
  value,
  derivedFrom(from, how),
];

/** Values that a bigger or smaller body leaves as they are: tools, sheet stuff and pure ratios. */
const NOT_SCALED: ReadonlySet<string> = new Set([
  'formThickness',
  'clampHoleDiameter',
  'clampHoleWall',
  'pinDiameter',
  'gaugeThickness',
  'caulFacing',
  'hollowAllowance',
  'densityBack',
  'densityTop',
  'roughAllowance',
  'roughStep',
  'drillPitch',
  'drillDiameter',
  'drillPoint',
  'rootAngle',
  'tuningA',
  'endpinTaper',
  'saddleGap',
  'barSpring',
  'scrollTurns',
  'scrollQuickening',
  'backLeaveAngle',
  'backLeanAngle',
  'chinAngle',
  'pegboxFrontAngle',
  'outerTurnAngle',
  'middleTurnAngle',
  'innerTurnAngle',
  'pegTaper',
  'nickAboveStop',
  'fullnessUpperBout',
  'fullnessUpperCorner',
  'fullnessWaist',
  'fullnessLowerCorner',
  'fullnessLowerBout',
  'fullnessTopUpperBout',
  'fullnessTopUpperCorner',
  'fullnessTopWaist',
  'fullnessTopLowerCorner',
  'fullnessTopLowerBout',
]);

/** Values that follow the body length closely; all others belong to the size and change with the next one. */
const FOLLOWS_LENGTH: ReadonlySet<string> = new Set(['upperBout', 'waist', 'lowerBout', 'stop', 'neckStop']);

/** No unit. A body this near to a size is of that size: makers keep its thicknesses and heights. Chosen by us. */
const SAME_SIZE = 0.03;

const RATIOS: ReadonlySet<string> = new Set(['scrollTurns', 'scrollQuickening', 'pegTaper']);

function unitOfValue(name: string): Unit {
  if (name.startsWith('fullness') || RATIOS.has(name)) return 'ratio';
  if (name.endsWith('Angle')) return 'deg';
  if (name === 'endpinTaper') return 'ratio';
  if (name === 'tuningA') return 'Hz';
  if (name.endsWith('Pull')) return 'N';
  return name.startsWith('density') ? 'kg/m³' : 'mm';
}

/** A size from its cells, every value with its unit. */
export function sizeOf(family: Family, name: string, cells: Readonly<Record<string, Cell>>): Size {
  const values = Object.entries(cells).map(([key, [value, origin]]): [string, Quantity] => [
    key,
    { value, unit: unitOfValue(key), origin },
  ]);
  return { family, name, values: Object.fromEntries(values) };
}

/**
 * A size of which only some cells are known: the others follow the model size by body length, rounded to
 * 0.05 mm, and say so.
 */
export function scaledSize(model: Size, name: string, cells: Readonly<Record<string, Cell>>): Size {
  const known = sizeOf(model.family, name, cells);
  const bodyLengthMm = lengthOf(known);
  const values = Object.entries(model.values).map(([key, quantity]): [string, Quantity] => {
    const own = known.values[key];
    if (own) return [key, own];
    return [key, NOT_SCALED.has(key) ? quantity : scaledByLength(quantity, model, bodyLengthMm)];
  });
  return { ...known, values: Object.fromEntries(values) };
}

/**
 * The value of a size brought to another body length. Bouts, waist and stops follow the length; ribs, edges,
 * arches, blocks and the like stay as they are within 3 % of the size's own length, and follow it beyond.
 */
export function valueAtLength(size: Size, name: string, bodyLengthMm: number): Quantity | undefined {
  const quantity = size.values[name];
  if (!quantity || NOT_SCALED.has(name) || bodyLengthMm === lengthOf(size)) return quantity;
  const near = Math.abs(bodyLengthMm / lengthOf(size) - 1) <= SAME_SIZE;
  return near && !FOLLOWS_LENGTH.has(name) ? quantity : scaledByLength(quantity, size, bodyLengthMm);
}

/** Body length of a size, mm. */
export function lengthOf(size: Size): number {
  return size.values.bodyLength?.value ?? 0;
}

const ROUNDED_TO = 20;

function scaledByLength(quantity: Quantity, model: Size, bodyLengthMm: number): Quantity {
  const value = (quantity.value * bodyLengthMm) / lengthOf(model);
  return {
    value: Math.round(value * ROUNDED_TO) / ROUNDED_TO,
    unit: quantity.unit,
    origin: derivedFrom(
      ['bodyLength'],
      `scaled from the ${model.family} ${model.name}, there ${originText(quantity.origin)}`,
    ),
  };
}
