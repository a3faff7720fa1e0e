import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { garland, newFolder } from './runGarland.ts';

const folder = newFolder();
const run = (...words: readonly string[]) => garland(folder.path, ...words);
afterAll(() => folder.remove());

function table(name: string, measuredHeights: unknown): void {
  const json = {
    family: 'violin',
    values: { bodyLength: 354 },
    taken: { bodyLength: 'straight', widths: 'edge' },
    measuredHeights,
  };
  writeFileSync(join(folder.path, name), JSON.stringify(json));
}

test('a grid of heights in the table draws the surface, and every height is listed with what is left of it', async () => {
  const heights = [
    [0, 198, 14.9],
    [20, 198, 13.6],
    [-20, 198, 13.5],
    [0, 80, 10.9],
    [60, 75, 7.6],
    [-60, 75, 7.5],
  ];
  table('table.json', { back: { heights, plusMinus: 0.2, source: 'callipers on a bridge' } });
  expect(await run('draft', 'table.json', '--out', 'violin.json')).toMatchObject({ code: 0, err: '' });
  const told = await run('derive', 'violin.json');
  expect(told.code, told.err).toBe(0);
  expect(told.out).toMatch(/^back\.measuredHeights +0\.2 +mm +measured: callipers on a bridge$/m);
  expect(told.out).toMatch(
    /back: 6 measured heights, \d\.\d\d mm rms off the arch of the numbers, 0\.(0\d|10) mm off/,
  );
  const json = await run('derive', 'violin.json', '--json');
  const { back, top } = JSON.parse(json.out).plates;
  expect(back.measuredHeights.map((height: number[]) => height.slice(0, 3))).toEqual(heights);
  for (const [, , , left] of back.measuredHeights) expect(Math.abs(left)).toBeLessThan(0.3);
  expect(top.measuredHeights).toBeUndefined();
});

test('a height with two numbers is refused with its place, and nothing is written', async () => {
  table('short.json', { top: { heights: [[0, 198]] } });
  const ended = await run('draft', 'short.json', '--out', 'short.garland.json');
  expect(ended.code).toBe(3);
  expect(ended.err).toMatch(
    /measuredHeights\.top\.heights\.?\[?0\]?.*three numbers: across from the centre line/s,
  );
  expect(() => readFileSync(join(folder.path, 'short.garland.json'))).toThrow();
});
