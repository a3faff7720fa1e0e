import { resolve } from 'node:path';
import { accept, type Checked, type Fault, refuse } from '../core/index.ts';
import { existing, isThere, writeWhole } from '../host/index.ts';

/** A file that a command writes. */
export interface FileToWrite {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/**
 * What stands in the way of writing under these names, known before any work is done: files that are there already, and one name for
 * two files. Faults: `file.exists`, `file.twice`.
 */
export function inTheWay(
  paths: readonly (string | undefined)[],
  { force }: { readonly force: boolean },
): readonly Fault[] {
  const named = paths.flatMap((path) => (path === undefined ? [] : [path]));
  const whole = named.map((path) => resolve(path));
  const twice = named.find((_path, place) => whole.indexOf(whole[place] as string) !== place);
  if (twice !== undefined) return [sameName(twice)];
  return force ? [] : named.filter(isThere).map((path) => existing(path));
}

/** Writes all of them, none where one of them may not be replaced. Faults: those of `inTheWay`, `file.unwritable`. */
export function writeFiles(
  files: readonly FileToWrite[],
  options: { readonly force: boolean },
): Checked<readonly string[]> {
  const faults = inTheWay(
    files.map(({ path }) => path),
    options,
  );
  if (faults.length > 0) return refuse(...faults);
  for (const { path, bytes } of files) {
    const written = writeWhole(path, bytes, options);
    if (!written.ok) return written;
  }
  return accept(files.map(({ path }) => path));
}

function sameName(path: string): Fault {
  return {
    code: 'file.twice',
    at: path,
    found: 'one name for two different files',
    need: 'a name for each',
    remedy: 'give one of them another name',
  };
}
