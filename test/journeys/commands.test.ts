import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { NEEDED_VALUES } from '../../src/core/design/index.ts';
import { sha256 } from '../../src/host/index.ts';
import { contentsOf, garland, isSentence, newFolder, ROOT } from './runGarland.ts';

const folder = newFolder();
const inFolder = (...words: readonly string[]) => garland(folder.path, ...words);
const DESIGN = 'viola.garland.json';
const COMMANDS = ['demo', 'sheet', 'trace', 'draft', 'derive', 'make', 'picture', 'check'];

beforeAll(async () => {
  const table = readFileSync(join(ROOT, 'demo', 'small-viola.measurements.json'));
  writeFileSync(join(folder.path, 'viola.json'), table);
  const drafted = await inFolder('draft', 'viola.json', '--out', DESIGN);
  expect(drafted, drafted.err).toMatchObject({
    code: 0,
    out: expect.stringMatching(
      new RegExp(
        `^Written: \\S+\\n {2}7 values as measured, ${NEEDED_VALUES.length - 7} filled from the habits of the viola; `,
      ),
    ),
    err: '',
  });
});
afterAll(() => folder.remove());

describe.concurrent('the words of the command', () => {
  test.each(COMMANDS)('%s tells with --help what it takes', async (command) => {
    const ended = await inFolder(command, '--help');
    expect(ended).toMatchObject({ code: 0, err: '' });
    expect(ended.out).toMatch(new RegExp(`^Usage: garland ${command} `));
    expect(ended.out).toMatch(/--json/);
  });

  test('alone it shows what there is, and counts as wrong usage', async () => {
    const ended = await inFolder();
    expect(ended.code).toBe(2);
    for (const command of COMMANDS) expect(ended.err).toContain(`  ${command} `);
    expect(await inFolder('--help')).toMatchObject({ code: 0, err: '' });
    expect(await inFolder('--version')).toMatchObject({ code: 0, err: '' });
  });

  test('what it does not take is named, with what was meant or what belongs there', async () => {
    expect((await inFolder('shet')).err).toContain('shet: no command of Garland; needs');
    expect((await inFolder('shet')).err).toContain('Write garland sheet.');
    expect((await inFolder('derive', DESIGN, '--jsn')).err).toContain('Write --json, or leave it out.');
    expect((await inFolder('make', DESIGN)).err).toBe(
      '--out: it is not given; needs its folder: folder for the pack. Add --out <folder>.\n',
    );
    expect((await inFolder('draft', '--out', 'x.json')).err).toMatch(
      /^garland draft: no file is named; needs one: /,
    );
    expect(JSON.parse((await inFolder('derive', '--json')).out).faults).toHaveLength(1);
  });

  test.each([
    [['nonsense']],
    [['make', DESIGN]],
    [['draft', '--out', 'x.json']],
    [['trace']],
    [['derive', DESIGN, '--bogus']],
    [['derive', DESIGN, 'another']],
    [['sheet', '--paper', 'B7', '--out', 'x.pdf']],
    [['make', DESIGN, '--out', 'x', '--only', 'wood']],
    [['make', DESIGN, '--out', 'x', '--paper', 'B7']],
    [['make', DESIGN, '--out', 'x', '--dxf', 'R9']],
    [['trace', 'x.jpg', '--face', 'side']],
    [['trace', 'x.jpg', '--known', 'bodyLength']],
    [['trace', 'x.jpg', '--known', 'bodyLenght=356']],
    [['shet']],
    [['sheet', '--out']],
    [['sheet', '--out', 'x.txt']],
    [['sheet', '--out', 'x.pdf', '--number', '9']],
    [['make', DESIGN, '--out', 'x', '--parts', 'wood']],
    [['make', DESIGN, '--out', 'x', '--language', 'es']],
    [['make', DESIGN, '--out', 'x', '--gauge-feet', 'air']],
  ])('%j is wrong usage, and nothing is written', async (words) => {
    const ended = await inFolder(...words);
    expect(ended.code, ended.err).toBe(2);
    expect(ended.out).toBe('');
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(Object.keys(contentsOf(folder.path)).filter((path) => path.startsWith('x'))).toEqual([]);
  });
});

test('sheet writes the calibration sheet of a paper', async () => {
  const ended = await inFolder('sheet', '--paper', 'a3', '--out', 'sheet.pdf');
  expect(ended).toMatchObject({ code: 0, err: '' });
  expect(ended.out).toMatch(/calibration sheet on A3.*100 %.*--sheet-bar/);
  expect(readFileSync(join(folder.path, 'sheet.pdf'), 'latin1')).toMatch(/^%PDF-/);
  const asData = await inFolder('sheet', '--out', 'sheet.pdf', '--force', '--json');
  expect(JSON.parse(asData.out)).toEqual({ file: 'sheet.pdf', paper: 'A3', numbers: [1], cards: false });
  const cards = await inFolder('sheet', '--cards', '--out', 'cards.pdf', '--json');
  expect(JSON.parse(cards.out)).toEqual({ file: 'cards.pdf', paper: 'A4', numbers: [1], cards: true });
});

test('a table that leaves its format out is a table all the same', async () => {
  writeFileSync(join(folder.path, 'bare.json'), '{"family": "violin", "values": {"bodyLength": "14 in"}}');
  const ended = await inFolder('draft', 'bare.json', '--out', 'bare.garland.json', '--json');
  expect(ended.code, ended.err).toBeLessThan(2);
  expect(JSON.parse(ended.out).values.bodyLength.value).toBeCloseTo(355.6, 9);
});

describe('derive', () => {
  test('lists every number with its source', async () => {
    const ended = await inFolder('derive', DESIGN);
    expect(ended.code).toBe(0);
    expect(ended.out).toMatch(/bodyLength .*390.*measured: the class's table/);
    expect(hasEscapes(ended.out + ended.err)).toBe(false);
  });

  test('gives other programs the instrument that the contract promises', async () => {
    const ended = await inFolder('derive', DESIGN, '--json');
    expect(ended.code).toBe(0);
    const made = JSON.parse(ended.out);
    expect(made).toMatchObject({ format: 'garland-instrument', version: 1, units: 'mm' });
    expect(made.outline.closed).toBe(true);
    for (const vertex of made.outline.vertices) expect(vertex.map((n: unknown) => typeof n)).toEqual(NUMBERS);
    expect(Object.keys(made.form).length).toBeGreaterThan(0);
    for (const rib of made.ribs) {
      expect(rib.length).toBeGreaterThan(50);
      expect([rib.heightNeck, rib.heightTail]).toEqual([35, 36.5]);
    }
    for (const plate of ['back', 'top']) promisedPlate(made.plates[plate]);
    const names = new Set(made.register.map((entry: { name: string }) => entry.name));
    for (const entry of made.register) {
      expect(Object.keys(entry)).toEqual(
        expect.arrayContaining(['name', 'value', 'unit', 'origin', 'source', 'dependsOn']),
      );
      for (const other of entry.dependsOn)
        expect(names, `${entry.name} depends on ${other}`).toContain(other);
    }
  });
});

const NUMBERS = ['number', 'number', 'number'];

interface Plate {
  readonly channelZ: number;
  readonly archHeight: number;
  readonly longArch: readonly (readonly [number, number])[];
  readonly stations: readonly {
    readonly name: string;
    readonly y: number;
    readonly halfWidth: number;
    readonly rise: number;
    readonly fullness: number;
    readonly profile: readonly (readonly [number, number])[];
  }[];
}

function promisedPlate(plate: Plate): void {
  expect(plate.archHeight).toBeGreaterThan(plate.channelZ);
  expect(plate.longArch.length).toBeGreaterThan(100);
  expect(plate.stations.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['upperBout', 'upperCorner', 'waist', 'lowerCorner', 'lowerBout']),
  );
  for (const { name, halfWidth, profile, ...numbers } of plate.stations) {
    for (const number of [numbers.y, numbers.rise, numbers.fullness, halfWidth])
      expect(Number.isFinite(number)).toBe(true);
    const steps = profile.slice(1).map(([x], i) => x - (profile[i]?.[0] ?? 0));
    expect(Math.max(...steps), name).toBeLessThanOrEqual(0.5 + 1e-9);
    expect(Math.min(...steps), name).toBeGreaterThan(0);
    expect(profile.at(0)?.[0], name).toBeCloseTo(-(profile.at(-1)?.[0] ?? 0), 3);
    expect(Math.max(...profile.map(([, z]) => z))).toBeLessThanOrEqual(plate.archHeight + 0.01);
  }
}

describe('make', () => {
  test('writes a pack whose manifest tells the truth, and the same bytes when run again', async () => {
    const ended = await inFolder('make', DESIGN, '--out', 'pack');
    expect(ended.code, ended.err).toBe(0);
    expect(hasEscapes(ended.out + ended.err)).toBe(false);
    const files = contentsOf(join(folder.path, 'pack'));
    const manifest = JSON.parse(files['manifest.json'] as string);
    expect(manifest.files.map((file: { path: string }) => file.path).sort()).toEqual(
      Object.keys(files)
        .filter((path) => path !== 'manifest.json')
        .sort(),
    );
    for (const { path, sha256: hash, bytes } of manifest.files) {
      const content = Buffer.from(files[path] as string, 'latin1');
      expect([path, sha256(content), content.length]).toEqual([path, hash, bytes]);
    }
    expect((await inFolder('make', DESIGN, '--out', 'pack')).code).toBe(0);
    expect(contentsOf(join(folder.path, 'pack'))).toEqual(files);
  });

  test('prints the charts and maps that plates are hollowed by, says so, and sends none of them to a laser', async () => {
    const ended = await inFolder('make', DESIGN, '--out', 'hollow');
    expect(ended.out).toMatch(/drawn: .*\d+ rib patterns, .*4 hollowing sheets/);
    const { files } = JSON.parse(contentsOf(join(folder.path, 'hollow'))['manifest.json'] as string);
    const partsOf = (kind: string): string[] =>
      files
        .filter((file: { kind: string }) => file.kind === kind)
        .flatMap(({ parts }: { parts: string[] }) => parts);
    const sheets = ['hollow-drilling-back', 'hollow-drilling-top', 'thickness-back', 'thickness-top'];
    expect(partsOf('print')).toEqual(expect.arrayContaining(sheets));
    expect(partsOf('laser').filter((part) => sheets.includes(part))).toEqual([]);
  });

  test('makes only what is asked, on the paper and for the release asked, and clears its own earlier files away', async () => {
    const printed = await inFolder(
      'make',
      DESIGN,
      '--out',
      'some',
      '--only',
      'print',
      '--paper',
      'A3',
      '--json',
    );
    expect(printed.code, printed.err).toBe(0);
    const kinds = JSON.parse(printed.out).files.map((file: { kind: string }) => file.kind);
    expect(new Set(kinds)).toEqual(new Set(['print', 'data']));
    expect(Object.keys(contentsOf(join(folder.path, 'some')))).toContain('print/templates-a3.pdf');
    const cut = await inFolder('make', DESIGN, '--out', 'some', '--only', 'laser', '--dxf', 'r12');
    expect(cut.code, cut.err).toBe(0);
    const files = contentsOf(join(folder.path, 'some'));
    expect(Object.keys(files)).not.toContain('print/templates-a3.pdf');
    expect(files['laser/form.dxf']).toMatch(/AC1009/);
  });

  test('adds gauges where they are asked for, on the feet that are asked for', async () => {
    const words = ['--only', 'laser', '--gauge-at', '95', '--gauge-feet', 'bench', '--gauge-edge', 'square'];
    const ended = await inFolder('make', DESIGN, '--out', 'gauges', ...words);
    expect(ended.code, ended.err).toBe(0);
    const files = Object.keys(contentsOf(join(folder.path, 'gauges')));
    expect(files).toContain('laser/arching-gauge-back-at-95-from-bench.dxf');
    expect(files).toContain('laser/inside-gauge-top-at-95.dxf');
  });

  test('refuses a gauge off the arch in one sentence a plate', async () => {
    const ended = await inFolder('make', DESIGN, '--out', 'off', '--gauge-at', '2');
    expect(ended.code).toBe(3);
    expect(ended.err).toMatch(/gauge of the back at 2 mm/);
    expect(ended.err.match(/gauge of the back at 2 mm/g)).toHaveLength(1);
  });

  test('takes what the printer’s bars measure into account', async () => {
    const words = ['--only', 'print', '--printer-bars', '149.4,150.3'];
    const ended = await inFolder('make', DESIGN, '--out', 'scaled', ...words);
    expect(ended.code, ended.err).toBe(0);
    const pdf = (pack: string) => contentsOf(join(folder.path, pack))['print/templates-a4.pdf'];
    expect(pdf('scaled')).toMatch(/^%PDF-/);
    expect(pdf('scaled')).not.toEqual(pdf('pack'));
  });
});

describe('check', () => {
  test('finds nothing that asks for a look in the small viola', async () => {
    const ended = await inFolder('check', DESIGN, '--json');
    expect(ended.code).toBe(0);
    for (const { weight } of JSON.parse(ended.out).findings) expect(weight).toBe('remark');
  });

  test('names what contradicts itself and ends with 1', async () => {
    const design = JSON.parse(readFileSync(join(folder.path, DESIGN), 'utf8'));
    design.values.overhang.value = -1;
    writeFileSync(join(folder.path, 'odd.garland.json'), JSON.stringify(design));
    const ended = await inFolder('check', 'odd.garland.json');
    expect(ended.code, ended.err).toBe(1);
    expect(ended.out).toMatch(/^Contradiction: overhang/);
    const asData = await inFolder('check', 'odd.garland.json', '--json');
    expect(asData.code).toBe(1);
    expect(JSON.parse(asData.out).findings[0]).toMatchObject({ weight: 'contradiction' });
  });
});

/** Whether a text holds what only a terminal understands. */
function hasEscapes(text: string): boolean {
  return text.includes('\u001b');
}
