import { expect, test } from 'vitest';
import { workedSizes } from '../../../../test/fixtures/workedHead.ts';
import { type Point, seededRandom } from '../../base/index.ts';
import { lengthOf, pointAlong } from '../../curve/index.ts';
import { FITTED, fitHead, type SilhouettePlace } from './fitHead.ts';
import { headProfile } from './headProfile.ts';
import type { ProfileSizes } from './profileSizes.ts';

/** A head that differs from the usual one by what real heads do. */
const TRUE: ProfileSizes = {
  ...workedSizes(),
  lengthMm: 104.6,
  topMm: 98,
  depthMm: 51.8,
  scrollHeightMm: 38.4,
  scrollFrontMm: 0.4,
  leanRad: workedSizes().leanRad + 0.04,
  chinBehindMm: 30.6,
  hollowRadiusMm: 29,
  frontRad: workedSizes().frontRad - 0.03,
  neckBehindMm: 12.6,
};

/** Its silhouette with a stub of neck, every half millimetre, laid askew, with noise. */
function silhouette(sizes: ProfileSizes, noiseMm: number, spoil?: (at: Point<'head'>) => Point<'head'>) {
  const head = headProfile(sizes);
  if (!head.ok) throw new Error('no head');
  const random = seededRandom(11);
  const stub: Point<'head'>[] = [];
  for (let y = 0; y >= -34; y -= 0.5) stub.push({ x: 0, y });
  for (let x = 0; x <= sizes.neckBehindMm; x += 0.5) stub.push({ x, y: -34 });
  for (let y = -34; y < -sizes.chinReachMm; y += 0.5) stub.push({ x: sizes.neckBehindMm, y });
  const { outline } = head.value;
  const round = Array.from({ length: Math.floor(2 * lengthOf(outline)) }, (_, i) =>
    pointAlong(outline, i / 2),
  );
  const places = [...round, ...stub].map((at) => spoil?.(at) ?? at);
  return places.map(({ x, y }): SilhouettePlace => {
    const [c, s] = [Math.cos(0.012), Math.sin(0.012)];
    const [nx, ny] = [noiseMm * (random() - 0.5) * 2, noiseMm * (random() - 0.5) * 2];
    return { x: 0.8 + x * c - y * s + nx, y: -1.1 + x * s + y * c + ny, sigmaMm: 0.1 };
  });
}

function fitted(places: readonly SilhouettePlace[]) {
  const fit = fitHead(places, workedSizes());
  if (!fit.ok) throw new Error(JSON.stringify(fit.faults));
  return fit.value;
}

test('a head is found again from its silhouette, within what is said to be sure', () => {
  const fit = fitted(silhouette(TRUE, 0.15));
  expect(fit.rmsMm).toBeLessThan(0.15);
  expect(fit.usedShare).toBeGreaterThan(0.95);
  const found = fit.profile.sizes;
  expect(Math.abs(found.lengthMm - TRUE.lengthMm)).toBeLessThan(0.3);
  expect(Math.abs(found.scrollHeightMm - TRUE.scrollHeightMm)).toBeLessThan(0.3);
  expect(Math.abs(found.leanRad - TRUE.leanRad)).toBeLessThan(0.03);
  for (const name of FITTED)
    expect(Math.abs(found[name] - TRUE[name]), name).toBeLessThan(Math.max(fit.plusMinus[name], 0.1));
});

test('every stretch of the outline is told, and where the original is worn it is that stretch', () => {
  const clean = fitted(silhouette(TRUE, 0.05));
  expect(clean.stretches.map(({ stretch }) => stretch)).toEqual([
    'under the chin',
    'hollow over the chin',
    'straight of the back',
    'round of the back',
    'top and front of the scroll',
    'bottom of the scroll',
    'throat',
    'front of the pegbox',
  ]);
  for (const { rmsMm } of clean.stretches) expect(rmsMm).toBeLessThan(0.2);
  // A chin worn off by two millimetres.
  const worn = fitted(silhouette(TRUE, 0.05, (at) => (at.x > 28.6 && at.y < -1 ? { x: 28.6, y: at.y } : at)));
  const worst = worn.stretches.reduce((a, b) => (Math.abs(a.mostMm) > Math.abs(b.mostMm) ? a : b));
  expect(['hollow over the chin', 'under the chin']).toContain(worst.stretch);
  expect(worst.mostMm).toBeLessThan(-0.5);
  expect(Math.abs(worn.profile.sizes.scrollHeightMm - TRUE.scrollHeightMm)).toBeLessThan(0.4);
});

test('a circle is no head', () => {
  const circle = Array.from({ length: 300 }, (_, i): SilhouettePlace => {
    const turn = (2 * Math.PI * i) / 300;
    return { x: 300 + 20 * Math.cos(turn), y: 20 * Math.sin(turn), sigmaMm: 0.1 };
  });
  const fit = fitHead(circle, workedSizes());
  expect(fit.ok ? '' : fit.faults[0]?.code).toBe('head.no-fit');
});
