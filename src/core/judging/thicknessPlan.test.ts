import { expect, test } from 'vitest';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { containsPoint, nearestOn } from '../curve/index.ts';
import { type Design, draftDesign } from '../design/index.ts';
import { deriveInstrument, type Instrument, thicknessAt } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { heightField, placesOf } from '../surface/index.ts';
import { thicknessDrawing } from './thicknessDrawing.ts';
import { thicknessLevels, thicknessLines } from './thicknessLines.ts';
import { thicknessPlan } from './thicknessPlan.ts';

function violin(thickness?: Design['thickness']): Instrument {
  const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family: 'violin', name: 'violin', values: { bodyLength } });
  if (!drafted.ok) throw new Error('refused');
  const made = deriveInstrument({ ...drafted.value.design, ...(thickness && { thickness }) });
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
}

const usual = violin();
const pulled = violin({
  top: {
    points: [
      [30, 120, 3.65],
      [0, 250, 2.85],
    ],
    post: { extra: 0.4 },
    bar: { extra: 0.3 },
  },
});
const plans = (['back', 'top'] as const).flatMap((plate) => [
  { name: `usual ${plate}`, plan: thicknessPlan(usual, plate) },
  { name: `${plate} with points and areas of the top`, plan: thicknessPlan(pulled, plate) },
]);

test.each(plans)(
  'every figure of the $name is the thickness of the map at its cross, where the hollow has its full depth',
  ({ plan }) => {
    const { line, thickness, rampMm } = plan.hollow;
    expect(plan.places.length).toBeGreaterThan(80);
    for (const { at, figure } of plan.places) {
      expect(Math.abs(Number(figure.text) - thicknessAt(thickness, at.x, at.y))).toBeLessThanOrEqual(
        0.05 + 1e-9,
      );
      expect(containsPoint(line, at)).toBe(true);
      expect(nearestOn(line, at).distanceMm).toBeGreaterThan(rampMm);
    }
    expect(plan.places.map(({ at }) => at)).toContainEqual({ x: 0, y: thickness.middleYMm });
  },
);

test.each(plans)(
  'lines of the $name run where the map has their thickness, inside the gluing face',
  ({ plan }) => {
    const { line, thickness } = plan.hollow;
    expect(plan.lines.length).toBeGreaterThan(5);
    for (const one of plan.lines)
      for (const [x, y] of placesOf(one)) {
        expect(Math.abs(thicknessAt(thickness, x, y) - one.levelMm)).toBeLessThan(0.005);
        expect(containsPoint(line, { x, y }) || nearestOn(line, { x, y }).distanceMm < 1e-6).toBe(true);
      }
  },
);

/** mm along a line. */
function wayAlong(places: readonly (readonly [number, number])[]): number {
  return places.slice(1).reduce((sum, [x, y], index) => {
    const [beforeX, beforeY] = places[index] as readonly [number, number];
    return sum + Math.hypot(x - beforeX, y - beforeY);
  }, 0);
}

test('every line longer than 70 mm carries its number, on the line', () => {
  for (const { plan } of plans) {
    const levels = [...new Set(plan.lines.map(({ levelMm }) => levelMm))];
    const whole = thicknessLines(plan.hollow, levels, 1).filter((one) => wayAlong(placesOf(one)) > 70);
    expect(whole.length).toBeGreaterThanOrEqual(5);
    for (const one of whole)
      expect(
        plan.numbers.some(
          ({ levelMm, lettering }) =>
            levelMm === one.levelMm &&
            Number(lettering.text) === levelMm &&
            placesOf(one).some(([x, y]) => Math.hypot(x - lettering.at.x, y - lettering.at.y) < 6),
        ),
        `${plan.arch.plate}, ${one.levelMm} mm`,
      ).toBe(true);
  }
});

test('points and areas that the maker asked for are measured at their own places, points on both halves', () => {
  const { places, hollow } = thicknessPlan(pulled, 'top');
  const at = (x: number, y: number) =>
    places.find((place) => Math.hypot(place.at.x - x, place.at.y - y) < 1e-9)?.figure.text;
  expect([at(30, 120), at(-30, 120), at(0, 250)]).toEqual(['3.65', '3.65', '2.85']);
  for (const { from, to } of hollow.thickness.areas)
    expect(at((from.x + to.x) / 2, (from.y + to.y) / 2)).toBeDefined();
});

test('the sheet keeps what every drawing keeps, is printed only, and says when halves differ', () => {
  for (const { name, plan } of plans) {
    const sheet = thicknessDrawing(plan);
    expect(drawingFaults(sheet), name).toEqual([]);
    expect(letteringFaults(sheet), name).toEqual([]);
    expect(sheet.routes).toEqual(['print']);
    expect(sheet.notes.join(' ')).toMatch(name.includes('top with') ? /halves differ/ : /halves are alike/);
    expect(sheet.notes.join(' ')).toMatch(/manual of the machine/);
  }
});

test('lines are drawn for round thicknesses between the least and the most, never for either', () => {
  const between = (leastMm: number, mostMm: number): readonly number[] => {
    const grid = { fromXMm: 0, fromYMm: 0, stepMm: 1, columns: 2, rows: 1 };
    return thicknessLevels(heightField(grid, (x) => (x === 0 ? leastMm : mostMm))).levelsMm;
  };
  expect(between(2.4, 3)).toEqual([2.5, 2.6, 2.7, 2.8, 2.9]);
  expect(between(2.35, 2.95)).toEqual([2.4, 2.5, 2.6, 2.7, 2.8, 2.9]);
  expect(between(3.4, 7)).toEqual([3.5, 4, 4.5, 5, 5.5, 6, 6.5]);
  expect(between(2.5, 2.5)).toEqual([]);
});
