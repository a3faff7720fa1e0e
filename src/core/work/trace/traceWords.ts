import { accept, type Checked, type Fault, hypot, refuse } from '../../base/index.ts';
import { parseLength } from '../../quantity/index.ts';
import { knownNameFaults } from './knownName.ts';
import type { KnownLength, LengthTaken, TraceRequest } from './traceRequest.ts';

const TAKEN: readonly LengthTaken[] = ['straight', 'over-arch', 'edge', 'purfling'];

/**
 * A known length as typed: a value's name, `=`, a length, if wanted `±` (or `+-`) and its half interval, and how it
 * was taken: `straight` or `over-arch` for the body length, `edge` or `purfling` for a width.
 * Faults: `known.form`, `known.name`, `known.taken`, those of reading a length.
 */
export function parseKnownLength(text: string): Checked<KnownLength> {
  const word = TAKEN.find((one) => text.trimEnd().endsWith(one));
  const rest = word
    ? text
        .trimEnd()
        .slice(0, -word.length)
        .replace(/[\s,;]+$/, '')
    : text;
  const match = /^\s*([A-Za-z]+)\s*=\s*(.+?)\s*(?:(?:±|\+-|\+\/-)\s*(.+))?$/.exec(rest);
  const [, name, length, spread] = match ?? [];
  if (name === undefined || length === undefined) return refuse(form(text));
  const misnamed = knownNameFaults({ name, ...(word && { taken: word }) }, 'known');
  if (misnamed.length > 0) return refuse(...misnamed);
  const mm = parseLength(length);
  if (!mm.ok) return refuse(...mm.faults.map((fault) => ({ ...fault, at: `--known ${name}` })));
  const known = { name, mm: mm.value.mm, ...(word && { taken: word }) };
  if (spread === undefined) return accept(known);
  const plusMinus = parseLength(spread);
  if (!plusMinus.ok) return refuse(...plusMinus.faults.map((fault) => ({ ...fault, at: `--known ${name}` })));
  if (plusMinus.value.mm < 0) return refuse(form(text));
  return accept({ ...known, plusMinusMm: plusMinus.value.mm });
}

function form(text: string): Fault {
  return {
    code: 'known.form',
    at: '--known',
    found: `"${text}"`,
    need: 'a name and a length, such as bodyLength=354, lowerBout=206±0.3 or "bodyLength=357 over-arch"',
    remedy: 'write it so',
  };
}

/**
 * The sheet's bars (`149.6` or `149.6,149.8` with a point as decimal mark) and the edge height (`36.5` or `36.5±0.3`) as
 * typed. Faults: `sheet.bars`, those of reading a length.
 */
export function parseSheetBar(
  bars: string | undefined,
  edgeHeight: string | undefined,
): Checked<Pick<TraceRequest, 'sheetBarMm' | 'edgeHeightMm' | 'edgeHeightPlusMinusMm'>> {
  const parts = bars === undefined ? [] : bars.split(/[;x]|,\s*(?=\d{3})/);
  const heights = edgeHeight === undefined ? [] : edgeHeight.split(/±|\+-|\+\/-/);
  const barsMm = all('--sheet-bar', parts);
  const heightsMm = all('--edge-height', heights);
  const faults = [...(barsMm.ok ? [] : barsMm.faults), ...(heightsMm.ok ? [] : heightsMm.faults)];
  if (parts.length > 2) faults.push(tooManyBars(bars ?? ''));
  if (!barsMm.ok || !heightsMm.ok || faults.length > 0) return refuse(...faults);
  const [x, y] = barsMm.value;
  const [height, plusMinus] = heightsMm.value;
  return accept({
    ...(x !== undefined && { sheetBarMm: { xMm: x, ...(y !== undefined && { yMm: y }) } }),
    ...(height !== undefined && { edgeHeightMm: height }),
    ...(plusMinus !== undefined && { edgeHeightPlusMinusMm: plusMinus }),
  });
}

function all(at: string, texts: readonly string[]): Checked<readonly number[]> {
  const lengths = texts.map((text) => parseLength(text));
  const faults = lengths.flatMap((one) => (one.ok ? [] : one.faults.map((fault) => ({ ...fault, at }))));
  return faults.length > 0
    ? refuse(...faults)
    : accept(lengths.flatMap((one) => (one.ok ? [one.value.mm] : [])));
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

/** Share, k = 2. What a flatbed's resolution is good to along and across its travel (from memory). */
const SCANNER_SHARE = 0.001;
/** px, k = 2. How well a place is pointed at on a picture. */
const POINTED_PX = 1;
const MM_IN_INCH = 25.4;

/**
 * The scale of a scan or of a photographed life-size print: its resolution in pixels an inch (`300`), or two places on
 * a scale bar in it with the length between them (`120,80 1320,80 = 100 mm`). Null when neither is given.
 * Faults: `scan.resolution`, `scan.bar`, `scan.both`, those of reading a length.
 */
export function parseScan(
  resolution: string | undefined,
  bar: string | undefined,
): Checked<NonNullable<TraceRequest['scan']> | null> {
  if (resolution !== undefined && bar !== undefined) return refuse(bothScales());
  if (resolution !== undefined) return parseResolution(resolution);
  return bar === undefined ? accept(null) : parseScaleBar(bar);
}

function parseResolution(text: string): Checked<NonNullable<TraceRequest['scan']>> {
  const [, number] = /^\s*(\d+(?:[.,]\d+)?)\s*(?:dpi|ppi)?\s*$/i.exec(text) ?? [];
  const perInch = Number((number ?? '').replace(',', '.'));
  if (!(perInch >= LEAST_PER_INCH && perInch <= MOST_PER_INCH)) return refuse(noResolution(text));
  return accept({ mmPerPixel: MM_IN_INCH / perInch, plusMinus: SCANNER_SHARE });
}

const LEAST_PER_INCH = 50;
const MOST_PER_INCH = 4800;

function parseScaleBar(text: string): Checked<NonNullable<TraceRequest['scan']>> {
  const number = '(-?\\d+(?:\\.\\d+)?)';
  const form = new RegExp(`^\\s*${number},\\s*${number}[\\s;]+${number},\\s*${number}\\s*=\\s*(.+)$`);
  const match = form.exec(text);
  if (match === null)
    return refuse(noScaleBar(text, 'two places and a length, such as "120,80 1320,80 = 100 mm"'));
  const [ax, ay, bx, by] = match.slice(1, 5).map(Number) as [number, number, number, number];
  const length = parseLength(match[5] as string);
  if (!length.ok) return refuse(...length.faults.map((fault) => ({ ...fault, at: '--scan-bar' })));
  const pixels = hypot(bx - ax, by - ay);
  if (pixels < LEAST_BAR_PX) return refuse(noScaleBar(text, `places at least ${LEAST_BAR_PX} pixels apart`));
  return accept({
    mmPerPixel: length.value.mm / pixels,
    plusMinus: Math.max((2 * POINTED_PX) / pixels, SCANNER_SHARE),
  });
}

const LEAST_BAR_PX = 100;

function bothScales(): Fault {
  return {
    code: 'scan.both',
    at: '--scan, --scan-bar',
    found: 'a resolution and a scale bar',
    need: 'one of them',
    remedy: 'leave out the one that you trust less, and give it as a known length instead',
  };
}

function noResolution(found: string): Fault {
  return {
    code: 'scan.resolution',
    at: '--scan',
    found: `"${found}"`,
    need: `pixels an inch, between ${LEAST_PER_INCH} and ${MOST_PER_INCH}, such as 300`,
    remedy: 'look at what the scanner was set to',
  };
}

function noScaleBar(found: string, need: string): Fault {
  return {
    code: 'scan.bar',
    at: '--scan-bar',
    found: `"${found}"`,
    need,
    remedy: 'read the pixels of both ends of the bar in a picture viewer',
  };
}
