import * as z from 'zod';
import { FAMILIES } from '../knowledge/index.ts';
import type { Quantity, Unit } from '../quantity/index.ts';
import { headFitSchema } from './headFit.ts';
import { holeShapeSchema } from './holeShape.ts';
import { leftHandedSchema } from './leftHanded.ts';
import { longArchSchema } from './longArchChoice.ts';
import { measuredHeightsSchema } from './measuredHeights.ts';
import { ribChoiceSchema } from './ribChoice.ts';
import { stringSpreadSchema } from './stringSpread.ts';
import { thicknessSchema } from './thickness.ts';
import { traceRecordSchema } from './traceRecord.ts';
import { VALUE_NAMES, VALUES, type ValueName } from './values.ts';

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
const densityQuantity = z
  .looseObject({
    ...measure,
    value: z.number().positive({ error: 'a density above 0' }),
    unit: z.literal('kg/m³'),
  })
  .meta({ id: 'Density' });
const angleQuantity = z
  .looseObject({
    ...measure,
    value: z.number().positive({ error: 'an angle above 0' }),
    unit: z.literal('deg'),
  })
  .meta({ id: 'Angle' });
const ratioQuantity = z.looseObject({ ...measure, unit: z.literal('ratio') }).meta({ id: 'Ratio' });

const pullQuantity = positive('N', 'a pull above 0').meta({ id: 'Pull' });
const pitchQuantity = positive('Hz', 'a frequency above 0').meta({ id: 'Frequency' });
const stringMassQuantity = positive('g/m', 'a mass above 0').meta({ id: 'StringMass' });

function positive<U extends Unit>(unit: U, error: string) {
  return z.looseObject({ ...measure, value: z.number().positive({ error }), unit: z.literal(unit) });
}

/** Its type is spelt out: inferred for every name, it would be longer than a compiler writes down. */
function quantity(name: ValueName): z.ZodType<Quantity> {
  const { unit, says } = VALUES[name];
  if (unit === 'N') return pullQuantity.describe(says);
  if (unit === 'Hz') return pitchQuantity.describe(says);
  if (unit === 'g/m') return stringMassQuantity.describe(says);
  if (unit === 'kg/m³') return densityQuantity.describe(says);
  if (unit === 'deg') return angleQuantity.describe(says);
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
    request: traceRecordSchema.optional(),
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
    thickness: thicknessSchema.optional(),
    longArch: longArchSchema.optional(),
    ribs: ribChoiceSchema.optional(),
    measuredHeights: measuredHeightsSchema.optional(),
    holeShape: holeShapeSchema.optional(),
    leftHanded: leftHandedSchema,
    headFit: headFitSchema.optional(),
    overruled: z
      .looseObject(
        Object.fromEntries(VALUE_NAMES.map((name) => [name, quantity(name).optional()])) as Record<
          ValueName,
          z.ZodOptional<ReturnType<typeof quantity>>
        >,
      )
      .optional(),
    settled: z.array(z.string()).optional(),
    stringSpread: stringSpreadSchema.optional(),
  })
  .describe(
    'A design: every value with its unit and origin, and the outline as drafted or traced. Lengths in mm.',
  );
