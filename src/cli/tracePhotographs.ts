import { basename } from 'node:path';
import {
  accept,
  type Checked,
  type Finding,
  givenHints,
  type KnownLength,
  markerFinder,
  type Photograph,
  type PhotographHints,
  parseKnownLength,
  parseMeant,
  parseScan,
  parseSheetBar,
  readHints,
  recordedRequest,
  refuse,
  requestOf,
  type TraceOutcome,
  type TraceRequest,
  trace,
  traceOutcome,
  wishesOfHints,
} from '../core/index.ts';
import { readJson, readPhotograph } from '../host/index.ts';
import { oneOf } from './oneOf.ts';
import { progress, stageProgress } from './report.ts';

/** The words of a command that say how photographs are to be traced. */
export interface TraceWords {
  readonly edgeHeight?: string;
  readonly sheetBar?: string;
  readonly scan?: string;
  readonly scanBar?: string;
  readonly known: readonly string[];
  readonly hints: readonly string[];
  readonly face: string;
  readonly body?: string;
  readonly follow?: string;
  readonly keepAsymmetry?: boolean;
  readonly cornerEnd?: string;
  readonly stretch: readonly string[];
  readonly as?: string;
}

/** The photographs that the words of a command name, traced. */
export async function traceFiles(
  paths: readonly string[],
  words: TraceWords,
): Promise<Checked<TraceOutcome>> {
  const wishes = wishesOf(words);
  if (!wishes.ok) return wishes;
  const record = words.as === undefined ? accept(null) : recordIn(words.as);
  if (!record.ok) return record;
  const brought = await photographsOf(paths, words.hints);
  if (!brought.ok) return brought;
  const { photographs } = brought.value;
  const repeated = record.value && requestOf(record.value, photographs);
  const request: TraceRequest = {
    ...(repeated ? repeated.request : { ...wishes.value, photographs }),
    ...brought.value.wishes,
    ...given(wishes.value, words),
  };
  const traced = trace(request, markerFinder(), stageProgress());
  if (!traced.ok) return traced;
  const outcome = traceOutcome(traced.value);
  const said: readonly Finding[] = repeated ? repeated.findings : [];
  return accept({ ...outcome, findings: [...said, ...outcome.findings] });
}

type Wishes = Omit<TraceRequest, 'photographs'>;

const FACES = ['top', 'back'] as const;

function wishesOf(words: TraceWords): Checked<Wishes> {
  const known = words.known.map(parseKnownLength);
  const bars = parseSheetBar(words.sheetBar, words.edgeHeight);
  const scan = parseScan(words.scan, words.scanBar);
  const face = oneOf('--face', words.face, FACES);
  const body = words.body === undefined ? accept(null) : numberOf(words.body);
  const meant = parseMeant({
    ...(words.follow !== undefined && { follow: words.follow }),
    ...(words.keepAsymmetry && { keepAsymmetry: true }),
    ...(words.cornerEnd !== undefined && { cornerEnd: words.cornerEnd }),
    stretches: words.stretch,
  });
  if (!bars.ok || !scan.ok || !face.ok || !body.ok || !meant.ok || known.some((one) => !one.ok))
    return refuse(...[...known, bars, scan, face, body, meant].flatMap((one) => (one.ok ? [] : one.faults)));
  return accept({
    face: face.value,
    known: known.flatMap((one): KnownLength[] => (one.ok ? [one.value] : [])),
    ...bars.value,
    ...(scan.value && { scan: scan.value }),
    ...(body.value !== null && { body: body.value }),
    ...(meant.value && { meant: meant.value }),
  });
}

/** What was said now goes before what was recorded or stands in hints; the face and the known lengths only where they were said. */
function given({ face, known, ...rest }: Wishes, words: TraceWords): Partial<Wishes> {
  return {
    ...rest,
    ...(words.face !== DEFAULT_FACE && { face }),
    ...(words.known.length > 0 && { known }),
  };
}

export const DEFAULT_FACE = 'top';

function numberOf(text: string): Checked<number> {
  const number = Number(text);
  if (Number.isInteger(number) && number > 0) return accept(number);
  return refuse({
    code: 'option.unknown',
    at: '--body',
    found: `"${text}"`,
    need: 'a whole number, 1 or more, as the trace numbers the bodies in the picture',
    remedy: 'trace without it first: the bodies are listed with their numbers',
  });
}

function recordIn(path: string): ReturnType<typeof recordedRequest> {
  const json = readJson(path, 'a trace or design file');
  return json.ok ? named(path, recordedRequest(json.value)) : json;
}

/** Photographs with the places marked on them, and what their hints say of the instrument. */
interface Brought {
  readonly photographs: readonly [Photograph, ...Photograph[]];
  readonly wishes: Partial<Wishes>;
}

async function photographsOf(
  paths: readonly string[],
  hintFiles: readonly string[],
): Promise<Checked<Brought>> {
  const hints = hintFiles.map(hintsIn);
  const faults = hints.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return refuse(...faults);
  const names = paths.map((path) => basename(path));
  const given = givenHints(
    hints.flatMap((one) => (one.ok ? [one.value] : [])),
    names,
  );
  if (!given.ok) return given;
  const read: Photograph[] = [];
  for (const [place, path] of paths.entries()) {
    progress(`Reading ${path} …`);
    const photograph = await readPhotograph(path);
    if (!photograph.ok) return photograph;
    const name = names[place] as string;
    const own = given.value.places.get(name);
    read.push({ name, ...photograph.value, ...(own && { hints: own }) });
  }
  return accept({
    photographs: read as [Photograph, ...Photograph[]],
    wishes: wishesOfHints(given.value.about),
  });
}

function hintsIn(path: string): Checked<PhotographHints> {
  const json = readJson(path, 'a file of hints, such as the page gives');
  return json.ok ? named(path, readHints(json.value)) : json;
}

/** What was read of a file; faults name the file before the place in it. */
function named<T>(path: string, read: Checked<T>): Checked<T> {
  return read.ok ? read : refuse(...read.faults.map((fault) => ({ ...fault, at: `${path}, ${fault.at}` })));
}
