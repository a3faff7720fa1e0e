import * as z from 'zod';

const stretch = z.looseObject({
  stretch: z.string(),
  mean: z.number().describe('how far the original lies outside the drawn line there, mm'),
  rms: z.number(),
  most: z.number().describe('the place farthest off, mm, outside positive'),
});

/** How well the drawn head follows the silhouette that it was fitted to, as it stands in a design. */
export const headFitSchema = z
  .looseObject({
    source: z.string(),
    rms: z.number().nonnegative({ error: 'zero or more' }),
    most: z.number().nonnegative({ error: 'zero or more' }),
    stretches: z.array(stretch),
  })
  .describe('the head’s side view was fitted to an original; what is left between them, mm');

/** What is left between the drawn head and the original that it was fitted to, mm. */
export interface HeadFit {
  readonly source: string;
  readonly rms: number;
  readonly most: number;
  readonly stretches: readonly {
    readonly stretch: string;
    readonly mean: number;
    readonly rms: number;
    readonly most: number;
  }[];
}
