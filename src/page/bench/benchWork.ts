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
  type LampStand,
  type LitPlate,
  litPlate,
  type MakeKind,
  make,
  parseMakeOptions,
  readDesign,
  type ShownBody,
  type ShownDrawing,
  type ShownInstrument,
  type ShownPlate,
  showBody,
  showDrawings,
  showInstrument,
  shownPlate,
} from '../../core/index.ts';

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

/** The instrument last derived: asked for again and again with the same design, by one view after the other. */
let last: { readonly text: string; readonly instrument: Instrument } | null = null;

function instrumentOf(design: Design): Checked<Instrument> {
  const text = designText(design);
  if (last?.text === text) return accept(last.instrument);
  const made = showInstrument(design);
  if (!made.ok) return made;
  last = { text, instrument: made.value.instrument };
  return accept(made.value.instrument);
}

/** Everything that is computed for the page: in a worker, by the same rooms as the command line. */
const benchWork = {
  draft: (inputs: readonly DraftInput[]): Checked<Drafted> => draft(inputs),
  read: (json: unknown): ReturnType<typeof readDesign> => readDesign(json),
  text: (design: Design): string => designText(design),
  body: (design: Design): Checked<ShownBody> => showBody(design),
  whole(design: Design): Checked<ShownInstrument> {
    const made = showInstrument(design);
    if (!made.ok) return made;
    last = { text: designText(design), instrument: made.value.instrument };
    return accept(made.value.shown);
  },
  check: (design: Design): readonly Finding[] => check(design),
  plate(design: Design, plate: 'back' | 'top'): Checked<ShownPlate> {
    const instrument = instrumentOf(design);
    return instrument.ok ? accept(shownPlate(instrument.value, plate, 'finished')) : instrument;
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

export type BenchWork = typeof benchWork;

expose(benchWork);
