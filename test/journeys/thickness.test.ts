import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garland, isSentence, newFolder } from './runGarland.ts';

const folder = newFolder();
const inFolder = (...words: readonly string[]) => garland(folder.path, ...words);
const DESIGN = 'fiddle.garland.json';

beforeAll(async () => {
  const table = {
    family: 'violin',
    name: 'Fiddle',
    values: { bodyLength: 355 },
    taken: { bodyLength: 'straight' },
    thickness: { back: { map: 'violin 7/8' }, top: { bar: { extra: 0.2 }, post: { extra: 0.1, reach: 10 } } },
  };
  writeFileSync(join(folder.path, 'fiddle.json'), JSON.stringify(table));
  const drafted = await inFolder('draft', 'fiddle.json', '--out', DESIGN);
  expect(drafted.code, drafted.err).toBe(0);
});
afterAll(() => folder.remove());

/** The design with other thickness choices, under a name of its own. */
function changed(name: string, thickness: unknown): string {
  const design = JSON.parse(readFileSync(join(folder.path, DESIGN), 'utf8'));
  writeFileSync(join(folder.path, name), JSON.stringify({ ...design, thickness }));
  return name;
}

describe.concurrent('thicknesses from the command line', () => {
  test('a map chosen by name stands in the register with its source, and bar and post with their places', async () => {
    const derived = await inFolder('derive', DESIGN);
    expect(derived.code, derived.err).toBe(0);
    const line = (name: string): string =>
      derived.out.split('\n').find((text) => text.trim().startsWith(`${name} `)) ?? '';
    expect(line('thicknessBackMiddle')).toMatch(/ 4\.1 +mm .*Average violin measurements/);
    expect(line('thicknessTopMiddle')).toMatch(/ 3 +mm /);
    expect(line('bar.atLowerBout')).toMatch(/ 15\.1\d* +mm /);
    expect(line('post.fromCentre')).toMatch(/ 16\.5 +mm /);
    expect(line('top.massWithBar')).toMatch(/ [67]\d(\.\d+)? +g /);
    expect(line('thickness.back.least.channel')).toMatch(/ 2 +mm .*memory/);
  });

  test('a plate below its least is told by derive and by check, in one sentence with the place', async () => {
    const thin = changed('thin.garland.json', {
      back: { points: [[0, 60, 1.6]] },
      top: { least: { waist: 2.7 } },
    });
    const sentence =
      /thickness\.back\.least\.lowerBout: the back comes down to 1\.\d\d mm in the lower bout, 0\.\d\d mm short \(lower bout, on the centre line, 60 mm above the lower end\); needs 2 mm or more there/;
    const [derived, checked] = await Promise.all([inFolder('derive', thin), inFolder('check', thin)]);
    for (const ended of [derived, checked]) {
      expect(ended.code).toBe(1);
      const said = ended.out + ended.err;
      expect(said).toMatch(sentence);
      expect(said).toMatch(/thickness\.top\.least\.waist: .*needs 2\.7 mm or more there \(chosen/);
    }
  });

  test.each([
    [
      'unknown.garland.json',
      { back: { map: 'Violin, full' } },
      /thickness\.back\.map: "Violin, full"; needs one of "violin 4\/4", "violin 7\/8".*"cello 4\/4"/,
    ],
    [
      'bar.garland.json',
      { back: { bar: { extra: 0.2 } } },
      /thickness\.back\.bar: a name that is not known, “bar”/,
    ],
    [
      'through.garland.json',
      { top: { post: { extra: -3 } } },
      /thickness\.top\.post: -3 mm more at the post.*needs wood left everywhere/,
    ],
  ])('a choice that cannot be is refused in one sentence: %s', async (name, thickness, sentence) => {
    const ended = await inFolder('derive', changed(name, thickness));
    expect(ended.err).toMatch(sentence);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.code).toBe(3);
  });
});
