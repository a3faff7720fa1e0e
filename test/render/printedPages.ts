/** Printed pages as an independent renderer draws them at 600 dots an inch, and rulers to lay on them. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Chain, sampleChain } from '../../src/core/curve/index.ts';
import { type Page, type PageSet, placedChain } from '../../src/core/drawing/index.ts';

const DPI = 600;
const MM = 25.4 / DPI;
/** mm. Width of the line that a cut is printed with. */
const CUT_LINE_MM = 0.25;

/** A page in black and white, pixel rows from the top. */
export interface PrintedPicture {
  readonly dark: (xMm: number, yMm: number) => boolean;
}

/** A page of a PDF file; places are millimetres from its lower left corner. */
export function renderedPage(path: string, page: number): PrintedPicture {
  const folder = mkdtempSync(join(tmpdir(), 'garland-page-'));
  const out = join(folder, 'page');
  const which = ['-f', `${page}`, '-l', `${page}`, '-singlefile'];
  execFileSync('pdftoppm', ['-r', `${DPI}`, '-gray', ...which, path, out]);
  const bytes = readFileSync(`${out}.pgm`);
  rmSync(folder, { recursive: true, force: true });
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  if (!head) throw new Error('no picture');
  const width = Number(head[1]);
  const height = Number(head[2]);
  const pixels = bytes.subarray(head[0].length);
  const heightMm = pageHeightMm(path, page);
  return {
    dark: (xMm, yMm) => {
      const x = Math.floor(xMm / MM);
      const y = Math.floor((heightMm - yMm) / MM);
      return x >= 0 && y >= 0 && x < width && y < height && (pixels[y * width + x] ?? 255) < 128;
    },
  };
}

function pageHeightMm(path: string, page: number): number {
  const said = execFileSync('pdfinfo', ['-f', `${page}`, '-l', `${page}`, path]).toString();
  return (Number(/size:\s+[\d.]+ x ([\d.]+)/.exec(said)?.[1]) * 25.4) / 72;
}

/** The corner that both check bars of a page share. */
export function barCorner(page: Page): { x: number; y: number } {
  const bar = page.lines.find((line) => line.pen === 'bar');
  const [start] = bar?.chain.vertices ?? [];
  if (!start) throw new Error('no bar');
  return start;
}

/**
 * Width and height of a piece as its pages print it, whole or in tiles laid together: from outermost ink to outermost ink,
 * less the width of the line.
 */
export function printedExtents(
  path: string,
  set: PageSet,
  name: string,
): { readonly widthMm: number; readonly heightMm: number } {
  const ink = new Map<string, number>();
  for (const page of set.pages)
    for (const placed of page.placements) {
      const edge = placed.drawing.lines.find((line) => line.meaning === 'cut')?.chain;
      if (placed.drawing.name !== name || edge === undefined) continue;
      const { min, max } = placed.window;
      const ends = outermost(placedChain(placed, edge));
      const shown = ends.filter(
        ({ at }) =>
          page.tile === undefined ||
          (at.x > min.x + 2 && at.x < max.x - 2 && at.y > min.y + 2 && at.y < max.y - 2),
      );
      if (shown.length === 0) continue;
      const picture = renderedPage(path, page.number);
      for (const end of shown) {
        const shift = end.upright ? placed.shift.y : placed.shift.x;
        ink.set(end.name, (end.upright ? end.at.y : end.at.x) + end.out * lastInk(picture, end) - shift);
      }
    }
  const [left, right, low, high] = ['left', 'right', 'low', 'high'].map((end) => ink.get(end) ?? Number.NaN);
  const turned = set.pages
    .flatMap((page) => page.placements)
    .find((one) => one.drawing.name === name && one.turnRad !== 0);
  const across = Number(right) - Number(left) - CUT_LINE_MM;
  const up = Number(high) - Number(low) - CUT_LINE_MM;
  return turned ? { widthMm: up, heightMm: across } : { widthMm: across, heightMm: up };
}

interface End {
  readonly name: 'left' | 'right' | 'low' | 'high';
  readonly at: { readonly x: number; readonly y: number };
  readonly upright: boolean;
  readonly out: 1 | -1;
}

function outermost(edge: Chain<'page'>): readonly End[] {
  const points = sampleChain(edge, 0.001);
  const most = (way: (p: { x: number; y: number }) => number) =>
    points.reduce((best, p) => (way(p) > way(best) ? p : best));
  return [
    { name: 'left', at: most((p) => -p.x), upright: false, out: -1 },
    { name: 'right', at: most((p) => p.x), upright: false, out: 1 },
    { name: 'low', at: most((p) => -p.y), upright: true, out: -1 },
    { name: 'high', at: most((p) => p.y), upright: true, out: 1 },
  ];
}

/** Outwards from inside the edge to the last ink, over a millimetre and a half on both sides of the end. */
function lastInk(picture: PrintedPicture, { at, upright, out }: End): number {
  let last = Number.NaN;
  for (let off = -0.3; off <= 0.6; off += MM / 4)
    for (let along = -1.5; along <= 1.5; along += MM) {
      const x = at.x + (upright ? along : out * off);
      const y = at.y + (upright ? out * off : along);
      if (picture.dark(x, y)) last = off;
    }
  return last;
}

/** mm between the middles of the bar's first and last line, read 0.6 mm inside the ruler. */
export function darkMiddles(
  picture: PrintedPicture,
  corner: { x: number; y: number },
  axis: 'x' | 'y',
): number {
  const middle = (nearMm: number): number => {
    const hits: number[] = [];
    for (let off = -0.6; off <= 0.6; off += MM / 2) {
      const x = axis === 'x' ? corner.x + nearMm + off : corner.x + 0.6;
      const y = axis === 'x' ? corner.y + 0.6 : corner.y + nearMm + off;
      if (picture.dark(x, y)) hits.push(nearMm + off);
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
