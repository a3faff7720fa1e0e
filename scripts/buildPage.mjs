// Builds the page into one file that opens by a double click: dist/page/garland.html, with everything it needs in it; and
// beside it what a server gives along so that the page can be installed.
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import sharp from 'sharp';
import { build } from 'vite';

const root = resolve(import.meta.dirname, '..');

export async function buildPage(folder = join(root, 'dist', 'page')) {
  const built = await build({
    root: join(root, 'src', 'page'),
    base: './',
    logLevel: 'error',
    configFile: false,
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    worker: { format: 'iife', plugins: () => [asciiOnly] },
    plugins: [asciiOnly],
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
  const page = oneFile(script.code, String(style.source));
  writeFileSync(path, page);
  // Beside it what only a server's page asks for: it can be installed, and goes on without its server.
  const served = join(root, 'src', 'page', 'served');
  copyFileSync(join(served, 'garland.webmanifest'), join(folder, 'garland.webmanifest'));
  for (const size of [192, 512])
    await sharp(join(served, 'icon.svg'))
      .resize(size, size)
      .png()
      .toFile(join(folder, `icon-${size}.png`));
  const version = createHash('sha256').update(page).digest('hex').slice(0, 16);
  const service = readFileSync(join(served, 'service.js'), 'utf8').replace('VERSION', version);
  writeFileSync(join(folder, 'service.js'), service);
  return path;
}

/** Browsers hold a script with a single letter beyond their first 256 at two bytes a letter: page and every worker hold their own. */
const asciiOnly = {
  name: 'ascii-only',
  enforce: 'post',
  generateBundle(_, bundle) {
    for (const part of Object.values(bundle))
      if (part.type === 'chunk')
        part.code = part.code.replace(
          /[^\0-\x7f]/g,
          (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
        );
  },
};

/** Script and style in the page, each let in by its hash; nothing else may run, and nothing may be fetched. */
function oneFile(code, css) {
  const icon = readFileSync(join(root, 'src', 'page', 'served', 'icon.svg'), 'utf8');
  // Inside a script element these would end it.
  const script = code.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');
  const policy = [
    "default-src 'none'",
    `script-src '${hashOf(script)}'`,
    `style-src '${hashOf(css)}'`,
    // Its own server gives the worker, manifest and icon that let it be installed; from disk there is no such server.
    "worker-src blob: 'self'",
    "manifest-src 'self'",
    "img-src blob: data: 'self'",
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
    <link rel="icon" href="data:image/svg+xml,${encodeURIComponent(icon)}" />
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
