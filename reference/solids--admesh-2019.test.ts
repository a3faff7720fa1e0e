/**
 * Title: ADMesh 0.98.4; authors: Anthony D. Martin and others; year: 2019. And the Open Asset Import Library 5.2 (2022),
 * which reads the 3MF and hands its triangles on.
 * Claim: every skin is read as a closed, manifold solid with nothing to mend, of as many parts as it has and in millimetres.
 * NumPy 1.24 (C. Harris and others, Array programming with NumPy, 2020) sums its volume, ours to a part in a million: ADMesh sums
 * in single precision, which leaves a part in 2000 to a quarter of a million triangles.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { draftDesign } from '../src/core/design/index.ts';
import { write3mf, writeStl } from '../src/core/files/index.ts';
import { deriveInstrument } from '../src/core/instrument/index.ts';
import { chosen } from '../src/core/quantity/index.ts';
import { instrumentSolids, meshBox, meshVolume, type NamedSolid } from '../src/core/solid/index.ts';

let folder = '';
let solids: readonly NamedSolid[] = [];

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'garland-solids-'));
  const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family: 'violin', name: 'violin', values: { bodyLength } });
  const instrument = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  const made = instrument.ok ? instrumentSolids(instrument.value) : instrument;
  if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
  solids = made.value;
}, 240_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** What ADMesh says of a file: numbers by their name. */
function told(path: string): (name: RegExp) => readonly number[] {
  const text = execFileSync('admesh', [path], { encoding: 'utf8' });
  return (name) => {
    const line = text.split('\n').find((one) => name.test(one)) ?? '';
    return [...line.slice(line.search(name)).matchAll(/[:=]\s*(-?[\d.]+)(?:\s+(-?[\d.]+))?/g)].flatMap(
      ([, a, b]) => [a, b].filter((one) => one !== undefined).map(Number),
    );
  };
}

const VOLUME = `
import sys, numpy as np
kind = np.dtype([('normal', '<f4', 3), ('corners', '<f4', (3, 3)), ('rest', '<u2')])
t = np.fromfile(sys.argv[1], kind, offset=84)['corners'].astype(float)
print(np.einsum('ij,ij->i', t[:, 0], np.cross(t[:, 1], t[:, 2])).sum() / 6)
`;

function volumeIn(path: string): number {
  return Number(execFileSync('/usr/bin/python3', ['-c', VOLUME, path], { encoding: 'utf8' }));
}

function isWhole(path: string, solid: NamedSolid): void {
  const of = told(path);
  const count = solid.mesh.triangles.length / 3;
  expect(of(/Number of facets/), solid.name).toEqual([count, count]);
  for (const flaw of [
    /Total disconnected facets/,
    /Degenerate facets/,
    /Facets removed/,
    /Facets reversed/,
    /Backwards edges/,
  ])
    expect(Math.max(...of(flaw)), `${solid.name}: ${flaw}`).toBe(0);
  expect(of(/Number of parts/)[0], solid.name).toBe(solid.name === 'garland' ? 6 : 1);
  expect(Math.abs(volumeIn(path) / meshVolume(solid.mesh) - 1), solid.name).toBeLessThan(1e-6);
  expect(Math.abs((of(/Volume/)[0] ?? 0) / meshVolume(solid.mesh) - 1), solid.name).toBeLessThan(1e-3);
  const { min, max } = meshBox(solid.mesh);
  const [least, most] = of(/Min X/);
  expect(least).toBeCloseTo(min[0] ?? 0, 3);
  expect(most).toBeCloseTo(max[0] ?? 0, 3);
}

describe('every solid is read whole', () => {
  test('as STL', () => {
    expect(solids.map(({ name }) => name)).toEqual(
      expect.arrayContaining([
        'form',
        'garland',
        'back-arched',
        'back-finished',
        'top-arched',
        'top-finished',
        'back-whole',
        'top-whole',
        'top-purfling-groove',
      ]),
    );
    for (const solid of solids) {
      const path = join(folder, `${solid.name}.stl`);
      writeFileSync(path, writeStl(solid.title, solid.mesh));
      isWhole(path, solid);
    }
  }, 120_000);

  test('as 3MF', () => {
    for (const solid of solids.filter(({ name }) => !name.startsWith('top'))) {
      const path = join(folder, `${solid.name}.3mf`);
      const read = join(folder, `${solid.name}-from-3mf.stl`);
      writeFileSync(path, write3mf(solid.title, solid.mesh));
      execFileSync('assimp', ['export', path, read, '-fstlb'], { stdio: 'ignore' });
      isWhole(read, solid);
    }
  }, 120_000);

  test('and a skin with a hole is not', () => {
    const form = solids.find(({ name }) => name === 'form') as NamedSolid;
    const path = join(folder, 'open.stl');
    writeFileSync(path, writeStl('open', { ...form.mesh, triangles: form.mesh.triangles.slice(3) }));
    expect(() => isWhole(path, form)).toThrow();
  });
});

test('a 3MF says that it is in millimetres', () => {
  const form = solids.find(({ name }) => name === 'form') as NamedSolid;
  const path = join(folder, 'unit.3mf');
  writeFileSync(path, write3mf('unit', form.mesh));
  const model = execFileSync(
    '/usr/bin/python3',
    [
      '-c',
      'import sys,zipfile;print(zipfile.ZipFile(sys.argv[1]).read("3D/3dmodel.model")[:400].decode())',
      path,
    ],
    { encoding: 'utf8' },
  );
  expect(model).toMatch(/<model unit="millimeter"/);
});
