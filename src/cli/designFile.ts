import { type Checked, type Design, type Finding, readDesign, refuse } from '../core/index.ts';
import { readJson } from '../host/index.ts';

/** The design in a file the maker named. Faults: those of reading it, each naming the place in it. */
export function readDesignFile(
  path: string,
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  const json = readJson(path);
  if (!json.ok) return json;
  const read = readDesign(json.value);
  return read.ok ? read : refuse(...read.faults.map((fault) => ({ ...fault, at: `${path}, ${fault.at}` })));
}
