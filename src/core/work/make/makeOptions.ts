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
import { namedOption } from '../namedOption.ts';
import { type GaugeChoices, parseGaugeChoices } from './gaugeChoices.ts';

/** What kinds of files a pack can hold so far. */
export type MakeKind = 'print' | 'laser' | 'solid';

export interface MakeOptions {
  readonly kinds: readonly MakeKind[];
  /** Only pieces of these families; all of them where nothing is said. Solids do not heed it. */
  readonly parts?: readonly PiecePart[];
  readonly paper: PaperName;
  readonly printer?: PrinterMeasure;
  readonly dxf: DxfRelease;
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

/** Options as typed. Faults, all at once: `make.kind`, `make.parts`, `make.paper`, `make.dxf`, `make.bars`, `make.gauge-…`. */
export function parseMakeOptions(words: {
  readonly only?: string;
  readonly parts?: string;
  readonly paper: string;
  readonly printerBars?: string;
  readonly dxf: string;
  readonly gaugeAt?: string;
  readonly gaugeFeet?: string;
  readonly gaugeEdge?: string;
}): Checked<Omit<MakeOptions, 'digest'>> {
  const only = words.only === undefined ? USUAL_KINDS : words.only.split(',').map((kind) => kind.trim());
  const kinds = only.map((kind) => namedOption('make.kind', '--only', kind, KINDS));
  const parts = words.parts
    ?.split(',')
    .map((part) => namedOption('make.parts', '--parts', part.trim(), MADE_PARTS));
  const paper = namedOption('make.paper', '--paper', words.paper, PAPER_NAMES);
  const dxf = namedOption('make.dxf', '--dxf', words.dxf, RELEASES);
  const printer = words.printerBars === undefined ? accept(undefined) : printerBars(words.printerBars);
  const gauges = parseGaugeChoices(words);
  if (
    !paper.ok ||
    !dxf.ok ||
    !printer.ok ||
    !gauges.ok ||
    [...kinds, ...(parts ?? [])].some((one) => !one.ok)
  )
    return refuse(
      ...[...kinds, ...(parts ?? []), paper, dxf, printer, gauges].flatMap((one) =>
        one.ok ? [] : one.faults,
      ),
    );
  return accept({
    kinds: KINDS.filter((kind) => kinds.some((one) => one.ok && one.value === kind)),
    ...(parts && {
      parts: MADE_PARTS.filter((part) => parts.some((one) => one.ok && one.value === part)),
    }),
    paper: paper.value,
    dxf: dxf.value,
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
