import * as z from 'zod';

const point = z
  .tuple([z.number(), z.number(), z.number().positive()], {
    error: 'three numbers: across from the centre line, up from the lower end, and the thickness, in mm',
  })
  .describe('mm across from the centre line, mm up from the lower end, and the thickness there, mm');

const plate = z.strictObject({
  pattern: z
    .enum(['concentric', 'longitudinal'])
    .optional()
    .describe(
      'concentric, when left out: thickest in the middle of the plate; longitudinal: as thick along the centre line from bout to bout',
    ),
  points: z
    .array(point)
    .max(200)
    .optional()
    .describe('thicknesses asked for at single places; both halves have them'),
});

/** How the thicknesses of the plates are laid out beside their few numbers, as it stands in a design and in a table. */
export const thicknessSchema = z
  .strictObject({ back: plate.optional(), top: plate.optional() })
  .describe('the pattern that each plate is thinned to, and single places');

/** How one plate's thicknesses are laid out; concentric and without points when nothing is said. */
export interface ThicknessLayout {
  readonly pattern?: 'concentric' | 'longitudinal' | undefined;
  /** Across from the centre line, up from the lower end, thickness, mm. */
  readonly points?: readonly (readonly [number, number, number])[] | undefined;
}

export interface ThicknessLayouts {
  readonly back?: ThicknessLayout | undefined;
  readonly top?: ThicknessLayout | undefined;
}
