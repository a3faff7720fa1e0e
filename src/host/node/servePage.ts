import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { accept, type Checked, refuse } from '../../core/index.ts';

/** The page as it was built, beside the built program. */
const FOLDER = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', 'page');
const PAGE = join(FOLDER, 'garland.html');

/** What lies beside the page and lets it be installed. */
const BESIDE: Readonly<Record<string, string>> = {
  '/garland.webmanifest': 'application/manifest+json',
  '/service.js': 'text/javascript; charset=utf-8',
  '/icon-192.png': 'image/png',
  '/icon-512.png': 'image/png',
};

/** A page that is served until it is closed. */
export interface ServedPage {
  readonly address: string;
  readonly close: () => void;
}

/**
 * Serves the page on this machine alone, with a design on its bench where one is given as text. Port 0 takes any that is free.
 * Faults: `page.unbuilt`, `page.port`.
 */
export async function servePage(port: number, designText?: string): Promise<Checked<ServedPage>> {
  const page = pageText(designText);
  if (!page.ok) return page;
  const server = createServer((asked, answer) => {
    const path = new URL(asked.url ?? '/', 'http://localhost').pathname;
    const given = asked.method === 'GET' ? answerTo(path, page.value) : null;
    if (given === null) {
      answer.writeHead(404).end();
      return;
    }
    answer.writeHead(200, {
      'content-type': given.kind,
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    });
    answer.end(given.bytes);
  });
  const begun = await new Promise<NodeJS.ErrnoException | null>((settle) => {
    server.once('error', settle);
    server.listen(port, '127.0.0.1', () => settle(null));
  });
  if (begun !== null) return refuse(portFault(port, begun));
  const at = server.address();
  const served = typeof at === 'object' && at !== null ? at.port : port;
  return accept({
    address: `http://127.0.0.1:${served}/`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  });
}

/** What a path stands for: the page with the design on its bench, the page alone, or what lies beside it. */
function answerTo(
  path: string,
  page: string,
): { readonly kind: string; readonly bytes: string | Uint8Array } | null {
  if (path === '/') return { kind: HTML, bytes: page };
  if (path === '/garland.html') return { kind: HTML, bytes: readFileSync(PAGE) };
  const kind = BESIDE[path];
  if (kind === undefined || !existsSync(join(FOLDER, path))) return null;
  return { kind, bytes: readFileSync(join(FOLDER, path)) };
}

const HTML = 'text/html; charset=utf-8';

/** The page's text; a design goes along in a block that no browser runs. */
function pageText(designText: string | undefined): Checked<string> {
  let page: string;
  try {
    page = readFileSync(PAGE, 'utf8');
  } catch {
    return refuse({
      code: 'page.unbuilt',
      at: PAGE,
      found: 'no page there',
      need: 'the page built beside the program',
      remedy: 'run npm run build',
    });
  }
  if (designText === undefined) return accept(page);
  // In a script element `<` could end it; JSON may write it as an escape anywhere.
  const block = JSON.stringify(JSON.parse(designText)).replaceAll('<', '\\u003c');
  return accept(
    page.replace(
      '<div id="room"></div>',
      () => `<div id="room"></div>\n    <script type="application/json" id="given-design">${block}</script>`,
    ),
  );
}

function portFault(port: number, error: NodeJS.ErrnoException) {
  return {
    code: 'page.port',
    at: '--port',
    found: error.code === 'EADDRINUSE' ? `port ${port} is taken` : `port ${port}: ${error.message}`,
    need: 'a port that is free on this machine',
    remedy: 'give another with --port, or leave it out and take any that is free',
  };
}
