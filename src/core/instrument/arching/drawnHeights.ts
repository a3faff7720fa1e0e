import type { Finding } from '../../base/index.ts';
import type { FairNet } from '../../surface/index.ts';

/** A measured height, and how far it stands over the surface that was drawn to all of them. */
export interface HeightLeft {
  /** As it was given, either side of the centre line. */
  readonly xMm: number;
  readonly yMm: number;
  readonly zMm: number;
  readonly leftMm: number;
}

/** How measured heights draw a plate's surface away from its few numbers. */
export interface HeightPull {
  /** Added to the fair correction. */
  readonly net: FairNet;
  readonly plusMinusMm: number;
  readonly source: string | null;
  readonly left: readonly HeightLeft[];
  /** Whole sections among them whose shape was carried along the body. */
  readonly carried: number;
  /** Heights given at places that do not lie inside the channel, which draw nothing. */
  readonly outside: number;
  /** Root mean square of what is left, with the surface as its numbers alone make it and as it was drawn. */
  readonly rmsBeforeMm: number;
  readonly rmsMm: number;
  /** Where the surface was moved most. */
  readonly moved: { readonly mm: number; readonly xMm: number; readonly yMm: number };
  readonly findings: readonly Finding[];
}
