import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { amissOn } from './amissOn.ts';
import { inChromium } from './inChromium.ts';

/** ms that a busy machine may take to draw. */
const SOON_MS = 20_000;
const soon = (look: () => unknown) => expect.poll(look, { timeout: SOON_MS });

/** Numbers pulled at in the drawings of sound holes, neck and thickness: by mouse, by finger and by keys. */
describe('handles in the drawings', () => {
  const chromium = inChromium();
  let page: Page;
  const open = async (options: Parameters<typeof chromium.open>[0] = {}) => {
    page = await chromium.open(options);
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
  };
  const goTo = async (stop: string) => page.locator('.stop button', { hasText: stop }).click();
  const grip = (name: string) => page.getByRole('slider', { name });
  const middleOf = async (at: Locator) => {
    await at.scrollIntoViewIfNeeded();
    const box = await at.boundingBox();
    if (box === null) throw new Error('no handle to pull');
    return { ...box, x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const numberIn = async (name: string) =>
    (
      await page
        .locator('.row', { has: page.locator('b', { hasText: new RegExp(`^${name}$`) }) })
        .locator('.value')
        .first()
        .innerText()
    ).trim();
  const drawn = (selector: string) => page.locator(selector).last().getAttribute('d');
  const takesBack = (says: string) => page.locator('.take-back', { hasText: says }).waitFor();

  /** Pulls and leaves the button down. */
  const pull = async (at: Locator, byX: number, byY: number) => {
    const { x, y } = await middleOf(at);
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let step = 1; step <= 5; step++) await page.mouse.move(x + (byX * step) / 5, y + (byY * step) / 5);
  };

  /** Pulls, sees number and line follow before the hand lets go, and that it is one step. */
  const pulledOnce = async (name: string, row: string, line: string, by: readonly [number, number]) => {
    const [number, path] = [await numberIn(row), await drawn(line)];
    await pull(grip(name), ...by);
    await soon(() => numberIn(row)).not.toBe(number);
    await soon(() => drawn(line)).not.toBe(path);
    await takesBack('nothing yet');
    await page.mouse.up();
    await takesBack(row);
    const pulled = Number(await numberIn(row));
    await page.locator('.take-back').click();
    await takesBack('nothing yet');
    await soon(() => numberIn(row)).toBe(number);
    await soon(() => drawn(line)).toBe(path);
    return pulled - Number(number);
  };

  test('sound holes: every length is pulled by the mouse as one step, and a touch alone changes nothing', async () => {
    await open();
    await goTo('sound holes');
    await page.locator('.holes-hole').first().waitFor();
    const hole = '.holes-hole';
    expect(await pulledOnce('between upper eyes', 'between upper eyes', hole, [9, 0])).toBeGreaterThan(5);
    expect(await pulledOnce('length of a hole', 'length of a hole', hole, [0, -6])).toBeGreaterThan(3);
    expect(await pulledOnce('lower eye to edge', 'lower eye to edge', hole, [-16, 0])).toBeCloseTo(-2, 5);
    expect(await pulledOnce('nick above the stop', 'nick above the stop', hole, [0, -12])).toBeCloseTo(
      1.5,
      5,
    );
    await page.getByRole('slider', { name: 'between upper eyes' }).click();
    await takesBack('nothing yet');
    await page.locator('.row.touched', { hasText: 'between upper eyes' }).waitFor();
  }, 60_000);

  test('a gauge that was pulled once can be pulled again', async () => {
    await open();
    await goTo('arch');
    const gauge = grip('fullness of the cross arches, waist');
    const said = () => gauge.getAttribute('aria-valuetext');
    const step = () => page.locator('.take-back').innerText();
    for (const up of [8, 8, -8]) {
      const [before, last] = [await said(), await step()];
      // Its name is written on it: that is where the hand lies.
      await pull(gauge, 0, -up);
      await expect.poll(said).not.toBe(before);
      const held = await said();
      await page.mouse.up();
      await expect.poll(step).not.toBe(last);
      expect(await said()).toBe(held);
    }
  }, 60_000);

  test('a pull too far is told in words while the hand holds it, and is broken off by Escape', async () => {
    await open();
    await goTo('sound holes');
    const eyes = grip('between upper eyes');
    await pull(eyes, 12, 0);
    await page.locator('.drawing-says', { hasText: 'outside what is usual; needs usually' }).waitFor();
    await page.mouse.move(1100, 400);
    await page.locator('.drawing-says', { hasText: 'a sound hole that runs over the edge' }).waitFor();
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await takesBack('nothing yet');
    await soon(() => page.locator('.drawing-says').innerText()).toBe('');
    await soon(() => numberIn('between upper eyes')).toBe('42.0');
  }, 60_000);

  test('by keys: tenths, millimetres with shift, each one step; named in German too', async () => {
    page = await chromium.open({ locale: 'de-DE' });
    await page.getByRole('button', { name: 'Zeichnen' }).click();
    await page.locator('.line.edge').waitFor();
    await goTo('Schalllöcher');
    const length = grip('Länge eines Lochs');
    await length.press('ArrowUp');
    await page.locator('.take-back', { hasText: 'Länge eines Lochs 73,1' }).waitFor();
    await length.press('Shift+ArrowUp');
    await page.locator('.take-back', { hasText: 'Länge eines Lochs 74,1' }).waitFor();
    expect(await length.getAttribute('aria-valuetext')).toBe('74,1 mm');
    await goTo('Hals');
    await grip('Projektion').press('ArrowDown');
    await page.locator('.take-back', { hasText: 'Projektion 26,9' }).waitFor();
    await goTo('Stärke');
    await grip('Stärken, Mitte').press('ArrowUp');
    await page.locator('.take-back', { hasText: 'Mitte 4,35' }).waitFor();
  }, 60_000);

  test('neck: what is pulled stays under the hand, and board, strings and numbers follow', async () => {
    await open();
    await goTo('neck');
    await page.locator('.side-neck').waitFor();
    expect(await pulledOnce('projection', 'projection', '.side-board', [0, -16])).toBeCloseTo(2, 5);
    expect(await pulledOnce('overstand', 'overstand', '.side-neck', [0, -8])).toBeCloseTo(1, 5);
    expect(await pulledOnce('body stop', 'body stop', '.side-bridge', [4, 0])).toBeGreaterThan(2);
    await pulledOnce('fingerboard, length', 'length', '.side-board', [8, 0]);
    // What was pulled before is taken back; where the hand rests, this number settles too.
    await soon(() => numberIn('string length')).toBe('328.0');
    const before = await middleOf(grip('neck stop'));
    await pull(grip('neck stop'), -20, 0);
    await soon(async () => (await middleOf(grip('neck stop'))).x).toBeCloseTo(before.x - 20, 0);
    await page.mouse.up();
    await takesBack('neck stop');
    await soon(async () => Number(await numberIn('string length'))).toBeGreaterThan(338);
  }, 60_000);

  test('thickness: a zone is pulled like a strip of wood, on either plate', async () => {
    await open();
    await goTo('thickness');
    await page.locator('.thick-edge').waitFor();
    const cut = '.cut-wood';
    expect(await pulledOnce('thicknesses, middle', 'middle', cut, [0, -10])).toBeCloseTo(0.5, 5);
    await page.getByRole('button', { name: 'Now the top' }).click();
    await soon(() => grip('thicknesses, middle').getAttribute('aria-valuetext')).toBe('3.00 mm');
    const bouts = await numberIn('bouts');
    await grip('thicknesses, bouts').press('ArrowUp');
    await soon(() => numberIn('bouts')).not.toBe(bouts);
  }, 60_000);

  test('thickness: a single place is asked for, pulled, nudged and dropped, each one step', async () => {
    await open();
    await goTo('thickness');
    await page.locator('.thick-edge').waitFor();
    await page.getByLabel('from the centre line', { exact: true }).fill('50');
    await page.getByLabel('from the lower end', { exact: true }).fill('4 in');
    await page.getByLabel('thickness there').fill('thin');
    await page.getByRole('button', { name: 'Ask for it' }).click();
    await page.locator('.asked-place .said', { hasText: 'thickness there: ' }).waitFor();
    await page.getByLabel('thickness there').fill('3,1');
    await page.getByRole('button', { name: 'Ask for it' }).click();
    await takesBack('thickness at place 1 3.10');
    const place = grip('thickness at place 1, 50.0 from the centre line, 101.6 from the lower end');
    const said = () => place.getAttribute('aria-valuetext');
    await soon(said).toBe('3.10 mm');
    await place.press('ArrowUp');
    await takesBack('thickness at place 1 3.15');
    await pull(place, 0, -10);
    await soon(said).toBe('3.65 mm');
    // What is held is shown in the notebook at once, and the map follows.
    await page.locator('.row.touched .value', { hasText: '3.65' }).waitFor();
    await page.mouse.up();
    await takesBack('thickness at place 1 3.65');
    await page.keyboard.press('Control+z');
    await soon(said).toBe('3.15 mm');
    // Its place is typed: the map goes through it there, and its handle goes with it.
    const moved = grip('thickness at place 1, 45.0 from the centre line, 110.5 from the lower end');
    await page.getByLabel('place 1, from the centre line').fill('45');
    await page.keyboard.press('Enter');
    await takesBack('place 1: 45.0 from the centre line, 101.6 from the lower end');
    await page.getByLabel('place 1, from the lower end').fill('110,4');
    await page.keyboard.press('Enter');
    await page.getByLabel('place 1, from the lower end').press('ArrowUp');
    await soon(() => moved.getAttribute('aria-valuetext')).toBe('3.15 mm');
    for (let step = 0; step < 3; step++) await page.locator('.take-back').click();
    await soon(said).toBe('3.15 mm');
    await page.getByLabel('place 1, thickness there').fill('0');
    await page.keyboard.press('Enter');
    await page.locator('.drawing-says', { hasText: 'needs a thickness above 0 mm' }).waitFor();
    await page.locator('.take-back').click();
    await soon(() => page.locator('.drawing-says').innerText()).toBe('');
    await page.getByRole('button', { name: 'take it away' }).click();
    await takesBack('without place 1');
    await soon(() => place.count()).toBe(0);
  }, 90_000);

  test('on a phone a finger pulls at them, each large enough and in sight', async () => {
    await open({ viewport: { width: 375, height: 780 }, hasTouch: true, isMobile: true });
    for (const [stop, count] of [
      ['neck', 5],
      ['thickness', 4],
      ['sound holes', 5],
    ] as const) {
      await goTo(stop);
      await soon(() => page.locator('.grip[role=slider]').count()).toBe(count);
      for (const one of await page.locator('.grip[role=slider]').all()) {
        const { x, width, height } = await middleOf(one);
        expect(Math.min(width, height)).toBeGreaterThan(43);
        expect(x).toBeGreaterThan(12);
        expect(x).toBeLessThan(363);
      }
    }
    const { x, y } = await middleOf(grip('length of a hole'));
    const session = await page.context().newCDPSession(page);
    const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: number) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y: at }],
      });
    await finger('touchStart', y);
    for (let step = 1; step <= 6; step++) await finger('touchMove', y - 2 * step);
    await soon(async () => Number(await numberIn('length of a hole'))).toBeGreaterThan(75);
    await finger('touchEnd', y - 12);
    await takesBack('length of a hole');
  }, 60_000);

  test.each([40, 60, 100])(
    'on a phone a tap counts that comes %i ms after a quick pull too far',
    async (waitMs) => {
      await open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
      // What comes by and by moves what lies below it.
      await soon(() => page.locator('.row .value').count()).toBeGreaterThan(3);
      await page.evaluate('scrollTo(0, 0)');
      const [handle, back] = [
        await grip('lower bout').boundingBox(),
        await page.locator('.take-back').boundingBox(),
      ];
      if (handle === null || back === null) throw new Error('nothing to pull, or to tap');
      const [x, y] = [handle.x + handle.width / 2, handle.y + handle.height / 2];
      const session = await page.context().newCDPSession(page);
      const finger = (
        type: 'touchStart' | 'touchMove' | 'touchEnd',
        ...touchPoints: { x: number; y: number }[]
      ) => session.send('Input.dispatchTouchEvent', { type, touchPoints });
      await finger('touchStart', { x, y });
      for (let step = 1; step <= 8; step++) await finger('touchMove', { x: x + 15 * step, y });
      await finger('touchEnd');
      await page.waitForTimeout(waitMs);
      await finger('touchStart', { x: back.x + 20, y: back.y + 20 });
      await finger('touchEnd');
      await page.getByRole('button', { name: 'do again' }).waitFor({ timeout: SOON_MS });
      await takesBack('nothing yet');
    },
    60_000,
  );

  test('a number lights what it rests on and what rests on it, in the drawing and in the list, by keys as well', async () => {
    await open({ bypassCSP: true });
    const row = (name: string) =>
      page.locator('.row', { has: page.locator('b', { hasText: new RegExp(`^${name}$`) }) }).first();
    await row('lower bout').locator('.row-name').waitFor();
    await row('lower bout').locator('.row-name').focus();
    await page.keyboard.press('Enter');
    await page.locator('.line.edge.kin.near').waitFor();
    expect(await page.locator('.line.rib.lit').count()).toBe(2);
    expect(await row('lower bout').locator('.kin-names').innerText()).toMatch(
      /^6 numbers rest on it: outline/,
    );
    await goTo('neck');
    await page.locator('.side-neck').waitFor();
    expect(await page.locator('.row.kin').count()).toBeGreaterThan(0);
    await grip('overstand').focus();
    await row('angle of the neck')
      .locator('.kin-says', { hasText: 'by way of others on: overstand' })
      .waitFor();
    await page.locator('.side-board.kin.near').waitFor();
    await page.locator('.side-string.kin').waitFor();
    expect(await page.locator('.side-string.kin.near, .side-post.kin').count()).toBe(0);
    await row('angle of the neck').locator('.row-name').focus();
    await page.keyboard.press('Enter');
    await row('body stop').locator('.kin-says', { hasText: 'angle of the neck rests on it' }).waitFor();
    await row('string length').locator('.kin-says', { hasText: 'rests on: angle of the neck' }).waitFor();
    await page.locator('.dimension.kin.near', { hasText: '195.0' }).waitFor();
    expect(await amissOn(page)).toEqual([]);
    await row('angle of the neck').getByRole('button', { name: /more$/ }).first().click();
    await row('angle of the neck').getByRole('button', { name: 'arch height' }).press('Enter');
    await page.locator('.stop.here', { hasText: 'arch' }).waitFor();
    await page.locator('.row.touched', { hasText: 'arch height' }).waitFor();
    await page.locator('.side.lit').waitFor();
  }, 60_000);
});
