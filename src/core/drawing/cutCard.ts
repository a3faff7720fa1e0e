import type { Box, Frame } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';

/** What stands on a card beside its edge. */
export interface OnCard {
  readonly windows?: readonly Chain<'drawing'>[];
  readonly scored?: readonly Chain<'drawing'>[];
  readonly drawn?: readonly Chain<'drawing'>[];
  readonly lettering: readonly Lettering[];
  readonly notes: readonly string[];
  readonly count?: number;
}

/** A card that is cut out, with windows, with what is scored, drawn and written on it, and its caution behind the notes. */
export function cutCard(
  { name, title, part }: Pick<Drawing, 'name' | 'title' | 'part'>,
  body: Chain<'drawing'>,
  on: OnCard,
  caution: string,
): Drawing {
  const lines = (meaning: DrawnLine['meaning'], chains: readonly Chain<'drawing'>[] = []) =>
    chains.map((chain): DrawnLine => ({ meaning, chain }));
  return {
    name,
    title,
    part,
    lines: [
      { meaning: 'cut', chain: body },
      ...lines('cut-inside', on.windows),
      ...lines('score', on.scored),
      ...lines('draw', on.drawn),
    ],
    lettering: on.lettering,
    notes: [...on.notes, caution],
    count: on.count ?? 1,
    routes: ['print', 'laser'],
    checks: sizeChecks(boundsOf(body)),
  };
}

/** Width and height of a piece, as the finished one is measured. */
export function sizeChecks({ min, max }: Box<Frame>): Drawing['checks'] {
  return [
    { name: 'width', valueMm: max.x - min.x },
    { name: 'height', valueMm: max.y - min.y },
  ];
}
