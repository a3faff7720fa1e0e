import { expect, test } from 'vitest';
import { seededNormal, seededRandom } from '../../base/index.ts';
import { runLength } from './runLength.ts';
import { type GapPlace, smoothGap } from './smoothGap.ts';

const wave = (alongMm: number) => 0.2 * Math.sin((2 * Math.PI * alongMm) / 80);

function places(seed: number, sigmaMm: number, hidden: readonly [number, number] = [0, -1]): GapPlace[] {
  const random = seededRandom(seed);
  return Array.from({ length: 60 }, (_, i) => {
    const alongMm = 4 * i;
    const seen = alongMm < hidden[0] || alongMm > hidden[1];
    return { alongMm, gapMm: seen ? wave(alongMm) + sigmaMm * seededNormal(random) : null, sigmaMm };
  });
}

test('a straight line without scatter is given back', () => {
  const line = Array.from({ length: 20 }, (_, i) => ({
    alongMm: 3 * i,
    gapMm: 0.1 + 0.002 * i,
    sigmaMm: 0.01,
  }));
  smoothGap(line, 'free').forEach(({ gapMm }, i) => {
    expect(Math.abs(gapMm - line[i].gapMm)).toBeLessThan(0.001);
  });
});

test('scatter is evened out, and the interval holds the true wave in about 95 of 100 places', () => {
  let [inside, count, square] = [0, 0, 0];
  for (let seed = 1; seed <= 30; seed++) {
    smoothGap(places(seed, 0.05), 'free').forEach(({ gapMm, sigmaMm }, i) => {
      const off = gapMm - wave(4 * i);
      square += off * off;
      count++;
      if (Math.abs(off) <= 2 * sigmaMm) inside++;
    });
  }
  expect(Math.sqrt(square / count)).toBeLessThan(0.03);
  expect(inside / count).toBeGreaterThan(0.92);
  expect(inside / count).toBeLessThan(0.98);
});

test('a hidden stretch is bridged, and is the less sure the farther it is from what was seen', () => {
  const smooth = smoothGap(places(2, 0.02, [100, 140]), 'free');
  const sigma = (alongMm: number) => smooth[alongMm / 4].sigmaMm;
  expect(sigma(120)).toBeGreaterThan(sigma(104));
  expect(sigma(120)).toBeGreaterThan(3 * sigma(60));
  expect(Math.abs(smooth[30].gapMm - wave(120))).toBeLessThan(2 * sigma(120));
});

test('one place that stands far off does not pull the line', () => {
  const good = places(3, 0.02);
  const bad = good.map((place, i) => (i === 30 ? { ...place, gapMm: 2 } : place));
  const [line, pulled] = [smoothGap(good, 'free'), smoothGap(bad, 'free')];
  expect(Math.abs(pulled[30].gapMm - line[30].gapMm)).toBeLessThan(0.03);
});

test('a pinned run starts at no gap, a level one without slope', () => {
  const raised = Array.from({ length: 30 }, (_, i) => ({ alongMm: 2 * i, gapMm: 0.1, sigmaMm: 0.02 }));
  expect(Math.abs(smoothGap(raised, 'pinned')[0].gapMm)).toBeLessThan(0.001);
  const level = smoothGap(
    raised.map((place, i) => ({ ...place, gapMm: i < 8 ? null : 0.1 + 0.01 * (i - 8) })),
    'level',
  );
  expect(Math.abs(level[1].gapMm - level[0].gapMm)).toBeLessThan(0.001);
});

test('no place gives no line', () => {
  expect(smoothGap([], 'free')).toEqual([]);
});

test('independent values stand alone, values that repeat four times go together by four', () => {
  const random = seededRandom(9);
  const alone = Array.from({ length: 4000 }, () => seededNormal(random));
  expect(Math.abs(runLength(alone) - 1)).toBeLessThan(0.2);
  const fours = alone.slice(0, 1000).flatMap((value) => [value, value, value, value]);
  expect(Math.abs(runLength(fours) - 4)).toBeLessThan(0.6);
  expect(runLength([0, 0, 0])).toBe(1);
});
