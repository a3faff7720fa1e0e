import * as z from 'zod';

/** How the ribs are joined and lined, as it stands in a design and in a table. */
export const ribChoiceSchema = z
  .strictObject({
    joint: z
      .enum(['bouts-over', 'waist-over', 'mitred'], { error: 'bouts-over, waist-over or mitred' })
      .optional()
      .describe(
        'bouts-over, when left out: upper and lower ribs go over the trimmed ends of the waist rib; waist-over: the other way round; mitred: both ends cut to the middle of the corner',
      ),
    corners: z
      .enum(['drawn-together', 'parallel'], { error: 'drawn-together or parallel' })
      .optional()
      .describe(
        'drawn-together, when left out: before a corner the ribs leave their parallels and close over the tip of the block; parallel: they keep to them, and the block may show between their ends',
      ),
    lowerRib: z
      .enum(['two-pieces', 'one-piece'], { error: 'two-pieces or one-piece' })
      .optional()
      .describe('two-pieces, when left out: joined on the centre line; one-piece: from corner to corner'),
    upperRib: z
      .enum(['two-pieces', 'one-piece'], { error: 'two-pieces or one-piece' })
      .optional()
      .describe(
        'two-pieces, when left out: they end under the neck; one-piece: from corner to corner, cut through by the mortise of the neck',
      ),
    linings: z
      .enum(['plain', 'kerfed'], { error: 'plain or kerfed' })
      .optional()
      .describe('plain, when left out: bent like the ribs; kerfed: sawn half through so that they bend cold'),
    liningsLetIn: z
      .enum(['waist', 'all'], { error: 'waist or all' })
      .optional()
      .describe(
        'waist, when left out: the linings of the waist are let into the corner blocks, the others end at them; all: the others are let in there too',
      ),
  })
  .describe('how the ribs are joined at the corners and the lower end, and how they are lined');

/** How ribs are joined and lined; what is not said is done the usual way. */
export interface RibChoice {
  readonly joint?: 'bouts-over' | 'waist-over' | 'mitred' | undefined;
  readonly corners?: 'drawn-together' | 'parallel' | undefined;
  readonly lowerRib?: 'two-pieces' | 'one-piece' | undefined;
  readonly upperRib?: 'two-pieces' | 'one-piece' | undefined;
  readonly linings?: 'plain' | 'kerfed' | undefined;
  readonly liningsLetIn?: 'waist' | 'all' | undefined;
}
