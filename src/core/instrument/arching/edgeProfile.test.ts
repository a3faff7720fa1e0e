import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { nearestOn } from '../../curve/index.ts';
import { edgeProfile } from './edgeProfile.ts';
import { plateArch } from './plateArch.ts';
import { plateHeight } from './plateHeight.ts';

const made = plateArch(archValues(), violinHalf(), 'back');
if (!made.ok) throw new Error('refused');
const arch = made.value;

test('at the widest bouts and at the waist the profile is the surface itself', () => {
  const profile = edgeProfile(arch, 1.2, 7, 2);
  if (!profile.ok) throw new Error('refused');
  for (const name of ['lowerBout', 'waist', 'upperBout'] as const) {
    const station = arch.stations.find((one) => one.name === name);
    if (!station) throw new Error('no station');
    for (let inward = 0.05; inward < 7; inward += 0.1) {
      const y = plateHeight(arch, station.edgeHalfWidthMm - inward, station.yMm, 'finished');
      expect(nearestOn(profile.value.chain, { x: inward, y }).distanceMm).toBeLessThan(0.01);
    }
  }
});

test('from the gluing face round the edge: lower rounding, upright face, crest, channel', () => {
  const profile = edgeProfile(arch, 1.2, 10, 2);
  if (!profile.ok) throw new Error('refused');
  const { chain, uprightMm } = profile.value;
  expect(uprightMm).toBeCloseTo(3.8 - 1.4 - 1.2, 9);
  const corners = [
    [2, 0],
    [1.2, 0],
    [0, 1.2],
    [0, 2.4],
    [1.4, 3.8],
  ];
  for (const [index, [x, y]] of corners.entries())
    expect(chain.vertices[index]).toMatchObject({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });
  expect(chain.vertices.at(-1)).toMatchObject({ x: expect.closeTo(10, 9), y: expect.closeTo(2.8, 9) });
});

test.each([3, 0, Number.NaN])('a lower rounding of %s mm is refused in words', (under) => {
  const profile = edgeProfile(arch, under, 7, 2);
  expect(profile.ok ? '' : profile.faults[0]?.code).toBe('edge.rounding');
});
