import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { fiddle, photographMade } from '../render/madePart.ts';
import { garland, isSentence, newFolder, ROOT } from './runGarland.ts';

const folder = newFolder();
const inFolder = (...words: readonly string[]) => garland(folder.path, ...words);
const DESIGN = 'fiddle.garland.json';
const { design, plan } = fiddle();

beforeAll(async () => {
  copyFileSync(join(ROOT, 'demo', 'fiddle.measurements.json'), join(folder.path, 'fiddle.json'));
  const drafted = await inFolder('draft', 'fiddle.json', '--out', DESIGN);
  expect(drafted.code, drafted.err).toBeLessThan(2);
  const heights = [design.values.ribHeightTail!.value, design.values.ribHeightNeck!.value] as const;
  const L = plan.outline.bodyLengthMm;
  const { widthPx, heightPx, rgb } = photographMade(
    {
      chain: plan.ribs.outer.chain,
      inside: plan.ribs.inner.chain,
      heightMm: (y) => heights[0] + ((heights[1] - heights[0]) * y) / L,
      bent: ({ x, y }) => ({ x: x * (1 + 0.008 * Math.exp(-(((y - 285) / 25) ** 2))), y }),
    },
    L,
  );
  const raw = { raw: { width: widthPx, height: heightPx, channels: 3 as const } };
  await sharp(Buffer.from(rgb), raw).jpeg({ quality: 90 }).toFile(join(folder.path, 'garland.jpg'));
  const bare = { width: 800, height: 600, channels: 3 as const, background: '#c8c8c8' };
  await sharp({ create: bare }).jpeg().toFile(join(folder.path, 'bare.jpg'));
  writeFileSync(join(folder.path, 'text.jpg'), 'no picture');
});
afterAll(() => folder.remove());

const PHOTO = ['check', DESIGN, '--photo', 'garland.jpg'];
const KNOWN = [
  '--sheet-bar',
  '150,150',
  '--thickness',
  `${design.values.ribHeightTail!.value}/${design.values.ribHeightNeck!.value}`,
];

test('a garland is checked from its photograph, its map drawn and its outline taken over', async () => {
  const ended = await inFolder(
    ...PHOTO,
    '--part',
    'garland',
    ...KNOWN,
    '--map',
    'map.svg',
    '--take-outline',
    'new.garland.json',
  );
  expect(ended.err).toBe('');
  expect(ended.code).toBe(1);
  expect(ended.out).toMatch(/garland\.jpg: garland, beyond 0\.3 mm of the design/);
  expect(ended.out).toMatch(/largest deviation 0\.\d\d mm proud: (bass|treble) side, upper bout/);
  expect(ended.out).toMatch(/outline from the garland: 0\.\d\d mm proud/);
  expect(readFileSync(join(folder.path, 'map.svg'), 'utf8')).toMatch(/^<\?xml.*<svg/s);
  const derived = await inFolder('derive', 'new.garland.json', '--json');
  expect(derived.code, derived.err).toBeLessThan(2);
  expect(JSON.parse(derived.out).format).toBe('garland-instrument');
  const again = await inFolder(...PHOTO, '--part', 'garland', ...KNOWN, '--map', 'map.svg');
  expect(again.code).toBe(4);
  expect(again.err).toMatch(/map\.svg/);
});

test('with --json all that was measured is data, and the words go to stderr', async () => {
  const ended = await inFolder(...PHOTO, '--part', 'garland', ...KNOWN, '--tolerance', '1.5', '--json');
  const document = JSON.parse(ended.out);
  expect(document).toMatchObject({ format: 'garland-built', version: 1, part: 'garland', verdict: 'within' });
  expect(document.max).toBeGreaterThan(0.4);
  expect(document.max).toBeLessThan(1);
});

describe('what cannot be checked is said in a sentence', () => {
  const GARLAND = ['--part', 'garland'];
  test.each([
    [
      'no part',
      PHOTO,
      2,
      /--part: nothing that says what was photographed; needs one of form, outline, inner, garland/,
    ],
    ['an unknown part', [...PHOTO, '--part', 'scroll'], 2, /--part: "scroll"/],
    [
      'a part that does not lie there',
      [...PHOTO, '--part', 'form', ...KNOWN],
      3,
      /looks like the (garland|inner template|outline template) of this design, not like the form/,
    ],
    ['no photograph', ['check', DESIGN, '--map', 'x.svg'], 2, /--map: no photograph that it could be about/],
    [
      'a photograph that is not there',
      ['check', DESIGN, '--photo', 'none.jpg', ...GARLAND],
      3,
      /no such file/,
    ],
    ['a text', ['check', DESIGN, '--photo', 'text.jpg', ...GARLAND], 3, /cannot be read as a picture/],
    ['no sheet', ['check', DESIGN, '--photo', 'bare.jpg', ...GARLAND], 3, /sheet/],
    ['an absurd thickness', [...PHOTO, ...GARLAND, '--thickness', '900'], 3, /--thickness: .*0 to 200 mm/],
    [
      'an absurd tolerance',
      [...PHOTO, ...GARLAND, '--tolerance', '0'],
      3,
      /--tolerance: 0 mm; needs a length between/,
    ],
    ['a map of another kind', [...PHOTO, ...GARLAND, '--map', 'x.bmp'], 2, /--map: .*ends in \.svg or \.pdf/],
    [
      'an outline from a form',
      [...PHOTO, '--part', 'form', '--take-outline', 'x.json'],
      2,
      /--part garland: only the real ribs/,
    ],
  ] as const)('%s', async (_what, words, code, says) => {
    const ended = await inFolder(...words);
    expect(ended.err).toMatch(says);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.code).toBe(code);
    expect(ended.out).toBe('');
    expect(existsSync(join(folder.path, 'x.svg'))).toBe(false);
  });
});
