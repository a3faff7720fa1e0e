import { effect, signal } from '@preact/signals';
import { type Checked, type Design, type ShownBeside } from '../../core/index.ts';
import { slowBench, viewBench } from '../bench/bench.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import { design, done, plate, steps } from '../store.ts';
import { sentenceOf } from '../words/sentences.ts';
import { words } from '../words/words.ts';
import { withStep } from './step.ts';

/** Another design that lies over the one on the bench; null where none does. */
export const other = signal<Design | null>(null);
/** How the two differ, as soon as it is known. */
export const beside = signal<ShownBeside | null>(null);
/** Why the other could not be laid over it, in sentences. */
export const besideTrouble = signal<readonly string[]>([]);

/** Lays a saved design over the one on the bench. */
export async function layFile(file: File): Promise<void> {
  besideTrouble.value = [];
  let json: unknown;
  try {
    json = JSON.parse(await file.text());
  } catch {
    besideTrouble.value = [words().bring.notJson(file.name)];
    return;
  }
  const read = await slowBench().read(json);
  if (read.ok) other.value = read.value.design;
  else besideTrouble.value = read.faults.map(sentenceOf);
}

/** Lays the design over itself as it was before the first step of this sitting. */
export function layAsItCame(): void {
  besideTrouble.value = [];
  let was = design.value;
  for (let at = done.value - 1; was !== null && at >= 0; at--) {
    const step = steps.value[at];
    if (step !== undefined) was = withStep(was, step, 'back');
  }
  other.value = was;
}

export function takeOff(): void {
  other.value = null;
  beside.value = null;
  besideTrouble.value = [];
}

const compare = newestOnly(
  (asked: {
    readonly one: Design;
    readonly two: Design;
    readonly plate: 'back' | 'top';
  }): Promise<Checked<ShownBeside>> => viewBench().beside(asked.one, asked.two, asked.plate),
  (answer, asked) => {
    if (asked.two !== other.value) return;
    if (answer.ok) beside.value = answer.value;
    else besideTrouble.value = answer.faults.map(sentenceOf);
  },
);

effect(() => {
  const [one, two] = [design.value, other.value];
  if (one !== null && two !== null) compare({ one, two, plate: plate.value });
});
