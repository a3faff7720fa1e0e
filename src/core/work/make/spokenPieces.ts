import type { Design } from '../../design/index.ts';
import { type Drawing, spokenDrawing } from '../../drawing/index.ts';
import { type Language, speechOf } from '../../words/index.ts';

/** Pieces with their words in a language; the design's own name stays as it is. */
export function spokenPieces(
  design: Design,
  drawings: readonly Drawing[],
  language: Language = 'en',
): readonly Drawing[] {
  const speech = speechOf(language, [design.name]);
  return drawings.map((drawing) => spokenDrawing(drawing, speech));
}
