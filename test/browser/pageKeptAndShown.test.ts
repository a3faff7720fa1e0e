import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, test } from 'vitest';
import { designText, draft, overrule, type ValueName } from '../../src/core/index.ts';
import { amissOn } from './amissOn.ts';
import { inChromium } from './inChromium.ts';

/** What stays when the page is opened anew, and what is shown of a design that contradicts itself. */
describe('what is kept and what is shown', () => {
  const chromium = inChromium();
  let page: Page;
  beforeEach(async () => {
    page = await chromium.open({ bypassCSP: true });
  }, 60_000);

  const drawIt = async () => {
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
  };
  const goTo = async (stop: string) => page.locator('.stop button', { hasText: stop }).click();
  /** A violin with one number that cannot be, opened as a file. */
  const bring = async (name: ValueName, value: number) => {
    const json = {
      format: 'garland-measurements',
      version: 1,
      family: 'violin',
      name: 'V',
      values: { bodyLength: 355 },
    };
    const drafted = draft([{ name: 'v.json', json }]);
    if (!drafted.ok) throw new Error('the usual violin cannot be drafted');
    const text = designText(overrule(drafted.value.design, name, value));
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await (await chooser).setFiles({
      name: 'v.garland.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
  };
  const says = (text: string) =>
    page.locator('.drawing-says', { hasText: text }).waitFor({ timeout: 30_000 });

  test('what a pack speaks, the paper in the printer and what the page speaks outlast a reload', async () => {
    await drawIt();
    await goTo('take away');
    await page.getByLabel('language of drawings and print').selectOption('de');
    await page.getByLabel('paper size').selectOption('A3');
    await page.reload();
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await goTo('take away');
    expect(await page.getByLabel('language of drawings and print').inputValue()).toBe('de');
    expect(await page.getByLabel('paper size').inputValue()).toBe('A3');
    await page.getByRole('button', { name: 'Deutsch' }).click();
    await page.reload();
    await page.getByRole('button', { name: /^Weiter mit/ }).click();
    await page.locator('.stop button', { hasText: 'mitnehmen' }).click();
    // Asked to speak as the page does, the pack goes along when the page changes.
    await page.locator('select', { has: page.locator('option[value="de"]') }).selectOption('de');
    await page.getByRole('button', { name: 'English' }).click();
    await page.reload();
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await goTo('take away');
    expect(await page.getByLabel('language of drawings and print').inputValue()).toBe('en');
  }, 90_000);

  test('what is said of a touched number stays at its stop', async () => {
    await drawIt();
    const width = page.getByRole('slider', { name: 'lower bout' });
    for (let nudge = 0; nudge < 12; nudge++) await width.press('Shift+ArrowUp');
    await says('outside what is usual');
    await goTo('arch');
    await page.locator('.gauge').first().waitFor({ timeout: 30_000 });
    expect(await page.locator('.drawing-says').innerText()).toBe('');
    await goTo('outline');
    await says('outside what is usual');
  }, 90_000);

  test('a stop that is opened while the design contradicts itself shows it as it could last be drawn, and why', async () => {
    await drawIt();
    await goTo('arch');
    await page.locator('.gauge').first().waitFor({ timeout: 30_000 });
    await page
      .getByRole('button', { name: /^arch height/ })
      .first()
      .click();
    await page.locator('.number-field input').fill('4');
    await page.keyboard.press('Enter');
    await says('Showing the last drawing that worked.');
    await says('arch height: ');
    for (const [stop, line] of [
      ['thickness', '.thick-edge'],
      ['sound holes', '.holes-edge'],
      ['neck', '.side-top'],
      ['take away', '.sheet-near'],
    ] as const) {
      await goTo(stop);
      await page.locator(line).first().waitFor({ timeout: 60_000 });
      await says('arch height: ');
    }
    expect(await page.getByRole('button', { name: 'Take it away' }).isDisabled()).toBe(true);
    expect(await amissOn(page)).toEqual([]);
  }, 180_000);

  test('a design that came with a contradiction shows what it can, and its numbers to mend it', async () => {
    await bring('upperBlockDepth', 200);
    await page.locator('.line.edge').waitFor({ timeout: 30_000 });
    await says('Only the outline can be shown. pins from the ends: pin holes 80');
    for (const stop of ['arch', 'thickness', 'sound holes', 'head', 'neck', 'take away']) {
      await goTo(stop);
      await page.locator('.line.edge').waitFor();
      await says('Only the outline can be shown.');
    }
    expect(await amissOn(page)).toEqual([]);
    await goTo('form');
    await page.getByRole('button', { name: /^upper block, along/ }).click();
    await page.locator('.number-field input').fill('14');
    await page.keyboard.press('Enter');
    await page.locator('.line.clampHole').first().waitFor({ timeout: 30_000 });
    await expect.poll(() => page.locator('.drawing-says').innerText()).toBe('');
  }, 120_000);

  test('where there is not even an outline, that is said', async () => {
    await bring('waist', 210);
    await says('Nothing can be drawn as it stands. waist: 210 mm');
    await goTo('arch');
    await says('waist: 210 mm');
    await goTo('outline');
    await page.locator('.row', { hasText: 'waist' }).first().waitFor();
  }, 90_000);
});
