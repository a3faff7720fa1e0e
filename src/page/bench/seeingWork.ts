import { transfer } from 'comlink';
import {
  accept,
  type Checked,
  type DraftInput,
  type Finding,
  type GivenHints,
  givenHints,
  markerFinder,
  newestKeeper,
  type Photograph,
  point,
  readHints,
  refuse,
  type SheetInPhotograph,
  type ShownPlace,
  type ShownTrace,
  type SquareOn,
  type SquareOnPart,
  sheetInPhotograph,
  shownWays,
  showTrace,
  squareOn,
  type Traced,
  type TraceProgress,
  trace,
  traceOutcome,
} from '../../core/index.ts';
import { type PixelSquare, pixelsIn, viewOfPicture } from '../../host/browser/index.ts';
import type { Said } from '../keeping/said.ts';
import {
  fingerprintOf,
  type KeptPicture,
  keepFew,
  keepOnly,
  type PhotographFile,
  pictureOf,
} from './keptPictures.ts';
import { hintsOfSaid, requestOfSaid } from './requestOfSaid.ts';

/** What was found in photographs. */
export interface Seen {
  readonly shown: ShownTrace;
  /** The trace as the document that a design is drafted from. */
  readonly document: unknown;
  readonly findings: readonly Finding[];
  /** Bodies that stand out in the photograph, where there are several: where they lie, in its pixels. */
  readonly bodies: readonly SeenBodyPlace[];
}

export interface SeenBodyPlace {
  readonly number: number;
  readonly face: 'top' | 'back' | null;
  readonly isThis: boolean;
}

/** What was traced last: looked at closer, from another photograph, marked. */
let traced: Traced | null = null;
/** What a mark or a ruling does not touch is worked out once for each photograph. */
const keeper = newestKeeper();
const finder = markerFinder();

/** What is asked of photographs. */
export const seeingWork = {
  fingerprint: (file: PhotographFile): Promise<string> => fingerprintOf(file),

  /** The photograph small enough for a screen, as a file; null where it cannot be read. */
  async view(file: PhotographFile, longSidePx: number): Promise<Blob | null> {
    const read = await pictureOf(file);
    return read.ok ? viewOfPicture(read.value.picture, longSidePx) : null;
  },

  /** A square of a photograph in its own pixels, clear where the photograph ends; null where it cannot be read. */
  async pixels(file: PhotographFile, square: PixelSquare): Promise<Uint8ClampedArray<ArrayBuffer> | null> {
    const read = await pictureOf(file);
    if (!read.ok) return null;
    const rgba = pixelsIn(read.value.picture, square);
    return transfer(rgba, [rgba.buffer]);
  },

  /** What a photograph shows of the printed sheet; null where there is none. */
  async sheetIn(file: PhotographFile): Promise<Checked<SheetInPhotograph | null>> {
    const read = await pictureOf(file);
    if (!read.ok) return read;
    if (traced === null) keepFew();
    return sheetInPhotograph(read.value.picture, finder, keeper);
  },

  async see(
    files: readonly [PhotographFile, ...PhotographFile[]],
    said: Said,
    shot: number,
    progress: TraceProgress,
  ): Promise<Checked<Seen>> {
    const photographs: Photograph[] = [];
    const pictures: KeptPicture[] = [];
    for (const file of files) {
      const read = await pictureOf(file);
      if (!read.ok) return read;
      pictures.push(read.value);
      photographs.push({ name: file.name, picture: read.value.picture, sha256: read.value.sha256 });
    }
    keepOnly(pictures);
    const request = requestOfSaid(said, photographs as [Photograph, ...Photograph[]]);
    if (!request.ok) return request;
    const found = trace(request.value, finder, progress, keeper);
    if (!found.ok) return found;
    traced = found.value;
    const shown = showTrace(traced, Math.min(shot, files.length - 1));
    const { document, findings } = traceOutcome(traced);
    const { bodies, body } = traced.seen.trace;
    const places = bodies.map(({ number, face }) => ({ number, face, isThis: number === body }));
    return transfer(accept({ shown, document, findings, bodies: places }), [shown.picture.rgba.buffer]);
  },

  /** Files of hints for photographs of these names. Faults: those of reading them, each with its file. */
  readHints(files: readonly DraftInput[], names: readonly string[]): Checked<GivenHints> {
    const read = files.map(({ name, json }) => ({ name, hints: readHints(json) }));
    const faults = read.flatMap(({ name, hints }) =>
      hints.ok ? [] : hints.faults.map((fault) => ({ ...fault, at: `${name}, ${fault.at}` })),
    );
    if (faults.length > 0) return refuse(...faults);
    const given = givenHints(
      read.flatMap(({ hints }) => (hints.ok ? [hints.value] : [])),
      names,
    );
    const all = read.map(({ name }) => name).join(', ');
    return given.ok ? given : refuse(...given.faults.map((fault) => ({ ...fault, at: all })));
  },

  hintsText: (said: Said, photograph: string): Checked<string> => hintsOfSaid(said, photograph),

  /** What was traced last, over another of its photographs; null where nothing was. */
  showShot(shot: number): ShownTrace | null {
    if (traced === null) return null;
    const shown = showTrace(traced, shot);
    return transfer(shown, [shown.picture.rgba.buffer]);
  },

  /** A part of a photograph square on, as sharp as it is; null where nothing was traced. */
  closeUp(shot: number, part: SquareOnPart): SquareOn | null {
    if (traced === null) return null;
    const picture = squareOn(shownWays(traced, shot), part);
    return transfer(picture, [picture.rgba.buffer]);
  },

  /** Lists of places in pixels of a photograph, over what is shown; null where nothing was traced. */
  onShown(
    shot: number,
    lists: readonly (readonly (readonly [number, number])[])[],
  ): readonly (readonly ShownPlace[])[] | null {
    if (traced === null) return null;
    const { fromPhoto } = shownWays(traced, shot);
    return lists.map((places) => places.map(([x, y]) => fromPhoto(point(x, y))));
  },

  /** Places that were marked over what is shown, in pixels of the photograph. */
  inPhotograph(shot: number, places: readonly ShownPlace[]): readonly (readonly [number, number])[] | null {
    if (traced === null) return null;
    const { toPhoto } = shownWays(traced, shot);
    return places.map((place) => {
      const { x, y } = toPhoto(place);
      return [x, y] as const;
    });
  },
};
