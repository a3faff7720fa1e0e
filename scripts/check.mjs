// The development loop: types, lint and form, the import rule, and the tests beside the code. Words narrow the tests.
import { join } from 'node:path';
import { needNode20, needPackages, root, run } from './prepare.mjs';

needNode20();
needPackages();
const node = process.execPath;
run(node, [join(root, 'node_modules', 'typescript', 'bin', 'tsc'), '--noEmit', '-p', 'tsconfig.json']);
run(node, [join(root, 'node_modules', '@biomejs', 'biome', 'bin', 'biome'), 'check', '--error-on-warnings']);
const words = process.argv.slice(2);
run(node, [join(root, 'node_modules', 'vitest', 'vitest.mjs'), 'run', ...(words.length > 0 ? words : ['src', 'test/architecture'])]);
