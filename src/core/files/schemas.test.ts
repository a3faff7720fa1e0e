import { expect, test } from 'vitest';
import * as z from 'zod';
import { hintsSchema } from './hintsDocument.ts';
import { packSchema } from './packDocument.ts';
import { traceSchema } from './traceDocument.ts';

const schemas = { hints: hintsSchema, pack: packSchema, trace: traceSchema };

test.each(Object.entries(schemas))(
  'the published %s schema is what the loader uses',
  async (name, schema) => {
    const text = `${JSON.stringify(z.toJSONSchema(schema), null, 2)}\n`;
    await expect(text).toMatchFileSnapshot(`../../../schemas/${name}.schema.json`);
  },
);
