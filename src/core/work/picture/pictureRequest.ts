import { accept, type Checked, type Fault, type Point, point, refuse } from '../../base/index.ts';
import { isPaperName, PAPERS, type PaperName } from '../../drawing/index.ts';
import type { EdgeState, Plate } from '../../instrument/index.ts';
import { parseLength } from '../../quantity/index.ts';
import { LANGUAGES, type Language } from '../../words/index.ts';
import { namedOption } from '../namedOption.ts';

/** What a picture can show of a plate. */
export const PICTURE_KINDS = [
  'contours',
  'raking-light',
  'curvature',
  'thickness',
  'difference',
  'section',
] as const;
export type PictureKind = (typeof PICTURE_KINDS)[number];

export interface PictureRequest {
  readonly kind: PictureKind;
  readonly plate: Plate;
  readonly state: EdgeState;
  readonly intervalMm: number;
  readonly lamp: { readonly heightRad: number; readonly fromRad: number };
  /** For a section only. */
  readonly line?: readonly [Point<'body'>, Point<'body'>];
  /** For pictures that print as pages. */
  readonly paper: PaperName;
  readonly pixelsPerMm: number;
  /** What stands on it. */
  readonly language: Language;
}

/** Options as typed. */
export interface PictureWords {
  readonly of: string;
  readonly plate: string;
  readonly state: string;
  readonly interval?: string;
  readonly lamp?: string;
  readonly line?: string;
  readonly with?: string;
  readonly paper?: string;
  readonly pixels?: string;
  readonly out: string;
  readonly language?: string;
}

const PAPER_NAMES: readonly PaperName[] = Object.keys(PAPERS).filter(isPaperName);

/** mm between contours, and the lamp, where nothing is said. */
const USUAL_INTERVAL = '1';
const USUAL_LAMP = '15,60';
/** mm. Closer contours than these merge on paper; with wider ones a plate has none. */
const INTERVAL = { least: 0.1, most: 5 } as const;
/** Degrees above the plate: lower ones reach nothing but crests, and from straight above there is no raking light. */
const LAMP_HEIGHT = { least: 1, most: 80 } as const;
const PIXELS = { least: 1, most: 12, usual: 3 } as const;
const WHOLE_TURN = 360;

/**
 * A picture as asked for in words. Faults, all at once: `option.unknown` for a name that is none, `option.misplaced` for one that
 * says nothing of this picture, `picture.interval`, `picture.lamp`, `picture.line`, `picture.pixels`, `picture.with`, `picture.file`.
 */
export function parsePicture(words: PictureWords): Checked<PictureRequest> {
  const kind = namedOption('option.unknown', '--of', words.of, PICTURE_KINDS);
  const plate = namedOption('option.unknown', '--plate', words.plate, ['back', 'top'] as const);
  const state = namedOption('option.unknown', '--state', words.state, ['finished', 'arched'] as const);
  const paper = namedOption('option.unknown', '--paper', words.paper ?? 'A4', PAPER_NAMES);
  const interval = intervalOf(words.interval ?? USUAL_INTERVAL);
  const lamp = lampOf(words.lamp ?? USUAL_LAMP);
  const line = words.line === undefined ? accept(undefined) : lineOf(words.line);
  const pixels = pixelsOf(words.pixels);
  const language = namedOption('option.unknown', '--language', words.language ?? 'en', LANGUAGES);
  const early = kind.ok ? misplaced(kind.value, words) : [];
  const faults = [kind, plate, state, paper, interval, lamp, line, pixels, language].flatMap((one) =>
    one.ok ? [] : one.faults,
  );
  faults.push(...early, ...pictureNameFaults(words.out));
  if (
    faults.length > 0 ||
    !(
      kind.ok &&
      plate.ok &&
      state.ok &&
      paper.ok &&
      interval.ok &&
      lamp.ok &&
      line.ok &&
      pixels.ok &&
      language.ok
    )
  )
    return refuse(...faults);
  return accept({
    kind: kind.value,
    plate: plate.value,
    state: state.value,
    paper: paper.value,
    intervalMm: interval.value,
    lamp: lamp.value,
    ...(line.value && { line: line.value }),
    pixelsPerMm: pixels.value,
    language: language.value,
  });
}

/** What is said that this picture does not ask for, and what it asks for that is not said. */
function misplaced(kind: PictureKind, words: PictureWords): Fault[] {
  const belongs: readonly (readonly [keyof PictureWords, readonly PictureKind[]])[] = [
    ['interval', ['contours']],
    ['lamp', ['raking-light']],
    ['line', ['section']],
    ['with', ['difference']],
  ];
  const odd = belongs
    .filter(([name, kinds]) => words[name] !== undefined && !kinds.includes(kind))
    .map(([name, kinds]) => ({
      code: 'option.misplaced',
      at: `--${name}`,
      found: `a word that says nothing of ${kind}`,
      need: `--of ${kinds.join(' or ')}`,
      remedy: 'leave it out, or ask for that picture',
    }));
  if (kind === 'section' && words.line === undefined)
    odd.push(missing('line', 'the line to cut along', '--line "0,60 0,300"'));
  if (kind === 'difference' && words.with === undefined)
    odd.push(missing('with', 'the design to compare with', '--with other.garland.json'));
  return odd;
}

function missing(name: string, what: string, example: string): Fault {
  return {
    code: 'option.misplaced',
    at: `--${name}`,
    found: `nothing that says ${what}`,
    need: `it, such as ${example}`,
    remedy: 'add it',
  };
}

/** Endings that a picture can be written with. */
const ENDING = /\.(svg|png|pdf)$/i;

export function pictureNameFaults(path: string): readonly Fault[] {
  if (ENDING.test(path)) return [];
  return [
    {
      code: 'map.name',
      at: '--out',
      found: `"${path}"`,
      need: 'a file name that ends in .svg, .png or .pdf',
      remedy: 'name it so',
    },
  ];
}

function intervalOf(text: string): Checked<number> {
  const read = parseLength(text);
  if (read.ok && read.value.mm >= INTERVAL.least && read.value.mm <= INTERVAL.most)
    return accept(read.value.mm);
  return refuse({
    code: 'picture.interval',
    at: '--interval',
    found: `"${text}"`,
    need: `a length from ${INTERVAL.least} to ${INTERVAL.most} mm between two contours`,
    remedy: 'give one, such as 1 or 0.5',
  });
}

function lampOf(text: string): Checked<PictureRequest['lamp']> {
  const [height, from, ...more] = text.split(',').map(degrees);
  if (
    height === undefined ||
    from === undefined ||
    more.length > 0 ||
    !(height >= LAMP_HEIGHT.least && height <= LAMP_HEIGHT.most) ||
    !(Math.abs(from) <= WHOLE_TURN)
  )
    return refuse({
      code: 'picture.lamp',
      at: '--lamp',
      found: `"${text}"`,
      need: `how many degrees the lamp stands above the plate (${LAMP_HEIGHT.least} to ${LAMP_HEIGHT.most}), and how many clockwise from the neck end it comes`,
      remedy: 'give both with a comma, such as 15,60',
    });
  return accept({ heightRad: (height * Math.PI) / 180, fromRad: (from * Math.PI) / 180 });
}

/** Degrees as typed; NaN, which no bound holds, for anything else. */
function degrees(text: string): number {
  return /^\s*-?\d+(\.\d+)?\s*°?\s*$/.test(text) ? Number.parseFloat(text) : Number.NaN;
}

function lineOf(text: string): Checked<readonly [Point<'body'>, Point<'body'>]> {
  const places = text
    .trim()
    .split(/\s+/)
    .map((place) => /^(-?\d+(?:\.\d+)?),(-?\d+(?:\.\d+)?)$/.exec(place))
    .map((match) => match && point<'body'>(Number(match[1]), Number(match[2])));
  const [from, to] = places;
  if (places.length !== 2 || !from || !to || (from.x === to.x && from.y === to.y))
    return refuse({
      code: 'picture.line',
      at: '--line',
      found: `"${text}"`,
      need: 'two places in mm, each x from the centre line (treble positive) and y from the lower end, such as "0,60 0,300"',
      remedy: 'write both with a space between them',
    });
  return accept([from, to]);
}

function pixelsOf(text: string | undefined): Checked<number> {
  const value = text === undefined ? PIXELS.usual : /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (value >= PIXELS.least && value <= PIXELS.most) return accept(value);
  return refuse({
    code: 'picture.pixels',
    at: '--pixels',
    found: `"${text}"`,
    need: `${PIXELS.least} to ${PIXELS.most} pixels a millimetre`,
    remedy: `give a number, or leave it out for ${PIXELS.usual}`,
  });
}
