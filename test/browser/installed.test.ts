import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CHROMIUM, pageFolder } from './pageFolder.ts';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

let opened: Awaited<ReturnType<typeof pageFolder>>;
let browser: Browser;
let server: Server;
let address: string;

beforeAll(async () => {
  opened = await pageFolder();
  browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
  server = createServer((asked, answer) => {
    try {
      const name = (asked.url ?? '').slice(1);
      const bytes = readFileSync(join(opened.folder, name));
      answer
        .writeHead(200, { 'content-type': KINDS[extname(name)] ?? 'application/octet-stream' })
        .end(bytes);
    } catch {
      answer.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  address = `http://127.0.0.1:${(server.address() as { port: number }).port}/garland.html`;
}, 120_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
  opened?.remove();
});

test('a page from a server can be installed, and a second visit works with the server gone', async () => {
  const context = await browser.newContext({ locale: 'en-GB' });
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  await page.goto(address);
  await page.evaluate(`navigator.serviceWorker.ready.then(() => undefined)`);
  await expect.poll(() => page.evaluate(`navigator.serviceWorker.controller !== null`)).toBe(true);
  const session = await context.newCDPSession(page);
  const manifest = await session.send('Page.getAppManifest');
  expect(manifest.errors).toEqual([]);
  expect(JSON.parse(manifest.data ?? '{}')).toMatchObject({ name: 'Garland', display: 'standalone' });
  const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
  // A test's window is a private one.
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
    [],
  );
  server.close();
  server.closeAllConnections();
  await page.goto(address);
  await page.getByRole('button', { name: 'Draw it' }).click();
  await page.locator('.line.edge').waitFor();
  await page.locator('.row', { hasText: 'lower bout' }).first().waitFor();
  expect(troubles).toEqual([]);
  await context.close();
}, 120_000);

test('from disk there is nothing of it', async () => {
  const page = await browser.newPage();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(opened.address);
  await page.locator('.leaf h1').waitFor();
  expect(await page.locator('link[rel=manifest]').count()).toBe(0);
  expect(asked.filter((one) => /service\.js|webmanifest/.test(one))).toEqual([]);
  await page.close();
}, 60_000);
