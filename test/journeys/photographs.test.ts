import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { meantHalf } from '../../demo/villageFiddle.ts';
import { writeFiddlePictures } from './fiddlePictures.ts';
import { type Ended, garland, isSentence, newFolder } from './runGarland.ts';

const folder = newFolder();
const OUT = 'trace.json';

beforeAll(() => writeFiddlePictures(folder.path));
afterAll(() => folder.remove());

const LENGTH = ['--known', 'bodyLength=356.5'];
const HEIGHT = ['--edge-height', '36.5'];

/** What is wrong, the words of the command, and what its one sentence speaks of. */
const REFUSED: readonly (readonly [string, readonly string[], RegExp])[] = [
  ['a file that is not there', ['nothing.jpg', ...LENGTH], /no such file/],
  ['a folder', ['.', ...LENGTH], /it is a folder/],
  ['a text with the name of a picture', ['text.jpg', ...LENGTH], /cannot be read as a picture/],
  ['a picture that ends too soon', ['truncated.jpg', ...LENGTH], /cannot be read as a picture.*copy it/],
  ['a blank sheet', ['blank.jpg', ...LENGTH], /no body of a violin/],
  ['a bench with nothing on it', ['bench.jpg', ...LENGTH], /body/],
  ['a body that runs out of the frame', ['cut-off.jpg', ...LENGTH], /lower bout of the body runs out/],
  ['a sheet half hidden', ['sheet-hidden.jpg', ...HEIGHT], /band of squares cannot be read.*whole sheet/],
  ['no height with a sheet in view', ['fiddle.jpg', ...LENGTH], /no height of the plate/],
  ['neither sheet nor length', ['no-sheet.jpg'], /no calibration sheet, and no length/],
  ['a length of which the scale cannot come', ['no-sheet.jpg', '--known', 'stop=195'], /no length/],
  [
    'known lengths that contradict each other',
    ['no-sheet.jpg', ...LENGTH, '--known', 'lowerBout=180'],
    /bodyLength, lowerBout: .*180 mm is given, .*apart/,
  ],
  [
    'a body of three metres',
    ['fiddle.jpg', ...HEIGHT, '--known', 'bodyLength=3 m'],
    /3000 mm; needs between 170/,
  ],
  [
    'a body of three thousand',
    ['fiddle.jpg', ...HEIGHT, '--known', 'bodyLength=3000'],
    /between 170 and 850/,
  ],
  [
    'a length in centimetres',
    ['fiddle.jpg', ...HEIGHT, '--known', 'bodyLength=35.6'],
    /looks like centimetres/,
  ],
  [
    'a length of two meanings',
    ['fiddle.jpg', ...HEIGHT, '--known', 'bodyLength=1,234'],
    /decimals or thousands/,
  ],
  ['an edge as high as a table', ['fiddle.jpg', '--edge-height', '365'], /--edge-height: an edge 365 mm/],
  ['an edge below the sheet', ['fiddle.jpg', '--edge-height', '-5'], /--edge-height/],
  ['a bar of fifteen', ['fiddle.jpg', ...HEIGHT, '--sheet-bar', '15'], /150 mm is said to measure 15 mm/],
  [
    'two photographs, one without the sheet',
    ['fiddle.jpg', 'no-sheet.jpg', ...HEIGHT, ...LENGTH],
    /no-sheet\.jpg: no calibration sheet can be read/,
  ],
];

describe.concurrent('a photograph or a length that cannot serve', () => {
  test.each(REFUSED)('is refused in one sentence: %s', async (_what, words, sentence) => {
    const ended = await garland(folder.path, 'trace', ...words, '--out', `refused/${OUT}`);
    expect(ended.err).toMatch(sentence);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.out).toBe('');
    expect(ended.code).toBe(3);
    expect(existsSync(join(folder.path, 'refused'))).toBe(false);
  });
});

describe('without the calibration sheet', () => {
  let alone: Ended;
  let checked: Ended;
  beforeAll(async () => {
    const words = ['trace', 'no-sheet.jpg', ...LENGTH, '--json'];
    [alone, checked] = await Promise.all([
      garland(folder.path, ...words, '--out', OUT),
      garland(folder.path, ...words, '--known', 'lowerBout=206.3', ...HEIGHT),
    ]);
  });

  test('one known length gives the scale, and the maker hears that nothing checks it', () => {
    expect(alone.code).toBe(1);
    expect(alone.err).toMatch(/the scale rests on bodyLength alone and nothing checks it/);
    expect(existsSync(join(folder.path, OUT))).toBe(true);
  });

  test('a length and a width check each other', () => {
    expect(checked.err).not.toMatch(/nothing checks it/);
    const trace = JSON.parse(checked.out);
    expect(Math.abs(trace.bodyLength.value - 356.5)).toBeLessThan(0.4);
  });

  test('a height that cannot be used is not passed over in silence', () => {
    expect(checked.code).toBe(1);
    expect(checked.err).toMatch(/--edge-height: no calibration sheet can be read/);
    expect(alone.err).not.toMatch(/--edge-height/);
  });

  test.each(['alone', 'checked'])('the bouts are true to half a millimetre, %s', (which) => {
    const trace = JSON.parse((which === 'alone' ? alone : checked).out);
    const widest = (spots: readonly (readonly number[])[], low: number, high: number) =>
      2 * Math.max(...spots.filter(([, y]) => y > low && y < high).map(([x]) => x));
    const meant = meantHalf(0.2).map(({ x, y }) => [x, y]);
    for (const [low, high] of [
      [30, 120],
      [250, 330],
    ])
      expect(Math.abs(widest(trace.outline, low, high) - widest(meant, low, high))).toBeLessThan(0.5);
  });
});

test('an edge height that only a plate alone has is drawn, with a word of caution', async () => {
  const ended = await garland(folder.path, 'trace', 'fiddle.jpg', '--edge-height', '3.65', '--json');
  expect(ended.code).toBe(1);
  expect(ended.err).toMatch(/--edge-height: 3\.65 mm for a body that then is 36\d mm long/);
  expect(JSON.parse(ended.out).format).toBe('garland-trace');
});
