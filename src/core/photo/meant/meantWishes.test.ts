import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { FoldedPlace } from './foldHalves.ts';
import type { StretchRule } from './meantWishes.ts';
import { type MergeRules, mergeHalves } from './mergeHalves.ts';

/**
 * A straight flank 200 mm long, folded: the right half stands 0.1 outside the middle, the left 0.1 inside it, so they
 * differ by 0.2 all along; the left half has lost 1 mm between 90 and 110, where `bothMm` is lost on both as well.
 */
function flank(bothMm = 0, purfling = false): readonly FoldedPlace[] {
  return Array.from({ length: 201 }, (_, y) => {
    const worn = y >= 90 && y <= 110;
    const half = (edgeMm: number) => ({
      edgeMm: edgeMm - (worn ? bothMm : 0),
      purflingMm: purfling ? edgeMm - 4 : null,
      sigmaMm: 0.03,
      overlookMm: 0,
      found: point<'body'>(100, y),
    });
    const right = half(0.1);
    const left = bothMm > 0 ? half(-0.1) : { ...half(-0.1), edgeMm: worn ? -1.1 : -0.1 };
    return { x: 100, y, alongMm: y, section: 'lowerBout', normalX: 1, normalY: 0, right, left };
  });
}

function merged(rules: Partial<MergeRules>, places = flank()) {
  return mergeHalves(places, { follow: 'average', rules: [], ...rules }).places;
}

const rule = (side: 'left' | 'right', take: StretchRule<'left'>['take']): MergeRules['rules'] => [
  { side, fromMm: 85, toMm: 115, take },
];
const near = (mm: number | undefined, wanted: number) =>
  expect(Math.abs((mm ?? 9) - wanted)).toBeLessThan(0.02);

test('the slow difference is averaged, or one side is followed, worn or not', () => {
  for (const y of [20, 100]) {
    near(merged({})[y]?.symmetric.outMm, 0);
    near(merged({ follow: 'right' })[y]?.symmetric.outMm, 0.1);
    near(merged({ follow: 'left' })[y]?.symmetric.outMm, -0.1);
  }
});

test('what was lost is put back from the other half', () => {
  const place = merged({})[100];
  expect(place?.symmetric.from).toBe('right');
  near(place?.restoredMm.left, 1);
  near(place?.own.left.outMm, -0.1);
  near(place?.own.right.outMm, 0.1);
});

test('a stretch ruled as found is taken as it is, and the other half follows it', () => {
  const place = merged({ rules: rule('left', 'asFound') })[100];
  near(place?.symmetric.outMm, -1);
  near(place?.own.left.outMm, -1.1);
  near(place?.restoredMm.left, 0);
});

test('a stretch ruled a mean lies between the halves as found', () => {
  const place = merged({ rules: rule('right', 'mean') })[100];
  near(place?.symmetric.outMm, -0.5);
});

test('a stretch ruled to the other side takes that one', () => {
  near(merged({ rules: rule('left', 'other') })[100]?.symmetric.outMm, 0);
  near(merged({ rules: rule('right', 'other') })[100]?.symmetric.outMm, -1);
});

test('a stretch ruled to the outer half takes it even where little is lost', () => {
  const place = merged({ rules: [{ side: 'left', fromMm: 0, toMm: 50, take: 'outer' }] })[30];
  expect(place?.symmetric.from).not.toBe('both');
});

test('rules hold only between their heights', () => {
  const place = merged({ rules: [{ side: 'left', fromMm: 150, toMm: 160, take: 'asFound' }] })[100];
  near(place?.symmetric.outMm, 0);
});

test('where both edges are worn the purfling puts them back, and is named', () => {
  const place = merged({}, flank(0.8, true))[100];
  expect(place?.symmetric.from).toBe('purfling');
  near(place?.symmetric.outMm, 0);
  near(place?.restoredMm.left, 0.8);
  near(place?.restoredMm.right, 0.8);
});

test('without a purfling wear of both halves stays as it is found', () => {
  const place = merged({}, flank(0.8))[100];
  expect(place?.symmetric.from).toBe('both');
  near(place?.symmetric.outMm, -0.8);
});
