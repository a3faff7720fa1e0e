import { readFileSync } from 'node:fs';
import { PDFDocument } from '@cantoo/pdf-lib';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, test } from 'vitest';
import { amissOn } from './amissOn.ts';
import { inChromium } from './inChromium.ts';

/** What runs in the page: lines of the page in sight that go beyond its margins, of how many. */
const RUNS_OVER = `(() => {
  const paper = [...document.querySelectorAll('.sheet-paper')].find((one) => one.querySelector('text'));
  const { left, right, width } = paper.getBoundingClientRect();
  const margin = width * 8 / 210;
  const lines = [...paper.querySelectorAll('text')];
  const over = lines.filter((line) => {
    const box = line.getBoundingClientRect();
    return box.left < left + margin || box.right > right - margin;
  });
  return [over.map((line) => line.textContent), lines.length];
})()`;

/** What is looked at and taken away: sheets before they are printed, pieces chosen by kind. */
describe('views of the page', () => {
  const chromium = inChromium();
  let page: Page;
  beforeEach(async () => {
    page = await chromium.open({ bypassCSP: true });
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
  }, 60_000);

  const goTo = async (stop: string) => page.locator('.stop button', { hasText: stop }).click();
  const taken = async (answer: string) => {
    const download = page.waitForEvent('download', { timeout: 90_000 });
    await page.getByRole('button', { name: answer }).click();
    return unzipSync(readFileSync(await (await download).path()));
  };

  test('every sheet is seen before it is printed, and only the kinds of piece that are wanted are taken', async () => {
    await goTo('take away');
    await page.locator('.sheet-near').waitFor({ timeout: 60_000 });
    const all = await page.locator('.sheet-small').count();
    await page.locator('.which summary').click();
    for (const box of await page.locator('.which input').all())
      if (!(await box.locator('xpath=..').innerText()).includes('inner form')) await box.uncheck();
    // One kind after the other leaves the sheets: wait until they stay.
    let before = all;
    await expect
      .poll(
        async () => {
          const now = await page.locator('.sheet-small').count();
          const stays = now === before && now < all / 3;
          before = now;
          return stays;
        },
        { timeout: 60_000, interval: 2500 },
      )
      .toBe(true);
    const shown = await page.locator('.sheet-small').count();
    expect(await page.locator('.sheets-head h2').innerText()).toBe(`Paper, page 1 of ${shown}`);
    // Whatever fonts this machine has, every line is as wide as it prints, and none runs over its paper.
    const [runsOver, lines] = (await page.evaluate(RUNS_OVER)) as [readonly string[], number];
    expect(runsOver).toEqual([]);
    expect(lines).toBeGreaterThan(20);
    await page.locator('.sheet-small').last().click();
    const last = await page.locator('.sheets-head h2').innerText();
    expect(last).toBe(`Paper, page ${shown} of ${shown}`);
    expect(await page.locator('.sheet-near .ink.cut').count()).toBeGreaterThan(0);
    const pack = await taken('Only the paper');
    const printed = await PDFDocument.load(pack['print/templates-a4.pdf'] as Uint8Array);
    expect(printed.getPageCount()).toBe(shown);
    expect(Object.keys(pack).some((path) => path.startsWith('laser/'))).toBe(false);
    await page.locator('.counts', { hasText: `${shown} pages` }).waitFor();
  }, 120_000);

  test('what the bars of a print measure is taken out of every page, and said', async () => {
    await goTo('take away');
    await page.locator('.sheet-near').waitFor({ timeout: 60_000 });
    await page.getByLabel('check bars on your print').fill('149.6; 150.1');
    await page
      .locator('.sheets-foot', { hasText: '+0.27 % across and −0.07 % up' })
      .waitFor({ timeout: 30_000 });
  }, 90_000);

  test('the body is taken in the hand, turned by keys and by the hand, and laid down again', async () => {
    await goTo('arch');
    await page.getByRole('button', { name: 'Take it in the hand' }).click({ timeout: 60_000 });
    const hand = page.locator('.in-hand');
    const picture = () => page.evaluate("document.querySelector('.in-hand').toDataURL().length");
    await expect.poll(picture, { timeout: 30_000 }).toBeGreaterThan(20_000);
    await hand.focus();
    const before = await hand.getAttribute('aria-valuetext');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => hand.getAttribute('aria-valuetext')).not.toBe(before);
    await page.mouse.move(500, 400);
    await page.mouse.down();
    await page.mouse.move(620, 420, { steps: 4 });
    await page.mouse.up();
    await page.getByRole('button', { name: 'Now the top' }).click();
    await page.getByRole('button', { name: 'Lay it on the paper' }).click();
    await page.locator('.gauge').first().waitFor({ timeout: 30_000 });
  }, 120_000);

  test('the design as it came is laid over what it has become, and how they differ is told', async () => {
    const slider = page.getByRole('slider', { name: 'lower bout' });
    for (let nudge = 0; nudge < 2; nudge++) await slider.press('Shift+ArrowUp');
    await page.getByRole('button', { name: 'Lay over it how it came' }).click();
    await page.locator('.line.beside').waitFor({ timeout: 30_000 });
    // Two millimetres wider is one on each side.
    await page
      .locator('.laid-over li', { hasText: /lies (0\.9\d|1\.0\d) mm inside at most/ })
      .waitFor({ timeout: 30_000 });
    await page.locator('.laid-over summary').click();
    const row = page.locator('.beside-numbers tr', { hasText: /^lower bout/ });
    expect(await row.locator('td').allInnerTexts()).toEqual(['208.0', '206.0']);
    await page.getByRole('button', { name: 'Take it off' }).click();
    expect(await page.locator('.line.beside').count()).toBe(0);
  }, 120_000);

  test('steps at the bench are ticked, and the day of the pack and of the steps live through a reload', async () => {
    await goTo('take away');
    await page.locator('.sheet-near').waitFor({ timeout: 60_000 });
    await taken('Only the paper');
    await goTo('build');
    expect(await page.locator('.build-step').count()).toBe(14);
    await page.locator('.build-now h2', { hasText: 'blocks on the form' }).waitFor();
    await page.getByRole('button', { name: 'Done today' }).click();
    await page.locator('.build-now h2', { hasText: 'ribs bent and glued' }).waitFor();
    await page.locator('.stop', { hasText: '1 of 14 done' }).waitFor();
    await page.locator('.row', { hasText: 'rib thickness' }).first().waitFor();
    await page.waitForTimeout(500);
    await page.reload();
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await page.locator('.stop', { hasText: '1 of 14 done' }).waitFor({ timeout: 20_000 });
    await page.locator('.stop.settled', { hasText: /taken \d+ \w+/ }).waitFor();
    await goTo('build');
    await page.locator('.build-step', { hasText: 'blocks on the form' }).click();
    await page.getByRole('button', { name: 'Not done after all' }).click();
    await page.locator('.stop', { hasText: 'not begun' }).last().waitFor();
  }, 120_000);

  test('pictures of a plate are those of the command line, and are kept as files', async () => {
    await goTo('arch');
    await page.getByRole('button', { name: 'Pictures of it' }).click({ timeout: 60_000 });
    const shown = page.locator('.pictures img');
    await shown.waitFor({ timeout: 30_000 });
    await page.locator('.pictures select').selectOption('section');
    await page.getByLabel(/^from x,y to x,y/).fill('0,60 0,300');
    await page.locator('.pictures-say li', { hasText: '240.0 mm of the back' }).waitFor({ timeout: 30_000 });
    const svg = page.waitForEvent('download', { timeout: 30_000 });
    await page.getByRole('button', { name: 'SVG' }).click();
    const text = readFileSync(await (await svg).path(), 'utf8');
    expect(text).toContain('<title>Section of the back</title>');
    const png = page.waitForEvent('download', { timeout: 30_000 });
    await page.getByRole('button', { name: 'PNG' }).click();
    expect(
      readFileSync(await (await png).path())
        .subarray(1, 4)
        .toString(),
    ).toBe('PNG');
    await page.getByLabel(/^from x,y to x,y/).fill('0,60');
    await page
      .locator('.pictures-say li', { hasText: /^the line of the cut: / })
      .waitFor({ timeout: 30_000 });
  }, 120_000);

  test('nothing is amiss in these views for those who cannot see or point', async () => {
    const amiss = () => amissOn(page);
    await page.getByRole('slider', { name: 'waist' }).press('Shift+ArrowUp');
    await page.getByRole('button', { name: 'Lay over it how it came' }).click();
    await page.locator('.laid-over summary').click({ timeout: 30_000 });
    expect(await amiss(), 'laid over').toEqual([]);
    await goTo('arch');
    await page.getByRole('button', { name: 'Pictures of it' }).click({ timeout: 60_000 });
    await page.locator('.pictures img').waitFor({ timeout: 60_000 });
    expect(await amiss(), 'pictures').toEqual([]);
    await page.getByRole('button', { name: 'Take it in the hand' }).click();
    await page.locator('.in-hand').waitFor();
    expect(await amiss(), 'in the hand').toEqual([]);
    await goTo('build');
    await page.locator('.build-step').first().waitFor();
    expect(await amiss(), 'build').toEqual([]);
  }, 120_000);
});
