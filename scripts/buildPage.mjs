// Builds the page into one file that opens by a double click: dist/page/garland.html, with everything it needs in it.
import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'vite';

const root = resolve(import.meta.dirname, '..');

export async function buildPage(folder = join(root, 'dist', 'page')) {
  const built = await build({
    root: join(root, 'src', 'page'),
    base: './',
    logLevel: 'error',
    configFile: false,
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    worker: { format: 'iife' },
    build: {
      write: false,
      target: 'es2022',
      assetsInlineLimit: Number.MAX_SAFE_INTEGER,
      cssCodeSplit: false,
      modulePreload: false,
    },
  });
  const { output } = Array.isArray(built) ? built[0] : built;
  const script = output.find((part) => part.type === 'chunk' && part.isEntry);
  const style = output.find((part) => part.type === 'asset' && part.fileName.endsWith('.css'));
  const extra = output.filter((part) => part !== script && part !== style && part.fileName !== 'index.html');
  if (!script || !style || extra.length > 0)
    throw new Error(`the page does not fit in one file: ${output.map((part) => part.fileName).join(', ')}`);
  mkdirSync(folder, { recursive: true });
  const path = join(folder, 'garland.html');
  writeFileSync(path, oneFile(script.code, String(style.source)));
  return path;
}

/** Script and style in the page, each let in by its hash; nothing else may run, and nothing may be fetched. */
function oneFile(code, css) {
  // Inside a script element these would end it.
  const script = code.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');
  const policy = [
    "default-src 'none'",
    `script-src '${hashOf(script)}'`,
    `style-src '${hashOf(css)}'`,
    'worker-src blob:',
    'img-src blob: data:',
    'font-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta http-equiv="content-security-policy" content="${policy}" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta name="color-scheme" content="light dark" />
    <title>Garland</title>
    <style>${css}</style>
  </head>
  <body>
    <div id="room"></div>
    <script type="module">${script}</script>
  </body>
</html>
`;
}

function hashOf(text) {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}

if (process.argv[1] === import.meta.filename) console.log(await buildPage());
