import * as z from 'zod';
import { accept, type Checked, type Fault, type Finding, refuse } from '../base/index.ts';
import { FAMILIES, type Family } from '../knowledge/index.ts';
import { measured, parseLength, type Quantity, type Unit } from '../quantity/index.ts';
import { type ArchReadings, archesSchema, archReadingsOf } from './arches.ts';
import { leftHandedSchema } from './leftHanded.ts';
import { type LongArchChoices, longArchSchema } from './longArchChoice.ts';
import { type MeasuredHeightsOfPlates, measuredHeightsSchema } from './measuredHeights.ts';
import { type RibChoice, ribChoiceSchema } from './ribChoice.ts';
import { isRecord, kindFaults, schemaFaults, shown } from './schemaFaults.ts';
import { type StringSpread, stringSpreadSchema } from './stringSpread.ts';
import { type Taken, takenAsDrawn } from './taken.ts';
import { type ThicknessLayouts, thicknessSchema } from './thickness.ts';
import { readUnitText, unitText } from './unitTexts.ts';
import { VALUE_NAMES, VALUES, type ValueName } from './values.ts';

/** What a maker holds: given values in mm, straight and edge to edge, each with its origin. */
export interface Measurements {
  readonly family: Family;
  readonly name: string;
  readonly values: Readonly<Partial<Record<ValueName, Quantity>>>;
  /** Arches as they were read, still to be fitted. */
  readonly arches?: ArchReadings;
  /** How the thicknesses are laid out, where something is said. */
  readonly thickness?: ThicknessLayouts | undefined;
  /** What the long arches are made of, where something is said. */
  readonly longArch?: LongArchChoices | undefined;
  /** How the ribs are joined and lined, where something is said. */
  readonly ribs?: RibChoice | undefined;
  readonly measuredHeights?: MeasuredHeightsOfPlates | undefined;
  readonly leftHanded?: boolean | undefined;
  readonly stringSpread?: StringSpread | undefined;
}

const NUMBER_OR_TEXT = z.union([z.number(), z.string()], {
  error: 'a number in mm, or a text with its unit such as "14 1/8 in"',
});

const givenValue = z
  .union(
    [z.number(), z.string(), z.object({ value: NUMBER_OR_TEXT, plusMinus: NUMBER_OR_TEXT.optional() })],
    { error: 'a number in mm, a text with its unit, or { "value", "plusMinus" }' },
  )
  .meta({ id: 'GivenValue' });

type GivenValue = z.infer<typeof givenValue>;

function byName<T extends z.ZodType>(schema: (name: ValueName) => T): Record<ValueName, T> {
  return Object.fromEntries(VALUE_NAMES.map((name) => [name, schema(name)])) as Record<ValueName, T>;
}

/** MEASUREMENTS.json: only `family` and `values.bodyLength` are required. */
export const measurementsSchema = z
  .looseObject({
    format: z.literal('garland-measurements').optional(),
    version: z.literal(1).optional(),
    family: z.enum(FAMILIES),
    name: z.string().optional(),
    values: z.strictObject({
      ...byName((name) => givenValue.optional().describe(VALUES[name].says)),
      bodyLength: givenValue.describe(VALUES.bodyLength.says),
    }),
    taken: z
      .strictObject({
        bodyLength: z.enum(['straight', 'over-arch']).optional(),
        widths: z.enum(['edge', 'purfling']).optional(),
      })
      .optional(),
    sources: z.strictObject(byName(() => z.string().optional())).optional(),
    arches: archesSchema.optional(),
    thickness: thicknessSchema.optional(),
    longArch: longArchSchema.optional(),
    ribs: ribChoiceSchema.optional(),
    measuredHeights: measuredHeightsSchema.optional(),
    leftHanded: leftHandedSchema,
    stringSpread: stringSpreadSchema.optional(),
  })
  .describe('What a maker reads off a table: numbers are mm, texts carry their unit.');

type MeasurementsFile = z.infer<typeof measurementsSchema>;

const TOP_KEYS: readonly string[] = [
  'format',
  'version',
  'family',
  'name',
  'values',
  'taken',
  'sources',
  'arches',
  'thickness',
  'longArch',
  'ribs',
  'measuredHeights',
  'leftHanded',
  'stringSpread',
];

/**
 * The measurements in a parsed MEASUREMENTS.json, in mm, reduced to straight length and edge-to-edge widths
 * (see {@link takenAsDrawn}), and what the maker should know about them.
 *
 * Faults, all at once: `file.kind`, `file.newer`, `measurements.missing`, `measurements.wrong`,
 * `measurements.unknown-name`, `measurements.not-a-ratio`, `measurements.not-an-angle`, `measurements.not-a-number`, `measurements.not-positive`, and those of `parseLength`.
 */
export function readMeasurements(
  json: unknown,
): Checked<{ readonly measurements: Measurements; readonly findings: readonly Finding[] }> {
  const wrongKind = kindFaults(json, 'garland-measurements', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = measurementsSchema.safeParse(json);
  if (!parsed.success)
    return refuse(...schemaFaults(parsed.error, json, 'measurements', [...VALUE_NAMES, ...TOP_KEYS]));
  const file = parsed.data;
  const read = readValues(file);
  if (!read.ok) return read;
  const taken: Taken = file.taken ?? {};
  const drawn = takenAsDrawn(file.family, read.value, taken);
  return accept({
    measurements: {
      family: file.family,
      name: file.name ?? file.family,
      values: drawn.values,
      ...(file.arches && { arches: archReadingsOf(file.arches) }),
      ...(file.thickness && { thickness: file.thickness }),
      ...(file.longArch && { longArch: file.longArch }),
      ...(file.ribs && { ribs: file.ribs }),
      ...(file.measuredHeights && { measuredHeights: file.measuredHeights }),
      ...(file.leftHanded !== undefined && { leftHanded: file.leftHanded }),
      ...(file.stringSpread && { stringSpread: file.stringSpread }),
    },
    findings: [...unreadKeys(json), ...drawn.findings],
  });
}

function readValues(file: MeasurementsFile): Checked<Partial<Record<ValueName, Quantity>>> {
  const values: Partial<Record<ValueName, Quantity>> = {};
  const faults: Fault[] = [];
  for (const name of VALUE_NAMES) {
    const given = file.values[name];
    if (given === undefined) continue;
    const quantity = readValue(name, given, file.sources?.[name]);
    if (quantity.ok) values[name] = quantity.value;
    else faults.push(...quantity.faults);
  }
  return faults.length > 0 ? refuse(...faults) : accept(values);
}

function readValue(name: ValueName, given: GivenValue, source: string | undefined): Checked<Quantity> {
  const parts = typeof given === 'object' ? given : { value: given };
  const value = readNumber(name, parts.value);
  if (!value.ok) return value;
  const unit = VALUES[name].unit;
  const isSize = unit !== 'ratio' && !MAY_BE_NEGATIVE.has(name);
  if (isSize && (MAY_BE_NONE.has(name) ? value.value < 0 : value.value <= 0))
    return notPositive(name, parts.value, unit);
  const quantity = { value: value.value, unit, origin: measured(source ?? 'the table of measurements') };
  if (parts.plusMinus === undefined) return accept(quantity);
  const plusMinus = readNumber(name, parts.plusMinus);
  if (!plusMinus.ok) return plusMinus;
  if (plusMinus.value < 0) return notPositive(`${name}.plusMinus`, parts.plusMinus);
  return accept({ ...quantity, plusMinus: plusMinus.value });
}

/** Left for `check` to explain: the trade has a word for what a negative one would be. */
const MAY_BE_NEGATIVE: ReadonlySet<ValueName> = new Set(['overhang', 'cornerOverhang', 'scrollFront']);

/** What may be left out altogether, which is said by a zero. */
const MAY_BE_NONE: ReadonlySet<ValueName> = new Set(['barSpring']);

function readNumber(name: ValueName, given: number | string): Checked<number> {
  if (typeof given === 'number') return accept(given);
  if (VALUES[name].unit === 'mm') {
    const length = parseLength(given, { at: name });
    return length.ok ? accept(length.value.mm) : length;
  }
  const { unit } = VALUES[name];
  const value = readUnitText(given, unit);
  if (value !== undefined) return accept(value);
  const { need, example } = unitText(unit);
  return refuse({
    code: CODES[unit] ?? 'measurements.not-a-number',
    at: name,
    found: shown(given),
    need,
    remedy: `write it like ${example}`,
  });
}

/** Programs may rely on these. */
const CODES: Readonly<Partial<Record<Unit, string>>> = {
  ratio: 'measurements.not-a-ratio',
  deg: 'measurements.not-an-angle',
};

function notPositive(at: string, given: number | string, unit: Unit = 'mm'): Checked<never> {
  return refuse({
    code: 'measurements.not-positive',
    at,
    found: typeof given === 'number' ? `${given} ${unit === 'deg' ? '°' : unit}` : shown(given),
    need: 'a size above zero',
    remedy: 'correct it, or leave it out and it is filled from the family',
  });
}

function unreadKeys(json: unknown): readonly Finding[] {
  if (!isRecord(json)) return [];
  return Object.keys(json)
    .filter((key) => !TOP_KEYS.includes(key))
    .map((key) => ({
      code: 'measurements.not-read',
      weight: 'remark',
      at: key,
      found: 'an entry that this Garland does not read',
      need: `one of ${TOP_KEYS.join(', ')}`,
      remedy: 'check its spelling, or leave it: nothing was taken from it',
    }));
}
