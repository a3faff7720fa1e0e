import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { designSchema } from './designSchema.ts';
import { measurementsSchema } from './measurements.ts';

const folder = resolve(import.meta.dirname, '../../../schemas');

const schemas = [
  ['measurements', measurementsSchema],
  ['design', designSchema],
] as const;

test.each(schemas)('the published schema of %s is the one that the loader uses', async (name, schema) => {
  const text = `${JSON.stringify(z.toJSONSchema(schema, { io: 'input' }), null, 2)}\n`;
  await expect(text).toMatchFileSnapshot(`${folder}/${name}.schema.json`);
});
