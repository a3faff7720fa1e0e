import { effect } from '@preact/signals';
import { seeingBench } from '../bench/bench.ts';
import { idOf, keepTold, picturesOf, type Told } from './photographShelf.ts';
import { goOnSaying, said, saidDone, saidSteps } from './saying.ts';
import {
  type HeldPhotograph,
  holdPhotographs,
  isSettled,
  photographs,
  putPhotographsAway,
} from './tracing.ts';

/** ms that a hand must rest before what was said is put on the shelf. */
const REST_MS = 400;

const prints = new WeakMap<Blob, Promise<string>>();

function printOf({ name, file, address }: HeldPhotograph): Promise<string> {
  const known = prints.get(file) ?? seeingBench().fingerprint({ name, file, address });
  prints.set(file, known);
  return known;
}

async function keep(): Promise<void> {
  const held = photographs.value;
  const told = { said: said.value, steps: saidSteps.value, done: saidDone.value };
  const all: { readonly name: string; readonly sha256: string; readonly file: Blob }[] = [];
  for (const one of held) all.push({ name: one.name, sha256: await printOf(one), file: one.file });
  await keepTold(
    {
      ...told,
      id: idOf(all.map(({ sha256 }) => sha256)),
      photographs: all.map(({ name, sha256 }) => ({ name, sha256 })),
      isSettled: isSettled.value,
      touchedAt: Date.now(),
    },
    all.map(({ sha256, file }) => ({
      sha256,
      bytes: async () => new Uint8Array(await file.arrayBuffer()),
    })),
  );
}

let waiting: ReturnType<typeof setTimeout> | undefined;
effect(() => {
  const isAny = photographs.value.length > 0;
  void [said.value, saidDone.value, isSettled.value];
  clearTimeout(waiting);
  // A browser may refuse storage: then photographs are in hand only.
  if (isAny) waiting = setTimeout(() => void keep().catch(() => undefined), REST_MS);
});

/** Photographs that were kept are taken in hand again, with everything that was said of them. */
export async function takeUpAgain(told: Told): Promise<boolean> {
  const pictures = await picturesOf(told);
  if (pictures === null) return false;
  const files = pictures.map(
    ({ bytes }, place) => new File([Uint8Array.from(bytes)], told.photographs[place]?.name ?? ''),
  );
  putPhotographsAway();
  await holdPhotographs(files);
  goOnSaying(told);
  isSettled.value = told.isSettled;
  return true;
}
