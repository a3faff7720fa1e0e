import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { inChromium } from './inChromium.ts';

/** ms that a busy machine may take to draw. */
const SOON_MS = 20_000;
const soon = (look: () => unknown) => expect.poll(look, { timeout: SOON_MS });

/** Run in the page before its own script: benches can be silenced, and every frame in which the pointer moves is looked at before it is painted. */
const WATCH = `
  globalThis.watch = { isSilent: false, heldBack: [], line: '', inFrames: [], answered: [] };
  const { watch } = globalThis;
  globalThis.Worker = class extends Worker {
    postMessage(...words) {
      const [{ id, path }] = words;
      this.addEventListener('message', ({ data }) => data.id === id && watch.answered.push(path?.join('.')));
      const ask = () => super.postMessage(...words);
      if (watch.isSilent) watch.heldBack.push(ask);
      else ask();
    }
  };
  addEventListener('pointermove', () => {
    if (watch.line === '') return;
    requestAnimationFrame(() => watch.inFrames.push(document.querySelector(watch.line)?.getAttribute('d') ?? null));
  }, true);
`;

const silence = (line: string) => `watch.isSilent = true; watch.line = ${JSON.stringify(line)};`;
const SPEAK = 'watch.isSilent = false; for (const ask of watch.heldBack.splice(0)) ask();';
const FRAMES = 'watch.inFrames';

describe('what a hand holds', () => {
  const chromium = inChromium();

  const opened = async (stop: string): Promise<Page> => {
    const page = await chromium.open();
    await page.addInitScript(WATCH);
    await page.reload();
    await page.getByRole('button', { name: 'Draw it' }).click();
    await page.locator('.line.edge').waitFor();
    await page.locator('.stop button', { hasText: stop }).click();
    return page;
  };

  /** Pulls at a handle while every bench is silent, and hears them before it lets go. */
  const pulledInSilence = async (
    page: Page,
    handle: string,
    line: string,
    other: string,
    [byX, byY]: readonly [number, number],
  ) => {
    const drawn = (words: string) => page.locator(words).first().getAttribute('d');
    const box = await page.getByRole('slider', { name: handle }).boundingBox();
    if (box === null) throw new Error('no handle to pull');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    const [before, otherBefore] = [await drawn(line), await drawn(other)];
    await page.evaluate(silence(line));
    for (const share of [0.8, 1]) await page.mouse.move(x + share * byX, y + share * byY);
    const inFrames = async () => (await page.evaluate(FRAMES)) as readonly (string | null)[];
    await soon(async () => (await inFrames()).length).toBe(2);
    const [first, second] = await inFrames();
    const held = await drawn(line);
    expect(held).not.toBe(before);
    // In the very frame of each move; and the benches not yet having spoken, nothing of what only they draw.
    expect(new Set([before, first, second]).size).toBe(3);
    expect(second).toBe(held);
    expect(await drawn(other)).toBe(otherBefore);
    await page.evaluate(SPEAK);
    await soon(() => drawn(other)).not.toBe(otherBefore);
    // The bench has drawn the same.
    expect(await drawn(line)).toBe(held);
    return { held, drawn };
  };

  test('the outline follows it in the frame of its move, and the bench then draws the same', async () => {
    const page = await opened('outline');
    const { held, drawn } = await pulledInSilence(page, 'lower bout', '.line.edge', '.line.purfling', [9, 0]);
    await page.mouse.up();
    await page.locator('.take-back', { hasText: 'lower bout' }).waitFor();
    expect(await drawn('.line.edge')).toBe(held);
  }, 60_000);

  test('the form follows it in the frame of its move, and the bench then draws the same', async () => {
    const page = await opened('form');
    await pulledInSilence(page, 'waist', '.line.form', '.line.purfling', [9, 0]);
    await page.mouse.up();
  }, 60_000);

  test('a gauge follows it in the frame of its move, and the bench then draws the same', async () => {
    const page = await opened('arch');
    await page.locator('.gauge').first().waitFor();
    const name = 'fullness of the cross arches, waist';
    const gauge = `.gauge[aria-label="${name}"] .gauge-edge`;
    // What plates stand on, which the bench tells before a hand comes.
    await soon(() => page.evaluate("watch.answered.includes('ground')")).toBe(true);
    await pulledInSilence(page, name, gauge, '.contour', [0, -3]);
    await page.mouse.up();
  }, 60_000);

  test('what was said of a design that was taken back goes with it, whatever the hand does before the next is known', async () => {
    const page = await opened('outline');
    const bout = page.locator('.row', { has: page.locator('b', { hasText: /^lower bout$/ }) }).first();
    await bout.locator('.row-name').click();
    await bout.locator('input').fill('60');
    await page.keyboard.press('Enter');
    await page.locator('.trouble').waitFor();
    await page.locator('.stop button', { hasText: 'arch' }).click();
    const gauge = page.getByRole('slider', { name: 'fullness of the cross arches, waist' });
    await gauge.waitFor();
    await page.evaluate('watch.isSilent = true');
    await page.locator('.take-back').click();
    const box = await gauge.boundingBox();
    if (box === null) throw new Error('no gauge to pull');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2 - 9, { steps: 3 });
    // The answers come while the hand holds another design, and it lets that go again.
    await page.evaluate(`watch.answered.length = 0; ${SPEAK}`);
    await soon(() =>
      page.evaluate("watch.answered.includes('body') && watch.answered.includes('numbers')"),
    ).toBe(true);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await soon(() => page.locator('.trouble').count()).toBe(0);
    await page.locator('.stop button', { hasText: 'take away' }).click();
    await soon(() => page.getByRole('button', { name: 'Take it away' }).isEnabled()).toBe(true);
  }, 60_000);
});
