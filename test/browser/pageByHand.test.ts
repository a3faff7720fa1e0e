import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { inChromium } from './inChromium.ts';
import { PHOTOGRAPH, unlikeCommandLine } from './pageFolder.ts';

/** What runs in the page: the focused thing by name and role; a slider nudged, a button pressed again and again; storage wiped. */
const FOCUSED = `(() => {
  const on = document.activeElement;
  const label = on.getAttribute('aria-label') ?? on.closest('label')?.textContent ?? on.textContent ?? '';
  return { label: label.trim(), role: on.getAttribute('role') ?? '' };
})()`;
const NUDGE = `(slider, times) => {
  for (let step = 0; step < times; step++) {
    const key = step % 5 === 4 ? 'ArrowDown' : 'ArrowUp';
    document.querySelector(slider).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
  }
}`;
const PRESS = `async (button, times) => {
  for (let step = 0; step < times; step++) {
    document.querySelector(button).click();
    await new Promise((next) => setTimeout(next));
  }
}`;
const WIPE = `(async () => {
  for (const { name } of await indexedDB.databases()) {
    const gone = indexedDB.deleteDatabase(name);
    await new Promise((end) => { gone.onsuccess = gone.onerror = gone.onblocked = end; });
  }
  localStorage.clear();
})()`;

/** Whole jobs by one kind of hand alone: touch, or keys; with what a browser may lose meanwhile. */
describe('the page in Chromium', () => {
  const chromium = inChromium();
  let page: Page;
  const open = async (options: BrowserContextOptions) => {
    page = await chromium.open({ ...options, isOffline: true });
  };
  const packOf = async (take: () => Promise<void>) => {
    const download = page.waitForEvent('download', { timeout: 120_000 });
    await take();
    return unzipSync(readFileSync(await (await download).path()));
  };
  const savedText = async (save: () => Promise<void>) => {
    const download = page.waitForEvent('download');
    await save();
    return readFileSync(await (await download).path(), 'utf8');
  };

  test('by touch alone, on a phone: from a photograph to a pack', async () => {
    await open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a file' }).tap();
    await (await chooser).setFiles(PHOTOGRAPH);
    await page.getByLabel('edge above the sheet').tap();
    await page.keyboard.insertText('36.5');
    await page.getByRole('button', { name: 'Find the edge' }).tap();
    await page.locator('.wear').first().waitFor({ timeout: 120_000 });
    await page.getByRole('button', { name: 'Yes, settle it' }).tap();
    await page.locator('.line.edge').waitFor();
    await page.getByRole('button', { name: 'Draw it from these numbers instead' }).tap();
    const grip = page.getByRole('slider', { name: 'lower bout' });
    await page.locator('.take-back', { hasText: 'Draw it from these numbers' }).waitFor();
    await grip.scrollIntoViewIfNeeded();
    const length = Number(await grip.getAttribute('aria-valuenow'));
    await pull(grip, 24);
    await expect
      .poll(async () => Number(await grip.getAttribute('aria-valuenow')))
      .toBeGreaterThan(length + 5);
    await page.locator('.take-back', { hasText: /^take backlower bout/ }).waitFor();
    await page.locator('.take-back').tap();
    await expect
      .poll(async () => Number(await grip.getAttribute('aria-valuenow')), { timeout: 20_000 })
      .toBe(length);
    await page.locator('.stop button', { hasText: 'take away' }).tap();
    const files = await packOf(() => page.getByRole('button', { name: 'Take it away' }).tap());
    expect(Object.keys(files)).toContain('print/templates-a4.pdf');
  }, 240_000);

  /** A finger laid on a handle, moved to the right and lifted. */
  const pull = async (grip: Locator, byPx: number) => {
    const box = await grip.boundingBox();
    if (box === null) throw new Error('no handle to pull');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const session = await page.context().newCDPSession(page);
    const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: number) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: at, y }],
      });
    await finger('touchStart', x);
    for (let step = 1; step <= 8; step++) await finger('touchMove', x + (byPx * step) / 8);
    await finger('touchEnd', x + byPx);
  };

  test('by keys alone, with the network off: from a photograph to a pack, as the command line makes it', async () => {
    await open({ viewport: { width: 1440, height: 900 } });
    const chooser = page.waitForEvent('filechooser');
    await tabTo('Choose a file');
    await page.keyboard.press('Enter');
    await (await chooser).setFiles(PHOTOGRAPH);
    await tabTo('edge above the sheet');
    await page.keyboard.type('36.5');
    await tabTo('Find the edge');
    await page.keyboard.press('Enter');
    await page.locator('.wear').first().waitFor({ timeout: 120_000 });
    await tabTo('Yes, settle it');
    await page.keyboard.press('Enter');
    await page.locator('.line.edge').waitFor();
    await tabTo('Draw it from these numbers instead');
    await page.keyboard.press('Space');
    await tabTo('lower bout', 'slider');
    await page.keyboard.press('Shift+ArrowUp');
    await page.locator('.take-back', { hasText: /^take backlower bout/ }).waitFor();
    await page.keyboard.press('Control+z');
    await page.locator('.take-back', { hasText: 'Draw it from these numbers' }).waitFor();
    await page.keyboard.press('Control+y');
    await tabTo('arch');
    await page.keyboard.press('Enter');
    await page.locator('.gauge').first().waitFor();
    await tabTo('fullness of the cross arches, waist', 'slider');
    await page.keyboard.press('ArrowUp');
    await page.locator('.take-back', { hasText: 'waist 0.01' }).waitFor();
    await tabTo('put it in a file');
    const text = await savedText(() => page.keyboard.press('Enter'));
    expect(JSON.parse(text).values.fullnessWaist.value).toBe(0.01);
    await tabTo('take away');
    await page.keyboard.press('Enter');
    await tabTo('Take it away');
    const files = await packOf(() => page.keyboard.press('Enter'));
    expect(await unlikeCommandLine(files, text)).toEqual([]);
  }, 240_000);

  /** Presses Tab until the focus is on something of this name, as a maker without a mouse does. */
  const tabTo = async (name: string, role?: string) => {
    for (let press = 0; press < 160; press++) {
      await page.keyboard.press('Tab');
      const at = (await page.evaluate(FOCUSED)) as { readonly label: string; readonly role: string };
      if (at.label.startsWith(name) && (role === undefined || at.role === role)) return;
    }
    throw new Error(`no Tab leads to ${name}`);
  };

  test('five hundred steps live through a reload and are all taken back, to the same design', async () => {
    await open({ viewport: { width: 1440, height: 900 } });
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
    const before = await savedText(() => page.getByRole('button', { name: 'put it in a file' }).click());
    await page.evaluate(`(${NUDGE})('[role=slider][aria-label=waist]', 500)`);
    await page.locator('.take-back', { hasText: 'waist 142.0' }).waitFor();
    // A reload must not be quicker than the writing of what it is to find.
    await page.waitForTimeout(1000);
    await page.reload();
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await page.locator('.take-back', { hasText: 'waist 142.0' }).waitFor();
    await page.evaluate(`(${PRESS})('.take-back', 500)`);
    await page.locator('.take-back', { hasText: 'nothing yet' }).waitFor({ timeout: 60_000 });
    await page.locator('.kept b', { hasText: 'in a file' }).waitFor();
    await page.getByRole('button', { name: 'do again' }).click();
    const after = await savedText(() => page.getByRole('button', { name: 'put it in a file' }).click());
    const [was, is] = [JSON.parse(before), JSON.parse(after)];
    expect(is.values.waist.value).toBeCloseTo(was.values.waist.value + 0.1, 9);
    expect({ ...is.values, waist: was.values.waist }).toEqual(was.values);
  }, 120_000);

  test('storage that is wiped in mid-work takes nothing from the table', async () => {
    await open({ viewport: { width: 1440, height: 900 } });
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
    await page.getByRole('slider', { name: 'waist' }).press('ArrowUp');
    await page.locator('.take-back', { hasText: 'waist 112.1' }).waitFor();
    await page.evaluate(WIPE);
    await page.getByRole('slider', { name: 'waist' }).press('ArrowUp');
    await page.locator('.take-back', { hasText: 'waist 112.2' }).waitFor();
    await page.locator('.take-back').click();
    await page.locator('.take-back').click();
    await page.locator('.take-back', { hasText: 'nothing yet' }).waitFor();
    const text = await savedText(() => page.getByRole('button', { name: 'put it in a file' }).click());
    expect(JSON.parse(text).values.waist.value).toBe(112);
    await page.reload();
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
  }, 60_000);
});
