import * as z from 'zod';

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** What stands at the root of a pack as manifest.json: every file with its use, parts, hash and true size. */
export const packSchema = z
  .looseObject({
    format: z.literal('garland-pack'),
    version: z.literal(1),
    design: z.looseObject({ name: z.string(), sha256 }),
    /** What drawings and print speak; English where it is not said. */
    language: z.string().optional(),
    files: z.array(
      z.looseObject({
        path: z.string(),
        kind: z.enum(['print', 'laser', 'router', 'solid', 'book', 'data']),
        parts: z.array(z.string()),
        sha256,
        bytes: z.number().int().nonnegative(),
        sizeMm: z
          .tuple([z.number(), z.number()])
          .or(z.tuple([z.number(), z.number(), z.number()]))
          .optional(),
      }),
    ),
  })
  .describe('The manifest of a pack: what files it holds, what each is for, and how large its piece is.');
