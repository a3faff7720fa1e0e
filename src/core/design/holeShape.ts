import * as z from 'zod';
import type { HoleShapeHabit } from '../knowledge/index.ts';

const end = z.looseObject({
  reach: z.number().positive(),
  eye: z.number().positive(),
  shoulder: z.number().positive(),
  hookFromDeg: z.number(),
  eyeFromDeg: z.number(),
  tipDeg: z.number(),
  taperDeg: z.number(),
  tipGap: z.number().positive(),
  wingShare: z.number().positive(),
  wingAtEyeDeg: z.number(),
  turnsOver: z.number(),
});

/** The shape of the sound holes where it is not the family's: fitted to a traced hole. Lengths as shares of the hole's length. */
export const holeShapeSchema = z
  .looseObject({
    from: z.string().describe('what it was fitted to'),
    fitRmsMm: z.number().nonnegative(),
    fitMaxMm: z.number().nonnegative(),
    misfits: z
      .array(z.looseObject({ place: z.string(), rmsMm: z.number(), mostMm: z.number() }))
      .describe('how far stretches of the traced hole lie off the drafted one'),
    shape: z.looseObject({
      upper: end,
      lower: end.describe('seen upside down'),
      eyesAcross: z.number(),
      stemAcross: z.number(),
      slantDeg: z.number(),
      edgesDeg: z.number(),
      outerNick: z.number(),
      nickWidth: z.number().positive(),
      nickDepth: z.number().positive(),
    }),
  })
  .describe('The shape of the sound holes where it is not the family’s: fitted to a traced hole.');

/** The shape of a traced hole, and how near the drafted one lies to it. */
export interface FittedHoleShape {
  readonly from: string;
  readonly fitRmsMm: number;
  readonly fitMaxMm: number;
  readonly misfits: readonly {
    readonly place: string;
    readonly rmsMm: number;
    readonly mostMm: number;
  }[];
  readonly shape: HoleShapeHabit;
}
