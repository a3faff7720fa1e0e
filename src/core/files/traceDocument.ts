import * as z from 'zod';
import { accept, type Checked, refuse } from '../base/index.ts';
import { kindFaults, schemaFaults, traceRecordSchema } from '../design/index.ts';
import { chainDocument } from './chainDocument.ts';

const spot = z.tuple([z.number(), z.number()]);
const side = z.enum(['bass', 'treble']);

const eyeOfHole = z.looseObject({ centre: spot, diameter: z.number() });

const soundHole = z
  .looseObject({
    contour: z.array(spot).min(3),
    doubtful: z.array(z.int()).describe('points of the contour where the two holes differ').optional(),
    bridged: z.array(z.int()).describe('points of the contour that something crosses').optional(),
    upperEye: eyeOfHole.optional(),
    lowerEye: eyeOfHole.optional(),
    innerNick: spot.optional(),
    outerNick: spot.optional(),
    height: z.looseObject({ value: z.number(), plusMinus: z.number() }).optional(),
    plusMinus: z.number().describe('the farthest that the ± of the height moves any place').optional(),
  })
  .describe('A sound hole as seen from above, body frame.');

export type HoleDocument = z.infer<typeof soundHole>;

const restoredFrom = z.enum(['otherHalf', 'purfling', 'corner']);

const cornerOfTrace = z.looseObject({
  width: z.number(),
  from: z.enum(['seen', 'given', 'usual']),
  plusMinus: z.number(),
  boutTip: spot,
  waistTip: spot,
});

const halfArcs = z.looseObject({ lowerBout: chainDocument, cBout: chainDocument, upperBout: chainDocument });

/** What a trace holds: the outline as meant and as found, in the body frame, and how far to believe it. */
export const traceSchema = z
  .looseObject({
    format: z.literal('garland-trace'),
    version: z.literal(1),
    units: z.literal('mm'),
    frame: z.literal('body'),
    name: z.string().describe('what the photograph is called').optional(),
    face: z.enum(['top', 'back']).optional(),
    outline: z
      .array(spot)
      .min(40, { error: 'forty points or more' })
      .describe('closed, restored and symmetric'),
    arcs: halfArcs.describe('the treble half of the outline as tangent arcs').optional(),
    wearMap: z
      .array(z.looseObject({ side, at: spot, restored: z.number(), from: restoredFrom }))
      .describe('what was put back, station by station')
      .optional(),
    leanMap: z
      .array(z.looseObject({ at: spot, lean: z.number() }))
      .describe('half of what the treble side stands out more than the bass side, slowly')
      .optional(),
    arcFit: z
      .looseObject({
        kind: z.enum(['thirteen', 'asNeeded']),
        count: z.number(),
        misfits: z.array(
          z.looseObject({ section: z.string(), from: z.number(), to: z.number(), misfit: z.number() }),
        ),
      })
      .optional(),
    corners: z.looseObject({ lower: cornerOfTrace.optional(), upper: cornerOfTrace.optional() }).optional(),
    compass: z
      .array(
        z.looseObject({
          section: z.enum(['lowerBout', 'cBout', 'upperBout']),
          kind: z.enum(['full', 'hollow', 'straight']),
          radius: z.number().nullable(),
          centre: spot.nullable(),
          from: spot,
          to: spot,
          onCentreLine: z.boolean(),
        }),
      )
      .describe('the arcs of the treble half as a compass is set to them, from the lower end up')
      .optional(),
    halves: z
      .looseObject({ bass: halfArcs, treble: halfArcs })
      .describe('each half restored for itself, both as if on the treble side')
      .optional(),
    purfling: z
      .looseObject({ bass: z.array(spot), treble: z.array(spot), width: z.number().optional() })
      .describe('middle line of the purfling where it is seen; width from dark line to dark line')
      .optional(),
    soundHoles: z
      .looseObject({
        drawnFrom: z.enum(['bass', 'treble']).optional(),
        bass: soundHole.optional(),
        treble: soundHole.optional(),
      })
      .optional(),
    centreJoint: z
      .looseObject({
        ends: z.tuple([spot, spot]),
        offAxis: z.tuple([z.number(), z.number()]).describe('at either end, to the treble side'),
        plusMinus: z.number(),
      })
      .optional(),
    asFound: z.looseObject({ bass: z.array(spot), treble: z.array(spot) }).optional(),
    scale: z
      .looseObject({ mmPerPixel: z.number(), uncertainty: z.number() })
      .describe('uncertainty: share, k = 2')
      .optional(),
    known: z
      .array(z.looseObject({ name: z.string(), value: z.number(), misfit: z.number() }))
      .describe('known lengths, and by how much the trace misses each')
      .optional(),
    axis: z.looseObject({}).optional(),
    wear: z
      .array(
        z.looseObject({
          side,
          at: spot,
          depth: z.number(),
          extent: z.number(),
          from: restoredFrom.optional(),
        }),
      )
      .optional(),
    bridged: z.array(z.looseObject({ name: z.string(), side })).optional(),
    fit: z.looseObject({ rms: z.number(), max: z.number() }).optional(),
    request: traceRecordSchema.optional(),
    bodyLength: z.looseObject({ value: z.number(), plusMinus: z.number() }).optional(),
    edgeHeight: z
      .looseObject({ value: z.number(), plusMinus: z.number() })
      .describe("middle of the near plate's edge above the sheet, where one was photographed; k = 2")
      .optional(),
  })
  .describe('A trace: an outline restored from a photograph. Body frame, mm.');

export type TraceDocument = z.infer<typeof traceSchema>;

/** The trace in a parsed document. Faults, each with its path: `file.kind`, `file.newer`, `trace.missing`, `trace.wrong`. */
export function readTrace(json: unknown): Checked<TraceDocument> {
  const wrongKind = kindFaults(json, 'garland-trace', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = traceSchema.safeParse(json);
  if (!parsed.success)
    return refuse(...schemaFaults(parsed.error, json, 'trace', Object.keys(traceSchema.shape)));
  return accept(parsed.data);
}
