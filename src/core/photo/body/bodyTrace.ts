import type { Finding, Keeper, Point } from '../../base/index.ts';
import type { OutlineSection } from './templateStations.ts';

/** What the maker tells about the picture before or after a first trace. All places in photo px. */
export interface TraceHints {
  /** Places that surely lie on the body, or surely beside it: they choose between several bodies. */
  readonly inside?: readonly Point<'photo'>[];
  readonly outside?: readonly Point<'photo'>[];
  /** Lines drawn on the body, or beside it. */
  readonly insideStrokes?: readonly (readonly Point<'photo'>[])[];
  readonly outsideStrokes?: readonly (readonly Point<'photo'>[])[];
  /** Places dragged onto the edge. */
  readonly onEdge?: readonly Point<'photo'>[];
  /** Closed polygons round stretches that are not to be believed. */
  readonly excluded?: readonly (readonly Point<'photo'>[])[];
}

export interface TraceOptions {
  /** Body length in px with its standard deviation, when the picture's scale is known. */
  readonly lengthPx?: { readonly value: number; readonly sigma: number };
  /** Closed polygons to ignore wholly, such as the band of a calibration sheet. */
  readonly masked?: readonly (readonly Point<'photo'>[])[];
  /** Which face is photographed; decides which side is called bass. Top when left out. */
  readonly face?: 'top' | 'back';
  readonly hints?: TraceHints;
  /** The picture's scale where a sheet gave it: which lengths a body can have. */
  readonly mmPerPixel?: number;
  /** Whether the caller tells the near plate's edge from the far one's, so that ribs in view raise no question. */
  readonly platesAreTold?: boolean;
  /** Which of several bodies, as a trace without a choice numbers them: 1 is the first from the left, or from above. */
  readonly body?: number;
  /** What was worked out of this very picture before; nothing when left out. */
  readonly keeper?: Keeper;
  /** Told with what the work goes on, and how far it has come, 0 to 1. */
  readonly progress?: (stage: string, share: number) => void;
}

/** A body found in the picture. */
export interface BodyPlace {
  readonly number: number;
  /** Its place among the others in words: left, right, above … */
  readonly where: string;
  /** The face that seems to show; null where it cannot be told. A plate without sound holes looks like a back. */
  readonly face: 'top' | 'back' | null;
  readonly middle: Point<'photo'>;
}

/** Seen: measured on the picture. Doubtful: measured, but weak or blurred. Bridged: carried on by the template. */
export type EdgeState = 'seen' | 'doubtful' | 'bridged';

export interface EdgePoint {
  readonly point: Point<'photo'>;
  /** Unit outward normal, photo px. */
  readonly normal: Point<'photo'>;
  readonly side: 'bass' | 'treble';
  readonly section: OutlineSection;
  /** mm along half the usual outline from the lower end, on a body of 355 mm: the same number on both sides. */
  readonly along: number;
  readonly state: EdgeState;
  /** Standard deviation across the edge. */
  readonly sigmaPx: number;
  /** How far the far plate can show beyond the near one here, px, where the camera's stand is known. */
  readonly overlookPx?: number;
}

/** A run of one side's edge that was not seen, with the reason in words. */
export interface NamedStretch {
  readonly name: string;
  readonly side: 'bass' | 'treble';
  readonly section: OutlineSection;
  readonly fromAlong: number;
  readonly toAlong: number;
  readonly state: 'doubtful' | 'bridged';
}

/** How the body lies in the picture. */
export interface BodyPose {
  /** Where the centre line meets the lower and the upper end of the outline. */
  readonly lowerEnd: Point<'photo'>;
  readonly upperEnd: Point<'photo'>;
  /** Direction of the centre line from lower to upper end: 0 is up in the picture, growing clockwise. */
  readonly axisAngleRad: number;
  /** px for a 355th of the body length. */
  readonly pxPerMm: number;
  readonly skew: number;
  readonly keystonePerMm: number;
}

/** The body's outline found in a picture, as it is seen, neither symmetric nor restored. */
export interface BodyTrace {
  /** All bodies that stand out in the picture, and which of them this is. */
  readonly bodies: readonly BodyPlace[];
  readonly body: number;
  readonly pose: BodyPose;
  /** The side at photo right (when the neck points up) from the lower to the upper end, then the other side likewise. */
  readonly edge: readonly EdgePoint[];
  readonly unseen: readonly NamedStretch[];
  /** Widths as shares of the length, from the fitted template. */
  readonly ratios: { readonly lowerBout: number; readonly upperBout: number; readonly waist: number };
  /** Share of the places that should be visible where an edge was seen. */
  readonly support: number;
  readonly worstZone: { readonly name: string; readonly share: number };
  /** Largest difference between the widths that several independent settings found, as a share. */
  readonly spread: number;
  /** Largest departure from the usual shape, in spreads of real instruments. */
  readonly strain: number;
  readonly verdict: 'accept' | 'ask';
  readonly findings: readonly Finding[];
}
