import { accept, type Checked, type Fault, type Finding, refuse, SETTLED } from '../../base/index.ts';
import { SHEET_BAR_MM } from './calibrationSheet.ts';

/** Millimetres on the print for a millimetre of the plan, along the sheet's two sides. */
export interface PrintScale {
  readonly x: number;
  readonly y: number;
}

export interface PrintReading {
  readonly scale: PrintScale;
  /** Half interval (k = 2), as a share of a length. */
  readonly plusMinus: number;
  readonly findings: readonly Finding[];
}

/** mm, k = 2. Callipers or a steel rule laid on the two end marks of a bar (from memory: what a careful hand reads). */
const READING_MM = 0.1;
/** Share, k = 2. What home printers miss by when scaling is off (common practice: a few tenths of a per cent). */
const UNMEASURED = 0.004;
/** Share. Beyond it the bar was misread, or measured in another unit. */
const LARGEST_ERROR = 0.2;

/**
 * The print's own scale from what its two bars measure; one bar given stands for both. Fault `sheet.bar` for a length
 * more than a fifth off; findings `sheet.unmeasured` and `sheet.oneBar`.
 */
export function printOf(
  bars: { readonly xMm?: number; readonly yMm?: number } | undefined,
): Checked<PrintReading> {
  const given = [bars?.xMm, bars?.yMm];
  const faults = given
    .filter((one) => one !== undefined)
    .filter((one) => !isPlausible(one))
    .map(barFault);
  if (faults.length > 0) return refuse(...faults);
  const [x, y] = [bars?.xMm ?? bars?.yMm, bars?.yMm ?? bars?.xMm];
  if (x === undefined || y === undefined)
    return accept({ scale: { x: 1, y: 1 }, plusMinus: UNMEASURED, findings: [unmeasured()] });
  const single = given.includes(undefined);
  return accept({
    scale: scaleOf(x, y),
    plusMinus: single ? UNMEASURED / 2 : READING_MM / SHEET_BAR_MM,
    findings: single ? [oneBar()] : [],
  });
}

/** Readings that a careful hand may have of one length count as one: a difference that small says nothing. */
function scaleOf(xMm: number, yMm: number): PrintScale {
  const mean = (xMm + yMm) / 2 / SHEET_BAR_MM;
  const isOne = Math.abs(xMm - yMm) <= 2 * READING_MM * (1 + SETTLED);
  return isOne ? { x: mean, y: mean } : { x: xMm / SHEET_BAR_MM, y: yMm / SHEET_BAR_MM };
}

function isPlausible(measuredMm: number): boolean {
  return Math.abs(measuredMm / SHEET_BAR_MM - 1) <= LARGEST_ERROR;
}

function barFault(measuredMm: number): Fault {
  return {
    code: 'sheet.bar',
    at: 'sheet bar',
    found: `a check bar of ${SHEET_BAR_MM} mm is said to measure ${measuredMm} mm`,
    need: `between ${SHEET_BAR_MM * (1 - LARGEST_ERROR)} and ${SHEET_BAR_MM * (1 + LARGEST_ERROR)} mm`,
    remedy: 'measure the bar on the printed sheet again, in millimetres, from end mark to end mark',
  };
}

function unmeasured(): Finding {
  return {
    weight: 'caution',
    code: 'sheet.unmeasured',
    at: 'sheet bar',
    found: `the printed check bars were not measured, so every length may be ${(UNMEASURED * 100).toFixed(1)} % off`,
    need: `the true length of both ${SHEET_BAR_MM} mm bars on the print`,
    remedy: 'measure both bars with callipers or a steel rule and give what they read',
  };
}

function oneBar(): Finding {
  return {
    weight: 'remark',
    code: 'sheet.oneBar',
    at: 'sheet bar',
    found: 'one check bar was measured and stands for both directions',
    need: 'both bars, since many printers are truer across the paper than along it',
    remedy: 'measure the other bar too',
  };
}
