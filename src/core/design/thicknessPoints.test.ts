import { expect, test } from 'vitest';
import type { Design } from './design.ts';
import { askedThicknesses, askThickness, dropThickness } from './thicknessPoints.ts';

const bare: Design = {
  format: 'garland-design',
  version: 1,
  name: 'V',
  family: 'violin',
  values: {},
  outline: { kind: 'drafted' },
};

test('a single thickness is added, changed and dropped, and a design without any is as it was', () => {
  const one = askThickness(bare, 'back', 0, [40, 120, 3.2]);
  const two = askThickness(one, 'back', 1, [0, 200, 4.6]);
  const changed = askThickness(two, 'back', 1, [0, 200, 4.8]);
  expect(askedThicknesses(changed, 'back')).toEqual([
    [40, 120, 3.2],
    [0, 200, 4.8],
  ]);
  expect(askedThicknesses(changed, 'top')).toEqual([]);
  expect(dropThickness(changed, 'back', 1)).toEqual(one);
  expect(dropThickness(one, 'back', 0)).toEqual(bare);
});

test('what else is said of the plates stays', () => {
  const said: Design = {
    ...bare,
    thickness: { back: { pattern: 'longitudinal' }, top: { post: { extra: 0.2 } } },
  };
  expect(dropThickness(askThickness(said, 'back', 0, [0, 200, 4]), 'back', 0)).toEqual(said);
});
