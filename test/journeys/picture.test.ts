import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentsOf, garland, isSentence, newFolder } from './runGarland.ts';

const folder = newFolder();
const inFolder = (...words: readonly string[]) => garland(folder.path, ...words);
const DESIGN = 'small.garland.json';

beforeAll(async () => {
  const table = { family: 'violin', name: 'Small', values: { bodyLength: 250 } };
  writeFileSync(join(folder.path, 'small.json'), JSON.stringify(table));
  const drafted = await inFolder('draft', 'small.json', '--out', DESIGN);
  expect(drafted.code, drafted.err).toBeLessThan(2);
});
afterAll(() => folder.remove());

const picture = (...words: readonly string[]) => inFolder('picture', DESIGN, ...words);
const read = (name: string) => readFileSync(join(folder.path, name));

describe('a plate is looked at from the command line', () => {
  test('contours as a picture, raking light as a PNG of the pixels asked for', async () => {
    const svg = await picture('--of', 'contours', '--interval', '2', '--out', 'contours.svg');
    expect(svg, svg.err).toMatchObject({ code: 0, out: 'Written: contours.svg\n', err: '' });
    expect(read('contours.svg').toString()).toMatch(
      /<title>Small: Back, heights above the gluing face<\/title>/,
    );
    const lit = await picture(
      '--of',
      'raking-light',
      '--lamp',
      '20,300',
      '--plate',
      'top',
      '--pixels',
      '2',
      '--out',
      'lit.png',
    );
    expect(lit, lit.err).toMatchObject({ code: 0, err: '' });
    const png = read('lit.png');
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    // The height of the picture, two pixels a millimetre: the body and a margin.
    expect(png.readUInt32BE(20) / 2).toBeGreaterThan(250);
    expect(png.readUInt32BE(20) / 2).toBeLessThan(300);
  });

  test('a map of thickness is in colour to look at, and a sheet in pages to print', async () => {
    const seen = await picture('--of', 'thickness', '--out', 'thickness.svg');
    expect(seen, seen.err).toMatchObject({ code: 0, err: '' });
    expect(read('thickness.svg').toString()).toMatch(/<title>Small: thickness of the back<\/title>/);
    const printed = await picture('--of', 'thickness', '--plate', 'top', '--out', 'thickness.pdf');
    expect(printed, printed.err).toMatchObject({ code: 0, err: '' });
    // The body is 250 mm long: with the cover it takes more than one A4 page.
    const pages = /\/Count (\d+)/.exec(read('thickness.pdf').toString('latin1'))?.[1];
    expect(Number(pages)).toBeGreaterThan(1);
  });

  test('a section tells its heights, also as data', async () => {
    const cut = await picture('--of', 'section', '--line', '0,0 0,250', '--out', 'cut.pdf', '--json');
    expect(cut.code, cut.err).toBe(0);
    const { file, says, findings } = JSON.parse(cut.out);
    expect(file).toBe('cut.pdf');
    expect(says.join(' ')).toMatch(/highest \d+\.\d\d mm, 125 mm from the start/);
    expect(findings).toEqual([]);
    expect(read('cut.pdf').toString('latin1')).toMatch(/^%PDF-/);
  });

  test('a picture that is there is not written over, unless told so', async () => {
    writeFileSync(join(folder.path, 'mine.svg'), 'mine');
    const words = ['--of', 'section', '--line', '-30,60 30,60', '--out', 'mine.svg'];
    const kept = await picture(...words);
    expect(kept.code).toBe(4);
    expect(kept.err).toMatch(/mine\.svg.*--force/);
    expect(read('mine.svg').toString()).toBe('mine');
    expect((await picture(...words, '--force')).code).toBe(0);
    expect(read('mine.svg').toString()).toMatch(/^<\?xml/);
  });

  test.each([
    [2, ['--of', 'light', '--out', 'x.svg'], /--of.*raking-light/],
    [2, ['--of', 'contours', '--interval', '-1', '--out', 'x.svg'], /--interval/],
    [2, ['--of', 'raking-light', '--lamp', 'left', '--out', 'x.svg'], /--lamp.*15,60/],
    [2, ['--of', 'section', '--out', 'x.svg'], /--line/],
    [2, ['--of', 'contours', '--out', 'x.jpeg'], /\.png/],
    [3, ['--of', 'section', '--line', '200,0 200,9', '--out', 'x.svg'], /--line.*does not meet the plate/],
    [3, ['--of', 'difference', '--with', 'nothing.json', '--out', 'x.svg'], /nothing\.json/],
  ] as const)('ends with %i for %j, in one sentence, and nothing is written', async (code, words, says) => {
    const ended = await picture(...words);
    expect(ended.code, ended.err).toBe(code);
    expect(ended.err).toMatch(says);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(Object.keys(contentsOf(folder.path)).filter((path) => path.startsWith('x'))).toEqual([]);
  });
});
