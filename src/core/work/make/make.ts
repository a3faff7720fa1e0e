import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import type { Design } from '../../design/index.ts';
import { type Drawing, pieceSizeMm } from '../../drawing/index.ts';
import { type PackFile, packManifest, preflight, writeDxf, writePdf, writeSvg } from '../../files/index.ts';
import { deriveInstrument, type Instrument, weighed } from '../../instrument/index.ts';
import { instrumentText } from '../derive.ts';
import { designText } from '../draft.ts';
import { drawInstrument } from './drawInstrument.ts';
import type { MakeOptions } from './makeOptions.ts';
import { packSummary } from './packSummary.ts';
import { chosen, printedPieces, printPages } from './printPages.ts';
import { solidParts } from './solidParts.ts';
import { spokenPieces } from './spokenPieces.ts';

/** A pack ready to be written: files with their bytes, the manifest last. */
export interface Pack {
  readonly files: readonly { readonly path: string; readonly bytes: Uint8Array }[];
  readonly manifestText: string;
  /** What was made and its key lengths, for a person. */
  readonly summary: readonly string[];
  /** How many pieces were drawn, contours to be cut found closed, and pages laid out. */
  readonly counts: { readonly pieces: number; readonly contours: number; readonly pages: number };
  readonly findings: readonly Finding[];
}

/**
 * Everything that a design lets a maker cut and print: true-size pages, SVG and DXF for a laser, and the documents they
 * came from. `more` are further files to go along, such as the trace. The same design and options give the same
 * bytes. Faults: those of deriving, drawing and writing.
 */
export async function make(
  design: Design,
  options: MakeOptions,
  more: readonly PackFile[] = [],
): Promise<Checked<Pack>> {
  const derived = deriveInstrument(design);
  const instrument = derived.ok ? weighed(derived.value) : derived;
  if (!instrument.ok) return instrument;
  const isDrawn = options.kinds.some((kind) => kind !== 'solid');
  const all = isDrawn ? drawInstrument(instrument.value, options.gauges) : accept([]);
  if (!all.ok) return all;
  // What is looked over is what leaves: lettering is longer in some languages.
  const drawings = spokenPieces(design, chosen(all.value, options), options.language);
  const flaws = drawings.flatMap(preflight);
  const print = options.kinds.includes('print') ? await printed(drawings, design, options) : accept(NONE);
  const laser = options.kinds.includes('laser') ? cut(drawings, options) : accept(NONE);
  const solid = options.kinds.includes('solid')
    ? solidParts(instrument.value, options.language)
    : accept(NONE);
  if (!print.ok || !laser.ok || !solid.ok)
    return refuse(...[print, laser, solid].flatMap((part) => (part.ok ? [] : part.faults)));
  const parts = [
    ...print.value.parts,
    ...laser.value.parts,
    ...solid.value.parts,
    ...documents(instrument.value),
    ...more,
  ];
  const named = { name: design.name, sha256: options.digest(bytesOf(designText(design))) };
  const manifest = packManifest(named, parts, options.digest, options.language);
  if (!manifest.ok) return manifest;
  return accept({
    files: [
      ...parts.map(({ path, bytes }) => ({ path, bytes })),
      { path: 'manifest.json', bytes: bytesOf(manifest.value) },
    ],
    manifestText: manifest.value,
    summary: packSummary(instrument.value, drawings, parts.length, options.language),
    counts: {
      pieces: drawings.length,
      contours: drawings.reduce((sum, drawing) => sum + closedContours(drawing), 0),
      pages: print.value.pages,
    },
    findings: [
      ...instrument.value.findings,
      ...flaws,
      ...[print, laser, solid].flatMap((made) => made.value.findings),
    ],
  });
}

interface MadeParts {
  readonly parts: readonly PackFile[];
  readonly findings: readonly Finding[];
  readonly pages: number;
}

const NONE: MadeParts = { parts: [], findings: [], pages: 0 };

function closedContours({ lines }: Drawing): number {
  return lines.filter(({ meaning, chain }) => meaning.startsWith('cut') && chain.closed).length;
}

async function printed(
  drawings: readonly Drawing[],
  design: Design,
  options: MakeOptions,
): Promise<Checked<MadeParts>> {
  const pieces = printedPieces(drawings);
  const pages = printPages(pieces, design, options);
  if (!pages.ok) return pages;
  const first = pages.value.pages[0];
  return accept({
    parts: [
      {
        path: `print/templates-${options.paper.toLowerCase()}.pdf`,
        kind: 'print',
        parts: pieces.map(({ name }) => name),
        bytes: await writePdf(pages.value),
        ...(first && { sizeMm: [first.widthMm, first.heightMm] as const }),
      },
    ],
    findings: pages.value.findings,
    pages: pages.value.pages.length,
  });
}

function cut(drawings: readonly Drawing[], { dxf }: MakeOptions): Checked<MadeParts> {
  const faults: Fault[] = [];
  const parts = drawings
    .filter((drawing) => drawing.routes.includes('laser'))
    .flatMap((drawing): PackFile[] => {
      const svg = writeSvg(drawing);
      const drawn = writeDxf(drawing, dxf);
      if (!svg.ok || !drawn.ok) {
        faults.push(...[svg, drawn].flatMap((file) => (file.ok ? [] : file.faults)));
        return [];
      }
      const { widthMm, heightMm } = pieceSizeMm(drawing);
      const shared = { kind: 'laser', parts: [drawing.name], sizeMm: [widthMm, heightMm] } as const;
      return [
        { ...shared, path: `laser/${drawing.name}.svg`, bytes: bytesOf(svg.value) },
        { ...shared, path: `laser/${drawing.name}.dxf`, bytes: bytesOf(drawn.value) },
      ];
    });
  return faults.length > 0 ? refuse(...faults) : accept({ parts, findings: [], pages: 0 });
}

function documents(instrument: Instrument): readonly PackFile[] {
  return [
    { path: 'design.garland.json', kind: 'data', parts: [], bytes: bytesOf(designText(instrument.design)) },
    {
      path: 'instrument.json',
      kind: 'data',
      parts: [],
      bytes: bytesOf(instrumentText(instrument)),
    },
  ];
}

function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
