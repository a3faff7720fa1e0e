import * as z from 'zod';
import { accept, type Checked, point, refuse } from '../../base/index.ts';
import { kindFaults, type PlateReadings, schemaFaults } from '../../design/index.ts';
import { type Plate, STATION_NAMES } from '../../instrument/index.ts';

/** What drafting reads of a `garland-profile`: an arch of a known plate. */
const profileSchema = z.looseObject({
  format: z.literal('garland-profile'),
  version: z.literal(1),
  units: z.literal('mm'),
  of: z.enum(['crossArch', 'longArch'], { error: 'crossArch or longArch: a scroll gives no arch' }),
  name: z.string(),
  face: z.enum(['top', 'back'], { error: 'the plate that it was taken from, top or back' }),
  station: z.enum(STATION_NAMES).optional(),
  base: z.enum(['face', 'ends']),
  sidesKnown: z.boolean().optional(),
  leaveOut: z.boolean().optional(),
  points: z.array(z.tuple([z.number(), z.number()])),
});

/** The readings of one plate's arch, from one document. */
export interface ReadingsOfPlate {
  readonly plate: Plate;
  readonly readings: PlateReadings;
}

/**
 * The arch that a `garland-profile` holds, as readings to be fitted. Faults: `file.kind`, `file.newer`, `profile.missing`,
 * `profile.wrong`; `profile.no-station` for a cross arch without one.
 */
export function readProfile(json: unknown): Checked<ReadingsOfPlate> {
  const wrongKind = kindFaults(json, 'garland-profile', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = profileSchema.safeParse(json);
  if (!parsed.success)
    return refuse(...schemaFaults(parsed.error, json, 'profile', Object.keys(profileSchema.shape)));
  const { of, name, face, station, base, leaveOut, sidesKnown } = parsed.data;
  const points = parsed.data.points.map(([along, height]) => point<'section'>(along, height));
  if (of === 'crossArch' && station === undefined)
    return refuse({
      code: 'profile.no-station',
      at: 'station',
      found: 'a cross arch without its place on the plate',
      need: `one of ${STATION_NAMES.join(', ')}`,
      remedy: 'trace it again with its station, or add it',
    });
  return accept({
    plate: face,
    readings: {
      base: base === 'face' ? 'given' : 'free',
      leaveOut: leaveOut === true,
      sidesKnown: sidesKnown === true,
      source: `profile in ${name}`,
      stations: of === 'crossArch' && station ? [{ station, points }] : [],
      ...(of === 'longArch' && { longArch: points }),
    },
  });
}
