import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import { SHEET_BAR_MM } from './calibrationSheet.ts';

/** Millimetres on the print for a millimetre of the plan, along the sheet's two sides. */
export interface PrintScale {
  readonly x: number;
  readonly y: number;
}

/** What the two bars of one sheet measure on the print. */
export interface SheetBars {
  readonly xMm?: number;
  readonly yMm?: number;
  /** mm, k = 2. How well both were read; ± 0.1 where it is not said. */
  readonly plusMinusMm?: number;
}

/** Something known of a print: `x` times its ratio along x plus `y` times that along y is `value`, give or take `sigma`. */
export interface PrintBelief {
  readonly x: number;
  readonly y: number;
  readonly value: number;
  readonly sigma: number;
}

export interface PrintReading {
  /** The likeliest ratios before a photograph has shown which direction is the longer. */
  readonly scale: PrintScale;
  readonly beliefs: readonly PrintBelief[];
  readonly findings: readonly Finding[];
}

/** mm, k = 2. Callipers or a steel rule laid on the two end marks of a bar (from memory: what a careful hand reads). */
const BAR_READING_MM = 0.1;
/** mm. Nobody reads a bar better. */
const LEAST_READING_MM = 0.001;
/** Share, k = 2. What home printers miss by when scaling is off (common practice: a few tenths of a per cent). */
const UNMEASURED = 0.004;
/** Share, k = 2. How far the two directions of one print differ (common practice: less than the print is off). */
const UNEVEN = UNMEASURED / 2;
/** Share. Beyond it the bar was misread, or measured in another unit. */
const LARGEST_ERROR = 0.2;

/**
 * What the bars say of a print; a bar that was not measured follows the other one, or the plan. Fault `sheet.bar` for a
 * length more than a fifth off; findings `sheet.unmeasured` and `sheet.oneBar`.
 */
export function printOf(bars: SheetBars | undefined): Checked<PrintReading> {
  const { xMm, yMm } = bars ?? {};
  const given = [xMm, yMm].filter((one) => one !== undefined);
  const faults = given.filter((one) => !isPlausible(one)).map(barFault);
  if (faults.length > 0) return refuse(...faults);
  const [x, y] = [xMm ?? yMm ?? SHEET_BAR_MM, yMm ?? xMm ?? SHEET_BAR_MM];
  return accept({
    scale: { x: x / SHEET_BAR_MM, y: y / SHEET_BAR_MM },
    beliefs: beliefsOf(xMm, yMm, bars?.plusMinusMm ?? BAR_READING_MM),
    findings: given.length === 0 ? [unmeasured()] : given.length === 1 ? [oneBar()] : [],
  });
}

function beliefsOf(
  xMm: number | undefined,
  yMm: number | undefined,
  plusMinusMm: number,
): readonly PrintBelief[] {
  const read = (mm: number, x: number, y: number): PrintBelief => ({
    x,
    y,
    value: mm / SHEET_BAR_MM,
    sigma: Math.max(plusMinusMm, LEAST_READING_MM) / SHEET_BAR_MM / 2,
  });
  const even: PrintBelief = { x: 1, y: -1, value: 0, sigma: UNEVEN / 2 };
  if (xMm !== undefined && yMm !== undefined) return [read(xMm, 1, 0), read(yMm, 0, 1)];
  if (xMm !== undefined) return [read(xMm, 1, 0), even];
  if (yMm !== undefined) return [read(yMm, 0, 1), even];
  return [
    { x: 1, y: 0, value: 1, sigma: UNMEASURED / 2 },
    { x: 0, y: 1, value: 1, sigma: UNMEASURED / 2 },
  ];
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
