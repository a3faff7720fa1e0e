import { hypot } from '../../base/index.ts';
import { toFile } from '../../files/index.ts';
import type { ProfilePlace } from '../../photo/index.ts';
import type { ArchResidual, Estimate, MeasuredCrossArch, MeasuredLongArch } from '../../surface/index.ts';

type Pair = readonly [number, number];

/** A number with its half interval (k = 2). */
export interface Told {
  readonly value: number;
  readonly plusMinus: number;
}

/** What an arch's points were fitted to; lengths in mm in the profile's own frame. */
export interface ProfileFit {
  readonly rise: Told;
  readonly base: Told;
  readonly tiltDeg: number;
  readonly rms: number;
  readonly max: number;
  /** Of a cross arch. */
  readonly fullness?: Told;
  readonly halfWidth?: Told;
  readonly centre?: Told;
  readonly channel?: readonly [Pair, Pair];
  /** Of a long arch. */
  readonly form?: string;
  readonly crestAt?: Told;
  readonly below?: Told;
  readonly above?: Told;
  readonly deviations: readonly {
    readonly name: string;
    readonly at: number;
    readonly size: number;
    readonly words: string;
  }[];
  /** [along, reading less fit] of every reading that was used. */
  readonly residuals: readonly Pair[];
}

/** A traced profile as other programs may read it: `garland-profile`. */
export interface ProfileDocument {
  readonly format: 'garland-profile';
  readonly version: 1;
  readonly units: 'mm';
  readonly of: 'crossArch' | 'longArch' | 'scrollSide';
  readonly name: string;
  readonly face?: 'top' | 'back';
  readonly station?: string;
  /** What heights count from: the card's straight edge, or the line from end to end. */
  readonly base?: 'face' | 'ends';
  /** Of an arch: whether [along] runs as a table's does (x as one looks at the outside, y towards the neck). */
  readonly sidesKnown?: boolean;
  /** Of an arch: what post, bar or load have moved stays out of the fit. */
  readonly leaveOut?: boolean;
  /** [along, height] in a frame of its own; closed for a scroll. */
  readonly points: readonly Pair[];
  /** Half intervals (k = 2): of one point across the profile, and of every length as a share. */
  readonly plusMinus: { readonly point: number; readonly scale: number };
  readonly fit?: ProfileFit;
  /** Of a scroll's side: places told from the silhouette. */
  readonly places?: Readonly<
    Record<string, { readonly at: Pair; readonly plusMinus: number; readonly radius?: number }>
  >;
  /** Of a scroll's side: turned over against the photograph. */
  readonly mirrored?: boolean;
}

/** The points of a profile to the writer's step; adding 0 makes −0 plain. */
export function pairsOf(places: readonly { readonly x: number; readonly y: number }[]): readonly Pair[] {
  return places.map(({ x, y }) => [toFile(x) + 0, toFile(y) + 0]);
}

/** Half interval (k = 2) of one point: the middle one of all spreads. */
export function pointPlusMinus(places: readonly Pick<ProfilePlace, 'sigmaMm'>[]): number {
  const sorted = places.map(({ sigmaMm }) => sigmaMm).toSorted((a, b) => a - b);
  return toFile(2 * (sorted[sorted.length >> 1] ?? 0));
}

/** A fitted cross arch with the ± of the scale added to that of the fit. */
export function crossFit(arch: MeasuredCrossArch, scale: number): ProfileFit {
  const { left, right } = arch.channel;
  const [low, high] = pairsOf([left, right]);
  return {
    ...commonFit(arch, scale),
    fullness: { value: arch.fullness.value, plusMinus: arch.fullness.plusMinus },
    halfWidth: length(arch.halfWidthMm, scale),
    centre: length(arch.centreXMm, 0),
    channel: [low, high],
  };
}

/** The same of a long arch. */
export function longFit(arch: MeasuredLongArch, scale: number): ProfileFit {
  return {
    ...commonFit(arch, scale),
    form: arch.form.kind,
    crestAt: length(arch.crestAtMm, 0),
    below: length(arch.belowMm, scale),
    above: length(arch.aboveMm, scale),
  };
}

function commonFit(arch: MeasuredCrossArch | MeasuredLongArch, scale: number): ProfileFit {
  return {
    rise: length(arch.riseMm, scale),
    base: length(arch.baseMm, scale),
    tiltDeg: (arch.tiltRad.value * 180) / Math.PI,
    rms: toFile(arch.rmsMm),
    max: toFile(arch.maxMm),
    deviations: arch.deviations.map(({ name, atMm, sizeMm, words }) => ({
      name,
      at: toFile(atMm),
      size: toFile(sizeMm),
      words,
    })),
    residuals: usedPairs(arch.residuals),
  };
}

function usedPairs(residuals: readonly ArchResidual[]): readonly Pair[] {
  return residuals.filter(({ used }) => used).map(({ alongMm, mm }) => [toFile(alongMm), toFile(mm)]);
}

function length({ value, plusMinus }: Estimate, scale: number): Told {
  return { value: toFile(value), plusMinus: toFile(hypot(plusMinus, scale * value)) };
}
