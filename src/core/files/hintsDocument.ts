import * as z from 'zod';
import { accept, type Checked, type Point, point, refuse } from '../base/index.ts';
import { kindFaults, schemaFaults } from '../design/index.ts';
import type { TraceHints } from '../photo/index.ts';

const spot = z.tuple([z.number(), z.number()]);

/** Places marked by hand on a photograph, in pixels of the upright picture, (0, 0) the centre of its top left one. */
export const hintsSchema = z
  .looseObject({
    format: z.literal('garland-hints'),
    version: z.literal(1),
    inside: z.array(spot).describe('surely on the body').optional(),
    outside: z.array(spot).describe('surely beside the body').optional(),
    onEdge: z.array(spot).describe('on the edge').optional(),
    excluded: z
      .array(z.array(spot).min(3, { error: 'three corners or more' }))
      .describe('closed polygons round what is not to be believed')
      .optional(),
  })
  .describe('Hints for tracing: places marked by hand on a photograph, px.');

/** The hints in a parsed document. Faults, each with its path: `file.kind`, `file.newer`, `hints.missing`, `hints.wrong`. */
export function readHints(json: unknown): Checked<TraceHints> {
  const wrongKind = kindFaults(json, 'garland-hints', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = hintsSchema.safeParse(json);
  if (!parsed.success)
    return refuse(...schemaFaults(parsed.error, json, 'hints', Object.keys(hintsSchema.shape)));
  const { inside, outside, onEdge, excluded } = parsed.data;
  return accept({
    ...(inside && { inside: places(inside) }),
    ...(outside && { outside: places(outside) }),
    ...(onEdge && { onEdge: places(onEdge) }),
    ...(excluded && { excluded: excluded.map(places) }),
  });
}

function places(list: readonly (readonly [number, number])[]): readonly Point<'photo'>[] {
  return list.map(([x, y]) => point(x, y));
}
