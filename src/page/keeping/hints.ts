import type { HintsAbout, PhotographHints, TraceHints } from '../../core/index.ts';
import { seeingBench } from '../bench/bench.ts';
import { words } from '../words/words.ts';
import { knownWords } from './alsoKnown.ts';
import { download } from './files.ts';
import type { HandMark, MarkKind, Ruling, Said } from './said.ts';
import { said, say } from './saying.ts';
import { photograph, photographs, seeingTrouble } from './tracing.ts';

/** Files of hints were dropped or chosen: what they hold is said of the photographs in hand, in one step. */
export async function takeHints(
  files: readonly { readonly name: string; readonly json: unknown }[],
): Promise<void> {
  const names = photographs.value.map(({ name }) => name);
  const read = await seeingBench().readHints(files, names);
  if (!read.ok) {
    seeingTrouble.value = read.faults;
    return;
  }
  const { places, about } = read.value;
  const before = said.value;
  const known = new Set(before.marks.map(markKey));
  const marks = [...places]
    .flatMap(([on, hints]) => marksOf(on, hints))
    .filter((mark) => !known.has(markKey(mark)));
  seeingTrouble.value = [];
  say(words().see.says.hints(files.map(({ name }) => name).join(', ')), {
    ...saidOfAbout(about, before),
    marks: [...before.marks, ...marks],
  });
}

/** Puts what was said of the photograph that is looked at in a file, as the command line takes it. */
export async function putHintsInFile(): Promise<void> {
  const on = photograph.value?.name;
  if (on === undefined) return;
  const text = await seeingBench().hintsText(said.value, on);
  if (!text.ok) {
    seeingTrouble.value = text.faults;
    return;
  }
  const name = `${on.replace(/\.[^.]+$/, '')}.hints.json`;
  download(name, new TextEncoder().encode(text.value), 'application/json');
}

function markKey(mark: HandMark): string {
  return JSON.stringify([mark.kind, mark.on, mark.places]);
}

/** Marked places as the page holds them: a mark for every place or line. */
function marksOf(on: string, hints: TraceHints): readonly HandMark[] {
  const single = (kind: MarkKind, places: TraceHints['inside'] = []) =>
    places.map(({ x, y }): HandMark => ({ kind, on, places: [[x, y]] }));
  const drawn = (kind: MarkKind, lines: TraceHints['excluded'] = []) =>
    lines.map((line): HandMark => ({ kind, on, places: line.map(({ x, y }) => [x, y] as const) }));
  return [
    ...single('inside', hints.inside),
    ...single('outside', hints.outside),
    ...drawn('inside', hints.insideStrokes),
    ...drawn('outside', hints.outsideStrokes),
    ...single('edge', hints.onEdge),
    ...drawn('excluded', hints.excluded),
  ];
}

/** What a file says of the instrument, as the page asks it; what it leaves out stays as it was said. */
function saidOfAbout({ face, known, body, meant }: HintsAbout, before: Said): Partial<Said> {
  const length = known?.find(({ name }) => name === 'bodyLength');
  const width = known?.find(({ name }) => name === 'lowerBout');
  const rulings = meant?.stretches?.map(rulingOf);
  return {
    ...(face && { face }),
    ...(length && {
      bodyLength: typedAs(length),
      bodyLengthTaken: taken(length, BODY_TAKEN),
    }),
    ...(width && { lowerBout: typedAs(width), lowerBoutTaken: taken(width, WIDTH_TAKEN) }),
    ...(known && { alsoKnown: known.filter((one) => one !== length && one !== width).map(asWords) }),
    ...(body !== undefined && { body }),
    ...(meant?.slow && { follow: meant.slow }),
    ...(meant?.asymmetry && { keepAsymmetry: meant.asymmetry === 'keep' }),
    ...(meant?.cornerEnd?.lower !== undefined && { lowerCorner: String(meant.cornerEnd.lower) }),
    ...(meant?.cornerEnd?.upper !== undefined && { upperCorner: String(meant.cornerEnd.upper) }),
    ...(rulings && {
      rulings: [
        ...before.rulings.filter((one) => !rulings.some((other) => rulingKey(other) === rulingKey(one))),
        ...rulings,
      ],
    }),
  };
}

type Known = NonNullable<PhotographHints['about']['known']>[number];
type Stretch = NonNullable<NonNullable<HintsAbout['meant']>['stretches']>[number];

const BODY_TAKEN = ['straight', 'over-arch'] as const;
const WIDTH_TAKEN = ['edge', 'purfling'] as const;

function typedAs({ value, plusMinus }: Known): string {
  return plusMinus === undefined ? String(value) : `${value}±${plusMinus}`;
}

function asWords(known: Known): string {
  return knownWords({ name: known.name, length: typedAs(known), taken: known.taken ?? '' });
}

/** How a length was taken; the first of its ways where that is not said. */
function taken<Way extends string>({ taken: said }: Known, ways: readonly [Way, ...Way[]]): Way {
  return ways.find((way) => way === said) ?? ways[0];
}

function rulingOf({ side, from, to, take }: Stretch): Ruling {
  return { side, fromMm: from, toMm: to, section: '', take: take === 'asFound' ? 'as-found' : take };
}

function rulingKey({ side, fromMm, toMm }: Ruling): string {
  return `${side} ${fromMm} ${toMm}`;
}
