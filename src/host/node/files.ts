import { randomBytes } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { accept, type Checked, type Fault, refuse } from '../../core/index.ts';
import { jsonTrouble } from '../jsonTrouble.ts';

/** Bytes of a file the maker named, or why they could not be read. Fault: `file.unreadable`. */
export function readBytes(path: string): Checked<Uint8Array> {
  try {
    return accept(new Uint8Array(readFileSync(path)));
  } catch (error) {
    return refuse({
      code: 'file.unreadable',
      at: path,
      found: `the file could not be read (${reason(error)})`,
      need: 'a file that exists and that you may read',
      remedy: 'check the name and the folder',
    });
  }
}

/** A file the maker named, read as JSON; `need` says what it should hold. Faults: `file.unreadable`, `file.not-json`, `file.too-large`. */
export function readJson(path: string, need = 'a measurements, trace or design file'): Checked<unknown> {
  const bytes = readBytes(path);
  if (!bytes.ok) return bytes;
  if (bytes.value.length > LARGEST_JSON_BYTES)
    return refuse({
      code: 'file.too-large',
      at: path,
      found: `${(bytes.value.length / 1e6).toFixed(0)} MB`,
      need: `at most ${LARGEST_JSON_BYTES / 1e6} MB`,
      remedy: 'give the file that Garland wrote',
    });
  const text = new TextDecoder().decode(bytes.value);
  try {
    return accept(JSON.parse(text));
  } catch (error) {
    const trouble = jsonTrouble(text);
    const place = trouble
      ? `line ${trouble.line}, column ${trouble.column}: ${trouble.found}`
      : reason(error);
    return refuse({
      code: 'file.not-json',
      at: path,
      found: `this is not a JSON file (${text.trim() === '' ? 'it is empty' : place})`,
      need,
      remedy: 'mend the place named, or give another file',
    });
  }
}

const LARGEST_JSON_BYTES = 50_000_000;

/**
 * Writes a whole file beside its place, makes sure that it is on the disk, and renames it into place: a crash
 * leaves the old file or the new one. Faults: `file.exists` when there is one already and `force` is not given,
 * `file.unwritable`.
 */
export function writeWhole(
  path: string,
  bytes: Uint8Array,
  options: { readonly force: boolean },
): Checked<string> {
  if (!options.force && existsSync(path)) return refuse(existing(path));
  const folder = dirname(path);
  const beside = join(folder, `.${basename(path)}.${randomBytes(4).toString('hex')}.part`);
  try {
    makeFolder(folder);
    const file = openSync(beside, 'wx');
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, path);
    syncFolder(folder);
    return accept(path);
  } catch (error) {
    clearAway(beside);
    return refuse(unwritable(path, error));
  }
}

/**
 * Makes a folder and those above it that are missing; throws as the system does. Step by step, because making them
 * all at once never ends where the system answers that even an existing folder's child cannot be found.
 */
export function makeFolder(path: string): void {
  const missing: string[] = [];
  for (let at = resolve(path); !existsSync(at); at = dirname(at)) missing.push(at);
  for (const at of missing.reverse()) {
    try {
      mkdirSync(at);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
  }
  if (!statSync(path).isDirectory())
    throw Object.assign(new Error('a file is in the way'), { code: 'EEXIST' });
}

/** Removes what a failed writing left; where even that fails there was nothing. */
export function clearAway(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    return;
  }
}

/** Whether something of this name is there already. */
export function isThere(path: string): boolean {
  return existsSync(path);
}

export function existing(path: string, what = 'there is already something of this name'): Fault {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory())
    return {
      code: 'file.exists',
      at: path,
      found: 'there is a folder of this name, and nothing was touched',
      need: 'the name of a file',
      remedy: 'give another --out, such as a file in that folder',
    };
  return {
    code: 'file.exists',
    at: path,
    found: `${what}, and nothing was touched`,
    need: 'a new name, or your word that it may be replaced',
    remedy: 'give another --out, or add --force',
  };
}

export function unwritable(path: string, error: unknown): Fault {
  return {
    code: 'file.unwritable',
    at: path,
    found: `could not be written (${reason(error)})`,
    need: 'a folder that you may write to, with room on the disk',
    remedy: 'choose another --out',
  };
}

/** Makes the renaming itself last; where a system knows no such thing the file is written all the same. */
function syncFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    fsyncSync(handle);
    closeSync(handle);
  } catch {
    return;
  }
}

function reason(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code;
  const words: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file or folder',
    EACCES: 'you may not touch it',
    EPERM: 'you may not touch it',
    EISDIR: 'it is a folder',
    ENOTDIR: 'a part of the path is a file, not a folder',
    EEXIST: 'there is a file where a folder is needed',
    ENOTEMPTY: 'there is a folder of this name',
    EBUSY: 'it is in use',
    EROFS: 'the disk is read-only',
    ENOSPC: 'the disk is full',
  };
  const known = words[code ?? ''];
  return known ?? (error instanceof Error ? error.message : String(error)).replace(/\s+/g, ' ');
}
