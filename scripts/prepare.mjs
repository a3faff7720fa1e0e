// What both `npm start` and `npm test` need first: Node 20, the pinned packages, and (for tests) the independent readers.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '..');

/** Stops with one sentence when this Node is too old. */
export function needNode20() {
  if (Number(process.versions.node.split('.')[0]) >= 20) return;
  console.error(
    `Garland needs Node.js 20 or newer; this is ${process.versions.node}. Install a newer Node.js and run again.`,
  );
  process.exit(2);
}

/** Installs the packages of the lock file when they are missing or older than it. */
export function needPackages() {
  const mark = join(root, 'node_modules', '.package-lock.json');
  const lock = join(root, 'package-lock.json');
  if (existsSync(mark) && statSync(mark).mtimeMs >= statSync(lock).mtimeMs - 1000 && samePackages(mark, lock))
    return;
  console.error('Installing the packages that the lock file names (once) …');
  run('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error']);
}

function samePackages(mark, lock) {
  const versions = (path) =>
    Object.entries(JSON.parse(readFileSync(path, 'utf8')).packages ?? {})
      .filter(([name, entry]) => name !== '' && !entry.optional)
      .map(([name, entry]) => `${name}@${entry.version}`)
      .sort()
      .join('\n');
  return versions(mark) === versions(lock);
}

/** Runs a program in the project's folder with its output shown; stops when it fails. */
export function run(program, words) {
  const shell = process.platform === 'win32';
  const done = spawnSync(program, words, { cwd: root, stdio: 'inherit', shell });
  if (done.status !== 0) {
    console.error(
      `${program} ${words.join(' ')} ended with ${done.status ?? done.signal ?? done.error?.message}.`,
    );
    process.exit(1);
  }
}
