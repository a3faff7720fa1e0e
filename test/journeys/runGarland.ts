import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';

export const ROOT = resolve(import.meta.dirname, '..', '..');
/** The built command, as a maker runs it; `npm test` builds it first. */
export const COMMAND = join(ROOT, 'dist', 'src', 'cli', 'main.js');

/** How a run of the command ended, and what it said. */
export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built command in a folder, without a terminal. */
export function garland(cwd: string, ...words: readonly string[]): Promise<Ended> {
  return garlandAt({}, cwd, ...words);
}

/** The same where clock, language and commas are others: what the environment says beside the usual. */
export function garlandAt(
  place: NodeJS.ProcessEnv,
  cwd: string,
  ...words: readonly string[]
): Promise<Ended> {
  if (!existsSync(COMMAND)) throw new Error('build first: node scripts/build.mjs');
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [COMMAND, ...words], {
      cwd,
      env: { ...process.env, ...place },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let [out, err] = ['', ''];
    child.stdout.on('data', (text) => {
      out += text;
    });
    child.stderr.on('data', (text) => {
      err += text;
    });
    child.on('error', failed);
    child.on('close', (code) => done({ code, out, err }));
  });
}

/** A new empty folder, and the way to remove it. */
export function newFolder(): { readonly path: string; readonly remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), 'garland-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** Every file under a folder, path to content, so that two looks can be compared. */
export function contentsOf(folder: string): Readonly<Record<string, string>> {
  const found: Record<string, string> = {};
  const look = (at: string): void => {
    for (const name of readdirSync(at)) {
      const path = join(at, name);
      if (statSync(path).isDirectory()) look(path);
      else found[relative(folder, path).replaceAll('\\', '/')] = readFileSync(path, 'latin1');
    }
  };
  if (existsSync(folder)) look(folder);
  return found;
}

/** Whether a text is one plain line that says where, what is wrong, what is needed and what to do. */
export function isSentence(text: string): boolean {
  return /^[^\n]+: [^\n]+; needs [^\n]+\. [^\n]+\.\n$/.test(text) && !text.includes('    at ');
}
