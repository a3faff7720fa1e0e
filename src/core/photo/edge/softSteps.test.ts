import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import { silhouetteBeyondMm } from './roundedRim.ts';
import { heldToPurfling, type Told } from './softSteps.ts';

const PX_PER_MM = 5;

/** Steps so many mm from the place that the purfling tells, one a millimetre of edge. */
function heldMm(stepsMm: readonly number[]): readonly number[] {
  const edge = stepsMm.map(
    (_, i): EdgePoint => ({
      point: point(i, 0),
      normal: point(0, 1),
      side: 'bass',
      section: 'cBout',
      along: 260 + i,
      state: 'seen',
      sigmaPx: 0.1,
    }),
  );
  const told = stepsMm.map((mm): Told => ({ by: 'edge', outPx: mm * PX_PER_MM }));
  const witnesses = stepsMm.map(() => ({ outPx: 0, missPx: 0.45 * PX_PER_MM, limitPx: -20 }));
  return heldToPurfling(edge, told, witnesses, PX_PER_MM).map((one) =>
    one?.by === 'edge' ? one.outPx / PX_PER_MM : Number.NaN,
  );
}

test('steps that lie 0.8 mm inside their purfling’s word all along go out to within 0.1 mm of it', () => {
  for (const mm of heldMm(Array.from({ length: 21 }, () => -0.8))) expect(Math.abs(mm)).toBeLessThan(0.1);
});

test('steps near the purfling’s word, and steps outside it, stay where they were seen', () => {
  for (const mm of heldMm(Array.from({ length: 21 }, () => -0.1))) expect(mm).toBeCloseTo(-0.1, 1);
  for (const mm of heldMm(Array.from({ length: 21 }, () => 0.3))) expect(mm).toBe(0.3);
});

test('a nick among true steps stays a nick, and a step at its place among soft ones is not pushed out', () => {
  expect(heldMm(Array.from({ length: 21 }, (_, i) => (i === 10 ? -1 : 0)))[10]).toBe(-1);
  expect(heldMm(Array.from({ length: 21 }, (_, i) => (i === 10 ? 0.2 : -0.8)))[10]).toBe(0.2);
});

test('a rounded edge stands out by nothing to an upright look and by a tenth of a millimetre at a lean of 0.2', () => {
  expect(silhouetteBeyondMm(0)).toBe(0);
  expect(silhouetteBeyondMm(0.2)).toBeCloseTo(0.11, 2);
  expect(silhouetteBeyondMm(-0.2)).toBe(silhouetteBeyondMm(0.2));
});
