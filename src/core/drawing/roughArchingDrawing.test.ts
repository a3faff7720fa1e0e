import { expect, test } from 'vitest';
import { archValues } from '../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { drillPoints, plateArch, roughNumbers, terraces } from '../instrument/index.ts';
import { roughArchingDrawing } from './roughArchingDrawing.ts';
import { roughDrillDrawing } from './roughDrillDrawing.ts';

const ROUGH = {
  roughAllowance: 1,
  roughStep: 2,
  hollowAllowance: 0.5,
  drillPitch: 12,
  drillDiameter: 6,
  drillPoint: 1.8,
};
const values = archValues({ ...ROUGH, blankHeightBack: 18 });
const arch = plateArch(values, violinHalf(), 'back');
if (!arch.ok) throw new Error('refused');
const rough = roughNumbers(values, arch.value);
if (!rough.ok) throw new Error('refused');
const steps = terraces(arch.value, rough.value);
const holes = drillPoints(arch.value, rough.value);
const plan = roughArchingDrawing(arch.value, rough.value, steps, 'Test violin');
const chart = roughDrillDrawing(arch.value, rough.value, holes, 'Test violin');

test('plan and chart keep what every drawing keeps', () => {
  for (const drawing of [plan, chart]) {
    expect(drawingFaults(drawing)).toEqual([]);
    expect(letteringFaults(drawing)).toEqual([]);
  }
});

test('every terrace carries what is left under it and how far it is cut down from the board', () => {
  const written = plan.lettering.map(({ text }) => text);
  for (const { levelMm } of steps)
    expect(written).toContain(`${levelMm.toFixed(1)} / ${(18 - levelMm).toFixed(1)}`);
  // On a print in tiles the upper sheet tells its lines apart too: all but the narrow crown.
  const above = plan.lettering.filter(({ text, at }) => text.includes(' / ') && at.y > 200);
  expect(above.length).toBeGreaterThanOrEqual(steps.length - 1);
});

test('every hole carries its depth and, in brackets, what is left under it', () => {
  const written = chart.lettering.map(({ text }) => text);
  holes.forEach(({ depthMm, leftMm }, index) => {
    expect(written[2 * index]).toBe(depthMm.toFixed(1));
    expect(written[2 * index + 1]).toBe(`(${leftMm.toFixed(1)})`);
  });
});

test('plan and chart are printed only, and say what can hurt', () => {
  for (const drawing of [plan, chart]) {
    expect(drawing.routes).toEqual(['print']);
    expect(drawing.lines.every(({ meaning }) => meaning === 'draw')).toBe(true);
    expect(drawing.notes.join(' ')).toMatch(/eye and ear protection.*manual of the machine/);
  }
});
