import * as z from 'zod';

/** How the strings are spread over nut and bridge, as it stands in a design and in a table. */
export const stringSpreadSchema = z
  .enum(['centres', 'edges'], { error: 'centres or edges' })
  .describe(
    'centres, when left out: the strings lie equally far from middle to middle; edges: with equal gaps between them, so that thick ones lie farther apart',
  );

export type StringSpread = z.infer<typeof stringSpreadSchema>;
