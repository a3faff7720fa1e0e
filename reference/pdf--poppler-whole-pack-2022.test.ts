/**
 * Title: Poppler (pdftoppm, pdfinfo, pdftotext); author: the Poppler developers; year: 2022 or later, as installed.
 * Claim: the print files of a real viola measure true on large and on American paper, bars and form within 0.05 mm; no word
 * leaves a page or lies over a bar; no page is empty; the calibration sheet's own bars measure what they say.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Box } from '../src/core/base/index.ts';
import { boundsOf } from '../src/core/curve/index.ts';
import {
  layoutPages,
  letteringStrokes,
  PAPERS,
  type PageSet,
  type PaperName,
  type PlacedDrawing,
  pieceSizeMm,
  placedChain,
  spokenDrawing,
} from '../src/core/drawing/index.ts';
import { writePdf } from '../src/core/files/index.ts';
import { calibrationSheet } from '../src/core/photo/index.ts';
import { type Language, speechOf } from '../src/core/words/index.ts';
import { sheet } from '../src/core/work/index.ts';
import { drawnInstrument, type Shown } from '../test/gallery/drawnInstruments.ts';
import { barCorner, darkMiddles, printedExtents, renderedPage } from '../test/render/printedPages.ts';

const ALLOWED_MM = 0.05;
const POINT_MM = 25.4 / 72;
/** mm. The longest tick of a bar. */
const TICK_MM = 4;
const BAR_WORDS = ['50', '100', '150', 'mm'];
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'garland-pack-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each(['A2', 'Letter'] as const)('on %s the bars and the form of a viola measure true', async (paper) => {
  const { set, path } = await printed('viola', paper);
  for (const page of [set.pages[0], set.pages.at(-1)]) {
    if (!page) throw new Error('no page');
    const picture = renderedPage(path, page.number);
    for (const axis of ['x', 'y'] as const)
      expect(Math.abs(darkMiddles(picture, barCorner(page), axis) - 150)).toBeLessThanOrEqual(ALLOWED_MM);
  }
  const form = drawnInstrument('viola').find(({ name }) => name === 'form');
  if (!form) throw new Error('no form');
  const wanted = pieceSizeMm(form);
  const found = printedExtents(path, set, 'form');
  expect(Math.abs(found.widthMm - wanted.widthMm)).toBeLessThanOrEqual(ALLOWED_MM);
  expect(Math.abs(found.heightMm - wanted.heightMm)).toBeLessThanOrEqual(ALLOWED_MM);
});

test.each(['A4', 'A3'] as const)(
  'both bars of the %s calibration sheet measure what they say',
  async (paper) => {
    const bytes = await sheet(paper);
    if (!bytes.ok) throw new Error(JSON.stringify(bytes.faults));
    const path = join(folder, `sheet-${paper}.pdf`);
    writeFileSync(path, bytes.value);
    const { bars, barMm } = calibrationSheet(paper);
    const picture = renderedPage(path, 1);
    for (const [axis, { from, to }] of Object.entries(bars) as ['x' | 'y', typeof bars.x][]) {
      const ink: number[] = [];
      for (let at = from[axis] - 1; at <= to[axis] + 1; at += 0.005)
        if (axis === 'x' ? picture.dark(at, from.y) : picture.dark(from.x, at)) ink.push(at);
      const found = (ink.at(-1) ?? 0) - (ink[0] ?? 0);
      expect(Math.abs(found - barMm), `${axis}: ${found}`).toBeLessThanOrEqual(ALLOWED_MM);
    }
  },
);

const EVERY = (['violin', 'viola', 'cello'] as const).flatMap((shown) =>
  (['A4', 'Letter'] as const).map((paper) => ({ shown, paper })),
);

/** German is longer: on the smallest paper, of the largest instrument. */
const GERMAN = { shown: 'cello', paper: 'Letter', language: 'de' } as const;
/** Words that are on every English print, and never German. */
const ENGLISH = /^(?:the|of|and|with|from|its|pages?|pieces?|make|notes?|tile|print|map)[.,:;]?$/i;

test('what is printed in German has no English word', async () => {
  const english = wordsOf((await printed(GERMAN.shown, GERMAN.paper)).path).flat();
  expect(english.filter(({ text }) => ENGLISH.test(text)).length).toBeGreaterThan(1000);
  const german = wordsOf((await printed(GERMAN.shown, GERMAN.paper, GERMAN.language)).path);
  const left = german.flatMap((words, page) =>
    words.filter(({ text }) => ENGLISH.test(text)).map(({ text }) => `page ${page + 1}: ${text}`),
  );
  expect(left).toEqual([]);
});

test.each([...EVERY.map((one) => ({ ...one, language: 'en' as const })), GERMAN])(
  'the $shown on $paper in $language: no word leaves its page, lies over a bar or over another word',
  async ({ shown, paper, language }) => {
    const { set, path } = await printed(shown, paper, language);
    const pages = wordsOf(path);
    expect(pages).toHaveLength(set.pages.length);
    const faults: string[] = [];
    for (const [index, words] of pages.entries()) {
      const page = set.pages[index];
      if (!page) throw new Error('no page');
      const corner = barCorner(page);
      for (const [number, word] of words.entries()) {
        const where = `page ${index + 1}: ${word.text} at ${word.left.toFixed(1)}, ${word.low.toFixed(1)}`;
        if (word.left < 0 || word.low < 0 || word.right > page.widthMm || word.high > page.heightMm)
          faults.push(`${where} leaves the page`);
        const overFoot = word.low < corner.y + TICK_MM && word.left < corner.x + 150;
        const overSide = word.left < corner.x + TICK_MM && word.low < corner.y + 150;
        if ((overFoot || overSide) && !BAR_WORDS.includes(word.text)) faults.push(`${where} lies over a bar`);
        for (const other of words.slice(number + 1))
          if (sharedShare(word, other) > 0.3) faults.push(`${where} lies over ${other.text}`);
      }
      for (const placed of page.placements) {
        const ink = inkBox(placed);
        if (ink.min.x < corner.x + TICK_MM || ink.min.y < corner.y + TICK_MM)
          faults.push(`page ${index + 1}: ${placed.drawing.name} lies over a bar`);
      }
    }
    expect(faults).toEqual([]);
  },
);

test.each(EVERY)(
  'the $shown on $paper: every page is its paper in every box, and none is empty',
  async ({ shown, paper }) => {
    const { set, path } = await printed(shown, paper);
    const boxes = execFileSync('pdfinfo', ['-box', '-l', `${set.pages.length}`, path]).toString();
    const found = [...boxes.matchAll(/(\w+)Box:\s+0\.00\s+0\.00\s+([\d.]+)\s+([\d.]+)/g)];
    expect(found).toHaveLength(5 * set.pages.length);
    const sides = [PAPERS[paper].widthMm, PAPERS[paper].heightMm];
    for (const [, , width, height] of found) {
      const mm = [Number(width), Number(height)].map((points) => points * POINT_MM).sort((a, b) => a - b);
      mm.forEach((side, index) => expect(Math.abs(side - (sides[index] ?? 0))).toBeLessThan(0.005));
    }
    const pictures = mkdtempSync(join(folder, 'small-'));
    execFileSync('pdftoppm', ['-r', '25.4', '-gray', path, join(pictures, 'p')]);
    const names = readdirSync(pictures).sort();
    expect(names).toHaveLength(set.pages.length);
    for (const [index, name] of names.entries()) {
      const page = set.pages[index];
      if (!page) throw new Error('no page');
      // At one pixel a millimetre: ink inside of the bars and above the foot.
      const bytes = readFileSync(join(pictures, name));
      const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
      const [width, height] = [Number(head?.[1]), Number(head?.[2])];
      const pixels = bytes.subarray(head?.[0].length ?? 0);
      let inked = 0;
      for (let y = 0; y < height - 32; y++)
        for (let x = 22; x < width; x++) if ((pixels[y * width + x] ?? 255) < 245) inked++;
      expect(inked, `page ${index + 1}, ${page.title}`).toBeGreaterThan(40);
    }
  },
);

/** What shows of a piece on its page. */
function inkBox(placed: PlacedDrawing): Box<'page'> {
  const { drawing, window } = placed;
  const chains = [...drawing.lines.map(({ chain }) => chain), ...drawing.lettering.flatMap(letteringStrokes)];
  const boxes = chains.map((chain) => boundsOf(placedChain(placed, chain)));
  return {
    min: {
      x: Math.max(window.min.x, Math.min(...boxes.map(({ min }) => min.x))),
      y: Math.max(window.min.y, Math.min(...boxes.map(({ min }) => min.y))),
    },
    max: window.max,
  };
}

interface Printed {
  readonly set: PageSet;
  readonly path: string;
}
const files = new Map<string, Printed>();

async function printed(shown: Shown, paper: PaperName, language: Language = 'en'): Promise<Printed> {
  const key = `${shown}-${paper}-${language}`;
  const known = files.get(key);
  if (known) return known;
  const speech = speechOf(language, [shown]);
  const pieces = drawnInstrument(shown)
    .filter(({ routes }) => routes.includes('print'))
    .map((piece) => spokenDrawing(piece, speech));
  const set = layoutPages(pieces, { paper, title: shown, say: speech.tell });
  if (!set.ok) throw new Error(JSON.stringify(set.faults));
  const path = join(folder, `${key}.pdf`);
  writeFileSync(path, await writePdf(set.value));
  files.set(key, { set: set.value, path });
  return { set: set.value, path };
}

interface Word {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function wordsOf(path: string): Word[][] {
  const text = execFileSync('pdftotext', ['-bbox', path, '-'], { maxBuffer: 1 << 28 }).toString();
  return text
    .split('<page ')
    .slice(1)
    .map((page) => {
      const height = Number(/height="([\d.]+)"/.exec(page)?.[1]);
      const words = page.matchAll(
        /xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">([^<]*)</g,
      );
      return [...words].map(([, xMin, yMin, xMax, yMax, word]) => ({
        text: word ?? '',
        left: Number(xMin) * POINT_MM,
        right: Number(xMax) * POINT_MM,
        low: (height - Number(yMax)) * POINT_MM,
        high: (height - Number(yMin)) * POINT_MM,
      }));
    });
}

/** What two words share, as a share of the smaller. */
function sharedShare(one: Word, other: Word): number {
  const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const up = Math.min(one.high, other.high) - Math.max(one.low, other.low);
  const area = (word: Word): number => (word.right - word.left) * (word.high - word.low);
  return (Math.max(0, across) * Math.max(0, up)) / Math.min(area(one), area(other));
}
