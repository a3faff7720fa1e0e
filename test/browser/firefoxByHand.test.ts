import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { inFirefox } from './inFirefox.ts';
import { commandLineFiles, PHOTOGRAPH } from './pageFolder.ts';

const firefox = inFirefox();
const { asked, troubles } = firefox;
const LOOK_MS = 120_000;

/** Nothing was fetched and nothing went wrong. */
const isQuiet = () => {
  expect(asked.filter((address) => !/^(file|blob|data):/.test(address))).toEqual([]);
  expect(troubles).toEqual([]);
};

/** No unit. Two engines work out sines in their own ways: a last digit may round the other way. */
const LAST_DIGITS = 1e-9;

/**
 * Files in which a pack differs from the command line's by more than last digits of numbers: every drawing must be the same byte for
 * byte, the table of numbers the same number for number; the manifest holds the table's fingerprint and goes with it.
 */
async function nearlyUnlike(files: Readonly<Record<string, Uint8Array>>, text: string) {
  const made = await commandLineFiles(text);
  return [...new Set([...made.keys(), ...Object.keys(files)])].filter((path) => {
    const [one, other] = [made.get(path), files[path]].map((bytes) => Buffer.from(bytes ?? []));
    if (one === undefined || other === undefined || one.equals(other)) return one === undefined;
    if (path === 'manifest.json') return false;
    return path !== 'instrument.json' || !isNearly(JSON.parse(`${one}`), JSON.parse(`${other}`));
  });
}

function isNearly(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= LAST_DIGITS * Math.max(1, Math.abs(one));
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other;
  const [ones, others] = [Object.entries(one), Object.entries(other)];
  return (
    ones.length === others.length &&
    ones.every(([key, value], place) => others[place]?.[0] === key && isNearly(value, others[place]?.[1]))
  );
}

/** A finger laid on a handle, moved and lifted; the number that the handle then says. */
const pull = async (page: Page, name: string, byX: number, byY: number): Promise<number> => {
  const handle = await page.waitForSelector(`[role=slider][aria-label="${name}"]`);
  await handle?.scrollIntoView();
  const box = await handle?.boundingBox();
  if (!box) throw new Error(`no handle ${name}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.touchscreen.touchStart(x, y);
  for (let step = 1; step <= 6; step++)
    await page.touchscreen.touchMove(x + (byX * step) / 6, y + (byY * step) / 6);
  await page.touchscreen.touchEnd();
  return saidBy(page, name);
};
const saidBy = (page: Page, name: string) =>
  page.$eval(`[role=slider][aria-label="${name}"]`, (one) => Number(one.getAttribute('aria-valuenow')));

test('Firefox, by touch alone, on a phone, with the network off: from a photograph to a pack', async () => {
  const window = await firefox.open({ width: 390, height: 844, isOffline: true });
  const { page, tap, tapField, tookBack, handOver, downloaded } = window;
  expect(await page.evaluate('navigator.onLine')).toBe(false);
  await handOver(PHOTOGRAPH, () => tap('Choose a file'));
  await tapField('edge above the sheet');
  await page.keyboard.type('36.5');
  await tap('Find the edge');
  await page.waitForSelector('.wear', { timeout: LOOK_MS });
  await tap('Yes, settle it');
  await page.waitForSelector('.line.edge');
  await tap('Draw it from these numbers instead');
  await tookBack('Draw it from these numbers');
  const width = await saidBy(page, 'lower bout');
  expect(await pull(page, 'lower bout', 8, 0)).toBeGreaterThan(width + 5);
  await tookBack('lower bout');
  await tap('sound holes');
  await page.waitForSelector('.holes-hole');
  const length = await saidBy(page, 'length of a hole');
  expect(await pull(page, 'length of a hole', 0, -6)).toBeGreaterThan(length + 2);
  await tookBack('length of a hole');
  await tap('take back');
  await tookBack('lower bout');
  await tap('take away');
  await tap('Take it away');
  expect(Object.keys(unzipSync(await downloaded('.zip')))).toContain('print/templates-a4.pdf');
  isQuiet();
}, 240_000);

test('Firefox, by keys alone, with the network off: from a photograph to a pack, its drawings as the command line makes them', async () => {
  const window = await firefox.open({ isOffline: true });
  const { page, tabTo, tookBack, handOver, downloaded } = window;
  const key = (name: Parameters<typeof page.keyboard.press>[0]) => page.keyboard.press(name);
  const chord = async (hold: 'Control' | 'Shift', name: Parameters<typeof page.keyboard.press>[0]) => {
    await page.keyboard.down(hold);
    await key(name);
    await page.keyboard.up(hold);
  };
  await tabTo('Choose a file');
  await handOver(PHOTOGRAPH, () => key('Enter'));
  await page.waitForSelector('::-p-xpath(//label[starts-with(normalize-space(.), "edge above the sheet")])');
  await tabTo('edge above the sheet');
  await page.keyboard.type('36.5');
  await tabTo('Find the edge');
  await key('Enter');
  await page.waitForSelector('.wear', { timeout: LOOK_MS });
  await tabTo('Yes, settle it');
  await key('Enter');
  await page.waitForSelector('.line.edge');
  await tabTo('Draw it from these numbers instead');
  await key(' ');
  await tabTo('lower bout', { role: 'slider', isBack: true });
  await chord('Shift', 'ArrowUp');
  await tookBack('lower bout');
  await chord('Control', 'z');
  await tookBack('Draw it from these numbers');
  await chord('Control', 'y');
  await tookBack('lower bout');
  await tabTo('neck and set-up', { isBack: true });
  await key('Enter');
  await page.waitForSelector('.side-neck');
  await tabTo('projection', { role: 'slider' });
  await key('ArrowDown');
  await tookBack('projection');
  await tabTo('put it in a file', { isBack: true });
  await key('Enter');
  const text = new TextDecoder().decode(await downloaded('.json'));
  await tabTo('take away', { isBack: true });
  await key('Enter');
  await tabTo('Take it away');
  await key('Enter');
  const files = unzipSync(await downloaded('.zip'));
  expect(await nearlyUnlike(files, text)).toEqual([]);
  isQuiet();
}, 240_000);

test('Firefox: a page from a server goes on with the server gone', async () => {
  const kinds: Readonly<Record<string, string>> = {
    '.html': 'text/html',
    '.js': 'text/javascript',
    '.png': 'image/png',
    '.webmanifest': 'application/manifest+json',
  };
  const server = createServer((request, answer) => {
    try {
      const name = (request.url ?? '').slice(1);
      const bytes = readFileSync(join(firefox.folder(), name));
      answer
        .writeHead(200, { 'content-type': kinds[extname(name)] ?? 'application/octet-stream' })
        .end(bytes);
    } catch {
      answer.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const address = `http://127.0.0.1:${(server.address() as { port: number }).port}/garland.html`;
  const { page, press } = await firefox.open({ address });
  await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  await expect
    .poll(() => page.evaluate('navigator.serviceWorker.controller !== null'), { timeout: 20_000 })
    .toBe(true);
  server.close();
  server.closeAllConnections();
  await page.goto(address);
  await press('Draw it');
  await page.waitForSelector('.line.edge');
  expect(troubles).toEqual([]);
}, 120_000);
