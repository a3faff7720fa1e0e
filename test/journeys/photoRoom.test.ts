import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cardPicture, linePicture, scrollPicture } from '../fixtures/profilePictures.ts';
import { garland, isSentence, newFolder, ROOT } from './runGarland.ts';

const folder = newFolder();
const BARS = ['--sheet-bar', '150,150'];
const at = (name: string) => join(folder.path, name);

beforeAll(async () => {
  const demo = await sharp(join(ROOT, 'demo', 'photographs', 'fiddle-top.jpg'))
    .autoOrient()
    .resize({ height: 1500 })
    .jpeg({ quality: 92 })
    .toBuffer();
  writeFileSync(at('square.jpg'), demo);
  writeFileSync(at('mirrored.jpg'), await sharp(demo).flop().jpeg().toBuffer());
  for (const name of ['fiddle-tilted.jpg', 'fiddle-card.jpg', 'fiddle-without-sheet.jpg'])
    copyFileSync(join(import.meta.dirname, name), at(name));
  for (const [name, { rgb, widthPx, heightPx }] of [
    ['card.png', cardPicture(true)],
    ['line.png', linePicture()],
    ['scroll.png', scrollPicture()],
  ] as const)
    writeFileSync(
      at(name),
      await sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
        .png()
        .toBuffer(),
    );
});
afterAll(() => folder.remove());

const TOLD = /edge (\d+(?:\.\d+)?) ± (\d+(?:\.\d+)?) mm above the sheet/;

describe('without a height of the edge', () => {
  test('two photographs tell it to 2 mm, and traced as recorded they give the same bytes', async () => {
    const words = ['trace', 'square.jpg', 'fiddle-tilted.jpg'];
    const first = await garland(folder.path, ...words, ...BARS, '--out', 'two.json', '--wear-map', 'two.pdf');
    const [, height] = TOLD.exec(first.out) ?? [];
    expect(Math.abs(Number(height) - 36.5)).toBeLessThan(2);
    expect(readFileSync(at('two.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    const again = await garland(folder.path, ...words, '--as', 'two.json', '--out', 'again.json');
    expect(again.code).toBe(first.code);
    expect(readFileSync(at('again.json'))).toEqual(readFileSync(at('two.json')));
  });

  test('a height card tells it', async () => {
    const ended = await garland(folder.path, 'trace', 'fiddle-card.jpg', ...BARS);
    const [, height, plusMinus] = TOLD.exec(ended.out) ?? [];
    expect(Math.abs(Number(height) - 36.5)).toBeLessThan(Number(plusMinus));
  });
});

test('a height that two photographs contradict is told with the one they ask for', async () => {
  const words = ['square.jpg', 'fiddle-tilted.jpg', '--edge-height', '32'];
  const ended = await garland(folder.path, 'trace', ...words, ...BARS);
  expect(ended.code).toBe(1);
  expect(ended.out).toMatch(
    /32 mm was given and used, but the photographs together tell 3[5-7]\.\d ± \d\.\d mm/,
  );
});

test('a scan is as large as its resolution says, and its wear is drawn', async () => {
  const words = [
    'fiddle-without-sheet.jpg',
    '--scan-bar',
    '100,100 1000,100 = 338.6 mm',
    '--wear-map',
    'wear.svg',
  ];
  const ended = await garland(folder.path, 'trace', ...words, '--json');
  expect(Math.abs(JSON.parse(ended.out).bodyLength.value - 356.5)).toBeLessThan(2);
  expect(readFileSync(at('wear.svg'), 'utf8')).toMatch(/^<\?xml.*<svg .*<\/svg>\n$/s);
});

test('what was drawn by hand is kept with the trace, and traced as recorded it gives the same bytes', async () => {
  const stroke = [
    [500, 700],
    [620, 700],
  ];
  const beside = [
    [60, 100],
    [60, 1400],
  ];
  const hints = {
    format: 'garland-hints',
    version: 1,
    insideStrokes: [stroke],
    outsideStrokes: [beside],
    onEdge: [],
    excluded: [],
  };
  writeFileSync(at('hints.json'), JSON.stringify(hints));
  const words = ['trace', 'fiddle-without-sheet.jpg'];
  const given = ['--known', 'bodyLength=356.5', '--hints', 'hints.json'];
  const first = await garland(folder.path, ...words, ...given, '--out', 'hinted.json');
  expect(first.code).toBe(1);
  const { request } = JSON.parse(readFileSync(at('hinted.json'), 'utf8'));
  expect(request.photographs[0].hints).toMatchObject({ insideStrokes: [stroke], outsideStrokes: [beside] });
  const again = await garland(folder.path, ...words, '--as', 'hinted.json', '--out', 'hinted-again.json');
  expect(again.code).toBe(first.code);
  expect(readFileSync(at('hinted-again.json'))).toEqual(readFileSync(at('hinted.json')));
});

const READ: readonly (readonly [string, readonly string[], number])[] = [
  ['drawn on paper', ['line.png', '--drawn'], 0],
  ['drawn on paper, its ends shown', ['line.png', '--drawn', '--ends', '180,430 890,290'], 0],
  ['of a card, counted from end to end', ['card.png', '--edge-height', '1', '--from-ends'], 0],
  ['of a card, the bass side at the right', ['card.png', '--edge-height', '1', '--right-is', 'bass'], 0],
];

test.concurrent.each(READ)('a cross arch is read off a line %s', async (_what, words, code) => {
  const ended = await garland(
    folder.path,
    'trace',
    ...words,
    '--of',
    'cross-arch',
    '--station',
    'waist',
    ...BARS,
  );
  expect(ended.out).toMatch(/\n {2}rise (11\.9|12\.0)\d ± /);
  expect(ended.code, ended.err).toBe(code);
});

test('what lies at the right of a long arch is its neck or its lower end, and of a cross arch neither', async () => {
  const words = ['trace', 'card.png', '--edge-height', '1', '--right-is', 'neck', ...BARS];
  const long = await garland(folder.path, ...words, '--of', 'long-arch');
  expect(long.out).toMatch(/40 mm below the crest/);
  const cross = await garland(folder.path, ...words, '--of', 'cross-arch', '--station', 'waist');
  expect(cross.err).toMatch(/--right-is: "neck"; needs one of treble, bass/);
  expect(cross.code).toBe(2);
});

describe('an arch and a scroll', () => {
  test('a card cut to an arch is traced, and drafting takes its numbers, what is left out included', async () => {
    const words = [
      '--of',
      'cross-arch',
      '--station',
      'waist',
      '--face',
      'back',
      '--edge-height',
      '1',
      '--leave-out',
    ];
    const ended = await garland(folder.path, 'trace', 'card.png', ...words, ...BARS, '--out', 'waist.json');
    expect(ended.out).toMatch(/cross arch.*\n {2}rise 1[12]\.\d\d ± /);
    expect(JSON.parse(readFileSync(at('waist.json'), 'utf8'))).toMatchObject({
      leaveOut: true,
      station: 'waist',
    });
    const table = join(ROOT, 'demo', 'fiddle.measurements.json');
    const drafted = await garland(folder.path, 'draft', table, 'waist.json', '--out', 'fiddle.garland.json');
    expect(drafted.code).toBeLessThan(2);
    expect(drafted.out).toMatch(/card\.png/);
  });

  test('a scroll on its side gives its key places', async () => {
    const ended = await garland(
      folder.path,
      'trace',
      'scroll.png',
      '--of',
      'scroll',
      '--edge-height',
      '10',
      ...BARS,
    );
    expect(ended.out).toMatch(/side of the scroll.*\n(.*\n)* {2}eye/);
  });
});

const REFUSED: readonly (readonly [string, readonly string[], RegExp, number])[] = [
  ['a mirrored photograph', ['mirrored.jpg', '--edge-height', '36.5'], /it is mirrored/, 3],
  ['a body that is not there', ['square.jpg', '--edge-height', '36.5', '--body', '2'], /bod(y|ies)/, 3],
  [
    'a map of no kind we draw',
    ['square.jpg', '--edge-height', '36.5', '--wear-map', 'map.png'],
    /\.svg or \.pdf/,
    2,
  ],
  [
    'a known length for a scroll',
    ['scroll.png', '--of', 'scroll', '--known', 'bodyLength=356'],
    /--known: it says nothing of a scroll/,
    2,
  ],
  [
    'a station for an outline',
    ['square.jpg', '--edge-height', '36.5', '--station', 'waist'],
    /--station: it says nothing/,
    2,
  ],
  [
    'one name for two files',
    ['square.jpg', '--edge-height', '36.5', '--out', 'a.svg', '--wear-map', 'a.svg'],
    /one name for two/,
    2,
  ],
];

test.each(REFUSED)(
  '%s is refused in one sentence, and nothing is written',
  async (_what, words, sentence, code) => {
    const ended = await garland(folder.path, 'trace', ...words);
    expect(ended.err).toMatch(sentence);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.code).toBe(code);
    expect(existsSync(at('a.svg'))).toBe(false);
  },
);
