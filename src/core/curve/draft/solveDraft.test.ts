import { expect, test } from 'vitest';
import { outlineHabit } from '../../knowledge/index.ts';
import { draftProblem, equationsOf } from './draftProblem.ts';
import { solveDraft } from './solveDraft.ts';

const DEGREE = Math.PI / 180;

/*
 * The usual bodies as an earlier, separate programme drew them from the same habit: radii (end, shoulder,
 * flank, upper flank, hollow; waist lower, middle, upper; the upper bout's), headings in degrees, corners.
 */
const DRAWN_BEFORE = {
  violin: {
    radii: [206.29, 71.46, 72.31, 133.01, 22.39, 18.65, 89.26, 14.55, 130.09, 63.34, 65.27, 149.81, 21.26],
    headings: [
      13.44, 50.4, 96.58, 114.91, 59.2, 17.65, 51.54, 96.09, 107.19, 53.94, 25.3, 115.32, 78.54, 25.65,
    ],
    rest: [92.1, 145.65, 80.91, 233.22, 75.7, 198.85, 287.32],
    leans: [113.71, 68.13],
    strain: 0.3,
  },
  viola: {
    radii: [236.35, 81.76, 82.7, 152.06, 25.71, 20.89, 103.24, 16.27, 149.69, 72.56, 74.6, 171.35, 24.43],
    headings: [
      13.47, 50.4, 96.53, 114.84, 58.97, 17.74, 51.55, 96.09, 107.14, 53.76, 24.2, 115.05, 78.44, 24.72,
    ],
    rest: [105.69, 166.65, 93.08, 266.63, 86.62, 227.44, 328.51],
    leans: [113.54, 68.56],
    strain: 0.48,
  },
  cello: {
    radii: [441.35, 151.9, 153.59, 291.51, 47.04, 39.65, 190.53, 29.52, 260.42, 132.35, 140.1, 318.93, 44.13],
    headings: [
      13.53, 50.42, 96.64, 115.89, 60.75, 16.77, 51.42, 95.93, 107.5, 54.43, 26.83, 115.97, 79.19, 22.8,
    ],
    rest: [192.95, 315.85, 163.38, 495.97, 161.01, 427.81, 612.36],
    leans: [113.97, 69.27],
    strain: 0.51,
  },
} as const;

test.each(['violin', 'viola', 'cello'] as const)(
  'the usual %s is drawn with the arcs it had before',
  (family) => {
    const habit = outlineHabit(family);
    const { u, strains, settled } = solveDraft(draftProblem(habit.usualSizes, habit));
    const before = DRAWN_BEFORE[family];
    const near = (found: number, wanted: number) => expect(Math.abs(found - wanted)).toBeLessThan(0.05);
    expect(settled).toBe(true);
    before.radii.forEach((radius, i) => near(Math.exp(u[i]), radius));
    before.headings.forEach((heading, i) => near(u[13 + i] / DEGREE, heading));
    before.leans.forEach((lean, i) => near(u[27 + i] / DEGREE, lean));
    before.rest.forEach((length, i) => near(u[29 + i], length));
    expect(Math.max(...strains.map(Math.abs))).toBeCloseTo(before.strain, 2);
  },
);

test('every equation answers to every number as its own small change says', () => {
  const habit = outlineHabit('violin');
  const problem = draftProblem(habit.usualSizes, habit);
  const at = (index: number, step: number) =>
    equationsOf(
      problem,
      problem.usual.map((value, i) => (i === index ? value + step : value)),
    );
  const exact = equationsOf(problem, problem.usual);
  for (let index = 0; index < problem.usual.length; index += 1) {
    const more = at(index, 1e-5);
    const less = at(index, -1e-5);
    exact.forEach(({ row }, i) => {
      expect(row[index]).toBeCloseTo((more[i].gapMm - less[i].gapMm) / 2e-5, 5);
    });
  }
});
