import { expect, test } from 'vitest';
import { draftDesign, type Measurements, readMeasurements } from '../../design/index.ts';
import { deriveInstrument } from '../deriveInstrument.ts';
import { plateHeight } from './plateHeight.ts';

function derived(longArch: unknown) {
  const read = readMeasurements({ family: 'violin', values: { bodyLength: 355 }, longArch });
  if (!read.ok) return read;
  const measurements: Measurements = read.value.measurements;
  const draft = draftDesign(measurements);
  return draft.ok ? deriveInstrument(draft.value.design) : draft;
}

test('each plate has the long arch and the crest that the table asks for, and the register tells them', () => {
  const made = derived({
    back: { form: 'cycloid' },
    top: { form: 'flat-topped', crest: 190, flatReach: 40, flatRadius: 3000 },
  });
  if (!made.ok) throw new Error(made.faults[0]?.found);
  const { back, top } = made.value.plates;
  expect(back.longArch.form.kind).toBe('cycloid');
  expect(top.longArch).toMatchObject({ crestMm: 190, form: { platformMm: 40, platformRadiusMm: 3000 } });
  expect(plateHeight(top, 0, 190, 'finished')).toBeCloseTo(top.archHeightMm, 12);
  for (const y of [150, 230])
    expect(plateHeight(top, 0, y, 'finished')).toBeCloseTo(
      top.archHeightMm - (3000 - Math.sqrt(3000 ** 2 - 40 ** 2)),
      9,
    );
  const told = new Map(made.value.register.entries.map((entry) => [entry.name, entry]));
  expect(told.get('top.longArch.crest')).toMatchObject({ value: 190, origin: { kind: 'chosen' } });
  expect(told.get('back.longArch.crest')).toMatchObject({ origin: { kind: 'derived' } });
});

test.each([
  [{ top: { crest: 400 } }, 'arch.crest'],
  [{ back: { form: 'circle', flatReach: 40 } }, 'arch.flat'],
  [{ back: { form: 'flat-topped', flatReach: 170 } }, 'arch.platform'],
  [{ back: { form: 'round' } }, 'measurements.wrong'],
  [{ back: { crest: Number.NaN } }, 'measurements.wrong'],
])('%j is refused in a sentence', (longArch, code) => {
  const made = derived(longArch);
  if (made.ok) throw new Error('accepted');
  expect(made.faults.map((fault) => fault.code)).toContain(code);
});
