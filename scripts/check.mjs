// The development loop: types, lint and form, the import rule, and the tests that reach what has changed since the last
// commit. Words narrow the tests to paths; `all` runs every test of src.
import { join } from 'node:path';
import { needNode20, needPackages, root, run } from './prepare.mjs';

needNode20();
needPackages();
const node = process.execPath;
const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
run(node, [join(root, 'node_modules', 'typescript', 'bin', 'tsc'), '--noEmit', '-p', 'tsconfig.json']);
run(node, [join(root, 'node_modules', '@biomejs', 'biome', 'bin', 'biome'), 'check', '--error-on-warnings']);
run(node, [vitest, 'run', 'test/architecture']);
const words = process.argv.slice(2);
if (words.length === 0)
  run(node, [
    vitest,
    'run',
    '--changed',
    '--passWithNoTests',
    '--exclude',
    'test/journeys/**',
    '--exclude',
    'reference/**',
  ]);
else run(node, [vitest, 'run', ...(words[0] === 'all' ? ['src'] : words)]);
