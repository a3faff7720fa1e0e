import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { expect, test } from 'vitest';
import { architectureFaults, type SourceFile } from './laws/architecture.ts';

const root = resolve(import.meta.dirname, '..');

function sourceFiles(folder: string): SourceFile[] {
  return readdirSync(folder).flatMap((entry) => {
    const path = join(folder, entry);
    if (statSync(path).isDirectory()) return sourceFiles(path);
    if (!/\.tsx?$/.test(entry)) return [];
    return [{ path: relative(root, path).split(sep).join('/'), text: readFileSync(path, 'utf8') }];
  });
}

const table = readFileSync(join(root, 'ARCHITECTURE.md'), 'utf8');
const files = ['src', 'demo', 'bench'].flatMap((folder) => sourceFiles(join(root, folder)));

test('every import keeps to the table, without cycles, and core stays pure', () => {
  expect(files.length).toBeGreaterThan(10);
  expect(architectureFaults(files, table)).toEqual([]);
});

const planted: readonly (readonly [string, SourceFile, RegExp])[] = [
  ['an unknown room', { path: 'src/core/attic/x.ts', text: '' }, /attic.*not in the table/],
  [
    'an uphill import',
    { path: 'src/core/base/x.ts', text: "import { a } from '../curve/index.ts';" },
    /core\/base may not import core\/curve/,
  ],
  [
    'an import past a door',
    { path: 'src/core/design/x.ts', text: "import { a } from '../curve/chain.ts';" },
    /past the door/,
  ],
  [
    'an inner room that no row names',
    { path: 'src/core/photo/attic/x.ts', text: '' },
    /core\/photo\/attic.*not in the table/,
  ],
  [
    'an import from a floor above',
    { path: 'src/core/photo/sheet/x.ts', text: "import { a } from '../camera/view.ts';" },
    /core\/photo\/sheet may not import core\/photo\/camera/,
  ],
  ['a cycle', { path: 'src/core/base/frame.ts', text: "import type { C } from './index.ts';" }, /cycle/],
  ['an impure call', { path: 'src/core/base/x.ts', text: 'const t = Date.now();' }, /Date/],
  [
    'a sine of the engine',
    { path: 'src/core/base/x.ts', text: 'const s = Math.sin(1);' },
    /Math\.sin is rounded/,
  ],
  [
    'a power of the engine',
    { path: 'src/core/base/x.ts', text: 'const c = r ** 3;' },
    /rounded by the engine/,
  ],
  ['a bare tolerance', { path: 'src/core/curve/x.ts', text: 'if (d < 1e-9) {}' }, /1e-9/],
  ['a file too long', { path: 'src/core/curve/x.ts', text: '\n'.repeat(401) }, /401|402/],
];

test.each(planted)('%s is found', (_what, file, expected) => {
  const others = files.filter((other) => other.path !== file.path);
  const faults = architectureFaults([...others, file], table);
  expect(faults.join('\n')).toMatch(expected);
  expect(faults.length).toBeGreaterThan(0);
});
