import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bridgeLoad } from './bridgeLoad.ts';
import { kilograms, pitchHz, plainStringMass, stringMass, stringTension } from './stringTension.ts';

test('a pitch twelve steps up sounds twice as high, and the A is the tuning itself', () => {
  expect(pitchHz(440, 0)).toBe(440);
  expect(pitchHz(415, 12)).toBeCloseTo(830, 9);
});

test('a string of a gram a metre, half a metre long, pulls a newton per (Hz)² over a thousand', () => {
  expect(stringTension(1, 500, 100)).toBeCloseTo(10, 12);
});

test('the mass that a pull asks for gives that pull again', () => {
  const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(real(20, 200), real(200, 700), real(60, 700), (tensionN, lengthMm, hz) => {
      expect(stringTension(stringMass(tensionN, lengthMm, hz), lengthMm, hz)).toBeCloseTo(tensionN, 9);
    }),
  );
});

test('a plain string weighs the volume of its metre times its density', () => {
  expect(plainStringMass(1, 4000 / Math.PI)).toBeCloseTo(1, 12);
});

test('a bridge that halves the break is not pushed over; a straight string does not press it', () => {
  const even = bridgeLoad(225, 1.37, 1.37);
  expect(even.towardBoardN).toBeCloseTo(0, 12);
  expect(bridgeLoad(225, Math.PI / 2, Math.PI / 2).downN).toBeCloseTo(0, 12);
  expect(kilograms(9.80665)).toBe(1);
});
