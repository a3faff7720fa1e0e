import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { accept, type Checked, type Fault, refuse } from '../../core/index.ts';
import { existing, unwritable, writeWhole } from './files.ts';

export interface PackFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/**
 * Writes a pack into a folder, each file whole, the manifest last. Files of an earlier pack there (its manifest
 * lists them, and they are as it wrote them) are replaced or cleared away; anything else there is the maker's and
 * stays. Faults, before anything is touched: `file.exists`, `pack.changed`; and `file.unwritable`.
 */
export function writePack(
  folder: string,
  files: readonly PackFile[],
  options: { force: boolean },
): Checked<string> {
  const before = earlierFiles(folder);
  const faults = options.force ? [] : files.flatMap((file) => inTheWay(folder, file, before));
  if (faults.length > 0) return refuse(...faults);
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    return refuse(unwritable(folder, error));
  }
  const last = files.filter((file) => file.path === 'manifest.json');
  for (const file of [...files.filter((other) => other.path !== 'manifest.json'), ...last]) {
    const written = writeWhole(join(folder, file.path), file.bytes, { force: true });
    if (!written.ok) return written;
  }
  const now = new Set(files.map((file) => file.path));
  for (const [path, hash] of before)
    if (!now.has(path) && hashOf(join(folder, path)) === hash) rmSync(join(folder, path), { force: true });
  return accept(folder);
}

/** What an earlier pack in this folder wrote, path to hash; empty when there is none that is ours. */
function earlierFiles(folder: string): ReadonlyMap<string, string> {
  try {
    const manifest = JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8'));
    if (manifest.format !== 'garland-pack' || !Array.isArray(manifest.files)) return new Map();
    const safe = manifest.files.filter(
      (file: { path?: unknown; sha256?: unknown }) =>
        typeof file.path === 'string' && typeof file.sha256 === 'string' && !/^[/\\]|\.\.|:/.test(file.path),
    );
    return new Map(safe.map((file: { path: string; sha256: string }) => [file.path, file.sha256]));
  } catch {
    return new Map();
  }
}

function inTheWay(folder: string, file: PackFile, before: ReadonlyMap<string, string>): Fault[] {
  const path = join(folder, file.path);
  if (!existsSync(path)) return [];
  if (file.path === 'manifest.json' && (before.size > 0 || readdirSync(folder).length === 1)) return [];
  const known = before.get(file.path);
  if (known === undefined) return [existing(path)];
  if (hashOf(path) === known || hashOf(path) === sha256(file.bytes)) return [];
  return [
    {
      code: 'pack.changed',
      at: path,
      found: 'this file was changed after Garland wrote it, and it was left as it is',
      need: 'a folder whose pack is untouched, or your word that it may be replaced',
      remedy: 'move the changed file away, give another --out, or add --force',
    },
  ];
}

function hashOf(path: string): string | undefined {
  try {
    return sha256(readFileSync(path));
  } catch {
    return undefined;
  }
}
