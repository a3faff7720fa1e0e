import { expect, test } from 'vitest';
import { cos, sin, tan } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';
import { shortArcs } from './shortArcs.ts';

/** One arc of 10 mm radius from the x axis on. */
function arc(sweepRad: number): Chain<'drawing'> {
  return {
    closed: false,
    vertices: [
      { x: 10, y: 0, bulge: tan(sweepRad / 4) },
      { x: 10 * cos(sweepRad), y: 10 * sin(sweepRad), bulge: 0 },
    ],
  };
}

const piecesOf = (sweepRad: number): number =>
  shortArcs(arc(sweepRad), () => Math.PI / 2).vertices.length - 1;

test('an arc is cut into as few equal ones as keep to the greatest turn', () => {
  expect([0.3, 1.58, 3, 3.2, 4.8].map(piecesOf)).toEqual([1, 2, 2, 3, 4]);
});

test('a quarter turn stays whole, and a half turn two, whatever their last places are', () => {
  for (const more of [-1, 0, 1]) {
    const turn = (Math.PI / 2) * (1 + more * Number.EPSILON);
    expect([piecesOf(turn), piecesOf(2 * turn)]).toEqual([1, 2]);
  }
});
