import { expect, test } from 'vitest';
import { archValues } from '../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { boundsOf, segments } from '../curve/index.ts';
import { plateArch } from '../instrument/index.ts';
import { archGaugeDrawings } from './archGaugeDrawings.ts';
import type { ArchGaugeOptions } from './archGaugeOptions.ts';
import type { Drawing } from './drawing.ts';

const made = plateArch(archValues(), violinHalf(), 'back');
if (!made.ok) throw new Error('refused');
const arch = made.value;

function gauges(options: Partial<ArchGaugeOptions>): readonly Drawing[] {
  const drawn = archGaugeDrawings(arch, { instrumentName: 'Test violin', gaugeThicknessMm: 3, ...options });
  if (!drawn.ok) throw new Error(drawn.faults[0]?.found);
  return drawn.value;
}

function cutOf({ lines }: Drawing) {
  const cut = lines.find(({ meaning }) => meaning === 'cut');
  if (!cut) throw new Error('no cut');
  return cut.chain;
}

test('gauges on the bench stand on both feet beside the plate, and still touch its edge', () => {
  const drawn = gauges({ feet: 'bench' });
  for (const [index, drawing] of drawn.entries()) {
    expect(drawingFaults(drawing)).toEqual([]);
    expect(letteringFaults(drawing)).toEqual([]);
    const cut = cutOf(drawing);
    expect(boundsOf(cut).min.y).toBe(0);
    const soles = segments(cut).filter(({ start, end }) => start.y === 0 && end.y === 0);
    expect(soles).toHaveLength(2);
    const station = arch.stations[index];
    const edges = station ? [-station.edgeHalfWidthMm, station.edgeHalfWidthMm] : [0, arch.bodyLengthMm];
    for (const { start, end } of soles) {
      const outside = (x: number): boolean => x <= (edges[0] ?? 0) - 2 || x >= (edges[1] ?? 0) + 2;
      expect(outside(start.x) && outside(end.x)).toBe(true);
    }
    expect(cut.vertices.some(({ y }) => Math.abs(y - arch.numbers.edgeHeightMm) < 1e-9)).toBe(true);
  }
});

test('the long gauge of a back steps over the button', () => {
  const long = gauges({ feet: 'bench' }).at(-1);
  if (!long) throw new Error('none');
  const inner = segments(cutOf(long)).filter(({ start, end }) => start.y === 0 && end.y === 0)[1];
  expect(Math.min(inner?.start.x ?? 0, inner?.end.x ?? 0)).toBeGreaterThan(arch.bodyLengthMm + 15);
  expect(long.notes.join(' ')).toContain('steps over the button');
  const wider = gauges({ feet: 'bench', buttonMm: 25 }).at(-1);
  if (!wider) throw new Error('none');
  const stands = segments(cutOf(wider)).filter(({ start, end }) => start.y === 0 && end.y === 0)[1];
  expect(Math.min(stands?.start.x ?? 0, stands?.end.x ?? 0)).toBeGreaterThan(arch.bodyLengthMm + 25);
});

test('a further place is drawn like a station and named after its height', () => {
  const drawn = gauges({ atMm: [95, 150.5] });
  expect(drawn.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['arching-gauge-back-at-95', 'arching-gauge-back-at-150-5']),
  );
  for (const drawing of drawn) expect(letteringFaults(drawing)).toEqual([]);
});

test('the notes say how a square edge reads, and by how much', () => {
  const note = (workingEdge: 'bevelled' | 'square'): string =>
    gauges({ workingEdge })[1]?.notes.join(' ') ?? '';
  expect(note('bevelled')).toMatch(/left square it would ride .* by up to 0\.\d\d mm/);
  expect(note('square')).toMatch(/clears the plate with its whole thickness.* by up to 0\.\d\d mm/);
});

test('a place off the arch is refused in words', () => {
  const drawn = archGaugeDrawings(arch, { instrumentName: '', gaugeThicknessMm: 3, atMm: [3] });
  expect(drawn.ok ? '' : drawn.faults[0]?.code).toBe('gauge.place');
});
