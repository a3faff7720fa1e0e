// Views of what is brought in, to be looked at: marks on the picture, several photographs, scans, refusals, earlier sittings.
import { join } from 'node:path';
import { root } from './prepare.mjs';

const LOOK_MS = 120_000;
const journeys = join(root, 'test', 'journeys');
const TOP = join(root, 'demo', 'photographs', 'fiddle-top.jpg');

/** A page from the beginning, and every view of bringing in put to `keep` under its name. */
export async function bringInViews(page, keep) {
  const choose = async (...paths) => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await (await chooser).setFiles(paths);
    await page.getByRole('heading', { name: 'What is known about it?' }).waitFor();
    await page.waitForTimeout(2500);
  };
  const looked = async () => page.locator('.looking').waitFor({ state: 'detached', timeout: LOOK_MS });
  const reload = async () => {
    await page.waitForTimeout(900);
    await page.reload();
  };
  await choose(join(journeys, 'fiddle-without-sheet.jpg'));
  await keep('bring-no-sheet');
  await page.getByRole('button', { name: 'Find the edge' }).click();
  await page.locator('.trouble').waitFor({ timeout: LOOK_MS });
  await keep('bring-refused');
  await page.getByLabel('scan or life-size print').check();
  await page.getByRole('button', { name: 'Draw along a scale bar' }).click();
  await page.getByRole('button', { name: 'Draw along a scale bar' }).scrollIntoViewIfNeeded();
  await keep('bring-scan');
  await reload();
  await keep('bring-kept-photograph');
  await choose(TOP, join(journeys, 'fiddle-tilted.jpg'));
  await keep('bring-two');
  await page.getByRole('button', { name: 'Find the edge' }).click();
  await page.locator('.wear').first().waitFor({ timeout: LOOK_MS });
  await looked();
  await keep('bring-two-found');
  await page
    .locator('.row.touched, .row')
    .filter({ hasText: 'lower corner' })
    .first()
    .getByRole('button')
    .first()
    .click();
  await page.waitForTimeout(500);
  await keep('bring-wear');
  await page.getByLabel('do not believe this').check();
  const box = await page.locator('.hand-layer').boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 3];
  await page.mouse.move(x - 20, y);
  await page.mouse.down();
  for (const [dx, dy] of [
    [60, 0],
    [60, 60],
    [-20, 60],
    [-24, 10],
  ])
    await page.mouse.move(x + dx, y + dy, { steps: 6 });
  await keep('bring-marking');
  await page.mouse.up();
  await page.locator('.looking').waitFor();
  await looked();
  await page.getByRole('button', { name: 'take it away' }).scrollIntoViewIfNeeded();
  await keep('bring-marked');
  await page.getByLabel('nothing in hand').check();
  await page.getByRole('button', { name: 'Show the differences ten times' }).click();
  await keep('bring-tenfold');
  await page.getByRole('button', { name: 'Yes, settle it' }).click();
  await page.locator('.line.edge').waitFor({ timeout: LOOK_MS });
  await page.locator('.stop button').nth(3).click();
  await page.getByRole('button', { name: 'Read an arch from a photograph' }).click();
  await keep('bring-arch-empty');
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose the photograph' }).click();
  await (await chooser).setFiles(TOP);
  await page.waitForTimeout(300);
  await page.getByRole('button', { name: 'Read it' }).click();
  await page.locator('.trouble, .profile-line').first().waitFor({ timeout: LOOK_MS });
  await keep('bring-arch-refused');
  await reload();
  const kept = page.getByRole('button', { name: /^Throw away/ }).first();
  await kept.waitFor();
  await page.waitForTimeout(600);
  await keep('bring-kept');
  await kept.click();
  await keep('bring-thrown-away');
}
