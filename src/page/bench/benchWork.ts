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
  designText,
  draft,
  type Finding,
  type Instrument,
  type KeptGround,
  type KnownLength,
  type LampStand,
  type LitPlate,
  litPlate,
  type MakeKind,
  make,
  markerFinder,
  parseKnownLength,
  parseMakeOptions,
  parseMeant,
  parseSheetBar,
  readDesign,
  refuse,
  type ShownBody,
  type ShownDrawing,
  type ShownHoles,
  type ShownInstrument,
  type ShownPlate,
  type ShownSide,
  type ShownThickness,
  type ShownTrace,
  showable,
  showBody,
  showDrawings,
  showInstrument,
  shownHoles,
  shownPlate,
  shownSide,
  shownThickness,
  showPlateRoughly,
  showTrace,
  type TraceProgress,
  trace,
  traceOutcome,
} from '../../core/index.ts';
import { decodePictureHere } from '../../host/browser/index.ts';

/** A pack ready to be saved. */
export interface TakenPack {
  readonly zip: Uint8Array;
  readonly files: readonly { readonly path: string; readonly bytes: number }[];
  readonly summary: readonly string[];
  readonly findings: readonly Finding[];
}

/** What a maker chose to take along. */
export interface TakeChoices {
  readonly kinds: readonly MakeKind[];
  readonly paper: string;
  readonly printerBars?: string;
}

/** What a maker says of a photograph, as typed; empty where nothing is known. */
export interface SeeingWords {
  readonly face: 'top' | 'back';
  readonly sheetBar: string;
  readonly edgeHeight: string;
  readonly bodyLength: string;
  readonly lowerBout: string;
  /** Stretches that the maker rules over: `bass 120-150 as-found`. */
  readonly stretches: readonly string[];
}

/** What was found in a photograph. */
export interface Seen {
  readonly shown: ShownTrace;
  /** The trace as the document that a design is drafted from. */
  readonly document: unknown;
  readonly findings: readonly Finding[];
}

/** The instrument last derived: asked for again and again with the same design, by one view after the other. */
let last: { readonly text: string; readonly answer: Checked<Instrument> } | null = null;

function instrumentOf(design: Design): Checked<Instrument> {
  const text = designText(design);
  if (last?.text !== text) last = { text, answer: showable(design) };
  return last.answer;
}

/** What the plate stood on that a hand last dragged at. */
let ground: KeptGround | null = null;

/** Everything that is computed for the page: in a worker, by the same rooms as the command line. */
const benchWork = {
  draft: (inputs: readonly DraftInput[]): Checked<Drafted> => draft(inputs),
  read: (json: unknown): ReturnType<typeof readDesign> => readDesign(json),
  text: (design: Design): string => designText(design),
  body: (design: Design): Checked<ShownBody> => showBody(design),
  whole(design: Design): Checked<ShownInstrument> {
    const made = showInstrument(design);
    return made.ok ? accept(made.value.shown) : made;
  },
  async see(
    bytes: Uint8Array,
    name: string,
    said: SeeingWords,
    progress: TraceProgress,
  ): Promise<Checked<Seen>> {
    const known = (['bodyLength', 'lowerBout'] as const)
      .filter((value) => said[value].trim() !== '')
      .map((value) => parseKnownLength(`${value}=${said[value]}`));
    const bars = parseSheetBar(given(said.sheetBar), given(said.edgeHeight));
    const meant = parseMeant({ stretches: said.stretches });
    if (!bars.ok || !meant.ok || known.some((one) => !one.ok))
      return refuse(...[bars, meant, ...known].flatMap((one) => (one.ok ? [] : one.faults)));
    const picture = await decodePictureHere(bytes, name);
    if (!picture.ok) return picture;
    const traced = trace(
      {
        photographs: [{ name, picture: picture.value, sha256: bytesToHex(sha256(bytes)) }],
        face: said.face,
        known: known.flatMap((one): KnownLength[] => (one.ok ? [one.value] : [])),
        ...bars.value,
        ...(meant.value && { meant: meant.value }),
      },
      markerFinder(),
      progress,
    );
    if (!traced.ok) return traced;
    const shown = showTrace(traced.value);
    const { document, findings } = traceOutcome(traced.value);
    return transfer(accept({ shown, document, findings }), [shown.picture.rgba.buffer]);
  },
  check: (design: Design): readonly Finding[] => check(design),
  roughPlate(design: Design, plate: 'back' | 'top'): Checked<ShownPlate> {
    const rough = showPlateRoughly(design, plate, ground);
    if (!rough.ok) return rough;
    ground = rough.value.kept;
    return accept(rough.value.shown);
  },
  plate(design: Design, plate: 'back' | 'top'): Checked<ShownPlate> {
    const instrument = instrumentOf(design);
    return instrument.ok ? accept(shownPlate(instrument.value, plate, 'finished')) : instrument;
  },
  thickness(design: Design, plate: 'back' | 'top'): Checked<ShownThickness> {
    const instrument = instrumentOf(design);
    return instrument.ok ? accept(shownThickness(instrument.value, plate)) : instrument;
  },
  holes(design: Design): Checked<ShownHoles> {
    const instrument = instrumentOf(design);
    return instrument.ok ? accept(shownHoles(instrument.value)) : instrument;
  },
  side(design: Design): Checked<ShownSide> {
    const instrument = instrumentOf(design);
    return instrument.ok ? accept(shownSide(instrument.value)) : instrument;
  },
  light(design: Design, plate: 'back' | 'top', lamp: LampStand, stepMm: number): Checked<LitPlate> {
    const instrument = instrumentOf(design);
    if (!instrument.ok) return instrument;
    const lit = litPlate(instrument.value, plate, 'finished', lamp, stepMm);
    return transfer(accept(lit), [lit.light.buffer, lit.inside.buffer]);
  },
  drawings(design: Design): Checked<readonly ShownDrawing[]> {
    const instrument = instrumentOf(design);
    return instrument.ok ? showDrawings(instrument.value) : instrument;
  },
  async take(design: Design, { kinds, paper, printerBars }: TakeChoices): Promise<Checked<TakenPack>> {
    const options = parseMakeOptions({
      only: kinds.join(','),
      paper,
      dxf: 'R2000',
      ...(printerBars && { printerBars }),
    });
    if (!options.ok) return options;
    const pack = await make(design, { ...options.value, digest: (bytes) => bytesToHex(sha256(bytes)) });
    if (!pack.ok) return pack;
    const { files, summary, findings } = pack.value;
    const zip = zipSync(
      Object.fromEntries(files.map(({ path, bytes }) => [path, bytes])),
      // The same design gives the same bytes on any day.
      { mtime: new Date(1980, 0, 1) },
    );
    const listed = files.map(({ path, bytes }) => ({ path, bytes: bytes.length }));
    return transfer(accept({ zip, files: listed, summary, findings }), [zip.buffer]);
  },
};

function given(text: string): string | undefined {
  return text.trim() === '' ? undefined : text;
}

export type BenchWork = typeof benchWork;

expose(benchWork);
