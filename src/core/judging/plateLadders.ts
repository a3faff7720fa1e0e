import { point } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import type { Ladder } from './lineNumbers.ts';

/** Where numbers stand on a plate: from the middle of the lower bout to its treble flank, of the upper to its bass flank. */
export function plateLadders(outline: Chain<'body'>): readonly Ladder[] {
  const { max, min } = boundsOf(outline);
  const at = (across: number, along: number) =>
    point<'body'>(across * max.x, min.y + along * (max.y - min.y));
  return [
    [at(0.02, 0.36), at(0.72, 0.06)],
    [at(-0.02, 0.66), at(-0.6, 0.95)],
  ];
}
