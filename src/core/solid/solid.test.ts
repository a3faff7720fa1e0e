import { expect, test } from 'vitest';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { point } from '../base/index.ts';
import { areaOf, type Chain, circleChain, outlineChain } from '../curve/index.ts';
import { meshBox, meshVolume } from './mesh.ts';
import { meshFlaws } from './meshFlaws.ts';
import { prism } from './prism.ts';

const square: Chain<'body'> = {
  closed: true,
  vertices: [
    [0, 0],
    [4, 0],
    [4, 4],
    [0, 4],
  ].map(([x, y]) => ({ ...point<'body'>(x ?? 0, y ?? 0), bulge: 0 })),
};
const codes = (mesh: Parameters<typeof meshFlaws>[1]): readonly string[] =>
  meshFlaws('a board', mesh).map(({ code }) => code);

test('a square board has its sides times its thickness, and its box', () => {
  const board = prism(square, [], 1, 3.5, 0.01);
  expect(meshVolume(board)).toBeCloseTo(40, 12);
  expect(meshBox(board)).toEqual({ min: [0, 0, 1], max: [4, 4, 3.5] });
  expect(board.triangles.length / 3).toBe(12);
  expect(codes(board)).toEqual([]);
});

test('a board with round holes lacks their area to the chord error', () => {
  const holes = [circleChain(point<'body'>(1, 1), 0.5), circleChain(point<'body'>(3, 2.5), 0.7, true)];
  const board = prism(square, holes, 0, 2, 0.001);
  const areaMm2 = 16 - Math.PI * (0.25 + 0.49);
  expect(Math.abs(meshVolume(board) / 2 - areaMm2)).toBeLessThan(0.001 * 2 * Math.PI * 1.2);
  expect(codes(board)).toEqual([]);
});

test("a violin's outline as a board is closed and holds its area times its thickness", () => {
  const body = outlineChain(violinHalf());
  const board = prism(body, [], 0, 4, 0.02);
  expect(Math.abs(meshVolume(board) / (4 * areaOf(body)) - 1)).toBeLessThan(5e-4);
  expect(codes(board)).toEqual([]);
});

test('a skin with a triangle missing, twice there, turned or off the map is told', () => {
  const board = prism(square, [], 0, 1, 0.01);
  const { positions, triangles } = board;
  expect(codes({ positions, triangles: triangles.slice(3) })).toContain('solid.open');
  expect(
    codes({ positions, triangles: Uint32Array.from([...triangles, ...triangles.slice(0, 3)]) }),
  ).toContain('solid.twice');
  expect(codes({ positions, triangles: triangles.toReversed() })).toEqual(['solid.inside-out']);
  expect(codes({ positions, triangles: Uint32Array.from([...triangles, 0, 0, 1]) })).toContain('solid.flat');
  expect(codes({ positions: positions.map(() => Number.NaN), triangles })).toEqual(['solid.not-finite']);
});
