import * as z from 'zod';
import { BACK_ZONES, THICKNESS_MAP_NAMES, THICKNESS_ZONES, type ThicknessZone } from '../knowledge/index.ts';

const point = z
  .tuple([z.number(), z.number(), z.number().positive()], {
    error: 'three numbers: across from the centre line, up from the lower end, and the thickness, in mm',
  })
  .describe('mm across from the centre line, mm up from the lower end, and the thickness there, mm');

const area = (where: string) =>
  z
    .strictObject({
      extra: z.number().describe('mm that the wood is thicker there than the map, or thinner where below 0'),
      reach: z
        .number()
        .positive({ error: 'a length above 0 mm' })
        .optional()
        .describe('mm beyond it over which that fades; 15 on a violin when left out'),
    })
    .optional()
    .describe(`thicker or thinner wood ${where}`);

const leastOf = (zones: readonly ThicknessZone[]) =>
  z
    .strictObject(
      Object.fromEntries(
        zones.map((zone) => [zone, z.number().positive({ error: 'a length above 0 mm' }).optional()]),
      ) as Record<ThicknessZone, z.ZodOptional<z.ZodNumber>>,
    )
    .optional()
    .describe('mm that each part of the plate must be left at least; as usual in the family when left out');

const plate = {
  map: z
    .enum(THICKNESS_MAP_NAMES)
    .optional()
    .describe(
      'a published or customary set of thicknesses, by its name: it stands for the four values of the plate that the maker did not measure or choose',
    ),
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
  post: area('where the sound post stands'),
};

/** How the thicknesses of the plates are laid out beside their few numbers, as it stands in a design and in a table. */
export const thicknessSchema = z
  .strictObject({
    back: z.strictObject({ ...plate, least: leastOf(BACK_ZONES) }).optional(),
    top: z
      .strictObject({ ...plate, bar: area('along the bass bar'), least: leastOf(THICKNESS_ZONES) })
      .optional(),
  })
  .describe('the map and pattern that each plate is thinned to, single places, and what must be left');

/** How much thicker the wood is at the post or along the bar, mm, and how far beyond it that is felt. */
export interface AreaWish {
  readonly extra: number;
  readonly reach?: number | undefined;
}

/** How one plate's thicknesses are laid out; concentric and even when nothing is said. */
export interface ThicknessLayout {
  /** A name of `THICKNESS_MAP_NAMES`. */
  readonly map?: string | undefined;
  readonly pattern?: 'concentric' | 'longitudinal' | undefined;
  /** Across from the centre line, up from the lower end, thickness, mm. */
  readonly points?: readonly (readonly [number, number, number])[] | undefined;
  readonly post?: AreaWish | undefined;
  /** On the top alone. */
  readonly bar?: AreaWish | undefined;
  /** Least thickness of each zone, mm; as usual in the family where nothing is said. */
  readonly least?: Readonly<Partial<Record<ThicknessZone, number | undefined>>> | undefined;
}

export interface ThicknessLayouts {
  readonly back?: ThicknessLayout | undefined;
  readonly top?: ThicknessLayout | undefined;
}
