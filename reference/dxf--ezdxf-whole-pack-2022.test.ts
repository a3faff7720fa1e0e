/**
 * Title: ezdxf 0.18; author: Manfred Moitzi; year: 2022. And librsvg (rsvg-convert), the librsvg developers, 2022 or later.
 * Claim: the cut files of a real viola, form and gauge, are read without error or repair; arcs are arcs, the outer edge is
 * as large as the pack's manifest says, within the rounding of both files in DXF and 0.05 mm as SVG is drawn.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { drawnInstrument, madePack } from '../test/gallery/drawnInstruments.ts';

const READ = `
import sys, json, ezdxf
def turns(e):
    first, last = e.dxf.start_angle % 360, e.dxf.end_angle % 360
    return [first, last] + [q for q in (0, 90, 180, 270) if (q - first) % 360 <= (last - first) % 360]
doc = ezdxf.readfile(sys.argv[1]); audit = doc.audit()
xs, ys, arcs, lines, open_ones = [], [], 0, 0, 0
for e in doc.modelspace().query('LWPOLYLINE[layer=="cut"]'):
    open_ones += 0 if e.closed else 1
    for part in e.virtual_entities():
        if part.dxftype() == 'LINE':
            lines += 1; ends = [part.dxf.start, part.dxf.end]
        else:
            arcs += 1; ends = list(part.vertices(turns(part)))
        xs += [p.x for p in ends]; ys += [p.y for p in ends]
kinds = sorted({e.dxftype() for e in doc.modelspace()})
print(json.dumps({'errors': len(audit.errors), 'fixes': len(audit.fixes), 'units': doc.units, 'open': open_ones, 'arcs': arcs, 'lines': lines, 'kinds': kinds, 'size': [max(xs) - min(xs), max(ys) - min(ys)]}))
`;
const DPI = 600;
const MM = 25.4 / DPI;
/** mm. Both ends of a length and the manifest's figure are each rounded to a ten thousandth. */
const ROUNDING_MM = 0.00015;
const PIECES = ['form', 'arching-gauge-back-waist', 'arching-gauge-top-long-finished'] as const;

let folder = '';
let pack: ReadonlyMap<string, Uint8Array> = new Map();
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'garland-cut-'));
  pack = await madePack('viola', 'A4');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each(PIECES)('%s.dxf opens without repair, its arcs whole, as large as the manifest says', (name) => {
  const path = join(folder, `${name}.dxf`);
  writeFileSync(path, fileOf(`laser/${name}.dxf`));
  const read = JSON.parse(execFileSync('/usr/bin/python3', ['-c', READ, path]).toString()) as {
    size: number[];
    kinds: string[];
  } & Record<'errors' | 'fixes' | 'units' | 'open' | 'arcs' | 'lines', number>;
  expect([read.errors, read.fixes, read.units, read.open]).toEqual([0, 0, 4, 0]);
  expect(read.kinds).toEqual(['LWPOLYLINE']);
  const edge = edgeOf(name);
  expect(read.arcs).toBe(edge.filter(({ bulge }) => bulge !== 0).length);
  expect(read.arcs + read.lines).toBe(edge.length);
  sizeOf(name, 'dxf').forEach((side, index) =>
    expect(Math.abs((read.size[index] ?? 0) - side)).toBeLessThanOrEqual(ROUNDING_MM),
  );
});

test.each(PIECES)('%s.svg is drawn as large as the manifest says', async (name) => {
  // Lettering and marks lie inside the piece: the outermost ink is the outer edge, half a line, 0.05 mm, beyond it.
  const png = execFileSync('rsvg-convert', ['-d', `${DPI}`, '-p', `${DPI}`, '-b', 'white'], {
    input: fileOf(`laser/${name}.svg`),
    maxBuffer: 1 << 28,
  });
  const { data, info } = await sharp(png, { limitInputPixels: false })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  let [left, right, top, bottom] = [info.width, 0, info.height, 0];
  for (let y = 0; y < info.height; y++)
    for (let x = 0; x < info.width; x++) {
      if ((data[y * info.width + x] ?? 255) > 170) continue;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  const [width = 0, height = 0] = sizeOf(name, 'svg');
  expect(Math.abs((right - left + 1) * MM - 0.1 - width)).toBeLessThanOrEqual(0.05);
  expect(Math.abs((bottom - top + 1) * MM - 0.1 - height)).toBeLessThanOrEqual(0.05);
});

function fileOf(path: string): Uint8Array {
  const bytes = pack.get(path);
  if (!bytes) throw new Error(`no ${path}`);
  return bytes;
}

function sizeOf(name: string, kind: string): readonly number[] {
  const manifest = JSON.parse(Buffer.from(fileOf('manifest.json')).toString()) as {
    files: { path: string; sizeMm?: number[] }[];
  };
  const size = manifest.files.find(({ path }) => path === `laser/${name}.${kind}`)?.sizeMm;
  if (!size) throw new Error('no size');
  return size;
}

function edgeOf(name: string) {
  const drawing = drawnInstrument('viola').find((one) => one.name === name);
  const edge = drawing?.lines.find(({ meaning }) => meaning === 'cut')?.chain;
  if (!edge) throw new Error('no edge');
  return edge.vertices;
}
