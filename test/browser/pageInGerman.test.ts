import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { amissOn } from './amissOn.ts';
import { inChromium } from './inChromium.ts';
import { PHOTOGRAPH } from './pageFolder.ts';

const chromium = inChromium();
let page: Page;

/** Words that are English and never German. */
const ENGLISH =
  /(?:^|[\s(,;:„])(?:the|of|and|with|from|to|is|are|than|this|which|its|over|above|for|needs|side|mm wide)(?=$|[\s),.;:“])/;
/** Titles of what was printed, with author and year, stay as they are. */
const CITED = /“[^”]*”(?: \([^)]*\))?/g;

/** What the page says; sheets of paper show what they print, which is in English. */
const SAID = `(() => {
  for (const paper of document.querySelectorAll('.sheet-paper')) paper.style.display = 'none';
  const said = document.body.innerText;
  for (const paper of document.querySelectorAll('.sheet-paper')) paper.style.display = '';
  return said;
})()`;
const english = async () => {
  const text = (await page.evaluate(SAID)) as string;
  return text
    .split('\n')
    .map((line) => line.replace(CITED, ''))
    .filter((line) => ENGLISH.test(line));
};
const amiss = () => amissOn(page);
const speak = async (language: 'en' | 'de') => {
  if ((await page.locator('html').getAttribute('lang')) === language) return;
  await page.locator(`.keeping button[lang=${language}]`).click();
};
/** What each view is looked at in, beside what another test sees: language, light, and size. */
const seen = async (where: string) => {
  for (const [language, colorScheme, width] of [
    ['de', 'light', 1440],
    ['en', 'dark', 375],
    ['de', 'dark', 375],
  ] as const) {
    await speak(language);
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: width === 375 ? 780 : 900 });
    expect(await amiss(), `${where} ${language} ${colorScheme} ${width}`).toEqual([]);
    if (language === 'de') expect(await english(), `${where} ${width}`).toEqual([]);
  }
  await page.setViewportSize({ width: 1440, height: 900 });
};
const open = async () => {
  page = await chromium.open({ locale: 'de-DE' });
};

test('every view speaks German whole, and nothing at all is amiss in either language', async () => {
  await open();
  await seen('empty');
  await page.getByRole('button', { name: 'Zeichnen' }).click();
  await page.locator('.line.edge').waitFor();
  for (const [at, shows] of [
    [1, '.line.edge'],
    [2, '.line.edge'],
    [3, '.gauge'],
    [4, '.thick-edge'],
    [5, '.holes-edge'],
    [6, '.piece'],
    [7, '.piece'],
    [8, '.page-paper, .sheets, .piece'],
    [9, '.leaf h1'],
  ] as const) {
    await page.locator('.stop button').nth(at).click();
    await page.locator(shows).first().waitFor({ timeout: 60_000 });
    const name = await page.locator('.row-name').first();
    if (at < 8) await name.click();
    await seen(`stop ${at}`);
  }
}, 240_000);

test('all numbers, and a number that cannot be, are told in German', async () => {
  await open();
  await page.getByRole('button', { name: 'Zeichnen' }).click();
  await page.locator('.line.edge').waitFor();
  await page.getByRole('button', { name: 'Alle Zahlen' }).click();
  await page.locator('.row').nth(300).waitFor();
  expect(await english()).toEqual([]);
  await page.getByRole('button', { name: 'Nur diese' }).click();
  await page.locator('.row-name', { hasText: 'Mittelbügel' }).click();
  const field = page.getByRole('textbox');
  await field.fill('9 Fuß');
  await page.locator('.said').waitFor();
  expect(await english()).toEqual([]);
  await field.fill('190');
  await field.press('Enter');
  await page.locator('.trouble').waitFor();
  expect(await english()).toEqual([]);
}, 60_000);

test('what is found in a photograph is told in German', async () => {
  await open();
  const chooser = page.waitForEvent('filechooser');
  await page.locator('.answers .dark').click();
  await (await chooser).setFiles(PHOTOGRAPH);
  await page.getByRole('textbox', { name: /Rand/ }).first().fill('36,5');
  expect(await english()).toEqual([]);
  await page.locator('.answers .dark').click();
  await page.locator('.wear').first().waitFor({ timeout: 120_000 });
  expect(await english()).toEqual([]);
}, 180_000);
