/**
 * Title: ezdxf 0.18; author: Manfred Moitzi; year: 2022. And dxf-parser 1.1.2, as a second reader.
 * Claim: both releases are read without error or repair, in millimetres, contours closed, arcs kept as bulges,
 * extents within a ten thousandth of a millimetre of the design, layers declared, holes before outer edges.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import dxfParser from 'dxf-parser';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { boundsOf, segments } from '../src/core/curve/index.ts';
import { writeDxf } from '../src/core/files/index.ts';
import { fiddleForm } from '../test/laws/sampleDrawings.ts';

const READ = `
import sys, json, ezdxf
# The reader's own box goes over cubics that leave an arc by more than we claim; its ARC entities are exact.
def box_of(e):
    xs, ys = [], []
    for part in e.virtual_entities():
        if part.dxftype() == 'LINE':
            ends = [part.dxf.start, part.dxf.end]
        else:
            first, last = part.dxf.start_angle % 360, part.dxf.end_angle % 360
            turns = [first, last] + [q for q in (0, 90, 180, 270) if (q - first) % 360 <= (last - first) % 360]
            ends = list(part.vertices(turns))
        xs += [p.x for p in ends]; ys += [p.y for p in ends]
    return [min(xs), min(ys), max(xs), max(ys)]
doc = ezdxf.readfile(sys.argv[1]); audit = doc.audit()
out = []
for e in doc.modelspace():
    light = e.dxftype() == 'LWPOLYLINE'
    points = [list(p) for p in e.get_points('xyb')] if light else [[v.dxf.location.x, v.dxf.location.y, v.dxf.get('bulge', 0)] for v in e.vertices]
    out.append({'type': e.dxftype(), 'layer': e.dxf.layer, 'closed': bool(e.closed if light else e.is_closed), 'points': points, 'box': box_of(e)})
print(json.dumps({'version': doc.dxfversion, 'errors': len(audit.errors), 'fixes': len(audit.fixes), 'units': doc.units, 'measurement': doc.header.get('$MEASUREMENT', -1), 'layers': [l.dxf.name for l in doc.layers], 'entities': out}))
`;
// The package is a class at run time and a namespace to the type checker.
const DxfParser = dxfParser as unknown as typeof dxfParser.default;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'garland-dxf-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each([
  ['R2000', 'AC1015', 'LWPOLYLINE'],
  ['R12', 'AC1009', 'POLYLINE'],
] as const)('%s opens without repair, at its size, its arcs whole', (release, version, kind) => {
  const form = fiddleForm();
  const read = readBack(text(release));
  expect([read.version, read.errors, read.fixes, read.units]).toEqual([version, 0, 0, 4]);
  expect(read.layers).toEqual(expect.arrayContaining(['0', 'text', 'score', 'cut-inside', 'cut']));
  expect(new Set(read.entities.map((one) => one.type))).toEqual(new Set([kind]));
  const order = ['text', 'score', 'cut-inside', 'cut'];
  const ranks = read.entities.map((one) => order.indexOf(one.layer));
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  const [outer] = form.lines.filter((line) => line.meaning === 'cut');
  const [written] = read.entities.filter((one) => one.layer === 'cut');
  if (!outer || !written) throw new Error('no outer edge');
  expect(written.closed).toBe(true);
  expect(written.points).toHaveLength(outer.chain.vertices.length);
  expect(written.points.filter((p) => p[2] !== 0)).toHaveLength(
    segments(outer.chain).filter((s) => s.bulge !== 0).length,
  );
  const box = boundsOf(outer.chain);
  const wanted = [box.min.x, box.min.y, box.max.x, box.max.y];
  written.box.forEach((side, index) =>
    expect(Math.abs(side - (wanted[index] ?? 0))).toBeLessThanOrEqual(0.0001),
  );
});

test('a second reader finds millimetres and the same bulges', () => {
  const parsed = new DxfParser().parseSync(text('R2000'));
  expect(parsed?.header.$INSUNITS).toBe(4);
  expect(parsed?.header.$MEASUREMENT).toBe(1);
  const holes = parsed?.entities.filter((one) => one.layer === 'cut-inside') as unknown as {
    shape: boolean;
    vertices: { bulge: number }[];
  }[];
  expect(holes).toHaveLength(7);
  for (const hole of holes) expect(hole.vertices.map((v) => v.bulge)).toEqual([-1, -1]);
});

test('a title cannot smuggle a line into the file', () => {
  const plain = readBack(text('R2000')).entities.length;
  const evil = writeDxf({ ...fiddleForm(), title: 'x\r\n  0\r\nLINE\r\n  8\r\ncut\u2028ł' });
  if (!evil.ok) throw new Error('refused');
  expect(readBack(evil.value).entities).toHaveLength(plain);
  expect(evil.value).not.toContain('TEXT\r\n');
});

function text(release: 'R2000' | 'R12'): string {
  const written = writeDxf(fiddleForm(), release);
  if (!written.ok) throw new Error(JSON.stringify(written.faults));
  return written.value;
}

interface Read {
  version: string;
  errors: number;
  fixes: number;
  units: number;
  layers: string[];
  entities: { type: string; layer: string; closed: boolean; points: number[][]; box: number[] }[];
}

function readBack(dxf: string): Read {
  const path = join(folder, 'piece.dxf');
  writeFileSync(path, dxf);
  return JSON.parse(execFileSync('/usr/bin/python3', ['-c', READ, path]).toString()) as Read;
}
