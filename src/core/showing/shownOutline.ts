import type { BodyOutline } from '../instrument/index.ts';
import { type ShownLine, shownLine } from './shownLine.ts';

/** A body's outline and nothing within it. Millimetres; x to the treble side from the centre line, y down from the upper end. */
export interface ShownOutline {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly edge: ShownLine<'edge'>;
}

export function shownOutline({ chain, bodyLengthMm, lowerBout }: BodyOutline): ShownOutline {
  return {
    lengthMm: bodyLengthMm,
    widthMm: lowerBout.widthMm,
    edge: shownLine('edge', chain, bodyLengthMm, ['bodyLength', 'outline']),
  };
}
