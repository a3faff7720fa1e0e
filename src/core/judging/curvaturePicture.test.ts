import { expect, test } from 'vitest';
import { archValues } from '../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { plateArch } from '../instrument/index.ts';
import { plateCurvatures } from './curvaturePicture.ts';

const made = plateArch(archValues(), violinHalf(), 'back');
if (!made.ok) throw new Error('the usual back is refused');
const back = made.value;
const stepMm = 4;
const { mean, larger } = plateCurvatures(back, 'finished', stepMm);
const at = (field: typeof mean, x: number, y: number) =>
  field.zMm[
    Math.round(y / stepMm) * field.columns + (field.columns - 1) / 2 + Math.round(x / stepMm)
  ] as number;

test('at the crest of the waist a back bends across as its cycloid does, along as its long arch', () => {
  const waist = back.stations.find(({ name }) => name === 'waist');
  if (!waist) throw new Error('no waist');
  const [a, b] = [waist.halfWidthMm / Math.PI, waist.riseMm / 2];
  // The crest of a curtate cycloid has this radius; the long arch is a circle through crest and channel with end fillets.
  const across = -1000 * (b / (a + b) ** 2);
  const { startMm, endMm } = back.longArch;
  const half = (endMm - startMm) / 2;
  const along = -1000 / ((half ** 2 + back.riseMm ** 2) / (2 * back.riseMm) - 40);
  expect(at(larger, 0, waist.yMm) / across).toBeCloseTo(1, 1);
  expect(at(mean, 0, waist.yMm) / ((across + along) / 2)).toBeCloseTo(1, 1);
});

test('domed is below nothing, hollow above; both sides alike; nothing is told outside the channel', () => {
  expect(at(mean, 0, 180)).toBeLessThan(0);
  expect(at(larger, 44, 180)).toBeGreaterThan(0);
  for (let row = 0; row < mean.rows; row++)
    for (let column = 0; column < mean.columns; column++)
      expect(mean.zMm[row * mean.columns + column]).toBe(mean.zMm[(row + 1) * mean.columns - 1 - column]);
  expect(at(mean, 0, 4)).toBeNaN();
});
