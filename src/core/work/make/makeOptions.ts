import { accept, type Checked, refuse } from '../../base/index.ts';
import {
  isPaperName,
  PAPERS,
  type PaperName,
  PIECE_PARTS,
  type PiecePart,
  type PrinterMeasure,
} from '../../drawing/index.ts';
import type { DxfRelease } from '../../files/index.ts';
import { parseLength } from '../../quantity/index.ts';
import { LANGUAGES, type Language } from '../../words/index.ts';
import { namedOption } from '../namedOption.ts';
import { type GaugeChoices, parseGaugeChoices } from './gaugeChoices.ts';

/** What kinds of files a pack can hold so far. */
export type MakeKind = 'print' | 'laser' | 'solid';

export interface MakeOptions {
  readonly kinds: readonly MakeKind[];
  /** Only pieces of these families; all of them where nothing is said. Solids are made of no pieces. */
  readonly parts?: readonly PiecePart[];
  readonly paper: PaperName;
  readonly printer?: PrinterMeasure;
  readonly dxf: DxfRelease;
  /** What is drawn and printed speaks it; English where nothing is said. */
  readonly language?: Language;
  /** As in every pack unless chosen otherwise. */
  readonly gauges?: GaugeChoices;
  /** SHA-256 of bytes, in hexadecimal. */
  readonly digest: (bytes: Uint8Array) => string;
}

const KINDS: readonly MakeKind[] = ['print', 'laser', 'solid'];
/** Solids take a while and large files: only for those who ask. */
const USUAL_KINDS: readonly MakeKind[] = ['print', 'laser'];
const RELEASES: readonly DxfRelease[] = ['R2000', 'R12'];
const PAPER_NAMES: readonly PaperName[] = Object.keys(PAPERS).filter(isPaperName);

const MADE_PARTS: readonly PiecePart[] = PIECE_PARTS.filter((part) => part !== 'sheet');

/** Options as typed. Faults, all at once: `make.kind`, `make.parts`, `make.paper`, `make.dxf`, `make.language`, `make.bars`, `make.gauge-…`. */
export function parseMakeOptions(words: {
  readonly only?: string;
  readonly parts?: string;
  readonly paper: string;
  readonly printerBars?: string;
  readonly dxf: string;
  readonly language?: string;
  readonly gaugeAt?: string;
  readonly gaugeFeet?: string;
  readonly gaugeEdge?: string;
}): Checked<Omit<MakeOptions, 'digest'>> {
  const only = words.only === undefined ? USUAL_KINDS : words.only.split(',').map((kind) => kind.trim());
  const kinds = only.map((kind) => namedOption('make.kind', '--only', kind, KINDS));
  const parts = words.parts === undefined ? accept(undefined) : partsOf(words.parts, only);
  const paper = namedOption('make.paper', '--paper', words.paper, PAPER_NAMES);
  const dxf = namedOption('make.dxf', '--dxf', words.dxf, RELEASES);
  const language = namedOption('make.language', '--language', words.language ?? 'en', LANGUAGES);
  const printer = words.printerBars === undefined ? accept(undefined) : printerBars(words.printerBars);
  const gauges = parseGaugeChoices(words);
  if (
    !parts.ok ||
    !paper.ok ||
    !dxf.ok ||
    !language.ok ||
    !printer.ok ||
    !gauges.ok ||
    kinds.some((kind) => !kind.ok)
  )
    return refuse(
      ...[...kinds, parts, paper, dxf, language, printer, gauges].flatMap((one) =>
        one.ok ? [] : one.faults,
      ),
    );
  return accept({
    kinds: KINDS.filter((kind) => kinds.some((one) => one.ok && one.value === kind)),
    ...(parts.value && { parts: parts.value }),
    paper: paper.value,
    dxf: dxf.value,
    language: language.value,
    ...(printer.value && { printer: printer.value }),
    gauges: gauges.value,
  });
}

function printerBars(text: string): Checked<PrinterMeasure> {
  const parts = text.split(/[;x]|,\s*(?=\d{3})/);
  const [across, up] = parts.map((part) => parseLength(part));
  if (parts.length !== 2 || !across?.ok || !up?.ok)
    return refuse({
      code: 'make.bars',
      at: '--printer-bars',
      found: `"${text}"`,
      need: 'two lengths with a comma, such as 149.6,150.1',
      remedy: 'measure both 150 mm bars of a printed page: across, then up',
    });
  return accept({ xMeasuredMm: across.value.mm, yMeasuredMm: up.value.mm });
}

/** Families by name, in the order in which they are made. */
function partsOf(text: string, only: readonly string[]): Checked<readonly PiecePart[]> {
  const named = text.split(',').map((part) => namedOption('make.parts', '--parts', part.trim(), MADE_PARTS));
  const faults = named.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return refuse(...faults);
  if (only.every((kind) => kind === 'solid'))
    return refuse({
      code: 'make.parts',
      at: '--parts',
      found: 'families of pieces where only solids are made',
      need: 'print or laser among the kinds that are made',
      remedy: 'leave --parts out, or ask for print or laser too',
    });
  return accept(MADE_PARTS.filter((part) => named.some((one) => one.ok && one.value === part)));
}
