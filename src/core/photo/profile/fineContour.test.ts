import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Field } from '../picture/planeField.ts';
import { contourRuns, runBetween } from './contourRuns.ts';
import { fineContour } from './fineContour.ts';
import { softFindings } from './traceProfile.ts';

/** A blurred disc, 1 inside and 0 outside, and beyond it a soft shadow to one side. */
function disc(radius: number, shadow: number): Field {
  const edge = (away: number, blur: number) => 1 / (1 + Math.exp((1.7 * away) / blur));
  return (x, y) => {
    const own = edge(Math.hypot(x, y) - radius, 0.8);
    return own + shadow * (1 - own) * edge(Math.hypot(x - 8, y + 5) - radius, 7);
  };
}

test('a rough contour is brought onto a sharp edge within 0.02 px, within 0.06 px beside a shadow', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 120, max: 300, noNaN: true }),
      fc.constantFrom(0, 0.3),
      fc.double({ min: -3, max: 6, noNaN: true }),
      (radius, shadow, off) => {
        const count = 120;
        const rough = Array.from({ length: count }, (_, i) => {
          const turn = (2 * Math.PI * i) / count;
          return { x: (radius + off) * Math.cos(turn), y: (radius + off) * Math.sin(turn) };
        });
        const fine = fineContour(disc(radius, shadow), rough, { mmPerPixel: 0.15, closed: true });
        for (const place of fine)
          expect(Math.abs(Math.hypot(place.x, place.y) - radius)).toBeLessThan(shadow > 0 ? 0.06 : 0.02);
      },
    ),
    { numRuns: 5 },
  );
});

/** A card 100 by 30 mm whose upper edge bows up by 8 mm, every half millimetre, anticlockwise. */
function card() {
  const places: { x: number; y: number }[] = [];
  for (let x = 0; x < 100; x += 0.5) places.push({ x, y: 0 });
  for (let y = 0; y < 30; y += 0.5) places.push({ x: 100, y });
  for (let x = 100; x > 0; x -= 0.5) places.push({ x, y: 30 + 8 * Math.sin((Math.PI * x) / 100) });
  for (let y = 30; y > 0; y -= 0.5) places.push({ x: 0, y });
  return places;
}

test('a card falls into four runs between its corners, one of them bowed', () => {
  const runs = contourRuns(card());
  expect(runs.length).toBe(4);
  const bowed = runs.filter(({ bowMm }) => bowMm > 0.5);
  expect(bowed.length).toBe(1);
  expect(bowed[0]!.lengthMm).toBeGreaterThan(95);
});

test('between two places the more bowed way is taken, in whichever order they are given', () => {
  const [one, other] = [
    { x: 0, y: 30 },
    { x: 100, y: 30 },
  ];
  for (const ends of [
    [one, other],
    [other, one],
  ] as const) {
    const run = runBetween(card(), ends);
    expect(Math.min(...run.places.map(({ y }) => y))).toBeGreaterThan(-0.01);
    expect(run.bowMm).toBeGreaterThan(2);
  }
});

test('an edge soft over more than a speck is told', () => {
  const places = (soft: number) =>
    Array.from({ length: 100 }, (_, i) => ({ x: i, y: 0, sigmaMm: 0.01, soft: i < soft }));
  expect(softFindings(places(20)).map(({ code }) => code)).toEqual(['profile.soft-edge']);
  expect(softFindings(places(5))).toEqual([]);
});
