import type { Finding } from '../../base/index.ts';
import type { TraceRecord } from '../../design/index.ts';
import { hintsFrom, hintsToFile } from '../../files/index.ts';
import type { KnownLength, Photograph, TraceRequest } from './traceRequest.ts';

/** What is written down of a request: everything but the pictures themselves. */
export function recordOf(request: TraceRequest): TraceRecord {
  const { photographs, face, edgeHeightMm, edgeHeightPlusMinusMm, sheetBarMm, scan, known, body, meant } =
    request;
  return {
    photographs: photographs.map(({ name, sha256, hints }) => ({
      name,
      ...(sha256 && { sha256 }),
      ...(hints && { hints: hintsToFile(hints) }),
    })),
    face,
    ...(edgeHeightMm !== undefined && {
      edgeHeight: {
        value: edgeHeightMm,
        ...(edgeHeightPlusMinusMm !== undefined && { plusMinus: edgeHeightPlusMinusMm }),
      },
    }),
    ...(sheetBarMm && { sheetBar: { x: sheetBarMm.xMm, y: sheetBarMm.yMm } }),
    ...(scan && { scan }),
    ...(known.length > 0 && {
      known: known.map(knownToRecord),
    }),
    ...(body !== undefined && { body }),
    ...(meant && { meant }),
  };
}

/** The request that a record holds, for pictures read again; photographs that the record names get their hints back. */
export function requestOf(
  record: TraceRecord,
  photographs: readonly [Photograph, ...Photograph[]],
): { readonly request: TraceRequest; readonly findings: readonly Finding[] } {
  const { face, edgeHeight, sheetBar, scan, known, body, meant } = record;
  const [first, ...further] = photographs.map((one) => withHints(one, record, photographs.length === 1));
  return {
    request: {
      photographs: [first as Photograph, ...further],
      face,
      ...(edgeHeight && {
        edgeHeightMm: edgeHeight.value,
        ...(edgeHeight.plusMinus !== undefined && { edgeHeightPlusMinusMm: edgeHeight.plusMinus }),
      }),
      ...(sheetBar && {
        sheetBarMm: {
          ...(sheetBar.x !== undefined && { xMm: sheetBar.x }),
          ...(sheetBar.y !== undefined && { yMm: sheetBar.y }),
        },
      }),
      ...(scan && { scan }),
      known: (known ?? []).map(knownOfRecord),
      ...(body !== undefined && { body }),
      ...(meant && { meant }),
    },
    findings: otherPictures(record, photographs),
  };
}

type RecordedLength = NonNullable<TraceRecord['known']>[number];

/** A known length as it is written down. */
export function knownToRecord({ name, mm, plusMinusMm, taken }: KnownLength): RecordedLength {
  return {
    name,
    value: mm,
    ...(plusMinusMm !== undefined && { plusMinus: plusMinusMm }),
    ...(taken && { taken }),
  };
}

/** The same the other way. */
export function knownOfRecord({ name, value, plusMinus, taken }: RecordedLength): KnownLength {
  return {
    name,
    mm: value,
    ...(plusMinus !== undefined && { plusMinusMm: plusMinus }),
    ...(taken && { taken }),
  };
}

function withHints(photograph: Photograph, record: TraceRecord, isAlone: boolean): Photograph {
  const recorded =
    record.photographs.find(({ sha256 }) => sha256 !== undefined && sha256 === photograph.sha256) ??
    record.photographs.find(({ name }) => name === photograph.name) ??
    (isAlone && record.photographs.length === 1 ? record.photographs[0] : undefined);
  if (photograph.hints || !recorded?.hints) return photograph;
  return { ...photograph, hints: hintsFrom(recorded.hints) };
}

/** Photographs that are not the recorded ones, whatever they are called. Finding: `trace.other-photograph`. */
function otherPictures(record: TraceRecord, photographs: readonly Photograph[]): readonly Finding[] {
  const prints = new Set(record.photographs.flatMap(({ sha256 }) => sha256 ?? []));
  if (prints.size === 0) return [];
  return photographs
    .filter(({ sha256 }) => sha256 !== undefined && !prints.has(sha256))
    .map(({ name }) => ({
      weight: 'caution' as const,
      code: 'trace.other-photograph',
      at: name,
      found: 'not the photograph that the record was made with',
      need: 'the same file, where the same result is wanted',
      remedy: 'give that file, or look whether the recorded hints still lie where they should',
    }));
}
