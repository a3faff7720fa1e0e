// Compiles the sources and runs every benchmark, each against its named peers in the same run.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '..');
const run = (...args) => spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' }).status ?? 1;

let status = run(join(root, 'scripts', 'build.mjs'));
if (status === 0) {
  const folder = join(root, 'dist', 'bench');
  for (const file of readdirSync(folder)
    .filter((name) => name.endsWith('.js'))
    .sort()) {
    status = run(join(folder, file)) || status;
  }
}
process.exitCode = status;
