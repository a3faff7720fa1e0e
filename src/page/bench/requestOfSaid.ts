import {
  aboutOfWishes,
  accept,
  type Checked,
  hintsText,
  type KnownLength,
  type Photograph,
  parseKnownLength,
  parseLength,
  parseMeant,
  parseScan,
  parseSheetBar,
  point,
  refuse,
  type TraceHints,
  type TraceRequest,
} from '../../core/index.ts';
import { typedKnown } from '../keeping/alsoKnown.ts';
import type { HandMark, Said } from '../keeping/said.ts';

/** What is to be traced, from what the maker said; only what belongs to the scale that was chosen is read. */
export function requestOfSaid(
  said: Said,
  photographs: readonly [Photograph, ...Photograph[]],
): Checked<TraceRequest> {
  const { scaleFrom } = said;
  const isSheet = scaleFrom === 'sheet';
  const bars = parseSheetBar(
    isSheet ? given(said.sheetBar) : undefined,
    isSheet ? given(said.edgeHeight) : undefined,
  );
  const scan = scaleFrom === 'scan' ? scanOf(said) : accept(null);
  const about = aboutInstrument(said);
  if (!bars.ok || !scan.ok || !about.ok)
    return refuse(...[bars, scan, about].flatMap((one) => (one.ok ? [] : one.faults)));
  const [first, ...others] = photographs.map((one) => withMarks(one, said.marks));
  return accept({
    photographs: [first as Photograph, ...others],
    ...about.value,
    ...bars.value,
    ...(scan.value && { scan: scan.value }),
  });
}

/** What was said of the instrument itself, whatever its scale is taken from. */
function aboutInstrument(said: Said): Checked<Pick<TraceRequest, 'face' | 'known' | 'body' | 'meant'>> {
  const { bodyLength, bodyLengthTaken, lowerBout, lowerBoutTaken, face, body } = said;
  const known = [
    ...[
      [`bodyLength=${bodyLength} ${bodyLengthTaken}`, bodyLength] as const,
      [`lowerBout=${lowerBout} ${lowerBoutTaken}`, lowerBout] as const,
    ]
      .filter(([, typed]) => given(typed) !== undefined)
      .map(([text]) => text),
    ...said.alsoKnown.filter((one) => given(typedKnown(one).length) !== undefined),
  ].map((text) => parseKnownLength(text));
  const corner = cornerOf(said);
  const meant = parseMeant({
    ...(corner.ok && corner.value !== null && { cornerEnd: corner.value }),
    ...(said.keepAsymmetry && { keepAsymmetry: true }),
    ...(said.follow !== 'average' && { follow: said.follow }),
    stretches: said.rulings.map(({ side, fromMm, toMm, take }) => `${side} ${fromMm}-${toMm} ${take}`),
  });
  if (!corner.ok || !meant.ok || known.some((one) => !one.ok))
    return refuse(...[corner, meant, ...known].flatMap((one) => (one.ok ? [] : one.faults)));
  return accept({
    face,
    known: known.flatMap((one): KnownLength[] => (one.ok ? [one.value] : [])),
    ...(body !== null && { body }),
    ...(meant.value && { meant: meant.value }),
  });
}

/** Everything that was said of a photograph and the instrument in it, as the file that the command line takes. Faults: those of reading what was typed. */
export function hintsOfSaid(said: Said, photograph: string): Checked<string> {
  const about = aboutInstrument(said);
  if (!about.ok) return about;
  const hints = hintsOf(said.marks.filter(({ on }) => on === photograph));
  return accept(hintsText({ photograph, hints, about: aboutOfWishes(about.value) }));
}

/** Widths of lower and upper corners, as one word; where only one was measured it stands for both. */
function cornerOf({ lowerCorner, upperCorner }: Said): Checked<string | null> {
  const typed = [given(lowerCorner) ?? given(upperCorner), given(upperCorner) ?? given(lowerCorner)];
  const read = typed.flatMap((text) => (text === undefined ? [] : [parseLength(text)]));
  const faults = read.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return refuse(...faults.map((fault) => ({ ...fault, at: '--corner-end' })));
  return accept(read.length === 0 ? null : read.map((one) => (one.ok ? one.value.mm : '')).join(', '));
}

/** A resolution, or the two places of a scale bar with the length between them. */
function scanOf({ resolution, barLength, barEnds }: Said): ReturnType<typeof parseScan> {
  const [from, to] = barEnds;
  const bar =
    from && to && given(barLength) !== undefined
      ? `${from.join(',')} ${to.join(',')} = ${barLength}`
      : undefined;
  return parseScan(bar === undefined ? resolution : undefined, bar);
}

function withMarks(photograph: Photograph, marks: readonly HandMark[]): Photograph {
  const own = marks.filter(({ on }) => on === photograph.name);
  return own.length === 0 ? photograph : { ...photograph, hints: hintsOf(own) };
}

/** Marks as the tracing takes them: a single place, or a line drawn over several. */
export function hintsOf(marks: readonly HandMark[]): TraceHints {
  const of = (kind: HandMark['kind'], isLine: boolean) =>
    marks.filter((mark) => mark.kind === kind && mark.places.length > 1 === isLine).map(pointsOf);
  const named = {
    inside: of('inside', false).flat(),
    outside: of('outside', false).flat(),
    insideStrokes: of('inside', true),
    outsideStrokes: of('outside', true),
    onEdge: of('edge', false).flat(),
    excluded: of('excluded', true),
  };
  return Object.fromEntries(Object.entries(named).filter(([, marked]) => marked.length > 0));
}

function pointsOf({ places }: HandMark) {
  return places.map(([x, y]) => point<'photo'>(x, y));
}

function given(text: string): string | undefined {
  return text.trim() === '' ? undefined : text;
}
