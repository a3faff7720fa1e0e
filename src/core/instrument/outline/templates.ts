import type { Chain } from '../../curve/index.ts';
import { closeOnCentreLine, notchedEdge, type Pin } from './halfLine.ts';

/** A template of the outline or of the inner outline, whole and as a half. Body frame, mm. */
export interface TemplateParts {
  /** Closed, anticlockwise, symmetric. */
  readonly whole: Chain<'body'>;
  /**
   * Treble half: closed, anticlockwise, its straight edge exactly on the centre line (x = 0), with a half-round notch
   * at each pin so that it lies against the pins on either side.
   */
  readonly half: Chain<'body'>;
}

/** Templates of a line that runs up the treble side from centre line to centre line. */
export function templateParts(
  whole: Chain<'body'>,
  half: Chain<'body'>,
  pins: readonly Pin[],
): TemplateParts {
  return { whole, half: closeOnCentreLine(half, notchedEdge(pins)) };
}
