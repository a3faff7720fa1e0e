import * as z from 'zod';

const length = (says: string) =>
  z.number().positive({ error: 'a length above 0 mm' }).optional().describe(says);

const plate = z.strictObject({
  form: z
    .enum(['circle', 'flat-topped', 'cycloid'], {
      error: 'circle, flat-topped or cycloid',
    })
    .optional()
    .describe(
      'circle, when left out: one circle with a fillet at each end; flat-topped: a larger circle over the middle; cycloid: level of itself and much lower over the bouts',
    ),
  crest: length('where the long arch is highest, mm above the lower end; the middle when left out'),
  flatReach: length('flat-topped: how far the larger circle reaches to each side of the crest, mm'),
  flatRadius: length('flat-topped: radius of the larger circle, mm'),
});

/** What each plate's long arch is made of, as it stands in a design and in a table. */
export const longArchSchema = z
  .strictObject({ back: plate.optional(), top: plate.optional() })
  .describe('what the arch along the centre line is made of, and where it is highest');

/** What one plate's long arch is made of; a circle with its crest in the middle when nothing is said. */
export interface LongArchChoice {
  readonly form?: 'circle' | 'flat-topped' | 'cycloid' | undefined;
  readonly crest?: number | undefined;
  readonly flatReach?: number | undefined;
  readonly flatRadius?: number | undefined;
}

export interface LongArchChoices {
  readonly back?: LongArchChoice | undefined;
  readonly top?: LongArchChoice | undefined;
}
