import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { sha256 } from '../../src/host/index.ts';
import { contentsOf, garlandAt, newFolder, ROOT } from './runGarland.ts';

/** Places of the world whose clocks, commas and capital letters differ: half hours and quarters of hours, a dotless ı. */
const HERE = { TZ: 'America/St_Johns', LC_ALL: 'C' };
const THERE = { TZ: 'Pacific/Chatham', LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8' };
const ELSEWHERE = { TZ: 'Asia/Kathmandu', LC_ALL: 'ar_EG.UTF-8', LANG: 'ar_EG.UTF-8' };
const DESIGN = 'viola.garland.json';

const folder = newFolder();
const at = (place: NodeJS.ProcessEnv, ...words: readonly string[]) => garlandAt(place, folder.path, ...words);

beforeAll(async () => {
  writeFileSync(
    join(folder.path, 'table.json'),
    readFileSync(join(ROOT, 'demo', 'small-viola.measurements.json')),
  );
  expect((await at(HERE, 'draft', 'table.json', '--out', DESIGN)).code).toBe(0);
  for (const [number, way] of ['backwards', 'shuffled'].entries()) {
    const design: unknown = JSON.parse(readFileSync(join(folder.path, DESIGN), 'utf8'));
    const random = seededRandom(40 + number);
    const order = (keys: string[]) =>
      way === 'backwards'
        ? keys.reverse()
        : keys
            .map((key) => [random(), key] as const)
            .sort(([a], [b]) => a - b)
            .map(([, key]) => key);
    writeFileSync(join(folder.path, `${way}.garland.json`), JSON.stringify(inOrder(design, order)));
  }
});
afterAll(() => folder.remove());

/** The same document with the keys of every object in another order; lists keep theirs. */
function inOrder(json: unknown, order: (keys: string[]) => readonly string[]): unknown {
  if (Array.isArray(json)) return json.map((one) => inOrder(one, order));
  if (typeof json !== 'object' || json === null) return json;
  const members = json as Readonly<Record<string, unknown>>;
  return Object.fromEntries(order(Object.keys(members)).map((key) => [key, inOrder(members[key], order)]));
}

test('the places are places: each has its own clock and its own way to write a number', () => {
  const told = [HERE, THERE, ELSEWHERE].map((place) =>
    spawnSync(process.execPath, ['-p', '`${new Date(0).getTimezoneOffset()} ${(1234.5).toLocaleString()}`'], {
      env: { ...process.env, ...place },
      encoding: 'utf8',
    }).stdout.trim(),
  );
  expect(told).toEqual(['210 1,234.5', '-765 1.234,5', '-330 ١٬٢٣٤٫٥']);
});

test('a table is drafted to the same bytes anywhere', async () => {
  for (const [number, place] of [THERE, ELSEWHERE].entries()) {
    expect((await at(place, 'draft', 'table.json', '--out', `${number}.garland.json`)).code).toBe(0);
    expect(readFileSync(join(folder.path, `${number}.garland.json`))).toEqual(
      readFileSync(join(folder.path, DESIGN)),
    );
  }
});

test('a pack is the same to the byte anywhere, and whatever the order of the keys in its design', async () => {
  const made = async (place: NodeJS.ProcessEnv, design: string, out: string) => {
    const ended = await at(place, 'make', design, '--out', out, '--language', 'de');
    expect(ended.code, ended.err).toBe(0);
    const files = Object.entries(contentsOf(join(folder.path, out)));
    return Object.fromEntries(files.map(([path, text]) => [path, sha256(Buffer.from(text, 'latin1'))]));
  };
  const first = await made(HERE, DESIGN, 'first');
  expect(Object.keys(first).length).toBeGreaterThan(200);
  expect(await made(THERE, 'backwards.garland.json', 'second')).toEqual(first);
  expect(await made(ELSEWHERE, 'shuffled.garland.json', 'third')).toEqual(first);
}, 240_000);
