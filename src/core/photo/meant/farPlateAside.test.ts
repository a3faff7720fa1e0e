import { describe, expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { FoldedPlace } from './foldHalves.ts';
import { mergeHalves } from './mergeHalves.ts';

/** A straight flank, folded: the left half stands out by so much between 80 and 120, where so much can show beyond each. */
function flank(
  outMm: number,
  overlookMm: { readonly left: number; readonly right: number },
): readonly FoldedPlace[] {
  return Array.from({ length: 201 }, (_, y) => {
    const here = y >= 80 && y <= 120;
    const half = (side: 'left' | 'right') => ({
      edgeMm: here && side === 'left' ? outMm : 0,
      purflingMm: null,
      sigmaMm: 0.03,
      overlookMm: y >= 60 && y <= 140 ? overlookMm[side] : 0,
      found: point<'body'>(100, y),
    });
    return {
      x: 100,
      y,
      alongMm: y,
      section: 'lowerBout',
      normalX: 1,
      normalY: 0,
      right: half('right'),
      left: half('left'),
    };
  });
}

const at100 = (places: readonly FoldedPlace[]) => mergeHalves(places).places[100]?.symmetric;

describe('a half that stands out by 4 mm', () => {
  test('has kept its wood where no ribs can show', () => {
    expect(at100(flank(4, { left: 0, right: 0 }))).toMatchObject({ from: 'left' });
    expect(at100(flank(4, { left: 0, right: 0 }))?.outMm).toBeCloseTo(4, 1);
  });

  test('was followed on ribs or far plate where so much of them can show on it alone', () => {
    expect(at100(flank(4, { left: 5, right: 0 }))).toMatchObject({ from: 'right' });
    expect(at100(flank(4, { left: 5, right: 0 }))?.outMm).toBeCloseTo(0, 1);
  });

  test('is believed where less can show, or as much on the other half', () => {
    expect(at100(flank(4, { left: 1.5, right: 0 }))).toMatchObject({ from: 'left' });
    expect(at100(flank(4, { left: 5, right: 4 }))).toMatchObject({ from: 'left' });
  });

  test('is taken as found where the maker says so, ribs or no ribs', () => {
    const places = flank(4, { left: 5, right: 0 });
    const rules = [{ side: 'left', fromMm: 70, toMm: 130, take: 'asFound' }] as const;
    const merged = mergeHalves(places, { follow: 'average', rules }).places;
    expect(merged[100]).toMatchObject({ symmetric: { from: 'left' }, aside: null });
    expect(mergeHalves(places).places[100]?.aside).toMatchObject({ side: 'left', mm: expect.closeTo(4, 0) });
  });
});

test('a loss of a millimetre is put back, ribs or no ribs', () => {
  expect(at100(flank(1, { left: 5, right: 0 }))).toMatchObject({ from: 'left' });
});
