import { expect, test } from 'vitest';
import type { Drawing } from '../drawing/index.ts';
import { writePictureSvg } from './writePictureSvg.ts';

const line = (meaning: 'draw' | 'cut', y: number, centreLine = false) => ({
  meaning,
  centreLine,
  chain: {
    closed: false,
    vertices: [
      { x: 0, y, bulge: 0 },
      { x: 40, y, bulge: 0 },
    ],
  },
});

const drawing: Drawing = {
  name: 'a',
  title: 'Lines & more',
  part: 'outline',
  lines: [line('cut', 10), line('draw', 0), line('draw', 5, true)],
  lettering: [{ text: 'A', at: { x: 0, y: 2 }, heightMm: 3, turnRad: 0, anchor: 'start' }],
  notes: [],
  count: 1,
  routes: ['print'],
  checks: [],
};

test('a picture holds reference lines, centre lines and lettering too, the faintest first, at true size', () => {
  const svg = writePictureSvg(drawing);
  if (!svg.ok) throw new Error(svg.faults[0]?.found);
  expect([...svg.value.matchAll(/<g id="([a-z-]+)"/g)].map((match) => match[1])).toEqual([
    'draw',
    'centre',
    'cut',
    'text',
  ]);
  expect(svg.value).toContain('width="48mm" height="18mm"');
  expect(svg.value).toContain('<title>Lines &amp; more</title>');
});

test('a drawing without a line is refused by its title', () => {
  const svg = writePictureSvg({ ...drawing, lines: [], lettering: [] });
  expect(svg.ok ? [] : svg.faults.map(({ code, at }) => [code, at])).toEqual([
    ['file.nothing-drawn', 'Lines & more'],
  ]);
});
