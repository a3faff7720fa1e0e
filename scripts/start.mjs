// `npm start`: installs what is missing, builds, runs the demo job, and serves the page with it on the bench.
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { needNode20, needPackages, root, run } from './prepare.mjs';

needNode20();
needPackages();
run(process.execPath, [join(root, 'scripts', 'build.mjs')]);

const command = join(root, 'dist', 'src', 'cli', 'main.js');
linkCommand();
const words = process.argv.slice(2).filter((word) => word !== '--no-page');
const demo = spawnSync(process.execPath, [command, 'demo', ...words], { cwd: root, stdio: 'inherit' });
// Findings are part of an honest demo: it is done all the same.
process.exitCode = demo.status === 1 ? 0 : (demo.status ?? 1);
if (process.exitCode === 0 && !process.argv.includes('--no-page')) {
  const design = join(root, 'out', 'demo', 'fiddle', 'design.garland.json');
  const given = existsSync(design) ? [design] : [];
  const page = spawnSync(process.execPath, [command, 'page', ...given], { cwd: root, stdio: 'inherit' });
  process.exitCode = page.status ?? 0;
}

/** Lets `npx --no-install garland …` in this folder find the command that was just built. */
function linkCommand() {
  const folder = join(root, 'node_modules', '.bin');
  mkdirSync(folder, { recursive: true });
  const link = join(folder, 'garland');
  rmSync(link, { force: true });
  if (process.platform === 'win32') writeFileSync(`${link}.cmd`, `@node "${command}" %*\r\n`);
  else {
    symlinkSync(command, link);
    if (existsSync(command)) chmodSync(command, 0o755);
  }
}
