import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { sha256 } from '../../src/host/index.ts';
import { garland, newFolder } from './runGarland.ts';

interface Listed {
  readonly path: string;
  readonly kind: string;
  readonly parts: readonly string[];
  readonly sha256: string;
  readonly sizeMm?: readonly number[];
}

const folder = newFolder();
const inFolder = (...words: readonly string[]) => garland(folder.path, ...words);
const bytesOf = (path: string): Buffer => readFileSync(join(folder.path, 'pack', path));
let listed: readonly Listed[] = [];

beforeAll(async () => {
  const table = {
    format: 'garland-measurements',
    version: 1,
    family: 'violin',
    name: 'Short violin',
    values: { bodyLength: 335 },
    taken: { bodyLength: 'straight' },
  };
  writeFileSync(join(folder.path, 'violin.json'), JSON.stringify(table));
  expect((await inFolder('draft', 'violin.json', '--out', 'violin.garland.json')).code).toBe(0);
  const made = await inFolder('make', 'violin.garland.json', '--only', 'solid', '--out', 'pack');
  expect(made.code, made.err).toBe(0);
  listed = (JSON.parse(bytesOf('manifest.json').toString()) as { files: readonly Listed[] }).files;
});
afterAll(() => folder.remove());

/** Least and greatest x, y and z in a binary STL. */
function boxOf(stl: Buffer): readonly (readonly [number, number])[] {
  const count = stl.readUInt32LE(80);
  expect(stl.length).toBe(84 + 50 * count);
  return [0, 1, 2].map((axis) => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let triangle = 0; triangle < count; triangle++)
      for (let corner = 0; corner < 3; corner++) {
        const value = stl.readFloatLE(84 + 50 * triangle + 12 + 12 * corner + 4 * axis);
        [least, most] = [Math.min(least, value), Math.max(most, value)];
      }
    return [least, most] as const;
  });
}

test('every part comes as a skin twice, and as STEP what true surfaces can hold', () => {
  const solids = listed.filter(({ kind, parts }) => kind === 'solid' && parts.length > 0);
  const ways = new Map<string, string[]>();
  for (const { path, parts } of solids) {
    const part = parts[0] ?? '';
    ways.set(part, [...(ways.get(part) ?? []), path.slice(path.lastIndexOf('.') + 1)].toSorted());
  }
  for (const part of [
    'form',
    'lower-block',
    'upper-corner-block-bass',
    'back-arched',
    'top-arched',
    'back-outside',
    'back-finished',
    'top-finished',
    'back-whole',
    'top-purfling-groove',
    'top-sound-hole-bass',
  ])
    expect(ways.get(part), part).toEqual(['3mf', 'step', 'stl']);
  expect(ways.get('garland')).toEqual(['3mf', 'stl']);
  expect(ways.get('top-whole')).toEqual(['3mf', 'stl']);
  expect(readdirSync(join(folder.path, 'pack', 'solid')).length).toBe(solids.length + 1);
});

test('the manifest tells width, length and height of each, as they stand in the file', () => {
  for (const { path, sizeMm, sha256: digest } of listed.filter(({ kind }) => kind === 'solid')) {
    expect(sha256(bytesOf(path)), path).toBe(digest);
    if (path.endsWith('.txt')) continue;
    expect(sizeMm, path).toHaveLength(3);
    if (!path.endsWith('.stl')) continue;
    for (const [axis, [least, most]] of boxOf(bytesOf(path)).entries())
      expect(most - least, `${path}, axis ${axis}`).toBeCloseTo(sizeMm?.[axis] ?? 0, 3);
  }
  const plate = listed.find(({ path }) => path === 'solid/back-arched.step');
  expect(plate?.sizeMm?.[1]).toBeCloseTo(335, 1);
});

test('a plate that is flat below is one solid of a few smooth surfaces among exact ones', () => {
  for (const [part, smooth] of [
    ['back-arched', 1],
    ['top-outside', 9],
  ] as const) {
    const text = bytesOf(`solid/${part}.step`).toString();
    expect(text).toMatch(/^ISO-10303-21;\n[\s\S]*\nEND-ISO-10303-21;\n$/);
    const count = (entity: string): number => text.split(`=${entity}(`).length - 1;
    expect(count('MANIFOLD_SOLID_BREP')).toBe(1);
    expect(count('B_SPLINE_SURFACE_WITH_KNOTS')).toBe(smooth);
    expect(count('CYLINDRICAL_SURFACE')).toBeGreaterThan(8);
  }
});

test('the words beside them name the unit, what is exact, and the cautions', () => {
  const words = bytesOf('solid/readme.txt').toString();
  expect(words).toMatch(/millimetres/);
  expect(words).toMatch(/\.step: true surfaces/);
  expect(words).toMatch(/eye and ear protection/);
});
