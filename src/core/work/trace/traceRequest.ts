import type { TraceRecord } from '../../design/index.ts';
import type { Picture, TraceHints } from '../../photo/index.ts';

/** How a length was taken: the body straight or over the arch, a width from edge to edge or over the purfling. */
export type LengthTaken = 'straight' | 'over-arch' | 'edge' | 'purfling';

/** A length of the instrument as its maker measured it. */
export interface KnownLength {
  readonly name: string;
  readonly mm: number;
  readonly plusMinusMm?: number;
  /** Straight and from edge to edge when left out. */
  readonly taken?: LengthTaken;
}

/** One photograph of the instrument. */
export interface Photograph {
  /** What it is called in words and documents. */
  readonly name: string;
  readonly picture: Picture;
  readonly hints?: TraceHints;
  /** Fingerprint of its file, kept with the trace so that another picture of the same name is noticed. */
  readonly sha256?: string;
}

/** Photographs of one face to trace, and what is known about them. */
export interface TraceRequest {
  readonly photographs: readonly [Photograph, ...Photograph[]];
  readonly face: 'top' | 'back';
  /** Height of the near plate's edge above the sheet, mm. */
  readonly edgeHeightMm?: number;
  /** Half interval (k = 2) of it; a ruler's where none is given. */
  readonly edgeHeightPlusMinusMm?: number;
  /** What the two bars of the printed sheet measure. */
  readonly sheetBarMm?: { readonly xMm?: number; readonly yMm?: number };
  /** A scan or a life-size print: its scale with the half interval (k = 2) as a share. */
  readonly scan?: { readonly mmPerPixel: number; readonly plusMinus: number };
  readonly known: readonly KnownLength[];
  /** Which of several bodies in the picture, as a trace numbers them. */
  readonly body?: number;
  /** What the maker wishes of the outline as meant, where it is not the habit. */
  readonly meant?: NonNullable<TraceRecord['meant']>;
}
