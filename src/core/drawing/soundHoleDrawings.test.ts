import { expect, test } from 'vitest';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { nearestOn, sampleChain } from '../curve/index.ts';
import type { Instrument } from '../instrument/index.ts';
import { holeLaidFlat } from '../instrument/index.ts';
import { derive, draft } from '../work/index.ts';
import { soundHoleDrawings } from './soundHoleDrawings.ts';

function made(family: string, bodyLength: number, name = 'Class fiddle'): Instrument {
  const table = { format: 'garland-measurements', version: 1, family, name, values: { bodyLength } };
  const drafted = draft([{ name: 'table', json: table }]);
  if (!drafted.ok) throw new Error(drafted.faults[0]?.found);
  const derived = derive(drafted.value.design);
  if (!derived.ok) throw new Error(derived.faults[0]?.found);
  return derived.value;
}

test.each([
  ['violin', 355],
  ['violin', 280],
  ['viola', 380],
  ['viola', 440],
  ['cello', 755],
] as const)('the sound holes of a %s of %d are drawn soundly', (family, bodyLength) => {
  const sheets = soundHoleDrawings(
    made(family, bodyLength, 'A name as long as a class may think of for its fiddle'),
  );
  expect(sheets.map(({ name }) => name)).toEqual([
    'sound-hole-plan',
    'sound-hole-flat',
    'sound-hole-eyes',
    'sound-holes-placed',
  ]);
  expect(sheets.flatMap((sheet) => [...drawingFaults(sheet), ...letteringFaults(sheet)])).toEqual([]);
  for (const { lines } of sheets.slice(0, 3)) {
    const [body] = lines.filter(({ meaning }) => meaning === 'cut');
    const windows = lines.filter(({ meaning }) => meaning === 'cut-inside');
    if (!body) throw new Error('a template without an edge');
    const wallMm = windows.flatMap(({ chain }) =>
      sampleChain(chain, 0.1).map((at) => nearestOn(body.chain, at).distanceMm),
    );
    expect(Math.min(...wallMm)).toBeGreaterThan(1.5);
  }
});

test('laid flat, the stem is wider by what the arch slopes there, and the opening larger', () => {
  const instrument = made('violin', 355);
  const { soundHoles } = instrument;
  const flat = holeLaidFlat(instrument);
  if (!flat) throw new Error('not laid flat');
  // The slope across the stem, by heights taken on both sides of it.
  const gain = flat.stemMm / flat.planStemMm;
  expect(gain).toBeGreaterThan(1.03);
  expect(gain).toBeLessThan(1.09);
  expect(flat.areaMm2 / flat.planAreaMm2).toBeGreaterThan(1.03);
  expect(flat.areaMm2 / flat.planAreaMm2).toBeLessThan(1.07);
  expect(flat.strainMost).toBeLessThan(0.01);
  // The centre line lies on a ridge: it stays straight, and the hole beyond the slope moves out.
  expect(flat.innerNick.x).toBeGreaterThan(soundHoles.innerNick.x);
  expect(Math.max(...flat.centreLine.vertices.map(({ x }) => Math.abs(x)))).toBeLessThan(0.1);
});
