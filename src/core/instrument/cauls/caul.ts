import type { Finding } from '../../base/index.ts';
import type { FormedPiece } from './formedPiece.ts';

/** The name of a caul says what it presses on. */
export type CaulName =
  | 'lower block'
  | 'lower corner, bout side'
  | 'lower corner, waist side'
  | 'waist'
  | 'upper corner, waist side'
  | 'upper corner, bout side'
  | 'upper block';

/** A clamp that reaches from the back of a caul to a hole in the form. */
export interface ClampReach {
  /** Between the jaws: from the back of the caul to the edge of the hole that bears. */
  readonly openingMm: number;
  /** How far the pull is from square to the back. */
  readonly offSquareRad: number;
}

/** A caul that presses a rib on, and how a clamp reaches it. */
export interface Caul {
  readonly name: CaulName;
  readonly piece: FormedPiece;
  /** One for either side of the body, turned over; the end blocks have one. */
  readonly count: 1 | 2;
  /** The nearest clamp hole; none where the form has none. */
  readonly clamp: ClampReach | undefined;
}

/** The cauls of a garland. */
export interface CaulParts {
  readonly cauls: readonly Caul[];
  /** How thick to build them up, across the ribs: both edges of the rib stay free. */
  readonly heightMm: number;
  readonly facingMm: number;
  /** A round hole behind the face for a pin that keeps the clamp from sliding, or to hang the caul by. */
  readonly holeRadiusMm: number;
  /** Room for clamps between the backs of the two cauls of the waist. */
  readonly waistRoomMm: number;
  readonly findings: readonly Finding[];
}
