import { signal } from '@preact/signals';
import { type Design } from '../../core/index.ts';
import { slowBench } from '../bench/bench.ts';
import { bringIn, stop } from '../store.ts';
import { sentenceOf } from '../words/sentences.ts';
import { words } from '../words/words.ts';
import { takeHints } from './hints.ts';
import { holdPhotographs, photographs, putPhotographsAway, table } from './tracing.ts';

/** What could not be brought in, in sentences. */
export const trouble = signal<readonly string[]>([]);

/** Files that were dropped or chosen: a design is opened, tables and traces are drafted from together, hints are laid to their photographs. */
export async function bringFiles(files: readonly File[]): Promise<void> {
  trouble.value = [];
  const inputs: { readonly name: string; readonly json: unknown }[] = [];
  const pictures: File[] = [];
  const said: string[] = [];
  for (const file of files) {
    if (/^image\//.test(file.type)) pictures.push(file);
    else if (!/\.json$/i.test(file.name))
      said.push(`${words().bring.unknown(file.name)} ${words().bring.needs}`);
    else
      try {
        inputs.push({ name: file.name, json: JSON.parse(await file.text()) });
      } catch {
        said.push(words().bring.notJson(file.name));
      }
  }
  await holdPhotographs(pictures);
  trouble.value = said;
  const hints = inputs.filter(({ json }) => formatOf(json) === 'garland-hints');
  if (hints.length > 0 && photographs.value.length > 0) await takeHints(hints);
  else if (hints.length > 0)
    trouble.value = [...said, ...hints.map(({ name }) => words().bring.hintsAlone(name))];
  const others = inputs.filter((one) => !hints.includes(one));
  if (others.length > 0) await takeDocuments(others);
}

/** A design is opened; tables go with photographs in hand; tables and traces are drafted from. */
async function takeDocuments(
  inputs: readonly { readonly name: string; readonly json: unknown }[],
): Promise<void> {
  const design = inputs.find(({ json }) => formatOf(json) === 'garland-design');
  if (design !== undefined) await openDesign(design.json);
  else if (photographs.value.length > 0 && inputs[0] && inputs.every(isTable)) table.value = inputs[0];
  else await draftFrom(inputs);
}

/** A design that was saved. */
export async function openDesign(json: unknown): Promise<void> {
  const read = await slowBench().read(json);
  if (read.ok) await begin(read.value.design);
  else trouble.value = read.faults.map(sentenceOf);
}

/** A design from tables and traces, or from a usual size. */
export async function draftFrom(
  inputs: readonly { readonly name: string; readonly json: unknown }[],
): Promise<void> {
  const drafted = await slowBench().draft(inputs);
  if (drafted.ok) await begin(drafted.value.design);
  else trouble.value = drafted.faults.map(sentenceOf);
}

async function begin(design: Design): Promise<void> {
  putPhotographsAway();
  await bringIn(design);
  stop.value = 'outline';
}

/** Measurements, which go with a photograph; a table may leave its format out. */
function isTable({ json }: { readonly json: unknown }): boolean {
  const format = formatOf(json);
  return format === 'garland-measurements' || (format === undefined && typeof json === 'object');
}

function formatOf(json: unknown): unknown {
  return typeof json === 'object' && json !== null ? (json as { format?: unknown }).format : undefined;
}
