import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildPage } from '../../scripts/buildPage.mjs';
import { make, parseMakeOptions, readDesign } from '../../src/core/index.ts';
import { sha256 } from '../../src/host/index.ts';

export const CHROMIUM = '/usr/bin/chromium';
export const FIREFOX = '/usr/bin/firefox-esr';
export const ROOT = join(import.meta.dirname, '..', '..');
export const PHOTOGRAPH = join(ROOT, 'demo', 'photographs', 'fiddle-top.jpg');

/** The page built into a folder of its own, and its address there: as it is opened by a double click. */
export async function pageFolder(): Promise<{
  readonly folder: string;
  readonly address: string;
  readonly remove: () => void;
}> {
  const folder = mkdtempSync(join(tmpdir(), 'garland-page-'));
  await buildPage(folder);
  return {
    folder,
    address: pathToFileURL(join(folder, 'garland.html')).href,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Names of files in which a pack taken from the page differs from what the command line makes of the same design. */
export async function unlikeCommandLine(
  files: Readonly<Record<string, Uint8Array>>,
  designText: string,
): Promise<readonly string[]> {
  const made = await commandLineFiles(designText);
  return [...new Set([...made.keys(), ...Object.keys(files)])].filter((path) => {
    const [one, other] = [made.get(path), files[path]];
    return one === undefined || other === undefined || !Buffer.from(other).equals(one);
  });
}

/** What the command line makes of a design, by path. */
export async function commandLineFiles(designText: string): Promise<ReadonlyMap<string, Uint8Array>> {
  const design = readDesign(JSON.parse(designText));
  const options = parseMakeOptions({ only: 'print,laser', paper: 'A4', dxf: 'R2000' });
  if (!design.ok || !options.ok) throw new Error('the saved design cannot be read');
  const pack = await make(design.value.design, { ...options.value, digest: sha256 });
  if (!pack.ok) throw new Error(pack.faults[0]?.found);
  return new Map(pack.value.files.map(({ path, bytes }) => [path, bytes]));
}
