import { cos, exp, type Point, sin } from '../base/index.ts';
import { type LongArch, type LongArchForm, longArch, longArchHeight } from './longArch.ts';

/** Places of a long arch's numbers in its fit; FILLET, then the platform's reach and the logarithm of its radius. */
export const CREST_AT = 0;
export const BELOW = 1;
export const ABOVE = 2;
export const RISE = 3;
export const BASE = 4;
export const TILT = 5;
export const SCOOP = 6;
export const FILLET = 7;
export const PLATFORM = 8;
export const LOG_RADIUS = 9;
/** For each the change that matters, in its own unit. */
export const STEPS = [0.05, 0.05, 0.05, 0.02, 0.02, 0.0002, 0.002, 0.2, 0.1, 0.005];

/**
 * Of the chord: about 20, 40 and 80 mm on a violin. Readings do not tell the fillet and the rise apart, so the fillet is tried, not
 * solved for.
 */
const FILLET_SHARES = [0.06, 0.118, 0.24];
/** What is tried: a form, its end fillet as a share of the chord, and whether a platform's radius is open or flat. */
export interface Trial {
  readonly kind: LongArchForm['kind'];
  readonly filletShare: number;
  readonly platform: 'open' | 'flat' | 'none';
}

export const TRIALS: readonly Trial[] = [
  { kind: 'cycloid', filletShare: 0, platform: 'none' },
  ...FILLET_SHARES.flatMap((filletShare): Trial[] => [
    { kind: 'circle', filletShare, platform: 'none' },
    { kind: 'two-circles', filletShare, platform: 'open' },
    { kind: 'two-circles', filletShare, platform: 'flat' },
  ]),
];

/** The form that the numbers of a trial make. */
export function formOf(kind: LongArchForm['kind'], numbers: ArrayLike<number>): LongArchForm {
  const filletMm = numbers[FILLET];
  if (kind === 'cycloid') return { kind };
  if (kind === 'circle') return { kind, filletMm };
  return {
    kind,
    filletMm,
    platformMm: numbers[PLATFORM],
    platformRadiusMm: exp(numbers[LOG_RADIUS]),
  };
}

/**
 * Reading less arch for each reading, or null where the numbers make no arch. Two halves with one level crest: below it
 * and above it the arch may be of different length.
 */
export function residualsFrom(
  readings: readonly Point<'section'>[],
  kind: LongArchForm['kind'],
  numbers: ArrayLike<number>,
): Float64Array | null {
  const halves = [numbers[BELOW], numbers[ABOVE]].map((reach): LongArch | null => {
    const arch = longArch(-reach, reach, numbers[RISE], formOf(kind, numbers));
    return arch.ok ? arch.value : null;
  });
  const [below, above] = halves;
  if (!below || !above) return null;
  const [cosine, sine] = [cos(numbers[TILT]), sin(numbers[TILT])];
  return Float64Array.from(readings, ({ x, y }) => {
    const along = (x - numbers[CREST_AT]) * cosine + (y - numbers[BASE]) * sine;
    const height = (y - numbers[BASE]) * cosine - (x - numbers[CREST_AT]) * sine;
    const half = along < 0 ? below : above;
    const beyond = Math.abs(along) - half.endMm;
    return height - (beyond > 0 ? numbers[SCOOP] * beyond ** 2 : longArchHeight(half, along));
  });
}
