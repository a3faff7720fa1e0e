import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { beforeEach, describe, expect, test } from 'vitest';
import {
  documentText,
  hintsText,
  markerFinder,
  readDesign,
  readHints,
  requestOf,
  trace,
} from '../../src/core/index.ts';
import { readPhotograph } from '../../src/host/index.ts';
import { garland } from '../journeys/runGarland.ts';
import { amissOn } from './amissOn.ts';
import { inChromium } from './inChromium.ts';
import { PHOTOGRAPH, ROOT } from './pageFolder.ts';

const TILTED = join(ROOT, 'test', 'journeys', 'fiddle-tilted.jpg');
const WITHOUT_SHEET = join(ROOT, 'test', 'journeys', 'fiddle-without-sheet.jpg');
/** mm. The body length that the photographs were painted with, and the height of its edge above the sheet. */
const TRUE_LENGTH_MM = 356.5;
const TRUE_HEIGHT_MM = 36.5;
const LOOK_MS = 120_000;
const SOON = { timeout: 20_000 };

/** What runs in the page: the first place of every mark on the shelf. */
const KEPT_MARKS = `new Promise((tell, fail) => {
  const open = indexedDB.open('garland-photographs');
  open.onerror = () => fail(open.error);
  open.onsuccess = () => {
    const all = open.result.transaction('told').objectStore('told').getAll();
    all.onsuccess = () => {
      open.result.close();
      tell((all.result[0]?.said.marks ?? []).map(({ places }) => places[0]));
    };
  };
})`;

/** What runs in the page: colours in the glass with how many pixels of the photograph they lie from its middle. */
const GLASS_PIXELS = `(() => {
  const glass = document.querySelector('.glass canvas');
  const { data } = glass.getContext('2d').getImageData(0, 0, glass.width, glass.height);
  const seen = [];
  for (let dy = -10; dy <= 10; dy++)
    for (let dx = -10; dx <= 10; dx++) {
      const at = 4 * ((glass.height / 2 + 6 * dy) * glass.width + glass.width / 2 + 6 * dx);
      seen.push([dx + 0.5 / 6, dy + 0.5 / 6, ...data.slice(at, at + 3)]);
    }
  return seen;
})()`;

interface Shown {
  readonly width: number;
  readonly height: number;
  readonly colours: readonly number[];
}

/** What runs in the page: the size of the photograph as it is shown, and the colours of a pixel in every so many. */
const SHOWN_STEP = 997;
const SHOWN_PIXELS = `(() => {
  const shown = document.querySelector('img.asked');
  const { naturalWidth: width, naturalHeight: height } = shown;
  const pen = new OffscreenCanvas(width, height).getContext('2d');
  pen.drawImage(shown, 0, 0);
  const { data } = pen.getImageData(0, 0, width, height);
  const colours = [];
  for (let at = 0; at < width * height; at += ${SHOWN_STEP})
    colours.push(...data.slice(4 * at, 4 * at + 3));
  return { width, height, colours };
})()`;

/** Photographs brought in, asked about, marked and ruled over. */
describe('bringing in', () => {
  const chromium = inChromium();
  let page: Page;
  beforeEach(async () => {
    page = await chromium.open();
  });

  const bring = async (...paths: readonly string[]) => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await (await chooser).setFiles([...paths]);
    await page.getByRole('heading', { name: 'What is known about it?' }).waitFor();
  };
  const find = async () => {
    await page.getByRole('button', { name: 'Find the edge' }).click();
    await page.getByRole('heading', { name: 'Is this what the maker meant?' }).waitFor({ timeout: LOOK_MS });
    await looked();
  };
  const looked = async () => page.locator('.looking').waitFor({ state: 'detached', timeout: LOOK_MS });
  const lookedAgain = async () => {
    await page.locator('.looking').waitFor();
    await looked();
  };
  const row = (name: string) =>
    page.locator('.row', { has: page.locator('b', { hasText: new RegExp(`^${name}$`) }) });
  const numberOf = async (name: string) => Number(await row(name).locator('.value').innerText());
  const savedDesign = async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'put it in a file' }).click();
    return readFileSync(await (await download).path(), 'utf8');
  };

  test('a mark set with the keys is one step; it lies in the design, and the same record gives the same outline', async () => {
    await bring(PHOTOGRAPH);
    await row('fiddle-top.jpg').locator('.origin', { hasText: 'sheet found, 102 of 102 marks' }).waitFor();
    await page.getByLabel('edge above the sheet').fill('36.5');
    await find();
    await page.getByLabel('do not believe this').check();
    await page.getByRole('button', { name: 'Do it with the keys' }).click();
    for (let step = 0; step < 11; step++) await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Enter');
    await lookedAgain();
    const shown = page.locator('.rows .row', { hasText: 'take it away' });
    expect(await shown.count()).toBe(1);
    await page.locator('.take-back', { hasText: 'do not believe this' }).waitFor();
    await page.keyboard.press('Control+z');
    await lookedAgain();
    expect(await shown.count()).toBe(0);
    await page.keyboard.press('Control+y');
    await lookedAgain();
    expect(await shown.count()).toBe(1);
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
    const read = readDesign(JSON.parse(await savedDesign()));
    if (!read.ok || read.value.design.outline.kind !== 'traced') throw new Error('no traced design');
    const { request, half } = read.value.design.outline;
    expect(request?.photographs[0]?.hints?.excluded?.[0]?.length).toBe(16);
    const photograph = await readPhotograph(PHOTOGRAPH);
    if (!photograph.ok || !request) throw new Error('nothing to trace again');
    const again = requestOf(request, [{ name: 'fiddle-top.jpg', ...photograph.value }]);
    expect(again.findings).toEqual([]);
    const traced = trace(again.request, markerFinder());
    if (!traced.ok) throw new Error(traced.faults[0]?.found);
    const far = half.lowerBout.vertices.map((vertex, place) => {
      const other = traced.value.restored.half.lowerBout.vertices[place];
      return other ? Math.hypot(vertex.x - other.x, vertex.y - other.y) : Infinity;
    });
    expect(Math.max(...far)).toBeLessThan(0.1);
  }, 240_000);

  test('a photograph has the room to itself, and is shown no larger than a screen', async () => {
    const workers = () => page.workers().length;
    await expect.poll(workers, SOON).toBe(2);
    await bring(PHOTOGRAPH);
    await expect.poll(workers, SOON).toBe(1);
    await page.locator('img.asked').waitFor();
    const { width, height, colours } = await page.evaluate<Shown>(SHOWN_PIXELS);
    expect([width, height]).toEqual([1200, 1600]);
    const meant = await sharp(PHOTOGRAPH).rotate().resize(width, height).raw().toBuffer();
    const off = colours.map((tone, at) =>
      Math.abs(tone - (meant[3 * SHOWN_STEP * Math.floor(at / 3) + (at % 3)] ?? Number.NaN)),
    );
    expect(off.length).toBeGreaterThan(5000);
    expect(off.reduce((sum, one) => sum + one, 0) / off.length).toBeLessThan(4);
    await page.getByRole('button', { name: 'Put it away' }).click();
    await expect.poll(workers, SOON).toBe(0);
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
  });

  test('hints come from a file and go into one, as the command line takes them', async () => {
    const hints = {
      format: 'garland-hints',
      version: 1,
      photograph: 'fiddle-top.jpg',
      face: 'top',
      inside: [[2016, 1500]],
      excluded: [
        [
          [1100.25, 300],
          [1150, 300],
          [1150, 350.125],
        ],
      ],
      known: [
        { name: 'lowerBout', value: 206, plusMinus: 3, taken: 'edge' },
        { name: 'waist', value: 110, plusMinus: 4 },
      ],
      meant: {
        slow: 'bass',
        cornerEnd: { lower: 7.2, upper: 6.9 },
        stretches: [{ side: 'treble', from: 120, to: 150, take: 'asFound' }],
      },
    };
    const path = join(chromium.folder(), 'fiddle.hints.json');
    writeFileSync(path, JSON.stringify(hints));
    const astray = join(chromium.folder(), 'astray.json');
    writeFileSync(astray, JSON.stringify({ ...hints, photograph: 'other.jpg' }));
    const wrong = join(chromium.folder(), 'wrong.json');
    writeFileSync(wrong, JSON.stringify({ ...hints, inside: 'the wood' }));
    const take = async (file: string) => {
      const chooser = page.waitForEvent('filechooser');
      await page.getByRole('button', { name: 'Take hints from a file' }).click();
      await (await chooser).setFiles(file);
    };
    const alone = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await (await alone).setFiles(path);
    await page.locator('.trouble', { hasText: 'fiddle.hints.json holds hints for a photograph.' }).waitFor();
    await bring(PHOTOGRAPH);
    await take(wrong);
    await page
      .locator('.trouble', { hasText: 'wrong.json, inside: "the wood"; needs a list of places' })
      .waitFor();
    await take(astray);
    await page
      .locator('.trouble', {
        hasText: 'astray.json: hints for "other.jpg", which is not among the photographs',
      })
      .waitFor();
    expect(await amissOn(page)).toEqual([]);
    await take(path);
    await page.locator('.take-back', { hasText: 'hints from fiddle.hints.json' }).waitFor();
    expect(await page.locator('.trouble').count()).toBe(0);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.rows .row', { hasText: 'take it away' }).count()).toBe(0);
    await page.keyboard.press('Control+y');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Put them in a file' }).click();
    const put = readFileSync(await (await download).path(), 'utf8');
    const read = readHints(hints);
    if (!read.ok) throw new Error(read.faults[0]?.found);
    expect(put).toBe(hintsText(read.value));
    await page.getByLabel('edge above the sheet').fill('36.5');
    await find();
    await row('treble')
      .locator('.origin', { hasText: /left as worn.*120–150/ })
      .waitFor();
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
    const design = readDesign(JSON.parse(await savedDesign()));
    if (!design.ok || design.value.design.outline.kind !== 'traced') throw new Error('no traced design');
    // What the command line writes down of the same photograph with the file that the page gave.
    const given = join(chromium.folder(), 'given.hints.json');
    writeFileSync(given, put);
    const words = ['trace', PHOTOGRAPH, '--edge-height', '36.5', '--hints', given, '--json'];
    const { request } = JSON.parse((await garland(chromium.folder(), ...words)).out);
    expect(documentText(design.value.design.outline.request ?? {})).toBe(documentText(request));
  }, 300_000);

  test('the glass shows the photograph’s own pixels where the hand is, and no other', async () => {
    await bring(PHOTOGRAPH);
    await page.getByLabel('the edge runs here').check();
    const layer = await middleOf('.hand-layer');
    await page.mouse.click(layer.x + 110, layer.y - 60);
    const [at] = await marksKept(1);
    if (!at) throw new Error('no mark');
    const upright = await sharp(PHOTOGRAPH).rotate().raw().toBuffer({ resolveWithObject: true });
    const { width } = upright.info;
    const off = async () => {
      const seen = await page.evaluate<readonly (readonly number[])[]>(GLASS_PIXELS);
      const away = seen.flatMap(([dx = 0, dy = 0, ...tones]) => {
        const from = 3 * (Math.floor(at[1] + dy) * width + Math.floor(at[0] + dx));
        return tones.map((tone, place) => Math.abs(tone - (upright.data[from + place] ?? Number.NaN)));
      });
      expect(away.length).toBe(3 * 21 * 21);
      return away.reduce((sum, one) => sum + one, 0) / away.length;
    };
    await expect.poll(off, SOON).toBeLessThan(2);
  });

  test('under the glass marks are put and pulled by fractions of a pixel, before the edge is found and after', async () => {
    await bring(PHOTOGRAPH);
    await page.getByLabel('edge above the sheet').fill('36.5');
    await page.getByLabel('the edge runs here').check();
    const layer = await middleOf('.hand-layer');
    await page.mouse.click(layer.x + 110, layer.y - 60);
    await page.locator('.take-back', { hasText: 'the edge runs here' }).waitFor();
    await page.locator('.glass-mark').waitFor();
    const [put] = await marksKept(1);
    // Six px of the glass are one of the photograph.
    await pullInGlass('.glass-mark', 4.5, -3);
    await page.locator('.take-back', { hasText: 'moved: the edge runs here' }).waitFor();
    await expect
      .poll(async () => (await marksKept(1))[0]?.[0], { timeout: 20_000 })
      .toBeCloseTo((put?.[0] ?? 0) + 0.75, 3);
    expect((await marksKept(1))[0]?.[1]).toBeCloseTo((put?.[1] ?? 0) - 0.5, 3);
    await page.locator('.glass-mark').click();
    await page.locator('.take-back', { hasText: 'moved: the edge runs here' }).waitFor();
    await page.locator('.glass-mark').press('ArrowRight');
    await page.locator('.glass-mark').press('ArrowRight');
    await expect
      .poll(async () => (await marksKept(1))[0]?.[0], SOON)
      .toBeCloseTo((put?.[0] ?? 0) + 0.75 + 2 / 6, 3);
    await page.locator('.take-back').click();
    await expect
      .poll(async () => (await marksKept(1))[0]?.[0], { timeout: 20_000 })
      .toBeCloseTo((put?.[0] ?? 0) + 0.75, 3);
    expect(await amissOn(page)).toEqual([]);
    await pullInGlass('.glass svg', 60, 30, 40);
    await marksKept(2);
    await page.locator('.take-back').click();
    await page.locator('.take-back').click();
    await page.locator('.take-back').click();
    await marksKept(0);
    await page.getByLabel('nothing in hand').check();
    await find();
    await page.getByLabel('this is the body').check();
    await page.mouse.click(layer.x + 30, layer.y + 20);
    await page.locator('.take-back', { hasText: 'this is the body' }).waitFor();
    await lookedAgain();
    const [before] = await marksKept(1);
    await pullInGlass('.glass-mark', 13, 0);
    await page.locator('.take-back', { hasText: 'moved: this is the body' }).waitFor();
    await lookedAgain();
    // Half a millimetre, at some pixels a millimetre.
    const after = (await marksKept(1))[0]?.[0] ?? 0;
    expect(after - (before?.[0] ?? 0)).toBeGreaterThan(0.5);
    expect(after - (before?.[0] ?? 0)).toBeLessThan(4);
    await page.locator('.glass').getByRole('button', { name: 'take it up' }).click();
    await page.mouse.move(layer.x - 60, layer.y + 90);
    await expect.poll(() => page.locator('.glass-mark').count(), { timeout: 20_000 }).toBe(0);
  }, 240_000);

  const middleOf = async (selector: string) => {
    const box = await page.locator(selector).first().boundingBox();
    if (box === null) throw new Error(`nothing to press at ${selector}`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  /** Presses at the middle of something in the glass, or beside it, and pulls from there. */
  const pullInGlass = async (selector: string, byX: number, byY: number, beside = 0) => {
    const { x, y } = await middleOf(selector);
    await page.mouse.move(x + beside, y + beside);
    await page.mouse.down();
    await page.mouse.move(x + beside + byX, y + beside + byY, { steps: 3 });
    await page.mouse.up();
  };
  /** First places of the marks that lie on the shelf, once there are so many. */
  const marksKept = async (count: number): Promise<readonly (readonly [number, number])[]> => {
    let places: readonly (readonly [number, number])[] = [];
    await expect
      .poll(
        async () => {
          places = (await page.evaluate(KEPT_MARKS)) as typeof places;
          return places.length;
        },
        { timeout: 20_000 },
      )
      .toBe(count);
    return places;
  };

  test('two views settle how high the edge stands, without its being asked', async () => {
    await bring(PHOTOGRAPH, TILTED);
    await page.getByText('Only if you measured it: the photographs together tell it.').waitFor();
    await find();
    expect(Math.abs((await numberOf('edge above the sheet')) - TRUE_HEIGHT_MM)).toBeLessThan(2);
    expect(Math.abs((await numberOf('body length')) - TRUE_LENGTH_MM)).toBeLessThan(1);
    await page.getByRole('button', { name: /^fiddle-top/ }).click();
    await page.getByRole('button', { name: /^fiddle-tilted/ }).click();
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
  }, 240_000);

  test('a photograph without a sheet asks for a length, and how it was taken', async () => {
    await bring(WITHOUT_SHEET);
    await page.getByText('No printed sheet is to be seen in it. What else gives its size?').waitFor();
    expect(await page.getByLabel('lengths I measured').isChecked()).toBe(true);
    expect(await page.getByLabel('edge above the sheet').count()).toBe(0);
    expect(await page.getByLabel('over the arch').count()).toBe(0);
    await page.getByLabel('body length').fill('356,5 ± 0,3');
    await page.getByLabel('over the arch').check();
    await page.getByLabel('lower bout, width').fill('206 ± 0.3');
    await page.getByLabel('from purfling to purfling').check();
    await page.getByLabel('from edge to edge').check();
    await page.getByLabel('straight').check();
    await page.getByLabel('lower corners, width at the tip').fill('99');
    await page.getByRole('button', { name: 'Find the edge' }).click();
    await page.getByText(/^corners, width at the tip: .*between 2 and 20 mm/).waitFor();
    await page.getByLabel('lower corners, width at the tip').fill('9,2');
    await page.getByLabel('upper corners, width at the tip').fill('8.1');
    await find();
    expect(Math.abs((await numberOf('body length')) - TRUE_LENGTH_MM)).toBeLessThan(1);
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
    const { request } = JSON.parse(await savedDesign()).outline;
    expect(request.meant.cornerEnd).toEqual({ lower: 9.2, upper: 8.1 });
    expect(request.known).toEqual([
      { name: 'bodyLength', value: 356.5, taken: 'straight', plusMinus: 0.3 },
      { name: 'lowerBout', value: 206, taken: 'edge', plusMinus: 0.3 },
    ]);
  }, 240_000);

  test('further widths are added by keys, taken from purfling to purfling, dropped again, and kept with the design', async () => {
    await bring(WITHOUT_SHEET);
    await page.getByLabel('body length').fill('356.5');
    const upper = page.getByLabel('upper bout, width', { exact: true });
    await page.getByRole('button', { name: 'upper bout, width' }).focus();
    await page.keyboard.press('Enter');
    // The hand is on the new field already.
    await expect
      .poll(() => upper.evaluate((field) => field === field.ownerDocument.activeElement))
      .toBe(true);
    await page.keyboard.type('wide');
    await page.getByRole('button', { name: 'Find the edge' }).click();
    await page.locator('.trouble', { hasText: 'upper bout, width' }).waitFor();
    await upper.fill('168,3 mm ± 0,4');
    await page
      .getByRole('group', { name: 'upper bout, width: how it was taken' })
      .getByLabel('from purfling')
      .check();
    await page.getByRole('button', { name: 'waist, width', exact: true }).click();
    await page.keyboard.type('99');
    await page.getByRole('button', { name: 'take it away: waist, width' }).click();
    await page.locator('.take-back', { hasText: 'without: waist, width 99' }).waitFor();
    await page.getByRole('button', { name: 'waist, width', exact: true }).click();
    await page.keyboard.type('112,4');
    await page.locator('.take-back').click();
    expect(await page.getByLabel('waist, width', { exact: true }).count()).toBe(0);
    await page.getByRole('button', { name: 'do again' }).click();
    expect(await page.getByLabel('waist, width', { exact: true }).inputValue()).toBe('112,4');
    await page.getByRole('button', { name: 'take it away: waist, width' }).click();
    // Added and left empty it says nothing.
    await page.getByRole('button', { name: 'waist, width', exact: true }).click();
    await find();
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
    const { request } = JSON.parse(await savedDesign()).outline;
    expect(request.known).toEqual([
      { name: 'bodyLength', value: 356.5, taken: 'straight' },
      { name: 'upperBout', value: 168.3, taken: 'purfling', plusMinus: 0.4 },
    ]);
  }, 240_000);

  test('a stretch is left worn, follows the other side, or is put back after all; halves may stay unlike', async () => {
    await bring(PHOTOGRAPH);
    await page.getByLabel('edge above the sheet').fill('36.5');
    await find();
    const corner = row('treble, lower corner');
    await corner.getByRole('button').first().click();
    await page.getByRole('button', { name: 'Leave this one worn' }).click();
    await lookedAgain();
    await corner.filter({ hasText: 'left as worn' }).waitFor();
    await page.getByRole('button', { name: 'Put it back after all' }).click();
    await lookedAgain();
    expect(await corner.filter({ hasText: 'left as worn' }).count()).toBe(0);
    await page.getByLabel('keep both as they are').check();
    await lookedAgain();
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
    const design = JSON.parse(await savedDesign());
    expect(design.outline.request.meant).toEqual({ asymmetry: 'keep' });
  }, 300_000);

  test('a scale bar is drawn along in the picture: one step, and the length follows from it', async () => {
    await bring(WITHOUT_SHEET);
    await page.getByLabel('scan or life-size print').check();
    await page.getByRole('button', { name: 'Draw along a scale bar' }).click();
    const box = await page.locator('.hand-layer').boundingBox();
    if (box === null) throw new Error('nothing to draw on');
    // As long as the body itself, which ends at these heights of the window.
    const [x, upper, lower] = [box.x + 100, 166, 732];
    await page.mouse.move(x, upper);
    await page.mouse.down();
    await page.mouse.move(x, lower, { steps: 8 });
    await page.mouse.up();
    await page.locator('.take-back', { hasText: 'scale bar' }).waitFor();
    await page.getByLabel('length of the scale bar').fill('356.5');
    await find();
    expect(Math.abs((await numberOf('body length')) / TRUE_LENGTH_MM - 1)).toBeLessThan(0.02);
  }, 240_000);

  test('of several bodies one is chosen, as a step', async () => {
    const { width = 0, height = 0 } = await sharp(WITHOUT_SHEET).metadata();
    const one = await sharp(WITHOUT_SHEET).toBuffer();
    const both = await sharp({ create: { width: 2 * width, height, channels: 3, background: '#e7e5e1' } })
      .composite([
        { input: one, left: 0, top: 0 },
        { input: one, left: width, top: 0 },
      ])
      .jpeg({ quality: 92 })
      .toBuffer();
    const path = join(chromium.folder(), 'two-bodies.jpg');
    writeFileSync(path, both);
    await bring(path);
    await page.getByLabel('body length').fill('356.5');
    await find();
    await page.getByRole('heading', { name: 'Which one is meant?' }).waitFor();
    const names = page.getByRole('button', { name: /^number/ });
    const pressed = async () => Promise.all([0, 1].map((n) => names.nth(n).getAttribute('aria-pressed')));
    const before = await pressed();
    expect(before.toSorted()).toEqual(['false', 'true']);
    const other = before.indexOf('false');
    await names.nth(other).click();
    await lookedAgain();
    expect((await pressed())[other]).toBe('true');
    await page.locator('.take-back', { hasText: `number ${other + 1} is meant` }).waitFor();
  }, 240_000);

  test('a table that is dropped beside a photograph gives its numbers to the design', async () => {
    const path = join(chromium.folder(), 'table.json');
    const table = { format: 'garland-measurements', version: 1, family: 'violin', name: 'Both together' };
    writeFileSync(path, JSON.stringify({ ...table, values: { archHeightBack: 15.3 } }));
    await bring(PHOTOGRAPH, path);
    await row('table.json').waitFor();
    await page.getByLabel('edge above the sheet').fill('36.5');
    await find();
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
    const design = JSON.parse(await savedDesign());
    expect([design.name, design.outline.kind, design.values.archHeightBack.value]).toEqual([
      'Both together',
      'traced',
      15.3,
    ]);
  }, 240_000);

  test('photographs outlast a reload with what was said; what is thrown away comes back', async () => {
    await bring(WITHOUT_SHEET);
    await page.getByLabel('body length').fill('356.5');
    await page.getByLabel('over the arch').check();
    await page.waitForTimeout(1200);
    await page.reload();
    await page.getByRole('button', { name: 'Throw away fiddle-without-sheet.jpg' }).click();
    await page.getByText('fiddle-without-sheet.jpg is thrown away.').waitFor();
    await page.getByRole('button', { name: 'Take that back' }).click();
    await page.getByRole('button', { name: /^Go on with fiddle-without-sheet.jpg/ }).click();
    await page.getByRole('heading', { name: 'What is known about it?' }).waitFor();
    await page.getByLabel('over the arch').waitFor();
    expect(await page.getByLabel('body length').inputValue()).toBe('356.5');
    expect(await page.getByLabel('over the arch').isChecked()).toBe(true);
    await page.locator('.take-back', { hasText: 'over the arch' }).click();
    await page.locator('.take-back', { hasText: 'body length 356.5' }).click();
    expect(await page.getByLabel('body length').inputValue()).toBe('');
  }, 120_000);

  test('its photograph is looked at again: marks are still there, and a new outline is one step of the design', async () => {
    await bring(PHOTOGRAPH);
    await page.getByLabel('edge above the sheet').fill('36.5');
    await find();
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.line.edge').waitFor();
    await page.waitForTimeout(1200);
    await page.reload();
    await page.getByRole('button', { name: /^Go on with fiddle-top/ }).click();
    await page.locator('.stop button', { hasText: 'photograph' }).click();
    await page.getByRole('button', { name: 'Look at its photograph again' }).click();
    await page.getByRole('heading', { name: 'Is this what the maker meant?' }).waitFor({ timeout: LOOK_MS });
    await looked();
    await row('treble, lower corner').getByRole('button').first().click();
    await page.getByRole('button', { name: 'Leave this one worn' }).click();
    await lookedAgain();
    await page.getByRole('button', { name: 'Yes, settle it' }).click();
    await page.locator('.take-back', { hasText: 'outline traced anew' }).waitFor();
    expect(JSON.parse(await savedDesign()).outline.request.meant.stretches.length).toBe(1);
    await page.locator('.take-back').click();
    expect(JSON.parse(await savedDesign()).outline.request.meant).toBeUndefined();
  }, 300_000);

  test('what cannot be traced says why at its place, and how to photograph it', async () => {
    const path = join(chromium.folder(), 'grey.png');
    const grey = sharp({ create: { width: 900, height: 1200, channels: 3, background: '#888' } });
    writeFileSync(path, await grey.png().toBuffer());
    await bring(path);
    await page.getByLabel('body length').fill('356.5');
    await page.getByRole('button', { name: 'Find the edge' }).click();
    const trouble = page.getByRole('alert');
    await trouble.waitFor({ timeout: LOOK_MS });
    expect((await trouble.innerText()).length).toBeGreaterThan(60);
    await page.getByText('How to photograph it so that it can be read').waitFor();
    await page.getByText('Print the sheet').waitFor();
  }, 120_000);

  test.each([
    ['light', { width: 1440, height: 900 }],
    ['dark', { width: 375, height: 780 }],
  ] as const)(
    'nothing is amiss for those who cannot see or point: %s, %o',
    async (colorScheme, size) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize(size);
      const amiss = () => amissOn(page);
      await bring(PHOTOGRAPH);
      await page.getByText('It has another scale').click();
      await page.getByLabel('body length').fill('356.5');
      expect(await amiss()).toEqual([]);
      await page.getByLabel('scan or life-size print').check();
      expect(await amiss()).toEqual([]);
      await page.getByLabel('printed sheet').check();
      await page.getByLabel('edge above the sheet').fill('36.5');
      await find();
      await page.getByLabel('the edge runs here').check();
      await page.locator('.row', { hasText: 'treble, lower corner' }).getByRole('button').first().click();
      expect(await amiss()).toEqual([]);
    },
    240_000,
  );
});
