import type { Checked } from '../../base/index.ts';
import type { Design } from '../../design/index.ts';
import { type Drawing, layoutPages, type PageSet } from '../../drawing/index.ts';
import { speechOf } from '../../words/index.ts';
import type { MakeOptions } from './makeOptions.ts';

/** The pieces that a maker chose to make: all unless some families are named. */
export function chosen(
  drawings: readonly Drawing[],
  { parts }: Pick<MakeOptions, 'parts'>,
): readonly Drawing[] {
  return parts === undefined ? drawings : drawings.filter(({ part }) => parts.includes(part));
}

/** The pieces that go on paper, in their order. */
export function printedPieces(drawings: readonly Drawing[]): readonly Drawing[] {
  return drawings.filter((drawing) => drawing.routes.includes('print'));
}

/** The pages that a design's pieces print on, in the language that the pieces speak already. Faults: those of laying them out. */
export function printPages(
  pieces: readonly Drawing[],
  design: Design,
  { paper, printer, language = 'en' }: Pick<MakeOptions, 'paper' | 'printer' | 'language'>,
): Checked<PageSet> {
  const { tell } = speechOf(language, [design.name]);
  return layoutPages(pieces, { paper, title: design.name, say: tell, ...(printer && { printer }) });
}
