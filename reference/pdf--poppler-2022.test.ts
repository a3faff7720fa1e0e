/**
 * Title: Poppler (pdftoppm, pdfinfo, pdftotext); author: the Poppler developers; year: 2022 or later, as installed.
 * Claim: printed at actual size, every page is its paper, both check bars measure 150 mm and the pieces their own
 * size, each within 0.05 mm, as an independent renderer draws them at 600 dots an inch.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { boundsOf } from '../src/core/curve/index.ts';
import { layoutPages, PAPERS, type PageSet, type PaperName } from '../src/core/drawing/index.ts';
import { writePdf } from '../src/core/files/index.ts';
import { fiddleForm, sampleDrawings } from '../test/laws/sampleDrawings.ts';
import { barCorner, darkMiddles, printedExtents, renderedPage } from '../test/render/printedPages.ts';

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
      const picture = renderedPage(path, page.number);
      // The end ticks, read along a line that crosses no other tick: 3.2 mm inside only the long ticks reach.
      const across = darkMiddles(picture, corner, 'x');
      const up = darkMiddles(picture, corner, 'y');
      expect(Math.abs(across - 150)).toBeLessThanOrEqual(ALLOWED_MM);
      expect(Math.abs(up - 150)).toBeLessThanOrEqual(ALLOWED_MM);
    }
  },
);

test('a page corrected for a printer holds bars longer by just its error, and says so', async () => {
  const set = pagesOn('A4', { xMeasuredMm: 149.2, yMeasuredMm: 150.7 });
  const path = await written(set);
  const [page] = set.pages;
  if (!page) throw new Error('no page');
  const scaled = {
    x: page.widthMm / 2 + (barCorner(page).x - page.widthMm / 2) * set.scale.x,
    y: page.heightMm / 2 + (barCorner(page).y - page.heightMm / 2) * set.scale.y,
  };
  const picture = renderedPage(path, 1);
  const across = darkMiddles(picture, scaled, 'x');
  const up = darkMiddles(picture, scaled, 'y');
  expect(Math.abs(across * (149.2 / 150) - 150)).toBeLessThanOrEqual(ALLOWED_MM);
  expect(Math.abs(up * (150.7 / 150) - 150)).toBeLessThanOrEqual(ALLOWED_MM);
  const words = execFileSync('pdftotext', ['-layout', path, '-']).toString();
  expect(words).toContain('Corrected for a printer that drew the bars 149.2 mm across and 150.7 mm up.');
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
  const printed = printedExtents(path, set, 'inner-form');
  const box = boundsOf(outer.chain);
  expect(Math.abs(printed.heightMm - (box.max.y - box.min.y))).toBeLessThanOrEqual(ALLOWED_MM);
  expect(Math.abs(printed.widthMm - (box.max.x - box.min.x))).toBeLessThanOrEqual(ALLOWED_MM);
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
