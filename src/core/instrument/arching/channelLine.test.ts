import fc from 'fast-check';
import { expect, test } from 'vitest';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { type ChannelLine, channelLine } from './channelLine.ts';
import { edgeDistances, edgeMembers } from './edgeShape.ts';

const half = violinHalf();
const edge = edgeMembers(half);

function made(boutsMm: number, waistMm: number, cornersMm: number, roundingMm: number): ChannelLine {
  const checked = channelLine(half, { boutsMm, waistMm, cornersMm, roundingMm });
  if (!checked.ok) throw new Error(checked.faults[0]?.code);
  return checked.value;
}

const distance = fc.double({ min: 5, max: 9, noNaN: true });

test('over the ends and at the waist it keeps the distances that were asked for', () => {
  const { line, lastOf } = made(7, 6.5, 10, 16);
  expect(line.points[0]?.x).toBeCloseTo(0, 12);
  expect(line.points[0]?.y).toBeCloseTo(7, 12);
  expect(line.points.at(-1)?.y).toBeCloseTo(348, 9);
  for (const place of line.points.slice(0, 100))
    expect(Math.min(...edgeDistances(edge, place))).toBeCloseTo(7, 6);
  const waist = line.points
    .slice(lastOf[1], lastOf[2])
    .reduce((least, place) => (place.x < least.x ? place : least));
  expect(Math.min(...edgeDistances(edge, waist))).toBeCloseTo(6.5, 4);
});

test('it never comes nearer to the edge than the least distance', () => {
  fc.assert(
    fc.property(
      distance,
      distance,
      distance,
      fc.double({ min: 10, max: 20, noNaN: true }),
      (b, w, c, rounding) => {
        const least = Math.min(b, w, c);
        for (const place of made(b, w, c, rounding).line.points)
          expect(Math.min(...edgeDistances(edge, place))).toBeGreaterThan(least - 1e-6);
      },
    ),
    { numRuns: 15 },
  );
});

test('its heading never jumps: each step goes half way between the headings at its ends', () => {
  const { points } = made(7, 7, 10, 16).line;
  points.slice(1).forEach((to, index) => {
    const from = points[index];
    if (!from) return;
    const turn = Math.atan2(
      Math.sin(to.headingRad - from.headingRad),
      Math.cos(to.headingRad - from.headingRad),
    );
    const step = Math.atan2(to.y - from.y, to.x - from.x) - from.headingRad - turn / 2;
    expect(Math.abs(turn)).toBeLessThan(0.06);
    expect(Math.abs(Math.atan2(Math.sin(step), Math.cos(step)))).toBeLessThan(0.0001);
  });
});

test('in a corner it is the circle of the rounding, and meets both sides tangent', () => {
  const { lowerCorner, line, lastOf } = made(7, 7, 10, 16);
  const corner = line.points.slice(lastOf[0], lastOf[1] + 1);
  for (const place of corner)
    expect(Math.hypot(place.x - lowerCorner.centre.x, place.y - lowerCorner.centre.y)).toBeCloseTo(16, 6);
  expect(Math.cos((corner[0]?.headingRad ?? 0) - lowerCorner.fromRad)).toBeCloseTo(1, 9);
});

test('a rounding greater than the body, a channel beyond the middle and no distance are refused', () => {
  const codes = (b: number, rounding: number): string[] => {
    const checked = channelLine(half, { boutsMm: b, waistMm: b, cornersMm: b, roundingMm: rounding });
    return checked.ok ? [] : checked.faults.map(({ code }) => code);
  };
  expect(codes(7, 90)).toEqual(['channel.corner']);
  expect(codes(80, 1).length).toBe(1);
  expect(codes(0, 16)).toEqual(['channel.distance']);
  expect(codes(Number.NaN, 16)).toEqual(['channel.distance']);
});
