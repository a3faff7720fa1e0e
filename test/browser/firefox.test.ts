import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import puppeteer, { type Browser, type Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { FIREFOX, PHOTOGRAPH, pageFolder, unlikeCommandLine } from './pageFolder.ts';

/** How a dropped file comes: as it does from a folder of the machine. */
const DROP = `(name, kind, base64) => {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(new File([bytes], name, { type: kind }));
  for (const type of ['dragover', 'drop'])
    window.dispatchEvent(new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer }));
}`;
const WAIT_MS = 90_000;

let opened: Awaited<ReturnType<typeof pageFolder>>;
let downloads: string;
let browser: Browser;
let page: Page;
const asked: string[] = [];
const troubles: string[] = [];

beforeAll(async () => {
  opened = await pageFolder();
  downloads = mkdtempSync(join(tmpdir(), 'garland-downloads-'));
  browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: FIREFOX,
    headless: true,
    extraPrefsFirefox: {
      'browser.download.folderList': 2,
      'browser.download.dir': downloads,
      'browser.download.useDownloadDir': true,
      'browser.download.alwaysOpenPanel': false,
      'browser.helperApps.neverAsk.saveToDisk': 'application/zip,application/json',
      'intl.accept_languages': 'en-GB, en',
      'network.proxy.type': 0,
    },
  });
  page = await browser.newPage();
  await page.setViewport({ width: 1440, height: 900 });
  page.on('request', (request) => asked.push(request.url()));
  // What drives the browser evaluates text in the page, which the page's policy rightly refuses.
  page.on('pageerror', (error) => {
    if (!String(error).includes('blocked a JavaScript eval')) troubles.push(String(error));
  });
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  await page.goto(opened.address);
}, 120_000);
afterAll(async () => {
  await browser?.close();
  opened?.remove();
  rmSync(downloads, { recursive: true, force: true });
});

/** Presses the button of this name, as soon as there is one that can be pressed. */
const press = async (name: string) => {
  const button = await page.waitForSelector(
    `::-p-xpath(//button[starts-with(normalize-space(.), "${name}")][not(@disabled)])`,
    {
      timeout: WAIT_MS,
    },
  );
  await button?.click();
};
const type = async (label: string, text: string) => {
  const field = await page.waitForSelector(
    `::-p-xpath(//label[starts-with(normalize-space(.), "${label}")]//input)`,
  );
  await field?.type(text);
};
const drop = async (path: string, name: string, kind: string) => {
  await page.evaluate(
    `(${DROP})(${JSON.stringify(name)}, ${JSON.stringify(kind)}, "${readFileSync(path).toString('base64')}")`,
  );
};
/** Presses Tab until the focus is on a slider of this name. */
const tabTo = async (name: string) => {
  const on = `document.activeElement.getAttribute('role') === 'slider' && document.activeElement.getAttribute('aria-label')`;
  for (let step = 0; step < 120; step++) {
    await page.keyboard.press('Tab');
    if ((await page.evaluate(on)) === name) return;
  }
  throw new Error(`no Tab leads to ${name}`);
};
const textOf = (selector: string) => page.$eval(selector, (element) => element.textContent ?? '');
const tookBack = (says: string) =>
  expect.poll(() => textOf('.take-back'), { timeout: WAIT_MS }).toContain(says);

/** The newest file of this kind in the folder for downloads, once it is whole. */
async function downloaded(ending: string): Promise<Uint8Array> {
  let name: string | undefined;
  await expect
    .poll(
      () => {
        const names = readdirSync(downloads);
        name = names.some((one) => one.endsWith('.part'))
          ? undefined
          : names.find((one) => one.endsWith(ending));
        return name !== undefined && readFileSync(join(downloads, name)).length > 0;
      },
      { timeout: WAIT_MS },
    )
    .toBe(true);
  return readFileSync(join(downloads, name ?? ''));
}

test('Firefox: a dropped photograph becomes a pack with the bytes of the command line, and nothing is fetched', async () => {
  await drop(PHOTOGRAPH, 'fiddle-top.jpg', 'image/jpeg');
  await type('edge above the sheet', '36.5');
  await press('Find the edge');
  await press('Yes, settle it');
  await page.waitForSelector('.line.edge');
  await press('Draw it from these numbers instead');
  await tabTo('waist');
  await page.keyboard.press('ArrowUp');
  await tookBack('waist');
  await press('put it in a file');
  const design = new TextDecoder().decode(await downloaded('.json'));
  await press('take away');
  await press('Take it away');
  const files = unzipSync(await downloaded('.zip'));
  expect(await unlikeCommandLine(files, design)).toEqual([]);
  expect(asked.filter((address) => !/^(file|blob|data):/.test(address))).toEqual([]);
  expect(troubles).toEqual([]);
}, 240_000);

test('Firefox: what was done lies in its storage and is taken back after a reload', async () => {
  const before = await textOf('.take-back');
  await expect.poll(() => textOf('.kept b')).toBe('in a file');
  await new Promise((kept) => setTimeout(kept, 1000));
  await page.reload();
  await press('Go on with');
  await tookBack(before);
  await press('take back');
  await tookBack('Draw it from these numbers');
  await expect.poll(() => textOf('.kept b')).toBe('only in this browser');
  await press('do again');
  await tookBack('waist');
  await expect.poll(() => textOf('.kept b')).toBe('in a file');
  expect(troubles).toEqual([]);
}, 120_000);
