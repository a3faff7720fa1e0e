import { accept, type Checked, type Fault, refuse } from '../base/index.ts';
import { canonicalJson } from './canonicalJson.ts';

export type PackKind = 'print' | 'laser' | 'router' | 'solid' | 'book' | 'data';

/** A file of a pack: where it lies, what it is for, which drawings it holds, its bytes and the size of what it shows: across and up, of a solid its height too. */
export interface PackFile {
  readonly path: string;
  readonly kind: PackKind;
  readonly parts: readonly string[];
  readonly bytes: Uint8Array;
  readonly sizeMm?: readonly [number, number] | readonly [number, number, number];
}

export interface PackedDesign {
  readonly name: string;
  readonly sha256: string;
}

const SAFE_PATH = /^[a-z0-9][a-z0-9._-]*(\/[a-z0-9][a-z0-9._-]*)*$/i;

/**
 * The text of `manifest.json`: every file by path, in alphabetical order, with its digest. `digest` gives the SHA-256 of
 * bytes in lower-case hexadecimal; it comes from outside because the core has no cryptography.
 *
 * Faults: `pack.path` (absolute, climbing, or with signs that some file systems refuse), `pack.twin` (two paths
 * that differ in case only or not at all).
 */
export function packManifest(
  design: PackedDesign,
  files: readonly PackFile[],
  digest: (bytes: Uint8Array) => string,
  language = 'en',
): Checked<string> {
  const faults = [...files.filter((file) => !SAFE_PATH.test(file.path)).map(badPath), ...twins(files)];
  if (faults.length > 0) return refuse(...faults);
  const listed = [...files]
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ path, kind, parts, bytes, sizeMm }) => ({
      path,
      kind,
      parts,
      sha256: digest(bytes),
      bytes: bytes.length,
      ...(sizeMm === undefined ? {} : { sizeMm }),
    }));
  const text = canonicalJson({
    format: 'garland-pack',
    version: 1,
    design: { name: design.name, sha256: design.sha256 },
    ...(language === 'en' ? {} : { language }),
    files: listed,
  });
  return text.ok ? accept(text.value) : text;
}

function badPath(file: PackFile): Fault {
  return {
    code: 'pack.path',
    at: file.path,
    found: 'a path that not every file system can hold',
    need: 'letters, digits, full stops, hyphens, underlines and single slashes, from the root of the pack',
    remedy: 'give the drawing another name',
  };
}

function twins(files: readonly PackFile[]): Fault[] {
  const seen = new Set<string>();
  return files.flatMap((file) => {
    const key = file.path.toLowerCase();
    if (!seen.has(key)) {
      seen.add(key);
      return [];
    }
    return [
      {
        code: 'pack.twin',
        at: file.path,
        found: 'two files of one name',
        need: 'names that differ by more than capitals',
        remedy: 'give one of the drawings another name',
      },
    ];
  });
}
