import { expect, test } from 'vitest';
import { doubleLineResponse } from './doubleLine.ts';

const STEP_MM = 0.05;
const SPREAD_MM = 0.2;
/** mm between the dark lines' middles. */
const WIDTH_MM = 1.1;

/** A rim from its edge inwards, mm: wood that darkens to the edge, a purfling 4.3 mm in, a glint on the ridge 1.4 mm in, a veil of glare inside. */
function rim(black: number, strip: number, veil: number): Float32Array {
  const bell = (mm: number, at: number) => Math.exp(-((mm - at) ** 2) / (2 * SPREAD_MM ** 2));
  return Float32Array.from({ length: 200 }, (_, i) => {
    const mm = i * STEP_MM;
    return (
      0.14 * Math.min(1, 0.5 + mm / 4) +
      veil / (1 + Math.exp(-2 * (mm - 5))) -
      black * (bell(mm, 4.3 - WIDTH_MM / 2) + bell(mm, 4.3 + WIDTH_MM / 2)) +
      strip * bell(mm, 4.3) +
      0.07 * bell(mm, 1.4)
    );
  });
}

/** Wood of one light with one dark line in it. */
function oneLine(black: number): Float32Array {
  return Float32Array.from(
    { length: 200 },
    (_, i) => 0.14 - black * Math.exp(-((i * STEP_MM - 4.3) ** 2) / (2 * SPREAD_MM ** 2)),
  );
}

/** mm from the edge at which a double line answers most plainly, and how plainly. */
function plainest(light: Float32Array) {
  const response = doubleLineResponse({ samples: light.length, fromMm: 0, stepMm: STEP_MM, light }, WIDTH_MM);
  const best = response.reduce((at, value, i) => (value > response[at] ? i : at), 0);
  return { mm: best * STEP_MM, size: response[best] };
}

test('black lines and a light strip in light wood answer at their middle', () => {
  const { mm, size } = plainest(rim(0.1, 0.03, 0));
  expect(Math.abs(mm - 4.3)).toBeLessThan(0.1);
  expect(size).toBeGreaterThan(0.3);
});

test('black lines that hardly darken, under a veil of glare, are told by the strip between them, and not with the groove beside a glint', () => {
  const { mm, size } = plainest(rim(0.02, 0.15, 0.12));
  expect(Math.abs(mm - 4.3)).toBeLessThan(0.1);
  expect(size).toBeGreaterThan(0.15);
});

test('a glint alone is no double line, and one as light as it likes answers less than black lines do', () => {
  expect(plainest(rim(0, 0, 0)).size).toBeLessThan(0.1);
  expect(plainest(rim(0, 1, 0)).size).toBeLessThan(0.25);
});

test('one dark line is not taken for two', () => {
  expect(plainest(oneLine(0.1)).size).toBeLessThan(0.2);
});

test('a strip between the black lines that is as dark as they are does not count against them', () => {
  expect(plainest(rim(0.05, -0.06, 0)).size).toBeGreaterThan(0.3);
});
