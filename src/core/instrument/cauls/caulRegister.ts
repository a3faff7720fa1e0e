import { derivedFrom, type RegisterEntry } from '../../quantity/index.ts';
import type { CaulParts } from './caul.ts';

/** What a maker measures on the cauls, and how far a clamp has to open over each. */
export function caulEntries({ cauls, heightMm, waistRoomMm }: CaulParts): readonly RegisterEntry[] {
  const from = ['outline', 'overhang', 'caulDepth', 'caulFacing'];
  const clampFrom = [...from, 'ribThickness', 'clampHoleDiameter', 'clampHoleWall', 'clampHolePitch'];
  const entry = (name: string, value: number, of: readonly string[], how: string): RegisterEntry => ({
    name: `cauls.${name}`,
    value,
    unit: 'mm',
    origin: derivedFrom(of, how),
  });
  return [
    entry(
      'height',
      heightMm,
      ['ribHeightNeck', 'ribHeightTail'],
      'lowest rib less 4 mm, so that both edges stay free; from memory',
    ),
    entry('waistRoom', waistRoomMm, from, 'for clamps, between the backs of both cauls of the waist'),
    ...cauls.flatMap(({ name, clamp }) =>
      clamp
        ? [
            entry(
              `${camel(name)}Clamp`,
              clamp.openingMm,
              clampFrom,
              'jaws of the clamp, open from the back of the caul to the edge of the clamp hole',
            ),
          ]
        : [],
    ),
  ];
}

function camel(name: string): string {
  return name.replace(/[ ,]+(.)/g, (_, letter: string) => letter.toUpperCase());
}
