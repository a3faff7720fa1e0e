import { type ChildProcess, spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { COMMAND, garland, isSentence, newFolder, ROOT } from './runGarland.ts';

let served: ChildProcess | null = null;
afterEach(() => {
  served?.kill();
  served = null;
});

/** Serves the page with words, and gives its address once it is told. */
function serve(...words: readonly string[]): Promise<string> {
  const child = spawn(process.execPath, [COMMAND, 'page', ...words], { stdio: ['ignore', 'pipe', 'pipe'] });
  served = child;
  return new Promise((settle, fail) => {
    let out = '';
    child.stdout.on('data', (text) => {
      out += text;
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(out)?.[0];
      if (address) settle(address);
    });
    child.on('close', (code) => fail(new Error(`ended with ${code}: ${out}`)));
  });
}

test('the page is served on this machine, with a design on its bench, and nothing else is', async () => {
  const folder = newFolder();
  const design = join(folder.path, 'viola.garland.json');
  const table = join(ROOT, 'demo', 'small-viola.measurements.json');
  expect((await garland(folder.path, 'draft', table, '--out', design)).code).toBeLessThan(2);
  const address = await serve(design);
  const answer = await fetch(address);
  const page = await answer.text();
  const given = /id="given-design">(.*?)<\/script>/s.exec(page)?.[1] ?? '';
  expect(JSON.parse(given)).toMatchObject({ format: 'garland-design', family: 'viola' });
  expect(page).toContain("default-src 'none'");
  for (const name of ['garland.webmanifest', 'service.js', 'icon-192.png', 'icon-512.png'])
    expect((await fetch(address + name)).status, name).toBe(200);
  // What a browser keeps for later is the page alone, never somebody's design.
  expect(await (await fetch(`${address}garland.html`)).text()).not.toContain('id="given-design">{');
  expect((await fetch(`${address}../package.json`)).status).toBe(404);
  expect((await fetch(address, { method: 'POST' })).status).toBe(404);
  folder.remove();
}, 30_000);

test('a port that is none, one that is taken, and a design that is none get their sentences', async () => {
  const wrong = await garland(ROOT, 'page', '--port', 'many');
  expect([wrong.code, isSentence(wrong.err)]).toEqual([2, true]);
  const taken = createServer();
  await new Promise<void>((ready) => taken.listen(0, '127.0.0.1', ready));
  const { port } = taken.address() as { port: number };
  const busy = await garland(ROOT, 'page', '--port', String(port));
  taken.close();
  expect(busy.err).toContain('is taken');
  expect([busy.code, isSentence(busy.err)]).toEqual([3, true]);
  const none = await garland(ROOT, 'page', 'package.json');
  expect(none.code).toBe(3);
}, 30_000);
