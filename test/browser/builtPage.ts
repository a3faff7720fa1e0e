import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { build } from 'vite';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.wasm': 'application/wasm',
};

export interface ServedPage {
  readonly address: string;
  /** A file that the page may fetch, by the name it is given. */
  readonly offer: (name: string, bytes: Uint8Array) => void;
  readonly close: () => void;
}

/** The test page built as the product's page is, and served on this machine alone. */
export async function servePage(): Promise<ServedPage> {
  const folder = mkdtempSync(join(tmpdir(), 'garland-page-'));
  mkdirSync(folder, { recursive: true });
  await build({
    root: join(import.meta.dirname, 'page'),
    logLevel: 'error',
    configFile: false,
    build: { outDir: folder, emptyOutDir: true, target: 'es2022' },
    worker: { format: 'es' },
  });
  const offered = new Map<string, Uint8Array>();
  const server: Server = createServer((asked, answer) => {
    const name = (asked.url ?? '/').slice(1) || 'index.html';
    try {
      const bytes = offered.get(name) ?? readFileSync(join(folder, name));
      answer.writeHead(200, { 'content-type': KINDS[extname(name)] ?? 'application/octet-stream' });
      answer.end(bytes);
    } catch {
      answer.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const port = (server.address() as { port: number }).port;
  return {
    address: `http://127.0.0.1:${port}/`,
    offer: (name, bytes) => offered.set(name, bytes),
    close: () => {
      server.close();
      server.closeAllConnections();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
