import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { expose, transfer } from 'comlink';
import { zipSync } from 'fflate';
import {
  accept,
  type Checked,
  check,
  type Design,
  type Drafted,
  type DraftInput,
  type Drawing,
  designText,
  draft,
  type Finding,
  type HandBody,
  type HandHold,
  type HandPicture,
  handBody,
  handLamp,
  handPicture,
  type Instrument,
  type KeptGround,
  keptGround,
  type LampStand,
  type Language,
  type LitPlate,
  litPlate,
  type MakeKind,
  make,
  newestKeeper,
  type Pack,
  type PictureWords,
  type PiecePart,
  parseMakeOptions,
  parsePicture,
  pictureFile,
  piecesOf,
  platePicture,
  readDesign,
  roughThickness,
  type ShownBeside,
  type ShownBody,
  type ShownDrawing,
  type ShownHoles,
  type ShownNumbers,
  type ShownOutline,
  type ShownPages,
  type ShownPlate,
  type ShownSide,
  type ShownThickness,
  showAllNumbers,
  showable,
  showBody,
  showNumbers,
  shownBeside,
  shownDrawing,
  shownHoles,
  shownPlate,
  shownSide,
  shownThickness,
  showOutline,
  showPages,
  showPlateRoughly,
  spokenPieces,
} from '../../core/index.ts';
import { pngOf } from '../../host/browser/index.ts';
import { profileWork } from './profileWork.ts';
import { seeingWork } from './seeingWork.ts';

/** A pack ready to be saved. */
export interface TakenPack {
  readonly zip: Uint8Array;
  readonly files: readonly { readonly path: string; readonly bytes: number }[];
  readonly counts: Pack['counts'];
  readonly findings: readonly Finding[];
}

/** What a maker chose to take along. */
export interface TakeChoices {
  readonly kinds: readonly MakeKind[];
  /** Families of pieces; all of them where nothing is chosen. */
  readonly parts?: readonly PiecePart[];
  readonly paper: string;
  readonly printerBars?: string;
  /** What drawings and print speak. */
  readonly language: Language;
}

/** The instrument last derived: asked for again and again with the same design, by one view after the other. */
let last: { readonly text: string; readonly answer: Checked<Instrument> } | null = null;
/** The last one that could be derived: what the next one stands on is taken from it. */
let sound: Instrument | undefined;

function instrumentOf(design: Design): Checked<Instrument> {
  const text = designText(design);
  if (last?.text !== text) {
    last = { text, answer: showable(design, sound) };
    if (last.answer.ok) sound = last.answer.value;
  }
  return last.answer;
}

const keeper = newestKeeper();

/** What is made of an instrument: once, as long as it is the last one. It may be asked for while the hand still rests on it. */
function keptOf<Made>(
  design: Design,
  what: string,
  make: (instrument: Instrument) => Checked<Made>,
): Checked<Made> {
  const instrument = instrumentOf(design);
  return instrument.ok ? keeper(instrument.value, what, null, () => make(instrument.value)) : instrument;
}

/** Its pieces, drawn when they are first asked for. */
function drawingsOf(design: Design): Checked<readonly Drawing[]> {
  return keptOf(design, 'pieces', piecesOf);
}

interface InHand {
  readonly of: Instrument;
  readonly body: HandBody;
  readonly lit: string;
  readonly lights: { readonly top: LitPlate; readonly back: LitPlate };
}

/** The body that is in the hand, with its light: turning it changes neither. */
let inHand: InHand | null = null;

function heldOf(instrument: Instrument, lamp: LampStand, stepMm: number): InHand {
  const lit = `${lamp.fromRad} ${lamp.heightRad} ${stepMm}`;
  const body = inHand?.of === instrument ? inHand.body : handBody(instrument);
  if (inHand?.of !== instrument || inHand.lit !== lit) {
    const light = (plate: 'top' | 'back') => litPlate(instrument, plate, 'finished', lamp, stepMm);
    inHand = { of: instrument, body, lit, lights: { top: light('top'), back: light('back') } };
  }
  return inHand;
}

/** What the plate stood on that was last looked at. */
let ground: KeptGround | null = null;

/** Everything that is computed for the page: in a worker, by the same rooms as the command line. */
const benchWork = {
  draft: (inputs: readonly DraftInput[]): Checked<Drafted> => draft(inputs),
  read: (json: unknown): ReturnType<typeof readDesign> => readDesign(json),
  text: (design: Design): string => designText(design),
  body: (design: Design): Checked<ShownBody> => showBody(design),
  outline: (design: Design): Checked<ShownOutline> => showOutline(design),
  /** Derives a design from the ground up, with the picture of a plate if so asked, and lets it go: the next one is quicker. */
  rehearse(design: Design, plate?: 'back' | 'top'): void {
    const instrument = showable(design);
    if (instrument.ok && plate) shownPlate(instrument.value, plate, 'finished');
  },
  numbers(design: Design): Checked<ShownNumbers> {
    const instrument = instrumentOf(design);
    return instrument.ok ? accept(showNumbers(instrument.value)) : instrument;
  },
  allNumbers: (design: Design): Checked<ShownNumbers> =>
    keptOf(design, 'all numbers', (instrument) => showAllNumbers(instrument)),
  ...seeingWork,
  ...profileWork,
  check: (design: Design): readonly Finding[] => check(design),
  /** What plates stand on, for a page that reckons what lies under the hand. */
  ground(design: Design): Checked<KeptGround> {
    const laid = keptGround(design, ground);
    if (laid.ok) ground = laid.value;
    return laid;
  },
  roughPlate(design: Design, plate: 'back' | 'top'): Checked<ShownPlate> {
    const rough = showPlateRoughly(design, plate, ground);
    if (!rough.ok) return rough;
    ground = rough.value.kept;
    return accept(rough.value.shown);
  },
  plate: (design: Design, plate: 'back' | 'top'): Checked<ShownPlate> =>
    keptOf(design, plate, (instrument) => accept(shownPlate(instrument, plate, 'finished'))),
  thickness(design: Design, plate: 'back' | 'top', isRough: boolean): Checked<ShownThickness> {
    const show = isRough ? roughThickness : shownThickness;
    return keptOf(design, `${isRough ? 'rough' : 'fine'} thickness, ${plate}`, (instrument) =>
      accept(show(instrument, plate)),
    );
  },
  holes: (design: Design): Checked<ShownHoles> =>
    keptOf(design, 'holes', (instrument) => accept(shownHoles(instrument))),
  side: (design: Design): Checked<ShownSide> =>
    keptOf(design, 'side', (instrument) => accept(shownSide(instrument))),
  light(design: Design, plate: 'back' | 'top', lamp: LampStand, stepMm: number): Checked<LitPlate> {
    const instrument = instrumentOf(design);
    if (!instrument.ok) return instrument;
    const lit = litPlate(instrument.value, plate, 'finished', lamp, stepMm);
    return transfer(accept(lit), [lit.light.buffer, lit.inside.buffer]);
  },
  /** Another design laid over this one; heights are those of one plate. */
  beside(design: Design, other: Design, plate: 'back' | 'top'): Checked<ShownBeside> {
    const second = showable(other);
    if (!second.ok) return second;
    const first = instrumentOf(design);
    return first.ok ? accept(shownBeside(first.value, second.value, plate)) : first;
  },
  /** The body turned in the hand, under the lamp; `stepMm` is how finely its plates are lit. */
  inHand(
    design: Design,
    hold: HandHold,
    lamp: LampStand,
    [width, height]: readonly [number, number],
    stepMm: number,
  ): Checked<HandPicture> {
    const instrument = instrumentOf(design);
    if (!instrument.ok) return instrument;
    const { body, lights } = heldOf(instrument.value, lamp, stepMm);
    const picture = handPicture(body, lights, handLamp(lamp, hold), hold, width, height);
    return transfer(accept(picture), [picture.light.buffer, picture.stuff.buffer]);
  },
  /** A picture of a plate as a file, as the command line draws it; `words` are its options. */
  async picture(
    design: Design,
    words: PictureWords,
    other: Design | null,
  ): Promise<Checked<{ readonly bytes: Uint8Array; readonly says: readonly string[] }>> {
    const request = parsePicture({ ...words, ...(other && { with: other.name }) });
    if (!request.ok) return request;
    const picture = platePicture(design, request.value, other ?? undefined);
    if (!picture.ok) return picture;
    const file = await pictureFile(picture.value, request.value, words.out, {
      pngOf,
      // A worker has no page to lay an SVG out on: the page itself turns it into pixels.
      pngOfSvg: () => Promise.reject(new Error('asked of a page only')),
    });
    if (!file.ok) return file;
    const bytes = Uint8Array.from(file.value.bytes);
    return transfer(accept({ bytes, says: picture.value.says }), [bytes.buffer]);
  },
  /** Every piece, lettered in a language. */
  drawings(design: Design, language: Language): Checked<readonly ShownDrawing[]> {
    const drawings = drawingsOf(design);
    return drawings.ok ? accept(spokenPieces(design, drawings.value, language).map(shownDrawing)) : drawings;
  },
  /** The pages as they will print, the printer's own error taken out. */
  pages(
    design: Design,
    { parts, paper, printerBars, language }: Omit<TakeChoices, 'kinds'>,
  ): Checked<ShownPages> {
    const options = parseMakeOptions({
      paper,
      dxf: 'R2000',
      language,
      ...(parts && { parts: parts.join(',') }),
      ...(printerBars && { printerBars }),
    });
    if (!options.ok) return options;
    const drawings = drawingsOf(design);
    return drawings.ok ? showPages(design, drawings.value, options.value) : drawings;
  },
  async take(
    design: Design,
    { kinds, parts, paper, printerBars, language }: TakeChoices,
  ): Promise<Checked<TakenPack>> {
    const options = parseMakeOptions({
      only: kinds.join(','),
      // Solids are made of no pieces: alone they know no choice among them.
      ...(parts && kinds.some((kind) => kind !== 'solid') && { parts: parts.join(',') }),
      paper,
      dxf: 'R2000',
      language,
      ...(printerBars && { printerBars }),
    });
    if (!options.ok) return options;
    const pack = await make(design, { ...options.value, digest: (bytes) => bytesToHex(sha256(bytes)) });
    if (!pack.ok) return pack;
    const { files, counts, findings } = pack.value;
    const zip = zipSync(
      Object.fromEntries(files.map(({ path, bytes }) => [path, bytes])),
      // The same design gives the same bytes on any day.
      { mtime: new Date(1980, 0, 1) },
    );
    const listed = files.map(({ path, bytes }) => ({ path, bytes: bytes.length }));
    return transfer(accept({ zip, files: listed, counts, findings }), [zip.buffer]);
  },
};

export type BenchWork = typeof benchWork;

expose(benchWork);
