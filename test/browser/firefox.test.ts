import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { type FirefoxWindow, inFirefox } from './inFirefox.ts';
import { PHOTOGRAPH, unlikeCommandLine } from './pageFolder.ts';

/** How a dropped file comes: as it does from a folder of the machine. */
const DROP = `(name, kind, base64) => {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(new File([bytes], name, { type: kind }));
  for (const type of ['dragover', 'drop'])
    window.dispatchEvent(new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer }));
}`;

const firefox = inFirefox();
const { asked, troubles } = firefox;
/** The second test goes on where the first left off. */
let window: FirefoxWindow;

test('Firefox: a dropped photograph becomes a pack with the bytes of the command line, and nothing is fetched', async () => {
  window = await firefox.open();
  const { page, press, tabTo, tookBack, downloaded, field } = window;
  const bytes = readFileSync(PHOTOGRAPH).toString('base64');
  await page.evaluate(`(${DROP})("fiddle-top.jpg", "image/jpeg", "${bytes}")`);
  await (await field('edge above the sheet')).type('36.5');
  await press('Find the edge');
  await press('Yes, settle it');
  await page.waitForSelector('.line.edge');
  await press('Draw it from these numbers instead');
  await tabTo('waist', { role: 'slider' });
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
  const { page, press, textOf, tookBack } = window;
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
