import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import { VALUES } from '../../design/index.ts';
import type { Picture, TraceHints } from '../../photo/index.ts';
import { parseLength } from '../../quantity/index.ts';

/** A length of the instrument as its maker measured it. */
export interface KnownLength {
  readonly name: string;
  readonly mm: number;
  readonly plusMinusMm?: number;
}

/** A photograph to trace, and what is known about it. */
export interface TraceRequest {
  /** What the photograph is called in words and documents. */
  readonly name: string;
  readonly picture: Picture;
  readonly face: 'top' | 'back';
  /** Height of the near plate's edge above the sheet, mm. */
  readonly edgeHeightMm?: number;
  /** What the two bars of the printed sheet measure. */
  readonly sheetBarMm?: { readonly xMm?: number; readonly yMm?: number };
  readonly known: readonly KnownLength[];
  readonly hints?: TraceHints;
}

/**
 * A known length as typed: a value's name, `=`, a length, and if wanted `±` (or `+-`) and its half interval.
 * Faults: `known.form`, `known.name`, those of reading a length.
 */
export function parseKnownLength(text: string): Checked<KnownLength> {
  const match = /^\s*([A-Za-z]+)\s*=\s*(.+?)\s*(?:(?:±|\+-|\+\/-)\s*(.+))?$/.exec(text);
  const [, name, length, spread] = match ?? [];
  if (name === undefined || length === undefined) return refuse(form(text));
  if (!Object.hasOwn(VALUES, name)) return refuse(unknownName(name));
  const mm = parseLength(length);
  if (!mm.ok) return refuse(...mm.faults.map((fault) => ({ ...fault, at: `--known ${name}` })));
  if (spread === undefined) return accept({ name, mm: mm.value.mm });
  const plusMinus = parseLength(spread);
  if (!plusMinus.ok) return refuse(...plusMinus.faults.map((fault) => ({ ...fault, at: `--known ${name}` })));
  return accept({ name, mm: mm.value.mm, plusMinusMm: plusMinus.value.mm });
}

function form(text: string): Fault {
  return {
    code: 'known.form',
    at: '--known',
    found: `"${text}"`,
    need: 'a name and a length, such as bodyLength=354 or lowerBout=206±0.3',
    remedy: 'write it so',
  };
}

function unknownName(name: string): Fault {
  return {
    code: 'known.name',
    at: '--known',
    found: `"${name}" is no measurement that Garland knows`,
    need: 'a name such as bodyLength, lowerBout, waist or upperBout',
    remedy: 'use one of these names',
  };
}

/** The sheet's bars (`149.6` or `149.6,149.8` with a point as decimal mark) and the edge height as typed. */
export function parseSheetBar(
  bars: string | undefined,
  edgeHeight: string | undefined,
): Checked<Pick<TraceRequest, 'sheetBarMm' | 'edgeHeightMm'>> {
  const parts = bars === undefined ? [] : bars.split(/[;x]|,\s*(?=\d{3})/);
  const lengths = [...parts, ...(edgeHeight === undefined ? [] : [edgeHeight])].map((part) =>
    parseLength(part),
  );
  const faults = lengths.flatMap((length, i) =>
    length.ok
      ? []
      : length.faults.map((fault) => ({ ...fault, at: i < parts.length ? '--sheet-bar' : '--edge-height' })),
  );
  if (parts.length > 2) faults.push(tooManyBars(bars ?? ''));
  if (faults.length > 0) return refuse(...faults);
  const [x, y] = lengths.slice(0, parts.length).map((length) => (length.ok ? length.value.mm : 0));
  const last = lengths.at(-1);
  return accept({
    ...(x !== undefined && { sheetBarMm: { xMm: x, ...(y !== undefined && { yMm: y }) } }),
    ...(edgeHeight !== undefined && last?.ok && { edgeHeightMm: last.value.mm }),
  });
}

function tooManyBars(bars: string): Fault {
  return {
    code: 'sheet.bars',
    at: '--sheet-bar',
    found: `"${bars}"`,
    need: 'one length, or two with a comma: along the long side, then the short side',
    remedy: 'measure the two 150 mm bars of the printed sheet',
  };
}
