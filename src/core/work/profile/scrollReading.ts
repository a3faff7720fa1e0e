import * as z from 'zod';
import { accept, type Checked, type Point, point, refuse } from '../../base/index.ts';
import { kindFaults, schemaFaults } from '../../design/index.ts';

const scrollSchema = z.looseObject({
  format: z.literal('garland-profile'),
  version: z.literal(1),
  units: z.literal('mm'),
  of: z.literal('scrollSide'),
  name: z.string(),
  points: z.array(z.tuple([z.number(), z.number()])).min(3, { error: 'a closed line' }),
  plusMinus: z.looseObject({ point: z.number().nonnegative(), scale: z.number().nonnegative() }),
});

/** The side of a head as it was traced: x along it toward the turn, y toward the front, mm. */
export interface ScrollReading {
  readonly name: string;
  readonly points: readonly Point<'section'>[];
  /** One standard deviation of a place across the line. */
  readonly sigmaMm: number;
  /** Half interval (k = 2) of every length, as a share of it. */
  readonly scaleShare: number;
}

/** The side of a head in a `garland-profile`. Faults: `file.kind`, `file.newer`, `profile.missing`, `profile.wrong`. */
export function readScrollSide(json: unknown): Checked<ScrollReading> {
  const wrongKind = kindFaults(json, 'garland-profile', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = scrollSchema.safeParse(json);
  if (!parsed.success)
    return refuse(...schemaFaults(parsed.error, json, 'profile', Object.keys(scrollSchema.shape)));
  const { name, points, plusMinus } = parsed.data;
  return accept({
    name,
    points: points.map(([along, up]) => point<'section'>(along, up)),
    sigmaMm: plusMinus.point / 2,
    scaleShare: plusMinus.scale,
  });
}
