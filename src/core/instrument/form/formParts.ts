import type { Finding, Point } from '../../base/index.ts';
import type { Chain } from '../../curve/index.ts';
import type { Station } from '../outline/stations.ts';
import type { ClampHole } from './clampHoles.ts';

/** A round hole on the centre line that form and templates are aligned by. */
export interface PinHole {
  readonly centre: Point<'body'>;
  readonly radiusMm: number;
}

/** A width of the finished form to be measured when it is cut or put together. */
export interface CheckWidth {
  readonly name: 'waist' | 'lower bout';
  readonly stationMm: number;
  readonly widthMm: number;
}

/** The inner form, in one piece and as two halves. Body frame, mm. */
export interface FormParts {
  /** Open treble half of the edge, from centre line to centre line. */
  readonly half: Chain<'body'>;
  /** Closed, anticlockwise, symmetric, with the six recesses. */
  readonly outline: Chain<'body'>;
  /**
   * Treble half of a form in two halves: closed, its straight edge exactly on the centre line, half-round at the pins
   * so that both halves together hold them.
   */
  readonly halfOutline: Chain<'body'>;
  readonly clampHoles: readonly ClampHole[];
  readonly pins: readonly PinHole[];
  readonly stations: readonly Station[];
  readonly thicknessMm: number;
  readonly widthMm: number;
  readonly lengthMm: number;
  readonly checkWidths: readonly CheckWidth[];
  /** Least wood round the clamp holes towards edge and recesses; undefined without holes. */
  readonly leastWallMm: number | undefined;
  readonly findings: readonly Finding[];
}
