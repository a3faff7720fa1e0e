// Compiles the sources to dist/ and builds the page beside them, with nothing but what the lock file pins.
import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { buildPage } from './buildPage.mjs';

const root = resolve(import.meta.dirname, '..');
const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
const built = spawnSync(process.execPath, [tsc, '-p', join(root, 'tsconfig.build.json')], {
  stdio: 'inherit',
});
process.exitCode = built.status ?? 1;
if (built.status === 0) await buildPage();
