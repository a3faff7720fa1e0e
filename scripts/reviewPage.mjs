// Screenshots of every view of the page, on a phone, on a laptop and on a 4K screen, to be looked at: out/review. `--keep` puts
// them small into docs/pictures/review; `--bring-in`: only what is brought in; `--only dark`, `--only de-DE`,
// `--only phone`: only such looks, the others stay as they are.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { buildPage } from './buildPage.mjs';
import { root } from './prepare.mjs';
import { bringInViews } from './reviewBringIn.mjs';
import { keepReview } from './reviewKept.mjs';

const folder = join(root, 'out', 'review');
mkdirSync(folder, { recursive: true });
const address = pathToFileURL(await buildPage()).href;
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const STOPS = ['outline', 'form', 'arch', 'thickness', 'sound-holes', 'head', 'neck', 'take-away', 'build'];
const isBringIn = process.argv.includes('--bring-in');

/** px, and whether the page lies on the hand, by its name in the files. */
const SCREENS = {
  phone: { viewport: { width: 375, height: 812 }, hasTouch: true, isMobile: true },
  laptop: { viewport: { width: 1280, height: 800 } },
  // 3840 × 2160, as systems show it by themselves.
  '4k': { viewport: { width: 2560, height: 1440 }, deviceScaleFactor: 1.5 },
};
/** What is looked at: the evening has other colours, not another layout; German has longer words. */
const LOOKS = [
  ['phone', 'light', 'en-GB'],
  ['laptop', 'light', 'en-GB'],
  ['laptop', 'dark', 'en-GB'],
  ['4k', 'light', 'en-GB'],
  ['phone', 'dark', 'de-DE'],
  ['laptop', 'light', 'de-DE'],
];
/** px. A phone is looked at down to here: what lies below is more of the same. */
const TALL = 2200;

const at = process.argv.indexOf('--only');
const looks = LOOKS.filter((look) => at < 0 || look.includes(process.argv[at + 1]));
for (const [screen, colorScheme, locale] of looks.slice(0, isBringIn ? 2 : looks.length)) {
  const context = await browser.newContext({ ...SCREENS[screen], colorScheme, locale });
  const page = await context.newPage();
  await page.goto(address);
  const isGerman = locale === 'de-DE';
  const keep = async (name) => {
    await page.waitForTimeout(500);
    const file = [screen, colorScheme === 'dark' ? 'dark' : '', isGerman ? 'de' : '', name];
    const path = join(folder, `${file.filter(Boolean).join('-')}.png`);
    if (screen !== 'phone') return page.screenshot({ path });
    // As tall as what is on it: the answers stand at its foot as they do on a phone.
    const { width, height } = SCREENS[screen].viewport;
    const tall = await page.evaluate('document.documentElement.scrollHeight');
    await page.evaluate('scrollTo(0, 0)');
    await page.setViewportSize({ width, height: Math.min(TALL, Math.max(height, tall)) });
    await page.waitForTimeout(900);
    await page.screenshot({ path });
    return page.setViewportSize({ width, height });
  };
  if (isBringIn) {
    await bringInViews(page, keep);
    await context.close();
    continue;
  }
  await keep('empty');
  await traced(page, keep, isGerman);
  for (const [place, name] of STOPS.entries()) {
    await page
      .locator('.stop button')
      .nth(place + 1)
      .click();
    await page
      .locator('.line.edge, .thick-edge, .holes-edge, .side-top, .wall, .sheet-near, .build')
      .first()
      .waitFor({ timeout: 60_000 });
    await page.locator('.wall-still').waitFor({ state: 'detached', timeout: 60_000 });
    await page.waitForTimeout(1500);
    await keep(name);
    if (name === 'arch') await otherWays(page, keep);
  }
  await context.close();
}
await browser.close();
if (process.argv.includes('--keep')) await keepReview(folder);
console.log(folder);

/** Pictures of the plate, and the body in the hand. */
async function otherWays(page, keep) {
  await page.locator('.ways button').first().click();
  await page.locator('.pictures img').waitFor({ timeout: 60_000 });
  await keep('arch-picture');
  await page.locator('.ways button').last().click();
  // At rest it is drawn finer than the screen.
  const isFine =
    '(({ width, clientWidth }) => width > 1.2 * clientWidth)(document.querySelector(".in-hand"))';
  for (let look = 0; look < 60 && !(await page.evaluate(isFine)); look++) await page.waitForTimeout(500);
  await keep('arch-in-hand');
  await page.locator('.ways button').last().click();
}

/** The demo's photograph, traced and settled. */
async function traced(page, keep, isGerman) {
  const chooser = page.waitForEvent('filechooser');
  await page.locator('.answers .dark').click();
  await (await chooser).setFiles(join(root, 'demo', 'photographs', 'fiddle-top.jpg'));
  await page.locator('#said-edgeHeight').fill(isGerman ? '36,5' : '36.5');
  await page.locator('.origin', { hasText: '102' }).waitFor({ timeout: 60_000 });
  await keep('asked');
  await page.locator('.answers .dark').click();
  await page.locator('.wear').first().waitFor({ timeout: 180_000 });
  await page.locator('.looking').waitFor({ state: 'detached', timeout: 180_000 });
  await page.locator('.wear').first().click();
  await keep('photograph');
  await page.locator('.answers .dark').click();
  await page.locator('.line.edge').waitFor({ timeout: 60_000 });
}
