/**
 * Title: Poppler (pdftoppm, pdfinfo, pdftotext); author: the Poppler developers; year: 2022 or later, as installed.
 * Claim: printed at actual size, every page is its paper, both check bars measure 150 mm and the pieces their own
 * size, each within 0.05 mm, as an independent renderer draws them at 600 dots an inch.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { boundsOf, sampleChain } from '../src/core/curve/index.ts';
import { layoutPages, PAPERS, type PageSet, type PaperName } from '../src/core/drawing/index.ts';
import { writePdf } from '../src/core/files/index.ts';
import { fiddleForm, sampleDrawings } from '../test/laws/sampleDrawings.ts';

const DPI = 600;
const MM = 25.4 / DPI;
const ALLOWED_MM = 0.05;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'garland-pdf-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each(['A4', 'Letter', 'A3', 'Tabloid'] as const)(
  'on %s both bars measure 150 mm and each page is the paper',
  async (paper) => {
    const set = pagesOn(paper);
    const path = await written(set);
    expectPaper(path, set, paper);
    for (const page of set.pages.filter((one) => one.number <= 2)) {
      const corner = barCorner(page);
      const picture = rendered(path, page.number);
      // The end ticks, read along a line that crosses no other tick: 3.2 mm inside only the long ticks reach.
      const across = darkMiddles(picture, page.heightMm, corner, 'x');
      const up = darkMiddles(picture, page.heightMm, corner, 'y');
      expect(Math.abs(across - 150)).toBeLessThanOrEqual(ALLOWED_MM);
      expect(Math.abs(up - 150)).toBeLessThanOrEqual(ALLOWED_MM);
    }
  },
);

test('a page corrected for a printer holds bars longer by just its error, and says so', async () => {
  const set = pagesOn('A4', { xMeasuredMm: 149.2, yMeasuredMm: 150.6 });
  const path = await written(set);
  const [page] = set.pages;
  if (!page) throw new Error('no page');
  const scaled = {
    x: page.widthMm / 2 + (barCorner(page).x - page.widthMm / 2) * set.scale.x,
    y: page.heightMm / 2 + (barCorner(page).y - page.heightMm / 2) * set.scale.y,
  };
  const picture = rendered(path, 1);
  const across = darkMiddles(picture, page.heightMm, scaled, 'x');
  const up = darkMiddles(picture, page.heightMm, scaled, 'y');
  expect(Math.abs(across * (149.2 / 150) - 150)).toBeLessThanOrEqual(ALLOWED_MM);
  expect(Math.abs(up * (150.6 / 150) - 150)).toBeLessThanOrEqual(ALLOWED_MM);
  const words = execFileSync('pdftotext', ['-layout', path, '-']).toString();
  expect(words).toContain('Corrected for a printer that drew the bars 149.2 mm across and 150.6 mm up.');
  expect(words).toContain('Both bars must measure 150 mm. If not, do not cut');
});

test('two writings of the same pages are the same bytes, and no reader is asked to scale', async () => {
  const [one, two] = [await writePdf(pagesOn('A4')), await writePdf(pagesOn('A4'))];
  expect(Buffer.from(one).equals(Buffer.from(two))).toBe(true);
  expect(Buffer.from(one).toString('latin1')).toContain('/PrintScaling /None');
  expect(Buffer.from(one).toString('latin1')).not.toMatch(/CreationDate|ModDate/);
});

test('the tiles of the form, laid together, print its whole length and width', async () => {
  const set = pagesOn('A4');
  const path = await written(set);
  const [outer] = fiddleForm().lines;
  if (!outer) throw new Error('no edge');
  const points = sampleChain(outer.chain, 0.001);
  const outermost = (way: (p: { x: number; y: number }) => number) =>
    points.reduce((most, p) => (way(p) > way(most) ? p : most));
  const inkAt = { left: 0, right: 0, low: 0, high: 0 };
  const ends = {
    left: outermost((p) => -p.x),
    right: outermost((p) => p.x),
    low: outermost((p) => -p.y),
    high: outermost((p) => p.y),
  };
  const seen = new Set<string>();
  for (const page of set.pages.filter((one) => one.tile !== undefined && one.title.includes('form'))) {
    const [placed] = page.placements;
    if (placed?.turnRad !== 0) throw new Error('the form lies turned');
    const picture = rendered(path, page.number);
    const { min, max } = placed.window;
    for (const [name, end] of Object.entries(ends) as [keyof typeof ends, { x: number; y: number }][]) {
      const at = { x: end.x + placed.shift.x, y: end.y + placed.shift.y };
      if (at.x < min.x + 2 || at.x > max.x - 2 || at.y < min.y + 2 || at.y > max.y - 2) continue;
      seen.add(name);
      const upright = name === 'low' || name === 'high';
      const out = name === 'right' || name === 'high' ? 1 : -1;
      // Outwards from inside the edge to the last ink, over a millimetre and a half on both sides of the end.
      let last = -Infinity;
      for (let along = -1.5; along <= 1.5; along += MM)
        for (let off = -0.3; off <= 0.6; off += MM / 4) {
          const x = at.x + (upright ? along : out * off);
          const y = at.y + (upright ? out * off : along);
          if (picture.dark(Math.floor(x / MM), Math.floor((page.heightMm - y) / MM)))
            last = Math.max(last, off);
        }
      inkAt[name] = (upright ? end.y : end.x) + out * last;
    }
  }
  expect(seen.size).toBe(4);
  const box = boundsOf(outer.chain);
  // Ink reaches half a line's width, 0.125 mm, beyond the line on each side.
  expect(Math.abs(inkAt.high - inkAt.low - 0.25 - (box.max.y - box.min.y))).toBeLessThanOrEqual(ALLOWED_MM);
  expect(Math.abs(inkAt.right - inkAt.left - 0.25 - (box.max.x - box.min.x))).toBeLessThanOrEqual(ALLOWED_MM);
});

function pagesOn(paper: PaperName, printer?: { xMeasuredMm: number; yMeasuredMm: number }): PageSet {
  const set = layoutPages(sampleDrawings(), {
    paper,
    title: 'Sample )(<> Größe',
    ...(printer ? { printer } : {}),
  });
  if (!set.ok) throw new Error(JSON.stringify(set.faults));
  return set.value;
}

async function written(set: PageSet): Promise<string> {
  const path = join(folder, `${set.paper}-${set.scale.x}.pdf`);
  writeFileSync(path, await writePdf(set));
  return path;
}

function expectPaper(path: string, set: PageSet, paper: PaperName): void {
  const boxes = execFileSync('pdfinfo', ['-box', '-l', String(set.pages.length), path]).toString();
  const found = [...boxes.matchAll(/MediaBox:\s+0\.00\s+0\.00\s+([\d.]+)\s+([\d.]+)/g)];
  expect(found).toHaveLength(set.pages.length);
  const sides = [PAPERS[paper].widthMm, PAPERS[paper].heightMm];
  for (const [, width, height] of found) {
    const mm = [Number(width), Number(height)].map((points) => (points * 25.4) / 72).sort((a, b) => a - b);
    mm.forEach((side, index) => expect(Math.abs(side - (sides[index] ?? 0))).toBeLessThan(0.005));
  }
}

function barCorner(page: PageSet['pages'][number]): { x: number; y: number } {
  const bar = page.lines.find((line) => line.pen === 'bar');
  const [start] = bar?.chain.vertices ?? [];
  if (!start) throw new Error('no bar');
  return start;
}

interface Picture {
  dark(xPx: number, yPx: number): boolean;
}

function rendered(path: string, page: number): Picture {
  const out = join(folder, 'page');
  execFileSync('pdftoppm', [
    '-r',
    String(DPI),
    '-gray',
    '-f',
    String(page),
    '-l',
    String(page),
    '-singlefile',
    path,
    out,
  ]);
  const bytes = readFileSync(`${out}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  if (!head) throw new Error('no picture');
  const width = Number(head[1]);
  const height = Number(head[2]);
  const pixels = bytes.subarray(head[0].length);
  return {
    dark: (x, y) => x >= 0 && y >= 0 && x < width && y < height && (pixels[y * width + x] ?? 255) < 128,
  };
}

/** mm between the middles of the bar's first and last line, read 0.6 mm inside the ruler. */
function darkMiddles(
  picture: Picture,
  heightMm: number,
  corner: { x: number; y: number },
  axis: 'x' | 'y',
): number {
  const middle = (nearMm: number): number => {
    const hits: number[] = [];
    for (let off = -0.6; off <= 0.6; off += MM / 2) {
      const x = axis === 'x' ? corner.x + nearMm + off : corner.x + 0.6;
      const y = axis === 'x' ? corner.y + 0.6 : corner.y + nearMm + off;
      if (picture.dark(Math.floor(x / MM), Math.floor((heightMm - y) / MM))) hits.push(nearMm + off);
    }
    if (hits.length === 0) throw new Error(`no line near ${nearMm} along ${axis}`);
    return hits.reduce((sum, hit) => sum + hit, 0) / hits.length;
  };
  const far = [150, 150.8, 149.4].map((near) => {
    try {
      return middle(near);
    } catch {
      return Number.NaN;
    }
  });
  const last = far.find((one) => Number.isFinite(one)) ?? Number.NaN;
  return last - middle(0);
}
