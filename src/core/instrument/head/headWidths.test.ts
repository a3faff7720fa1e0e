import { expect, test } from 'vitest';
import { rad, workedSizes } from '../../../../test/fixtures/workedHead.ts';
import { headProfile } from './headProfile.ts';
import { type HeadWidths, headWidths, type WidthSizes, widthAlong } from './headWidths.ts';

const sizes: WidthSizes = {
  chinMm: 27,
  narrowestMm: 11.5,
  earsMm: 42,
  turnRad: [rad(9), rad(18), rad(33.5)],
};

function widthsOf(change: Partial<WidthSizes> = {}): HeadWidths {
  const profile = headProfile(workedSizes());
  const widths = profile.ok && headWidths(profile.value, { ...sizes, ...change });
  if (!widths || !widths.ok) throw new Error('refused');
  return widths.value;
}

test('the worked widths come out of three angles and two widths', () => {
  const { stations, hiddenShare } = widthsOf();
  const spiral = stations.slice(6).map(({ widthMm }) => widthMm);
  // The worked table, its seventh figure from the angle; it was rounded by eye, so within 0.6 mm.
  const table = [11.5, 14.3, 17.8, 20.7, 24, 27, 30, 32.8, 35.5, 38, 40, 42];
  expect(spiral.length).toBe(table.length);
  for (const [index, mm] of table.entries()) expect(Math.abs((spiral[index] ?? 0) - mm)).toBeLessThan(0.75);
  expect(spiral[2]).toBeCloseTo(17.8, 1);
  expect(spiral.at(-1)).toBeCloseTo(42, 9);
  expect(hiddenShare).toBeGreaterThan(0.9);
  expect(hiddenShare).toBeLessThan(1.1);
});

test('from the front the edges of each turn open by its angle', () => {
  const { stations } = widthsOf();
  for (const [turn, deg] of [9, 18, 33.5].entries()) {
    const [top, , bottom] = stations.slice(6 + 4 * turn, 9 + 4 * turn);
    if (!top || !bottom) throw new Error('no turn');
    const opens = 2 * Math.atan((bottom.widthMm - top.widthMm) / 2 / (top.at.y - bottom.at.y));
    expect((opens * 180) / Math.PI).toBeCloseTo(deg, 9);
  }
});

test('the width falls from the chin to the top and grows from there to the eye, without a step', () => {
  const widths = widthsOf();
  const end = widths.stations.at(-1)?.alongMm ?? 0;
  let before = widthAlong(widths, 0);
  for (let mm = 0.5; mm <= end; mm += 0.5) {
    const width = widthAlong(widths, mm);
    if (mm <= widths.topMm) expect(width).toBeLessThanOrEqual(before);
    if (mm - 0.5 >= widths.topMm) expect(width).toBeGreaterThanOrEqual(before);
    expect(Math.abs(width - before)).toBeLessThan(0.6);
    before = width;
  }
});

test('ears narrower than the turns need are refused, and ears far wider are asked about', () => {
  const profile = headProfile(workedSizes());
  const narrow = profile.ok && headWidths(profile.value, { ...sizes, earsMm: 25 });
  expect(narrow && !narrow.ok && narrow.faults[0]?.code).toBe('head.widths');
  expect(widthsOf({ earsMm: 60 }).findings.map(({ code }) => code)).toEqual(['head.ears']);
  expect(widthsOf().findings).toEqual([]);
});
