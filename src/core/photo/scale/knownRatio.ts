import { hypot, log } from '../../base/index.ts';

export const LENGTHS_ALONG: readonly string[] = ['bodyLength'];
export const LENGTHS_ACROSS: readonly string[] = [
  'upperBout',
  'waist',
  'lowerBout',
  'upperCorners',
  'lowerCorners',
];

/** A length as it reads in the scene before any correction. */
export interface SceneMeasure {
  readonly name: string;
  readonly mm: number;
  /** Half interval (k = 2); ± 0.3 mm where none is given. */
  readonly plusMinusMm?: number;
}

/** A length as the maker measured it on the instrument. */
export interface KnownMeasure {
  readonly name: string;
  readonly mm: number;
  /** Half interval (k = 2); callipers ± 0.3 mm on a body where none is given. */
  readonly plusMinusMm?: number;
}

/** How far the scene's own millimetres may be trusted before callipers: shares, k = 2. */
export interface SceneTrust {
  /** Of the scale; null when the photograph has none of its own. */
  readonly scalePlusMinus: number | null;
  /** Of the scale along against the scale across. */
  readonly unevenPlusMinus: number;
}

/** Known over measured, for one length that is both. */
export interface KnownRatio {
  readonly name: string;
  readonly isAlong: boolean;
  readonly measuredMm: number;
  readonly knownMm: number;
  readonly logRatio: number;
  /** Half interval (k = 2) of the logarithm. */
  readonly plusMinus: number;
}

/** mm, k = 2. Callipers on a body by a careful hand (from memory). */
const CALLIPERS_MM = 0.3;
/** mm, k = 2. An edge found in a photograph against what callipers touch (chosen by us). */
const OUTLINE_MM = 0.3;

/** Empty where the length was not measured in the scene, or says nothing about the outline's scale. */
export function ratiosOf(known: KnownMeasure, measured: readonly SceneMeasure[]): readonly KnownRatio[] {
  const seen = measured.find((one) => one.name === known.name);
  const isAlong = LENGTHS_ALONG.includes(known.name);
  if (!seen || !(seen.mm > 0) || !(isAlong || LENGTHS_ACROSS.includes(known.name))) return [];
  const plusMinus = hypot(
    (known.plusMinusMm ?? CALLIPERS_MM) / known.mm,
    (seen.plusMinusMm ?? OUTLINE_MM) / seen.mm,
  );
  const logRatio = log(known.mm / seen.mm);
  return [{ name: known.name, isAlong, measuredMm: seen.mm, knownMm: known.mm, logRatio, plusMinus }];
}
