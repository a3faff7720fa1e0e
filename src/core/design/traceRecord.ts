import * as z from 'zod';

const spot = z.tuple([z.number(), z.number()], { error: 'two numbers: across and down, px' });
const NO_LIST = { error: 'a list of places, each two numbers: across and down, px' };
const stroke = z.array(spot, NO_LIST).min(2, { error: 'two points or more' });
const polygon = z.array(spot, NO_LIST).min(3, { error: 'three corners or more' });
const ABOVE_0 = { error: 'a length above 0 mm' };
/** Of lines and polygons. */
const NO_LISTS = { error: 'a list of lines, each a list of places' };

/** Places marked by hand on one photograph, in pixels of the upright picture, (0, 0) the centre of its top left one. */
export const markedPlaces = {
  inside: z.array(spot, NO_LIST).describe('surely on the body').optional(),
  outside: z.array(spot, NO_LIST).describe('surely beside the body').optional(),
  insideStrokes: z.array(stroke, NO_LISTS).describe('lines drawn on the body').optional(),
  outsideStrokes: z.array(stroke, NO_LISTS).describe('lines drawn beside the body').optional(),
  onEdge: z.array(spot, NO_LIST).describe('on the edge').optional(),
  excluded: z
    .array(polygon, NO_LISTS)
    .describe('closed polygons round what is not to be believed')
    .optional(),
};

/** A stretch of one side where the maker decides what the outline follows, by heights above the lower end, mm. */
const ruledStretch = z.looseObject({
  side: z.enum(['bass', 'treble']),
  from: z.number(),
  to: z.number(),
  take: z.enum(['outer', 'asFound', 'other', 'mean']),
});

/** How the outline as meant is made from the outline as found, where the maker wishes it otherwise than by habit. */
const meantWishes = {
  slow: z
    .enum(['average', 'bass', 'treble'])
    .describe('what the slow difference of the halves becomes: averaged, or one side followed')
    .optional(),
  asymmetry: z.enum(['restore', 'keep']).optional(),
  stretches: z.array(ruledStretch).describe('stretches of wear that the maker rules over').optional(),
  cornerEnd: z
    .looseObject({
      upper: z.number().positive(ABOVE_0).optional(),
      lower: z.number().positive(ABOVE_0).optional(),
    })
    .describe('widths of the corner ends, mm')
    .optional(),
};

/**
 * What a trace was asked for: the photographs by name and fingerprint, everything that was measured beside them, the
 * places marked by hand and the wishes. The same photographs and the same record give the same trace.
 */
export const traceRecordSchema = z.looseObject({
  photographs: z
    .array(
      z.looseObject({
        name: z.string(),
        sha256: z.string().optional(),
        hints: z.looseObject(markedPlaces).optional(),
      }),
    )
    .min(1),
  face: z.enum(['top', 'back']),
  edgeHeight: z.looseObject({ value: z.number(), plusMinus: z.number().optional() }).optional(),
  sheetBar: z.looseObject({ x: z.number().optional(), y: z.number().optional() }).optional(),
  scan: z.looseObject({ mmPerPixel: z.number(), plusMinus: z.number() }).optional(),
  known: z
    .array(
      z.looseObject({
        name: z.string(),
        value: z.number(),
        plusMinus: z.number().nonnegative({ error: 'a half interval of 0 mm or more' }).optional(),
        taken: z.enum(['straight', 'over-arch', 'edge', 'purfling']).optional(),
      }),
    )
    .optional(),
  body: z
    .int()
    .positive({ error: 'a whole number, 1 or more' })
    .describe('which of several bodies, as numbered')
    .optional(),
  meant: z.looseObject(meantWishes).optional(),
});

export type TraceRecord = z.infer<typeof traceRecordSchema>;
