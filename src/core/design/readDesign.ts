import * as z from 'zod';
import { accept, type Checked, type Finding, refuse } from '../base/index.ts';
import { FAMILIES, nearestSize } from '../knowledge/index.ts';
import { printLength, type Quantity, type RegisterEntry } from '../quantity/index.ts';
import type { Design } from './design.ts';
import { filled } from './draftDesign.ts';
import { kindFaults, schemaFaults } from './schemaFaults.ts';
import { lengthQuestions } from './sizeQuestions.ts';
import { NEEDED_VALUES, VALUE_NAMES, VALUES, type ValueName } from './values.ts';

const origin = z
  .discriminatedUnion('kind', [
    z.looseObject({ kind: z.literal('measured'), from: z.string() }),
    z.looseObject({ kind: z.literal('published'), source: z.string() }),
    z.looseObject({ kind: z.literal('common-practice'), note: z.string().optional() }),
    z.looseObject({ kind: z.literal('from-memory'), note: z.string().optional() }),
    z.looseObject({ kind: z.literal('chosen'), why: z.string().optional() }),
    z.looseObject({ kind: z.literal('derived'), from: z.array(z.string()), how: z.string().optional() }),
  ])
  .meta({ id: 'Origin' });

const measure = {
  value: z.number(),
  origin,
  plusMinus: z.number().nonnegative({ error: 'a half interval, zero or more' }).optional(),
};
const lengthQuantity = z.looseObject({ ...measure, unit: z.literal('mm') }).meta({ id: 'Length' });
const ratioQuantity = z.looseObject({ ...measure, unit: z.literal('ratio') }).meta({ id: 'Ratio' });

function quantity(name: ValueName) {
  const { unit, says } = VALUES[name];
  return (unit === 'mm' ? lengthQuantity : ratioQuantity).describe(says);
}

const chain = z
  .looseObject({
    closed: z.literal(false),
    vertices: z
      .array(z.looseObject({ x: z.number(), y: z.number(), bulge: z.number() }))
      .min(2, { error: 'two vertices or more' }),
  })
  .meta({ id: 'OpenChain' });

const outline = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('drafted') }),
  z.looseObject({
    kind: z.literal('traced'),
    half: z.looseObject({ lowerBout: chain, cBout: chain, upperBout: chain }),
    fitRmsMm: z.number(),
    fitMaxMm: z.number(),
    plusMinusMm: z.number(),
  }),
]);

/** The design document as it is saved. Entries that this version does not know are kept as they are. */
export const designSchema = z
  .looseObject({
    format: z.literal('garland-design'),
    version: z.literal(1),
    name: z.string(),
    family: z.enum(FAMILIES),
    values: z.looseObject({
      ...(Object.fromEntries(VALUE_NAMES.map((name) => [name, quantity(name).optional()])) as Record<
        ValueName,
        z.ZodOptional<ReturnType<typeof quantity>>
      >),
      bodyLength: quantity('bodyLength'),
    }),
    outline,
  })
  .describe(
    'A design: every value with its unit and origin, and the outline as drafted or traced. Lengths in mm.',
  );

/**
 * The design in a parsed document, unknown entries kept.
 *
 * A needed value that the document lacks (an older Garland did not know it) is filled from the family, with its
 * origin and a finding `design.filled`. Faults, all at once, each with its path: `file.kind`,
 * `file.newer`, `design.missing`, `design.wrong`, `size.body-length`.
 */
export function readDesign(
  json: unknown,
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  const wrongKind = kindFaults(json, 'garland-design', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = designSchema.safeParse(json);
  if (!parsed.success) return refuse(...schemaFaults(parsed.error, json, 'design', VALUE_NAMES));
  const read: Design = parsed.data;
  const missing = NEEDED_VALUES.filter((name) => read.values[name] === undefined);
  if (missing.length === 0) return accept({ design: read, findings: [] });
  return completed(read, parsed.data.values.bodyLength.value, missing);
}

function completed(
  design: Design,
  lengthMm: number,
  missing: readonly ValueName[],
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  const { faults } = lengthQuestions(design.family, lengthMm);
  if (faults.length > 0) return refuse(...faults);
  const whole = filled(design.values, nearestSize(design.family, lengthMm), lengthMm);
  const findings = missing.map((name) => filledFinding(name, whole[name]));
  return accept({ design: { ...design, values: { ...design.values, ...whole } }, findings });
}

function filledFinding(name: ValueName, quantity: Quantity | undefined): Finding {
  const value = quantity?.value ?? 0;
  const text = quantity?.unit === 'mm' ? printLength(value) : String(value);
  return {
    code: 'design.filled',
    weight: 'remark',
    at: name,
    found: `no value in the document; ${text} is used, the family's habit`,
    need: 'a value of its own',
    remedy: 'keep it, or set it; it is saved with the design',
  };
}

/** The design's values as lines of the register, in the order of VALUES. */
export function designEntries(design: Design): readonly RegisterEntry[] {
  return VALUE_NAMES.flatMap((name) => {
    const quantity = design.values[name];
    return quantity ? [{ name, ...quantity }] : [];
  });
}
