import * as z from 'zod';
import { type Point, point } from '../base/index.ts';

/** The places across a plate where arches are read, from the lower end up. */
const ARCH_STATIONS = ['lowerBout', 'lowerCorner', 'waist', 'upperCorner', 'upperBout'] as const;

const spots = z.array(z.tuple([z.number(), z.number()], { error: 'a pair [place, height] in mm' }));

const readingSchema = z.strictObject({
  station: z
    .union([z.enum(ARCH_STATIONS), z.number()], {
      error: `one of ${ARCH_STATIONS.join(', ')}, or its height in mm above the lower end`,
    })
    .describe('a station by name, or its height in mm above the lower end'),
  heights: spots.describe(
    'x across as one looks at the outside with the neck up, and height, in mm, from channel to channel or farther',
  ),
  centre: z.number().optional().describe('x of the centre line in these readings, mm'),
  halfWidth: z
    .number()
    .positive()
    .optional()
    .describe('from the centre line to where the channel is lowest, mm'),
});

const plateSchema = z.strictObject({
  heightsFrom: z
    .enum(['gluing-face', 'open'])
    .optional()
    .describe('gluing-face: heights count from it; open: tilt and height of the reading are not known'),
  stations: z.array(readingSchema).optional(),
  longArch: spots.optional().describe('y above the lower end along the centre line, and height, in mm'),
  leaveOut: z
    .boolean()
    .optional()
    .describe('leave stretches where post, bar or load moved the wood out of the fit'),
  keepHeights: z
    .boolean()
    .optional()
    .describe('draw the surface to these heights, beside the rise and fullness that are fitted to them'),
  plusMinus: z
    .number()
    .positive({ error: 'a half interval above 0' })
    .optional()
    .describe('how well one height is known, mm (k = 2); where heights are kept'),
  source: z.string().optional(),
});

/** Measured arches of one plate or both, as they stand in MEASUREMENTS.json. */
export const archesSchema = z
  .strictObject({ back: plateSchema.optional(), top: plateSchema.optional() })
  .describe('Arches as they were measured; rise and fullness are fitted to them.');

/** Heights read across a plate at one place. */
export interface ArchReading {
  /** A station by its name, or its height above the lower end. */
  readonly station: (typeof ARCH_STATIONS)[number] | { readonly yMm: number };
  readonly points: readonly Point<'section'>[];
  readonly centreXMm?: number;
  readonly halfWidthMm?: number;
}

/** Everything that was read of one plate's arch. */
export interface PlateReadings {
  /** Whether heights count from the gluing face, or tilt and height of each reading are open. */
  readonly base: 'given' | 'free';
  readonly leaveOut: boolean;
  /** Whether the surface is to be drawn to the heights themselves. */
  readonly keepHeights?: boolean;
  readonly plusMinusMm?: number;
  /** Whether the readings run as a table's do; a card may have lain the other way round. */
  readonly sidesKnown: boolean;
  readonly source: string;
  readonly stations: readonly ArchReading[];
  readonly longArch?: readonly Point<'section'>[];
}

/** Measured arches by plate. */
export type ArchReadings = { readonly [plate in 'back' | 'top']?: PlateReadings };

/** The readings of a document's `arches` entry. */
export function archReadingsOf(given: z.infer<typeof archesSchema>): ArchReadings {
  return {
    ...(given.back && { back: plateReadings(given.back) }),
    ...(given.top && { top: plateReadings(given.top) }),
  };
}

function plateReadings(given: z.infer<typeof plateSchema>): PlateReadings {
  return {
    base: given.heightsFrom === 'open' ? 'free' : 'given',
    leaveOut: given.leaveOut === true,
    keepHeights: given.keepHeights === true,
    ...(given.plusMinus !== undefined && { plusMinusMm: given.plusMinus }),
    sidesKnown: true,
    source: given.source ?? 'the table of measurements',
    stations: (given.stations ?? []).map(({ station, heights, centre, halfWidth }) => ({
      station: typeof station === 'number' ? { yMm: station } : station,
      points: pointsOf(heights),
      ...(centre !== undefined && { centreXMm: centre }),
      ...(halfWidth !== undefined && { halfWidthMm: halfWidth }),
    })),
    ...(given.longArch && { longArch: pointsOf(given.longArch) }),
  };
}

function pointsOf(pairs: readonly (readonly [number, number])[]): readonly Point<'section'>[] {
  return pairs.map(([along, height]) => point(along, height));
}
