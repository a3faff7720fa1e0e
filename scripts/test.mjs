// `npm test`: installs what is missing (packages, and the independent readers where it may), runs every test, prints the true numbers.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { needNode20, needPackages, root, run } from './prepare.mjs';

/** Independent programs that read back what we write, and photographs; each with a word that only works when it is there. */
const READERS = [
  ['poppler-utils', 'pdftoppm', ['-v']],
  ['mupdf-tools', 'mutool', ['-v']],
  ['qpdf', 'qpdf', ['--version']],
  ['librsvg2-bin', 'rsvg-convert', ['--version']],
  ['python3-ezdxf', '/usr/bin/python3', ['-c', 'import ezdxf']],
  ['python3-scipy', '/usr/bin/python3', ['-c', 'import scipy.optimize']],
  ['python3-opencv', '/usr/bin/python3', ['-c', 'import cv2']],
  ['python3-skimage', '/usr/bin/python3', ['-c', 'import skimage.measure']],
  ['python3-shapely', '/usr/bin/python3', ['-c', 'import shapely']],
  ['admesh', 'admesh', ['--version']],
  ['assimp-utils', 'assimp', ['version']],
  ['python3-gmsh', '/usr/bin/python3', ['-c', 'import gmsh']],
  ['opencv-doc', 'test', ['-e', '/usr/share/doc/opencv-doc/examples/data/left01.jpg']],
  ['visp-images-data', 'test', ['-e', '/usr/share/visp-images-data/ViSP-images/calibration/grid36-01.pgm']],
  ['chromium', 'chromium', ['--version']],
  ['firefox-esr', 'firefox-esr', ['--version']],
  ['tuxpaint-stamps-default', 'test', ['-e', '/usr/share/tuxpaint/stamps/hobbies/music/string/cello.png']],
];

needNode20();
needPackages();
needReaders();
run(process.execPath, [join(root, 'scripts', 'build.mjs')]);

const report = join(root, 'out', 'test-report.json');
mkdirSync(join(root, 'out'), { recursive: true });
const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
const words = [
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
];
const done = spawnSync(process.execPath, [vitest, ...words], { cwd: root, stdio: 'inherit' });
const { numPassedTests, numFailedTests, numPendingTests, numFailedTestSuites } = JSON.parse(
  readFileSync(report, 'utf8'),
);
const failed = numFailedTests === 0 && done.status !== 0 ? Math.max(1, numFailedTestSuites) : numFailedTests;
console.log(
  `${numPassedTests} passed, ${failed} failed${numPendingTests > 0 ? `, ${numPendingTests} skipped` : ''}`,
);
process.exitCode = done.status ?? 1;

function needReaders() {
  const missing = READERS.filter(
    ([, program, words]) => spawnSync(program, words, { stdio: 'ignore' }).status !== 0,
  );
  const names = [...new Set(missing.map(([name]) => name))];
  if (names.length === 0) return;
  const may =
    process.platform === 'linux' &&
    process.getuid?.() === 0 &&
    spawnSync('apt-get', ['--version']).status === 0;
  if (may) {
    console.error(`Installing the independent readers: ${names.join(' ')} …`);
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'ignore' });
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const got = spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...names], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env,
    });
    if (got.status === 0) return;
  }
  console.error(
    `Not on this machine: ${names.join(', ')}. The checks that read our files with them will fail; install them and run again.`,
  );
}
