import * as z from 'zod';

const height = z
  .tuple([z.number(), z.number(), z.number()], {
    error:
      'three numbers: across from the centre line, up from the lower end, and the height above the gluing face, in mm',
  })
  .describe('mm across from the centre line, mm up from the lower end, and mm above the gluing face');

const plate = z.strictObject({
  heights: z.array(height).min(1, { error: 'one height or more' }).max(5000),
  plusMinus: z
    .number()
    .positive({ error: 'a half interval above 0' })
    .optional()
    .describe('how well one height is known, mm (k = 2); 0.2 when left out'),
  source: z.string().optional(),
});

/** Heights measured on an original's outside that the surface of a plate is drawn to, as they stand in a design and in a table. */
export const measuredHeightsSchema = z
  .strictObject({ back: plate.optional(), top: plate.optional() })
  .describe(
    'heights of the outside, measured inside the channel, that the arch is drawn to; both halves count as one, so leave out what is worn or pushed up',
  );

/** Heights of one plate's outside. */
export interface MeasuredHeights {
  /** Across from the centre line, up from the lower end, above the gluing face, mm. */
  readonly heights: readonly (readonly [number, number, number])[];
  /** Half interval (k = 2) of one height, mm. */
  readonly plusMinus?: number | undefined;
  readonly source?: string | undefined;
}

export interface MeasuredHeightsOfPlates {
  readonly back?: MeasuredHeights | undefined;
  readonly top?: MeasuredHeights | undefined;
}
