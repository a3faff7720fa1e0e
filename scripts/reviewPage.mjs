// Screenshots of every view of the page in three widths, by day and in the evening, to be looked at: out/review. `--light`: by
// day alone; `--bring-in`: only what is brought in.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { buildPage } from './buildPage.mjs';
import { root } from './prepare.mjs';
import { bringInViews } from './reviewBringIn.mjs';

const folder = join(root, 'out', 'review');
mkdirSync(folder, { recursive: true });
const address = pathToFileURL(await buildPage()).href;
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const STOPS = ['outline', 'form', 'arch', 'thickness', 'sound-holes', 'head', 'neck', 'take-away', 'build'];

for (const [width, height] of [
  [1440, 900],
  [1024, 768],
  [390, 844],
])
  for (const colorScheme of process.argv.includes('--light') ? ['light'] : ['light', 'dark']) {
    const context = await browser.newContext({ viewport: { width, height }, colorScheme, locale: 'en-GB' });
    const page = await context.newPage();
    await page.goto(address);
    const keep = async (name) => {
      await page.waitForTimeout(400);
      await page.screenshot({ path: join(folder, `${width}-${colorScheme}-${name}.png`) });
    };
    await keep('empty');
    if (process.argv.includes('--bring-in')) {
      await bringInViews(page, keep);
      await context.close();
      continue;
    }
    await traced(page, keep);
    for (const [place, name] of STOPS.entries()) {
      await page
        .locator('.stop button')
        .nth(place + 1)
        .click();
      await page
        .locator('.line.edge, .thick-edge, .holes-edge, .side-top, .wall, .sheet-near, .build')
        .first()
        .waitFor({ timeout: 60_000 });
      await page.waitForTimeout(1500);
      await keep(name);
    }
    await context.close();
  }
await browser.close();
console.log(folder);

/** The demo's photograph, traced and settled. */
async function traced(page, keep) {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a file' }).click();
  await (await chooser).setFiles(join(root, 'demo', 'photographs', 'fiddle-top.jpg'));
  await page.getByLabel('edge above the sheet').fill('36.5');
  await keep('asked');
  await page.getByRole('button', { name: 'Find the edge' }).click();
  await page.locator('.wear').first().waitFor({ timeout: 120_000 });
  await page.locator('.wear').first().click();
  await keep('photograph');
  await page.getByRole('button', { name: 'Yes, settle it' }).click();
  await page.locator('.line.edge').waitFor({ timeout: 60_000 });
}
