import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { accept, type Checked, type Fault, refuse } from '../../core/index.ts';
import { clearAway, existing, makeFolder, unwritable, writeWhole } from './files.ts';

export interface PackFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

const MANIFEST = 'manifest.json';

/**
 * Writes a pack into a folder, each file whole, the manifest last. Files of an earlier pack there (its manifest
 * lists them, and they are as it wrote them) are replaced or cleared away, and so are those that a run of the same
 * pack left when it was cut short; anything else there is the maker's and stays. Faults, before anything is touched:
 * `file.exists`, `pack.changed`, `file.unwritable`.
 */
export function writePack(
  folder: string,
  files: readonly PackFile[],
  options: { force: boolean },
): Checked<string> {
  const before = earlierPack(folder);
  const blocked = folderFaults(folder, files);
  if (blocked.length > 0) return refuse(...blocked);
  const faults = options.force ? [] : inTheWay(folder, files, before);
  if (faults.length > 0) return refuse(...faults);
  try {
    makeFolder(folder);
  } catch (error) {
    return refuse(unwritable(folder, error));
  }
  const last = files.filter((file) => file.path === MANIFEST);
  for (const file of [...files.filter((other) => other.path !== MANIFEST), ...last]) {
    const written = writeWhole(join(folder, file.path), file.bytes, { force: true });
    if (!written.ok) return written;
  }
  const now = new Set(files.map((file) => file.path));
  for (const [path, hash] of before?.hashes ?? [])
    if (!now.has(path) && hashOf(join(folder, path)) === hash) clearAway(join(folder, path));
  return accept(folder);
}

interface EarlierPack {
  /** What it wrote, path to hash. */
  readonly hashes: ReadonlyMap<string, string>;
}

/** The pack that a manifest of ours in this folder tells of; undefined when there is none that is ours. */
function earlierPack(folder: string): EarlierPack | undefined {
  try {
    const manifest = JSON.parse(readFileSync(join(folder, MANIFEST), 'utf8'));
    if (manifest.format !== 'garland-pack' || !Array.isArray(manifest.files)) return undefined;
    const safe = manifest.files.filter(
      (file: { path?: unknown; sha256?: unknown }) =>
        typeof file.path === 'string' && typeof file.sha256 === 'string' && !/^[/\\]|\.\.|:/.test(file.path),
    );
    return {
      hashes: new Map(safe.map((file: { path: string; sha256: string }) => [file.path, file.sha256])),
    };
  } catch {
    return undefined;
  }
}

/** Files that stand where the pack needs a folder. */
function folderFaults(folder: string, files: readonly PackFile[]): Fault[] {
  const folders = new Set([folder, ...files.map((file) => dirname(join(folder, file.path)))]);
  return [...folders]
    .filter((path) => existsSync(path) && !statSync(path).isDirectory())
    .map((path) => unwritable(path, Object.assign(new Error('a file'), { code: 'EEXIST' })));
}

/** More than these are told in one sentence. */
const MOST_SENTENCES = 3;

function inTheWay(folder: string, files: readonly PackFile[], before: EarlierPack | undefined): Fault[] {
  const standing = files.filter((file) => existsSync(join(folder, file.path)) && !isSame(folder, file));
  const own = standing.filter((file) => file.path !== MANIFEST || before === undefined);
  const strange = own.filter((file) => before?.hashes.get(file.path) === undefined);
  const changed = own.filter((file) => {
    const known = before?.hashes.get(file.path);
    return known !== undefined && hashOf(join(folder, file.path)) !== known;
  });
  const first = strange[0];
  const exists =
    first === undefined || strange.length <= MOST_SENTENCES
      ? strange.map((file) => existing(join(folder, file.path)))
      : [
          existing(
            folder,
            `${strange.length} files there have names that the pack needs, such as ${first.path}`,
          ),
        ];
  return [...exists, ...changed.map((file) => changedByHand(join(folder, file.path)))];
}

/** Whether the very bytes lie there already, as after a run that was cut short. */
function isSame(folder: string, file: PackFile): boolean {
  return hashOf(join(folder, file.path)) === sha256(file.bytes);
}

function changedByHand(path: string): Fault {
  return {
    code: 'pack.changed',
    at: path,
    found: 'this file was changed after Garland wrote it, and it was left as it is',
    need: 'a folder whose pack is untouched, or your word that it may be replaced',
    remedy: 'move the changed file away, give another --out, or add --force',
  };
}

function hashOf(path: string): string | undefined {
  try {
    return sha256(readFileSync(path));
  } catch {
    return undefined;
  }
}
