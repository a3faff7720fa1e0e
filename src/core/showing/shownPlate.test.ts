import { expect, test } from 'vitest';
import { draftDesign } from '../design/index.ts';
import { deriveInstrument, type Instrument } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { shownPlate } from './shownPlate.ts';

function violin(more: Readonly<Record<string, number>> = {}): Instrument {
  const origin = chosen('test');
  const values = {
    bodyLength: { value: 355, unit: 'mm', origin } as const,
    ...Object.fromEntries(
      Object.entries(more).map(([name, value]) => [name, { value, unit: 'ratio', origin }]),
    ),
  };
  const drafted = draftDesign({ family: 'violin', name: 'Test', values });
  const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!derived.ok) throw new Error(derived.faults[0]?.found);
  return derived.value;
}

test('a gauge tells the number that it is pulled by: of the top alone where it has its own', () => {
  const own = violin({ fullnessTopWaist: 0.04 });
  const waist = (instrument: Instrument, plate: 'back' | 'top') =>
    shownPlate(instrument, plate, 'finished').stations.find(({ name }) => name === 'waist');
  expect(waist(own, 'top')).toMatchObject({ fullness: 0.04, fullnessFrom: 'fullnessTopWaist' });
  expect(waist(own, 'back')).toMatchObject({ fullness: 0, fullnessFrom: 'fullnessWaist' });
  expect(waist(violin(), 'top')).toMatchObject({ fullnessFrom: 'fullnessWaist' });
});
