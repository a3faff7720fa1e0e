import * as z from 'zod';
import { accept, type Checked, type Point, point, refuse } from '../base/index.ts';
import {
  kindFaults,
  markedPlaces,
  schemaFaults,
  type TraceRecord,
  traceRecordSchema,
} from '../design/index.ts';
import type { TraceHints } from '../photo/index.ts';
import { documentText } from './documentText.ts';

const { face, body } = traceRecordSchema.shape;
/** By hand a name is misspelt easily, and a hint that is passed over in silence is missed by nobody: so here all names must be known. */
const known = z.array(traceRecordSchema.shape.known.unwrap().element.strict()).optional();
const meant = traceRecordSchema.shape.meant.unwrap().strict().optional();

/**
 * Places marked by hand on a photograph, in pixels of the upright picture, (0, 0) the centre of its top left one; and what was said
 * of the instrument in it, in the words of a trace's record.
 */
export const hintsSchema = z
  .strictObject({
    format: z.literal('garland-hints'),
    version: z.literal(1),
    photograph: z.string().describe('which photograph, where there are several').optional(),
    ...markedPlaces,
    face: face.optional(),
    known: known.describe('lengths as measured on the instrument, mm'),
    body,
    meant: meant.describe(
      'how the outline as meant is made, where the maker wishes it otherwise than by habit',
    ),
  })
  .describe(
    'Hints for tracing: places marked by hand on a photograph, px, and what is known of the instrument in it, mm.',
  );

const NAMES: readonly string[] = [hintsSchema, known.unwrap().element, meant.unwrap()].flatMap(({ shape }) =>
  Object.keys(shape),
);

/** What hints say of the instrument, besides the places marked. */
export type HintsAbout = Partial<Pick<TraceRecord, 'face' | 'known' | 'body' | 'meant'>>;

/** Hints for one photograph; without a name they are for the only one. */
export interface PhotographHints {
  readonly photograph?: string;
  readonly hints: TraceHints;
  readonly about: HintsAbout;
}

/** The text of their file. */
export function hintsText({ photograph, hints, about }: PhotographHints): string {
  return documentText({
    format: 'garland-hints',
    version: 1,
    ...(photograph !== undefined && { photograph }),
    ...hintsToFile(hints),
    ...about,
  });
}

/** The hints in a parsed document. Faults, each with its path: `file.kind`, `file.newer`, `hints.missing`, `hints.wrong`, `hints.unknown-name`. */
export function readHints(json: unknown): Checked<PhotographHints> {
  const wrongKind = kindFaults(json, 'garland-hints', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = hintsSchema.safeParse(json);
  if (!parsed.success) return refuse(...schemaFaults(parsed.error, json, 'hints', NAMES));
  const { photograph, face, known, body, meant } = parsed.data;
  return accept({
    ...(photograph !== undefined && { photograph }),
    hints: hintsFrom(parsed.data),
    about: {
      ...(face && { face }),
      ...(known && { known }),
      ...(body !== undefined && { body }),
      ...(meant && { meant }),
    },
  });
}

type Marked = { readonly [Name in keyof typeof markedPlaces]?: z.infer<(typeof markedPlaces)[Name]> };

/** Marked places as a document holds them, as points. */
export function hintsFrom(marked: Marked): TraceHints {
  const { inside, outside, onEdge, insideStrokes, outsideStrokes, excluded } = marked;
  return {
    ...(inside && { inside: places(inside) }),
    ...(outside && { outside: places(outside) }),
    ...(onEdge && { onEdge: places(onEdge) }),
    ...(insideStrokes && { insideStrokes: insideStrokes.map(places) }),
    ...(outsideStrokes && { outsideStrokes: outsideStrokes.map(places) }),
    ...(excluded && { excluded: excluded.map(places) }),
  };
}

/** The same the other way. */
export function hintsToFile(hints: TraceHints): Marked {
  return Object.fromEntries(
    Object.entries(hintsFromPoints(hints)).filter(([, marked]) => marked !== undefined),
  );
}

function hintsFromPoints(hints: TraceHints): Marked {
  return {
    inside: hints.inside?.map(pair),
    outside: hints.outside?.map(pair),
    onEdge: hints.onEdge?.map(pair),
    insideStrokes: hints.insideStrokes?.map((stroke) => stroke.map(pair)),
    outsideStrokes: hints.outsideStrokes?.map((stroke) => stroke.map(pair)),
    excluded: hints.excluded?.map((polygon) => polygon.map(pair)),
  };
}

function pair({ x, y }: Point<'photo'>): [number, number] {
  return [x, y];
}

function places(list: readonly (readonly [number, number])[]): readonly Point<'photo'>[] {
  return list.map(([x, y]) => point(x, y));
}
