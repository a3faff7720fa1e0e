import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentsOf, garland, isSentence, newFolder, ROOT } from './runGarland.ts';

const folder = newFolder();
const inFolder = (...words: readonly string[]) => garland(folder.path, ...words);
const DESIGN = 'viola.garland.json';
const table = JSON.parse(readFileSync(join(ROOT, 'demo', 'small-viola.measurements.json'), 'utf8'));

beforeAll(async () => {
  put('viola.json', table);
  const drafted = await inFolder('draft', 'viola.json', '--out', DESIGN);
  expect(drafted.code, drafted.err).toBe(0);
});
afterAll(() => folder.remove());

function put(name: string, document: unknown): void {
  const text = typeof document === 'string' ? document : JSON.stringify(document);
  writeFileSync(join(folder.path, name), text);
}

const withValue = (name: string, value: unknown) => ({
  ...table,
  values: { ...table.values, [name]: value },
});

const TABLES: readonly (readonly [string, unknown, RegExp])[] = [
  ['a misspelt name', withValue('lowerBoot', 228), /lowerBoot.*lowerBout/],
  ['a number of two meanings', withValue('lowerBout', '1,234'), /lowerBout: .*decimals or thousands/],
  ['a body of three metres', withValue('bodyLength', '3 m'), /bodyLength: .*3000/],
  ['a body of three thousand', withValue('bodyLength', 3000), /bodyLength: .*3000/],
  ['a body in centimetres', withValue('bodyLength', 39), /bodyLength: .*centimetres/],
  ['a body that is a word', withValue('bodyLength', 'long'), /bodyLength: .*long/],
  ['a body of no length', withValue('bodyLength', 0), /bodyLength/],
  ['no body length', { ...table, values: { waist: 110 } }, /bodyLength/],
  ['an unknown family', { ...table, family: 'guitar' }, /family.*guitar/],
  ['a table of a newer version', { ...table, version: 2 }, /version: .*2/],
  [
    'a document of another kind',
    { format: 'something', values: {} },
    /neither a table of measurements nor a trace/,
  ],
  ['a list', [1, 2, 3], /neither a table of measurements nor a trace/],
  ['nothing at all', '', /not a JSON file \(it is empty\)/],
  [
    'half a document',
    '{"format": "garland-measurements",\n "values"',
    /not a JSON file \(line 2, column 10: the file ends where a colon/,
  ],
  ['a table with a comma too many', '{\n "family": "violin",\n}', /line 3, column 1: ‘}’ where a name/],
  ['a print instead of a table', '%PDF-1.7', /line 1, column 1: ‘%’ where a value/],
  [
    'a trace without an outline',
    { format: 'garland-trace', version: 1, units: 'mm', frame: 'body' },
    /outline/,
  ],
];

describe.concurrent('a table or trace that cannot serve', () => {
  test.each(TABLES)(
    'is refused in one sentence, and nothing is written: %s',
    async (what, document, sentence) => {
      const name = `${what.replaceAll(' ', '-')}.json`;
      put(name, document);
      const ended = await inFolder('draft', name, '--out', `drafted-${name}`);
      expect(ended.err).toMatch(sentence);
      expect(isSentence(ended.err), ended.err).toBe(true);
      expect(ended.code).toBe(3);
      expect(ended.out).toBe('');
      expect(Object.keys(contentsOf(folder.path)).filter((path) => path.includes('drafted-'))).toEqual([]);
    },
  );
});

const DESIGNS: readonly (readonly [string, (design: Record<string, never>) => unknown, RegExp])[] = [
  ['of a newer version', (design) => ({ ...design, version: 99 }), /version: .*99.*newer/],
  ['with a word for a number', (design) => changed(design, 'waist', { value: 'narrow' }), /waist.*narrow/],
  ['with a number gone', (design) => changed(design, 'waist', { value: null }), /waist/],
  [
    'with a waist wider than the body is long',
    (design) => changed(design, 'waist', { value: 1200 }),
    /waist/,
  ],
  ['with a body of three metres', (design) => changed(design, 'bodyLength', { value: 3000 }), /bodyLength/],
  ['that is a table of measurements', () => table, /garland-design/],
];

function changed(design: Record<string, never>, name: string, entry: object): unknown {
  const values = design.values as Record<string, object>;
  return { ...design, values: { ...values, [name]: { ...values[name], ...entry } } };
}

describe.concurrent('a design that cannot serve', () => {
  test.each(DESIGNS)('is refused in words, and no pack is begun: %s', async (what, spoil, sentence) => {
    const name = `${what.replaceAll(' ', '-')}.garland.json`;
    put(name, spoil(JSON.parse(readFileSync(join(folder.path, DESIGN), 'utf8'))));
    const ended = await inFolder('make', name, '--out', `pack-${name}`);
    expect(ended.err).toMatch(sentence);
    expect(ended.err).not.toMatch(/ {4}at |undefined|NaN/);
    expect(ended.code).toBe(3);
    expect(ended.out).toBe('');
    expect(Object.keys(contentsOf(folder.path)).filter((path) => path.startsWith('pack-'))).toEqual([]);
  });

  test('gives its faults as data where data is asked for', async () => {
    put('newer.garland.json', { format: 'garland-design', version: 99 });
    const ended = await inFolder('derive', 'newer.garland.json', '--json');
    expect(ended.code).toBe(3);
    expect(JSON.parse(ended.out).faults[0]).toMatchObject({ code: 'file.newer' });
    expect(isSentence(ended.err)).toBe(true);
  });
});
