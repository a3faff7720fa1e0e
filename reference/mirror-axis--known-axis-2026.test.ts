/*
 * Mirror axis against bodies whose axis is known (made by ourselves, 2026, from sums of waves: reference/made/mirrorAxisBodies.ts
 * shares nothing with the code under test), and against plain least squares over the same places, written here.
 *
 * Claimed: no farther from the true axis, at 178 mm over and under the middle of the body, than 0.03 mm rms on clean
 * bodies and 0.05 mm rms, 0.15 mm at worst, with three worn spots of up to 1.5 mm; at least 2.5 times nearer than plain
 * least squares. A slow difference of the halves (0.1 mm rms) is there in all of them, without the share that a moved or
 * turned axis would explain as well: that share belongs to the axis, by definition. Where it is left in, no method can
 * tell it from the axis, and the interval must allow for it: it holds the true axis in 93 to 97 of 100 bodies.
 */
import { expect, test } from 'vitest';
import { axisPlusMinusAt, mirrorAxis } from '../src/core/photo/meant/mirrorAxis.ts';
import { axisOffMm, type MadeBody, makeBody, plainAxis } from './made/mirrorAxisBodies.ts';

const MAKING = { deepestMm: 1.5, noiseMm: 0.02, slowMm: 0.1, slowMayLean: false, spots: 2000 };
const SEEDS = Array.from({ length: 40 }, (_, seed) => seed);
/** mm over and under the middle of the body. */
const ENDS = [-178, 178];

function found(body: MadeBody) {
  const axis = mirrorAxis(body.edge, body.start);
  if (!axis.ok) throw new Error(axis.faults[0]?.found);
  return axis.value;
}

function offsMm(body: MadeBody): readonly number[] {
  const axis = found(body);
  return ENDS.map((end) => axisOffMm(body, axis, end));
}

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
const worst = (values: readonly number[]) => Math.max(...values.map(Math.abs));

test('clean bodies give their axis to 0.03 mm rms', () => {
  const bodies = SEEDS.map((seed) => makeBody({ ...MAKING, seed, worn: 0 }));
  const off = bodies.flatMap(offsMm);
  expect(rms(off)).toBeLessThan(0.03);
});

test('bodies worn in three places give their axis to 0.05 mm rms and 2.5 times nearer than plain least squares', () => {
  const bodies = SEEDS.map((seed) => makeBody({ ...MAKING, seed, worn: 3 }));
  const off = bodies.flatMap(offsMm);
  const plain = bodies.slice(0, 20).flatMap((body) => {
    const axis = plainAxis(body);
    return ENDS.map((end) => axisOffMm(body, axis, end));
  });
  expect(rms(off)).toBeLessThan(0.05);
  expect(worst(off)).toBeLessThan(0.15);
  expect(rms(plain.map((mm) => mm / 2.5))).toBeGreaterThan(rms(off.slice(0, plain.length)));
});

test('a bend of 0.3 mm without wear leaves the axis to 0.03 mm rms (0.044 were the bend not told apart)', () => {
  const bodies = SEEDS.map((seed) => makeBody({ ...MAKING, seed, worn: 0, slowMm: 0.3 }));
  expect(rms(bodies.flatMap(offsMm))).toBeLessThan(0.03);
});

test('the interval of the axis holds the true one in 93 to 97 of 100 worn bodies that lean', () => {
  const held = Array.from({ length: 200 }, (_, seed) => {
    const body = makeBody({ ...MAKING, spots: 1000, seed: 1000 + seed, worn: 3, slowMayLean: true });
    const axis = found(body);
    return ENDS.map(
      (height) => Math.abs(axisOffMm(body, axis, height)) <= axisPlusMinusAt(axis, 178 + height),
    );
  });
  const shares = ENDS.map((_, i) => held.filter((each) => each[i]).length / held.length);

  const share = shares.reduce((sum, each) => sum + each, 0) / shares.length;
  expect(share).toBeGreaterThanOrEqual(0.93);
  expect(share).toBeLessThanOrEqual(0.97);
});
