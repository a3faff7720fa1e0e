import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { markerFinder, trace, traceOutcome } from '../../src/core/index.ts';
import { decodePicture } from '../../src/host/index.ts';
import { type ServedPage, servePage } from './builtPage.ts';

const CHROMIUM = '/usr/bin/chromium';
const ROOT = join(import.meta.dirname, '..', '..');
const REQUEST = {
  face: 'top',
  edgeHeightMm: 36.5,
  sheetBarMm: { xMm: 150, yMm: 150 },
  known: [
    { name: 'bodyLength', mm: 356.5, plusMinusMm: 0.3 },
    { name: 'lowerBout', mm: 206.3, plusMinusMm: 0.3 },
  ],
} as const;

interface Answer {
  readonly text?: string;
  readonly ms?: number;
  readonly faults?: readonly { readonly code: string }[];
}

describe.skipIf(!existsSync(CHROMIUM))('in a browser worker', () => {
  let served: ServedPage;
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
    page = await browser.newPage();
    await page.goto(served.address);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    served?.close();
  });
  const asked = async (name: string, bytes: Uint8Array): Promise<Answer> => {
    served.offer(name, bytes);
    return await page.evaluate(
      ([address, file, request]) =>
        (globalThis as unknown as { traceInWorker: (...words: unknown[]) => Promise<Answer> }).traceInWorker(
          address,
          file,
          request,
        ),
      [served.address + name, name, REQUEST] as const,
    );
  };

  // Bit for bit it is not: engines differ in the last digit of sine, cosine and their like, and the fit of the body decides on
  // such digits. What a maker holds against the wood is the same to a hundredth of a millimetre.
  test('a photograph gives the same sizes and outline as in Node, to 0.02 mm', async () => {
    const png = await sharp(join(ROOT, 'demo', 'photographs', 'fiddle-top.jpg'))
      .resize({ height: 1500 })
      .png({ compressionLevel: 1 })
      .toBuffer();
    const picture = await decodePicture(png, 'fiddle.png');
    if (!picture.ok) throw new Error(picture.faults[0]?.found);
    const here = trace(
      { ...REQUEST, photographs: [{ name: 'fiddle.png', picture: picture.value }] },
      markerFinder(),
    );
    if (!here.ok) throw new Error(JSON.stringify(here.faults));
    const there = await asked('fiddle.png', png);
    expect(there.faults).toBeUndefined();
    const [nodes, browsers] = [JSON.parse(traceOutcome(here.value).text), JSON.parse(there.text ?? '{}')];
    expect(Math.abs(browsers.bodyLength.value - nodes.bodyLength.value)).toBeLessThan(SAME_MM);
    for (const [place, { name, value }] of nodes.measures.entries()) {
      expect(browsers.measures[place].name).toBe(name);
      expect(Math.abs(browsers.measures[place].value - value), name).toBeLessThan(SAME_MM);
    }
    const away = browsers.outline.map((at: readonly [number, number]) => distanceTo(nodes.outline, at));
    expect(Math.max(...away)).toBeLessThan(SAME_MM);
  }, 240_000);

  test.each([
    ['a text', new TextEncoder().encode('no picture at all, whatever its name'), 'picture.unreadable'],
    ['a HEIC', Uint8Array.from([0, 0, 0, 24, ...new TextEncoder().encode('ftypheic'), 0, 0]), 'picture.heic'],
    ['a picture said to have 30000 pixels a side', pngOf(30_000, 30_000), 'picture.tooLarge'],
    ['a picture of one pixel', pngOf(1, 1), 'picture.tooSmall'],
    ['a picture without its end', pngOf(800, 800), 'picture.unreadable'],
  ])('%s is refused by name', async (_what, bytes, code) => {
    const answer = await asked('odd.png', bytes);
    expect(answer.faults?.map((fault) => fault.code)).toEqual([code]);
  });
});

const SAME_MM = 0.02;

/** How far a place lies from a closed line of points. */
function distanceTo(line: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): number {
  let least = Number.POSITIVE_INFINITY;
  line.forEach(([ax, ay], i) => {
    const [bx, by] = line[(i + 1) % line.length] as readonly [number, number];
    const square = (bx - ax) ** 2 + (by - ay) ** 2;
    const share =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square));
    least = Math.min(least, Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay)));
  });
  return least;
}

/** A PNG's header alone. */
function pngOf(widthPx: number, heightPx: number): Uint8Array {
  const bytes = new Uint8Array(33);
  const view = new DataView(bytes.buffer);
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  view.setUint32(8, 13);
  bytes.set(new TextEncoder().encode('IHDR'), 12);
  view.setUint32(16, widthPx);
  view.setUint32(20, heightPx);
  bytes.set([8, 2, 0, 0, 0], 24);
  return bytes;
}
