import { expect, test } from 'vitest';
import type { Drawing } from '../../src/core/drawing/index.ts';
import { preflight } from '../../src/core/files/index.ts';
import { letteringFaults } from '../laws/lettering.ts';
import { drawingFaults } from '../laws/parts.ts';
import { drawnInstrument, germanInstrument, SHOWN } from './drawnInstruments.ts';

const LONG_NAMES = [
  'Violin after the photograph of a long model, second year, with the wide lower bout',
  'Dreiviertelgeigenmusterausdemnachlasseinesgeigenmachers',
];

test.each(SHOWN)('every piece of the %s can be cut as it stands, every contour of it closed', (shown) => {
  for (const drawing of drawnInstrument(shown)) {
    expect(preflight(drawing), drawing.name).toEqual([]);
    expect(drawingFaults(drawing)).toEqual([]);
    for (const { meaning, chain } of drawing.lines)
      if (meaning.startsWith('cut')) expect(chain.closed, drawing.name).toBe(true);
  }
});

test.each(SHOWN)('the lettering of the %s stands on its pieces, clear of edges, holes and lines', (shown) => {
  expect(drawnInstrument(shown).flatMap(letteringFaults)).toEqual([]);
});

test.each(['quarter', 'cello'] as const)('the lettering of the %s stands so in German too', (shown) => {
  expect(germanInstrument(shown).flatMap(letteringFaults)).toEqual([]);
});

test('what is cut and measured is the same in every language', () => {
  const measured = (drawings: readonly Drawing[]) =>
    drawings.map(({ name, lines, checks, count }) => ({ name, lines, checks, count }));
  expect(measured(germanInstrument('violin'))).toEqual(measured(drawnInstrument('violin')));
});

test.each(LONG_NAMES)('the name "%s" stands on the pieces of a small violin and of a cello', (name) => {
  for (const shown of ['quarter', 'cello'] as const)
    expect(drawnInstrument(shown, name).flatMap(letteringFaults)).toEqual([]);
});

test('lettering over a hole, over the edge, over a line or over another is found', () => {
  const form = drawnInstrument('violin')[0] as Drawing;
  const [name] = form.lettering;
  if (!name) throw new Error('no lettering');
  const at = (x: number, y: number): string =>
    letteringFaults({ ...form, lettering: [{ ...name, at: { x, y } }] }).join();
  expect(at(-99, 60)).toContain('leaves the piece');
  expect(letteringFaults({ ...form, lettering: [name, name] }).join()).toContain('runs into');
  expect(at(-10, name.at.y)).toContain('lies over a line');
  const hole = form.lines.find((line) => line.meaning === 'cut-inside')?.chain.vertices[0];
  expect(at((hole?.x ?? 0) - 12, hole?.y ?? 0)).toContain('lies over a hole');
});
