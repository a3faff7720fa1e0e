import { type Checked, type Design, type Finding, readDesign, refuse } from '../core/index.ts';
import { readJson } from '../host/index.ts';

/** The design in a file the maker named. Faults: those of reading it, each naming the place in it. */
export function readDesignFile(
  path: string,
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  const json = readJson(path);
  if (!json.ok) return json;
  const read = readDesign(json.value);
  if (read.ok) return read;
  const isDraftable = DRAFTABLE.has(String((json.value as { readonly format?: unknown } | null)?.format));
  return refuse(
    ...read.faults.map((fault) => ({
      ...fault,
      at: `${path}, ${fault.at}`,
      remedy:
        isDraftable && fault.code === 'file.kind'
          ? `make a design of it first: garland draft ${path} --out fiddle.garland.json`
          : fault.remedy,
    })),
  );
}

/** Formats that a design is drafted from. */
const DRAFTABLE: ReadonlySet<string> = new Set(['garland-measurements', 'garland-trace', 'garland-profile']);
