/**
 * Pull of strings and load of the bridge.
 *
 * Sources: M. Mersenne, Harmonie universelle (1636), law of the stretched string, T = μ (2 L f)²; equal-step pitches of
 * A 440 as every table of pitches prints them (common practice); R. M. Mottola, note on the downforce of a bridge
 * (web, no year in our notes): equal legs, F = 2 T sin(β/2), β = 180° − break angle. The rows of forces and the masses
 * were computed from these laws in our notes, not printed in the sources.
 * Claim: pitches to a hundredth of a hertz, forces to a tenth of a newton, masses to a thousandth of a gram a metre.
 */
import { expect, test } from 'vitest';
import { bridgeLoad } from '../src/core/instrument/strings/bridgeLoad.ts';
import { pitchHz, stringMass } from '../src/core/instrument/strings/stringTension.ts';

const DEGREE = Math.PI / 180;

test.each([
  ['violin E', 7, 659.26],
  ['violin D', -7, 293.66],
  ['violin G', -14, 196.0],
  ['viola C', -21, 130.81],
  ['cello A', -12, 220.0],
  ['cello D', -19, 146.83],
  ['cello G', -26, 98.0],
  ['cello C', -33, 65.41],
] as const)('%s sounds at the pitch of the tables', (_name, steps, hz) => {
  expect(Math.abs(pitchHz(440, steps) - hz)).toBeLessThanOrEqual(0.005 + 1e-9);
});

test.each([
  [157, 89.7],
  [158, 85.9],
  [159, 82.0],
  [160, 78.1],
])('225 N over a bridge with a break of %d° press it down with %d N', (breakDegrees, downN) => {
  const leg = (breakDegrees / 2) * DEGREE;
  expect(Math.abs(bridgeLoad(225, leg, leg).downN - downN)).toBeLessThanOrEqual(0.05);
});

test('unequal legs: 227 N at 80° and 76° press with 94.3 N and push 3.3 N toward the board', () => {
  const load = bridgeLoad(227, 80 * DEGREE, 76 * DEGREE);
  expect(Math.abs(load.downN - 94.3)).toBeLessThanOrEqual(0.05);
  expect(Math.abs(load.towardBoardN - 3.3)).toBeLessThanOrEqual(0.05);
});

test.each([
  ['E', 7, 80, 0.428],
  ['A', 0, 56, 0.672],
  ['D', -7, 46, 1.24],
  ['G', -14, 45, 2.722],
] as const)('a violin %s of 328 mm', (_name, steps, tensionN, gramsPerMetre) => {
  expect(Math.abs(stringMass(tensionN, 328, pitchHz(440, steps)) - gramsPerMetre)).toBeLessThanOrEqual(0.001);
});
