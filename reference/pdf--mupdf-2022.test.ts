/**
 * Title: MuPDF (mutool trace, mutool show); author: the MuPDF developers; year: 2022 or later, as installed.
 * Claim: a second reader of PDF finds the layers by name, every line of a viola's form in its own layer and in true
 * millimetres within a ten thousandth, arcs as curves; two processes write the same bytes.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { nearestOn, sampleChain } from '../src/core/curve/index.ts';
import { layoutPages, type Meaning, placedChain } from '../src/core/drawing/index.ts';
import { writePdf } from '../src/core/files/index.ts';
import { drawnInstrument, madePack } from '../test/gallery/drawnInstruments.ts';

const LAYERS = ['draw', 'score', 'cut-inside', 'cut', 'text', 'page'];
const POINT_MM = 25.4 / 72;
/** mm. What the file may differ from the design: cubics, rounding, and the reader's own four decimals. */
const ALLOWED_MM = 0.0002;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'garland-mupdf-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('every line of the form is found in the layer of its meaning, in true millimetres, arcs as curves', async () => {
  const { set, path } = await onePage();
  const [page] = set.pages.filter(({ placements }) => placements.length > 0);
  const [placed] = page?.placements ?? [];
  if (!page || !placed) throw new Error('no page');
  const layers = traced(path, page.number, page.heightMm);
  expect([...layers.keys()]).toEqual(LAYERS);
  for (const meaning of ['draw', 'score', 'cut-inside', 'cut'] satisfies Meaning[]) {
    const wanted = placed.drawing.lines
      .filter((line) => line.meaning === meaning)
      .map((line) => placedChain(placed, line.chain));
    const found = layers.get(meaning) ?? [];
    expect(found).toHaveLength(wanted.length);
    for (const [index, chain] of wanted.entries()) {
      const path = found[index];
      if (!path) throw new Error('no path');
      for (const at of path.points) expect(nearestOn(chain, at).distanceMm).toBeLessThan(ALLOWED_MM);
      const arcs = chain.vertices.some(({ bulge }) => bulge !== 0);
      expect(path.curves > 0, meaning).toBe(arcs);
      expect(path.closed).toBe(chain.closed);
      // And the other way: no stretch of the design is missing from the file.
      for (const at of sampleChain(chain, 0.05))
        expect(Math.min(...path.points.map((one) => Math.hypot(one.x - at.x, one.y - at.y)))).toBeLessThan(3);
    }
  }
});

test('the layers carry the names of the meanings and are all switched on', async () => {
  const { path } = await onePage();
  const catalogue = execFileSync('mutool', ['show', path, 'trailer/Root/OCProperties']).toString();
  const numbers = [...(/\/OCGs \[([^\]]*)\]/.exec(catalogue)?.[1] ?? '').matchAll(/(\d+) 0 R/g)];
  const names = numbers.map(([, number]) => {
    const group = execFileSync('mutool', ['show', path, String(number)]).toString();
    return /\/Name \(([^)]*)\)/.exec(group)?.[1];
  });
  expect(names).toEqual(LAYERS);
  expect(catalogue).toContain('/BaseState /ON');
});

test('two processes write the same bytes', async () => {
  // The bundler that comes with the test runner reads the sources in the other process.
  const script = `
    const { createServer } = await import('vite');
    const server = await createServer({ configFile: false, logLevel: 'silent', appType: 'custom', optimizeDeps: { noDiscovery: true }, server: { middlewareMode: true, hmr: false, ws: false, watch: null } });
    const { madePack } = await server.ssrLoadModule('/test/gallery/drawnInstruments.ts');
    const { createHash } = await import('node:crypto');
    const files = [...(await madePack('viola', 'A4'))].map(([path, bytes]) => path + ' ' + createHash('sha256').update(bytes).digest('hex'));
    await server.close();
    console.log(files.join('\\n'));
  `;
  const elsewhere = execFileSync(process.execPath, ['--input-type=module', '-e', script], {
    cwd: join(import.meta.dirname, '..'),
  }).toString();
  const here = [...(await madePack('viola', 'A4'))].map(
    ([path, bytes]) => `${path} ${createHash('sha256').update(bytes).digest('hex')}`,
  );
  expect(here.length).toBeGreaterThan(60);
  expect(elsewhere.trim().split('\n')).toEqual(here);
});

async function onePage() {
  const form = drawnInstrument('viola').find(({ name }) => name === 'form');
  if (!form) throw new Error('no form');
  const set = layoutPages([form], { paper: 'A2', title: 'Form' });
  if (!set.ok) throw new Error(JSON.stringify(set.faults));
  const path = join(folder, 'form.pdf');
  writeFileSync(path, await writePdf(set.value));
  return { set: set.value, path };
}

interface TracedPath {
  readonly points: { x: number; y: number }[];
  curves: number;
  closed: boolean;
}

/** Stroked paths by layer, sampled, in millimetres from the page's lower left corner. */
function traced(path: string, page: number, heightMm: number): Map<string, TracedPath[]> {
  const text = execFileSync('mutool', ['trace', path, String(page)], { maxBuffer: 1 << 28 }).toString();
  const layers = new Map<string, TracedPath[]>();
  let own: TracedPath[] = [];
  let into: TracedPath | null = null;
  let matrix = [1, 0, 0, 1, 0, 0];
  let last = { x: 0, y: 0 };
  for (const line of text.split('\n')) {
    const [, tag = ''] = /^\s*<(\/?\w+)/.exec(line) ?? [];
    const value = (name: string): number => Number(new RegExp(` ${name}="([^"]*)"`).exec(line)?.[1]);
    const place = (x: number, y: number) => {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = matrix;
      return { x: (a * x + c * y + e) * POINT_MM, y: heightMm - (b * x + d * y + f) * POINT_MM };
    };
    if (tag === 'layer' || tag === 'begin_layer') {
      own = [];
      layers.set(/name="([^"]*)"/.exec(line)?.[1] ?? '', own);
    } else if (tag === 'stroke_path') {
      matrix = (/transform="([^"]*)"/.exec(line)?.[1] ?? '').split(' ').map(Number);
      into = { points: [], curves: 0, closed: false };
      own.push(into);
    } else if (tag === '/stroke_path') into = null;
    else if (into === null) continue;
    else if (tag === 'moveto' || tag === 'lineto') {
      const next = { x: value('x'), y: value('y') };
      const steps =
        tag === 'moveto' ? 1 : Math.max(1, Math.ceil(Math.hypot(next.x - last.x, next.y - last.y)));
      for (let step = 1; step <= steps; step++) {
        const share = step / steps;
        into.points.push(place(last.x + (next.x - last.x) * share, last.y + (next.y - last.y) * share));
      }
      if (tag === 'moveto') into.points.splice(0, into.points.length, place(next.x, next.y));
      last = next;
    } else if (tag === 'curveto') {
      into.curves++;
      const [p1, p2, p3] = [1, 2, 3].map((n) => ({ x: value(`x${n}`), y: value(`y${n}`) }));
      if (!p1 || !p2 || !p3) throw new Error('no curve');
      for (let step = 1; step <= 16; step++) {
        const t = step / 16;
        const along = (axis: 'x' | 'y'): number =>
          (1 - t) ** 3 * last[axis] +
          3 * t * (1 - t) ** 2 * p1[axis] +
          3 * t ** 2 * (1 - t) * p2[axis] +
          t ** 3 * p3[axis];
        into.points.push(place(along('x'), along('y')));
      }
      last = p3;
    } else if (tag === 'closepath') into.closed = true;
  }
  return layers;
}
