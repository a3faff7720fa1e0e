import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { ARCH, cardPicture, scrollPicture } from '../fixtures/profilePictures.ts';
import { amissOn } from './amissOn.ts';
import { inChromium } from './inChromium.ts';

const WAIT_MS = 60_000;

/** An arch and a head, read from photographs at their own stops. */
describe('from a photograph', () => {
  const chromium = inChromium();
  let page: Page;
  let pictures: string;
  beforeAll(async () => {
    pictures = mkdtempSync(join(tmpdir(), 'garland-profiles-'));
    for (const [name, { rgb, widthPx, heightPx }] of [
      ['card.png', cardPicture(true)],
      ['second.png', cardPicture(true)],
      ['scroll.png', scrollPicture()],
    ] as const)
      writeFileSync(
        join(pictures, name),
        await sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
          .png()
          .toBuffer(),
      );
  }, 120_000);
  afterAll(() => rmSync(pictures, { recursive: true, force: true }));
  beforeEach(async () => {
    page = await chromium.open();
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
  }, WAIT_MS);

  const goTo = async (stop: string) => page.locator('.stop button', { hasText: stop }).click();
  const choose = async (name: string) => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose the photograph' }).click();
    await (await chooser).setFiles(join(pictures, name));
    await page.locator('.profile-photograph img').waitFor();
  };
  const saved = async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'put it in a file' }).click();
    return JSON.parse(readFileSync(await (await download).path(), 'utf8'));
  };

  test('the arch of a card gives the height of its plate, as one step', async () => {
    await goTo('arch');
    await page.getByRole('button', { name: 'Read an arch from a photograph' }).click();
    await choose('card.png');
    await page.getByLabel('thickness of the card').fill('1');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.locator('.profile-line').waitFor({ timeout: WAIT_MS });
    expect(await amissOn(page)).toEqual([]);
    await page.getByRole('button', { name: 'Put it into the drawing' }).click();
    await page.locator('.take-back', { hasText: 'arch from a photograph' }).waitFor();
    const { values } = await saved();
    expect(values.archHeightBack.origin.kind).toBe('measured');
    expect(Math.abs(values.archHeightBack.value - ARCH.rise - ARCH.face)).toBeLessThan(0.3);
    await page.locator('.take-back').click();
    expect((await saved()).values.archHeightBack.origin.kind).not.toBe('measured');
  }, 180_000);

  test('a second photograph of one arch is listed beside the first, outlasts a reload with its answers, and is chosen or thrown away', async () => {
    const row = (name: string) => page.locator('.row', { hasText: name });
    const heightFrom = async () => (await saved()).values.archHeightBack.origin.from;
    const readOf = async (name: string, thick: string) => {
      await page.getByRole('button', { name: 'Read an arch from a photograph' }).click();
      await choose(name);
      await page.getByLabel('thickness of the card').fill(thick);
      await page.getByRole('button', { name: 'Read it' }).click();
      await page.locator('.profile-line').waitFor({ timeout: WAIT_MS });
    };
    await goTo('arch');
    await readOf('card.png', '1');
    await page.getByRole('button', { name: 'Put it into the drawing' }).click();
    await row('card.png').filter({ hasText: 'in the drawing: arch height, fullness waist' }).waitFor();
    await readOf('second.png', '20');
    await page.getByText('The drawing has this place from card.png already.').waitFor();
    await page.getByRole('button', { name: 'Put it in the place of card.png' }).waitFor();
    await page.getByRole('button', { name: 'Only list it' }).click();
    await row('second.png').filter({ hasText: 'read, not in the drawing' }).waitFor();
    expect(await heightFrom()).toContain('card.png');
    expect(await amissOn(page)).toEqual([]);
    await page.waitForTimeout(500);
    await page.reload();
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await page.locator('.line.edge').waitFor();
    await goTo('arch');
    await row('second.png').locator('.row-name').click();
    await page.locator('.profile-photograph img').waitFor();
    expect(await page.getByLabel('thickness of the card').inputValue()).toBe('20');
    await page.locator('.profile-line').waitFor();
    await page.getByRole('button', { name: 'Only list it' }).click();
    await page.getByRole('button', { name: 'use this one: second.png' }).click();
    await row('second.png').filter({ hasText: 'in the drawing: arch height' }).waitFor();
    await row('card.png').filter({ hasText: 'read, not in the drawing' }).waitFor();
    expect(await heightFrom()).toContain('second.png');
    await page.getByRole('button', { name: 'do not use it: second.png' }).click();
    await page.locator('.take-back', { hasText: 'without second.png' }).click();
    await row('second.png').filter({ hasText: 'in the drawing: arch height' }).waitFor();
    await page.getByRole('button', { name: 'Throw away second.png' }).click();
    await page.getByText('second.png is thrown away.').waitFor();
    expect((await saved()).values.archHeightBack.origin.kind).not.toBe('measured');
    await page.getByRole('button', { name: 'Take that back' }).click();
    await page.getByRole('button', { name: 'use this one: second.png' }).waitFor();
  }, 180_000);

  test('a photograph that shows no arch gets its sentence and how to take it', async () => {
    await goTo('arch');
    await page.getByRole('button', { name: 'Read an arch from a photograph' }).click();
    await choose('scroll.png');
    await page.getByLabel('along the middle').check();
    await page.getByRole('button', { name: 'Read it' }).click();
    await page
      .getByRole('alert')
      .filter({ hasText: 'no straight edge along the arch' })
      .waitFor({ timeout: WAIT_MS });
    await page.getByText('How to photograph it so that it can be read').waitFor();
    await page.getByRole('button', { name: 'Leave it' }).click();
    await page.getByRole('button', { name: 'Settle the arch' }).waitFor();
  }, 120_000);

  test('a head on its side gives its sizes, as one step', async () => {
    await goTo('head');
    await page.getByRole('button', { name: 'Read the head from a photograph' }).click();
    await choose('scroll.png');
    await page.getByLabel('half the width of the scroll').fill('10');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.locator('.profile-line').waitFor({ timeout: WAIT_MS });
    await page.getByRole('button', { name: 'Put it into the drawing' }).click();
    await page.locator('.take-back', { hasText: 'head from a photograph' }).waitFor({ timeout: WAIT_MS });
    const { values, headFit } = await saved();
    expect([values.headLength.origin.kind, headFit.source]).toEqual(['measured', 'scroll.png']);
  }, 120_000);
});
