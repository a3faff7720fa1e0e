import { derivedFrom, type RegisterEntry } from '../../quantity/index.ts';
import type { LiningParts } from './lining.ts';

const LINING_FROM = {
  lower: ['lowerBlockWidth', 'lowerCornerBlockAlongBout'],
  waist: [
    'lowerCornerBlockAlongWaist',
    'lowerCornerBlockAlongBout',
    'upperCornerBlockAlongWaist',
    'upperCornerBlockAlongBout',
    'liningLetIn',
  ],
  upper: ['upperCornerBlockAlongBout', 'upperBlockWidth'],
} as const;

/** Every derived dimension of the linings, each with the names it is derived from. */
export function liningEntries(linings: LiningParts): readonly RegisterEntry[] {
  const ribFrom = ['outline', 'overhang', 'cornerOverhang', 'ribThickness', 'liningThickness'];
  const bendFrom = ['outline', 'overhang', 'ribThickness', 'liningThickness'];
  const letIn = linings.choice.liningsLetIn === 'all' ? ['liningLetIn'] : [];
  const entry = (
    name: string,
    value: number,
    from: readonly string[],
    how: string,
    unit: 'mm' | 'ratio' = 'mm',
  ): RegisterEntry => ({ name: `linings.${name}`, value, unit, origin: derivedFrom(from, how) });
  return [
    ...(['lower', 'waist', 'upper'] as const).flatMap((name) => {
      const { lengthMm, cutMm, bend } = linings[name];
      const from = [...new Set([...ribFrom, ...LINING_FROM[name], ...letIn])];
      return [
        entry(`${name}Length`, lengthMm, from, 'laid flat, from end to end'),
        entry(`${name}Cut`, cutMm, from, 'length laid flat and 5 mm at each end, common practice'),
        entry(`${name}TightestBend`, bend.tightestMm, bendFrom, 'radius inside the bend'),
        entry(`${name}Stretch`, bend.stretch, bendFrom, 't / (2R + t)', 'ratio'),
      ];
    }),
    entry('stripWidth', linings.stripWidthMm, ['liningWidth'], 'height and 1 mm, common practice'),
    ...linings.mortises.map(({ block, side, reachMm }) =>
      entry(
        `${block}Mortise${side === 'waist' ? 'Waist' : 'Bout'}`,
        reachMm,
        [...ribFrom, `${block}CornerBlockAlongWaist`, `${block}CornerBlockAlongBout`, 'liningLetIn'],
        'how far the block holds the lining at full thickness, with wood left before the corner',
      ),
    ),
  ];
}
