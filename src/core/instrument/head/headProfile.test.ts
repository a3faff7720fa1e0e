import { expect, test } from 'vitest';
import { workedSizes as worked } from '../../../../test/fixtures/workedHead.ts';
import { TANGENT_RAD } from '../../base/index.ts';
import { arcOf, boundsOf, headingOn, lengthOf, segments, wrapAngle } from '../../curve/index.ts';
import { type HeadProfile, headProfile } from './headProfile.ts';
import type { ProfileSizes } from './profileSizes.ts';
import { arcStart } from './volute.ts';

function profile(sizes: ProfileSizes): HeadProfile {
  const made = headProfile(sizes);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
}

const radii = (head: HeadProfile) => head.volute.arcs.map(({ radiusMm }) => radiusMm);

test('the spiral of the worked head has its radii and places', () => {
  const head = profile(worked());
  const expected = [25.27, 21.66, 18.34, 15.35, 12.69, 10.37, 8.37, 6.68, 5.26, 4.1, 3.15, 2.4, 1.8];
  for (const [k, mm] of expected.entries()) expect(radii(head)[k]).toBeCloseTo(mm, 2);
  expect(head.volute.closing).toBeCloseTo(0.14814, 5);
  const places = [
    [48.32, 74.13],
    [23.06, 99.4],
    [1.4, 77.74],
    [19.74, 59.4],
    [35.09, 74.75],
    [22.4, 87.44],
    [12.03, 77.07],
    [20.4, 68.7],
    [27.08, 75.38],
    [21.82, 80.64],
    [17.72, 76.54],
    [20.87, 73.39],
    [23.27, 75.79],
  ];
  for (const [k, [v, u]] of places.entries()) {
    const at = arcStart(head.volute.arcs[k] as HeadProfile['volute']['arcs'][number]);
    expect(Math.hypot(at.x - (v as number), at.y - (u as number))).toBeLessThan(0.015);
  }
  const eye = head.volute.arcs[12]?.centre;
  expect(eye?.x).toBeCloseTo(21.47, 2);
  expect(eye?.y).toBeCloseTo(75.79, 2);
});

test('back, chin, front and throat of the worked head are the arcs that were worked', () => {
  const head = profile(worked());
  expect(head.backRadiusMm).toBeCloseTo(31.58, 2);
  expect(head.frontRadiusMm).toBeCloseTo(76.44, 2);
  const [hollow, straight, back] = segments(head.spine);
  if (!hollow || !straight || !back) throw new Error('no back');
  expect(arcOf(hollow)?.radiusMm).toBeCloseTo(27.5, 9);
  expect(((arcOf(hollow)?.sweepRad ?? 0) * 180) / Math.PI).toBeCloseTo(-65.9, 1);
  expect(straight.end.x).toBeCloseTo(48.49, 2);
  expect(straight.end.y).toBeCloseTo(51.78, 2);
  expect(straight.start.x).toBeCloseTo(30.78, 2);
  expect(straight.start.y).toBeCloseTo(22.3, 2);
  expect(arcOf(back)?.centre.x).toBeCloseTo(21.42, 2);
  expect(arcOf(back)?.centre.y).toBeCloseTo(68.04, 2);
  const [neckSide, tipSide] = segments(head.underside);
  expect(tipSide && arcOf(tipSide)?.radiusMm).toBeCloseTo(52.67, 1);
  expect(neckSide && arcOf(neckSide)?.radiusMm).toBeCloseTo(12.27, 2);
  expect(head.throat.centre.x).toBeCloseTo(33.89, 2);
  expect(head.throat.centre.y).toBeCloseTo(66.16, 2);
  const [round] = segments(head.throat.chain);
  expect(round && ((arcOf(round)?.sweepRad ?? 0) * 180) / Math.PI).toBeCloseTo(-196.7, 1);
  expect(round?.start.x).toBeCloseTo(32.86, 2);
  expect(round?.start.y).toBeCloseTo(66.78, 2);
  const box = boundsOf(head.spine);
  expect(box.max.x - box.min.x).toBeCloseTo(51.6, 9);
  // 212.73 from the construction's start at the back; a quarter of the outer circle comes before the top.
  const fromTop = segments(head.spine).slice(head.segmentsToTop);
  const spiral = fromTop.reduce((sum, one) => sum + (arcOf(one)?.radiusMm ?? 0) * (Math.PI / 2), 0);
  expect(spiral + (radii(head)[0] ?? 0) * (Math.PI / 2)).toBeCloseTo(212.73, 1);
});

test('enlarged to viola and cello it has the worked radii', () => {
  const viola = profile(worked(125));
  const cello = profile(worked(200));
  expect([viola.backRadiusMm, viola.frontRadiusMm].map((mm) => Number(mm.toFixed(2)))).toEqual([
    36.89, 89.29,
  ]);
  expect([radii(viola)[0], radii(viola)[12]].map((mm) => Number(mm?.toFixed(2)))).toEqual([29.52, 2.1]);
  expect([cello.backRadiusMm, cello.frontRadiusMm].map((mm) => Number(mm.toFixed(2)))).toEqual([
    59.02, 142.87,
  ]);
  expect(radii(cello)[0]).toBeCloseTo(47.23, 2);
});

/** The largest kink at the joints of an open chain, rad. */
function worstKink({ spine }: Pick<HeadProfile, 'spine'>): number {
  const all = segments(spine);
  return Math.max(
    ...all.slice(1).map((next, index) => {
      const before = all[index];
      return before ? Math.abs(wrapAngle(headingOn(next, 0) - headingOn(before, 1))) : 0;
    }),
  );
}

test('from the chin to the eye every arc touches the next', () => {
  for (const lengthMm of [85, 107, 125, 200])
    expect(worstKink(profile(worked(lengthMm)))).toBeLessThan(TANGENT_RAD);
  const head = profile(worked());
  expect(worstKink({ spine: head.underside })).toBeLessThan(TANGENT_RAD);
  expect(lengthOf(head.outline)).toBeGreaterThan(300);
});
