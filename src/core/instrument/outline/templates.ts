import type { Chain, Vertex } from '../../curve/index.ts';
import { closeOnCentreLine } from './halfLine.ts';

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
  pins: readonly { readonly centre: { readonly y: number }; readonly radiusMm: number }[],
): TemplateParts {
  const downward = pins.toSorted((a, b) => b.centre.y - a.centre.y);
  const edge = downward.flatMap(({ centre, radiusMm }): Vertex<'body'>[] => [
    // A half circle into the material on the left of the way down: clockwise round the pin.
    { x: 0, y: centre.y + radiusMm, bulge: -1 },
    { x: 0, y: centre.y - radiusMm, bulge: 0 },
  ]);
  return { whole, half: closeOnCentreLine(half, edge) };
}
