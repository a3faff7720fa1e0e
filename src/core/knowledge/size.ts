import {
  chosen,
  commonPractice,
  derivedFrom,
  fromMemory,
  type Origin,
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

export const read = (value: number, source: SourceName): Cell => [value, published(citation(source))];
export const recalled = (value: number, note?: string): Cell => [value, fromMemory(note)];
export const practised = (value: number, note?: string): Cell => [value, commonPractice(note)];
export const ours = (value: number, why: string): Cell => [value, chosen(`by us: ${why}`)];
export const worked = (value: number, from: readonly string[], how: string): Cell => [
  value,
  derivedFrom(from, how),
];

/** Values that a bigger or smaller body leaves as they are: tools, sheet stuff and pure ratios. */
export const NOT_SCALED: ReadonlySet<string> = new Set([
  'formThickness',
  'clampHoleDiameter',
  'clampHoleWall',
  'pinDiameter',
  'gaugeThickness',
  'fullnessUpperBout',
  'fullnessUpperCorner',
  'fullnessWaist',
  'fullnessLowerCorner',
  'fullnessLowerBout',
]);

export function unitOfValue(name: string): Unit {
  return name.startsWith('fullness') ? 'ratio' : 'mm';
}

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

/** The value of a size brought to another body length; the size's own length gives the quantity unchanged. */
export function valueAtLength(size: Size, name: string, bodyLengthMm: number): Quantity | undefined {
  const quantity = size.values[name];
  if (!quantity || NOT_SCALED.has(name) || bodyLengthMm === lengthOf(size)) return quantity;
  return scaledByLength(quantity, size, bodyLengthMm);
}

export function lengthOf(size: Size): number {
  return size.values.bodyLength?.value ?? 0;
}

const ROUNDED_TO = 20;

function scaledByLength(quantity: Quantity, model: Size, bodyLengthMm: number): Quantity {
  const value = (quantity.value * bodyLengthMm) / lengthOf(model);
  return {
    value: Math.round(value * ROUNDED_TO) / ROUNDED_TO,
    unit: quantity.unit,
    origin: derivedFrom(['bodyLength'], `${model.family} ${model.name}, scaled by body length`),
  };
}
