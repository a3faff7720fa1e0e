import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Checked } from '../../src/core/index.ts';
import { sha256, writePack } from '../../src/host/index.ts';
import { COMMAND, contentsOf, garland, isSentence, newFolder, ROOT } from './runGarland.ts';

const folder = newFolder();
const inFolder = (...words: readonly string[]) => garland(folder.path, ...words);
const at = (...parts: readonly string[]) => join(folder.path, ...parts);
const DESIGN = 'viola.garland.json';
const MINE = 'written by the maker, not by Garland\n';
/** The quickest pack there is. */
const LASER = ['--only', 'laser'];

beforeAll(async () => {
  writeFileSync(at('viola.json'), readFileSync(join(ROOT, 'demo', 'small-viola.measurements.json')));
  expect((await inFolder('draft', 'viola.json', '--out', DESIGN)).code).toBe(0);
  expect((await inFolder('make', DESIGN, '--out', 'whole', ...LASER)).code).toBe(0);
});
afterAll(() => folder.remove());

describe.concurrent('a file that is there already', () => {
  test.each([
    ['draft', ['draft', 'viola.json'], 'mine/design.garland.json'],
    ['sheet', ['sheet'], 'mine/sheet.pdf'],
  ])('is kept byte for byte by %s, until --force is given', async (_command, words, out) => {
    mkdirSync(at('mine'), { recursive: true });
    writeFileSync(at(out), MINE);
    const ended = await inFolder(...words, '--out', out);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.err).toMatch(/already something of this name.*--force/);
    expect(ended.code).toBe(4);
    expect(readFileSync(at(out), 'utf8')).toBe(MINE);
    expect((await inFolder(...words, '--out', out, '--force')).code).toBe(0);
    expect(readFileSync(at(out), 'utf8')).not.toBe(MINE);
  });
});

describe.concurrent('a place that cannot be written', () => {
  test.each([
    ['under a file', ['draft', 'viola.json', '--out', `${DESIGN}/deep/x.json`]],
    ['where nobody may write', ['draft', 'viola.json', '--out', '/proc/x.json']],
    ['a folder', ['draft', 'viola.json', '--out', '.', '--force']],
    ['a pack that would be a file', ['make', DESIGN, '--out', DESIGN, ...LASER]],
    ['a pack where nobody may write', ['make', DESIGN, '--out', '/proc/pack', ...LASER]],
    ['a folder where nobody may write', ['draft', 'viola.json', '--out', '/proc/deep/deeper/x.json']],
    ['a sheet under a file', ['sheet', '--out', `${DESIGN}/x.pdf`]],
  ])('is named in one sentence, and what was there stays: %s', async (_what, words) => {
    const before = readFileSync(at(DESIGN), 'utf8');
    const ended = await inFolder(...words);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.err).toMatch(/could not be written/);
    expect(ended.code).toBe(4);
    expect(readFileSync(at(DESIGN), 'utf8')).toBe(before);
  });
});

// After them all, as each would see what the others are still writing.
test('no refused or replaced file leaves half of itself behind', () => {
  expect(Object.keys(contentsOf(folder.path)).filter((path) => path.endsWith('.part'))).toEqual([]);
});

describe('the folder of a pack', () => {
  const small = [
    { path: 'laser/form.dxf', bytes: Buffer.from('form') },
    { path: 'manifest.json', bytes: Buffer.from('{"format": "garland-pack", "version": 1, "files": []}') },
  ];

  test('keeps the files that the maker put there', async () => {
    cpSync(at('whole'), at('shared'), { recursive: true });
    for (const name of ['notes.txt', 'laser/own.dxf']) writeFileSync(at('shared', name), MINE);
    const ended = await inFolder('make', DESIGN, '--out', 'shared', ...LASER);
    expect(ended.code, ended.err).toBe(0);
    for (const name of ['notes.txt', 'laser/own.dxf'])
      expect(readFileSync(at('shared', name), 'utf8')).toBe(MINE);
  });

  test('is left alone where a file of the maker has a name that the pack needs', async () => {
    mkdirSync(at('taken', 'laser'), { recursive: true });
    writeFileSync(at('taken', 'laser', 'form.dxf'), MINE);
    const ended = await inFolder('make', DESIGN, '--out', 'taken', ...LASER);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.code).toBe(4);
    expect(contentsOf(at('taken'))).toEqual({ 'laser/form.dxf': MINE });
  });

  test('is left alone where a manifest of something else lies in it', () => {
    mkdirSync(at('other'));
    writeFileSync(at('other', 'manifest.json'), '{"name": "something else"}');
    expect(codesOf(writePack(at('other'), small, { force: false }))).toEqual(['file.exists']);
    expect(contentsOf(at('other'))).toEqual({ 'manifest.json': '{"name": "something else"}' });
  });

  test('is left alone where a file stands in place of a folder, even with --force', () => {
    mkdirSync(at('blocked'));
    writeFileSync(at('blocked', 'laser'), MINE);
    expect(codesOf(writePack(at('blocked'), small, { force: true }))).toEqual(['file.unwritable']);
    expect(contentsOf(at('blocked'))).toEqual({ laser: MINE });
  });

  test('that is full of strange files is named in one sentence, not in one a file', () => {
    const many = Array.from({ length: 40 }, (_, i) => ({ path: `${i}.svg`, bytes: Buffer.from('new') }));
    mkdirSync(at('full'));
    for (const { path } of many) writeFileSync(at('full', path), MINE);
    expect(codesOf(writePack(at('full'), many, { force: false }))).toEqual(['file.exists']);
    expect(new Set(Object.values(contentsOf(at('full'))))).toEqual(new Set([MINE]));
  });

  test('is left alone where a file of the pack was changed by hand, until --force is given', async () => {
    cpSync(at('whole'), at('edited'), { recursive: true });
    writeFileSync(at('edited', 'laser', 'form.svg'), MINE);
    const before = contentsOf(at('edited'));
    const ended = await inFolder('make', DESIGN, '--out', 'edited', ...LASER);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect(ended.err).toMatch(/changed after Garland wrote it/);
    expect(ended.code).toBe(4);
    expect(contentsOf(at('edited'))).toEqual(before);
    expect((await inFolder('make', DESIGN, '--out', 'edited', ...LASER, '--force')).code).toBe(0);
    expect(contentsOf(at('edited'))).toEqual(contentsOf(at('whole')));
  });
});

function codesOf(written: Checked<string>): readonly string[] {
  return written.ok ? [] : written.faults.map(({ code }) => code);
}

describe('a run killed half way', () => {
  test('leaves only whole files under their names, and running again makes the pack whole', async () => {
    const whole = contentsOf(at('whole'));
    await killedWhen(
      () => existsSync(at('killed', 'laser')) && readdirSync(at('killed', 'laser')).length > 3,
    );
    const left = Object.entries(contentsOf(at('killed'))).filter(([path]) => !path.endsWith('.part'));
    for (const [path, content] of left)
      expect(sha256(Buffer.from(content, 'latin1')), path).toBe(hashIn(whole, path));
    expect(left.length).toBeGreaterThan(0);
    expect(left.length).toBeLessThan(Object.keys(whole).length);
    const again = await inFolder('make', DESIGN, '--out', 'killed', ...LASER);
    expect(again.code, again.err).toBe(0);
    const made = Object.entries(contentsOf(at('killed'))).filter(([path]) => !path.endsWith('.part'));
    expect(Object.fromEntries(made)).toEqual(whole);
  });
});

function hashIn(files: Readonly<Record<string, string>>, path: string): string {
  return sha256(Buffer.from(files[path] ?? '', 'latin1'));
}

/** Starts the making of a pack and kills it, without a chance to tidy up, as soon as something is true. */
function killedWhen(isSo: () => boolean): Promise<void> {
  const child = spawn(process.execPath, [COMMAND, 'make', DESIGN, '--out', 'killed', ...LASER], {
    cwd: folder.path,
    stdio: 'ignore',
  });
  return new Promise((done) => {
    const watch = setInterval(() => isSo() && child.kill('SIGKILL'), 1);
    child.on('close', () => {
      clearInterval(watch);
      done();
    });
  });
}

test('a reader that stops early, as head does, is no error', async () => {
  const child = spawn(process.execPath, [COMMAND, 'derive', DESIGN, '--json'], {
    cwd: folder.path,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let err = '';
  child.stderr.on('data', (text) => {
    err += text;
  });
  child.stdout.once('data', () => child.stdout.destroy());
  await new Promise((done) => child.on('close', done));
  expect(err).not.toMatch(/EPIPE/);
});
