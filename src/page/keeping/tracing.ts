import { signal } from '@preact/signals';
import { proxy } from 'comlink';
import { type Family, type Fault, faultSentence } from '../../core/index.ts';
import { seeingBench, slowBench } from '../bench/bench.ts';
import type { SeeingWords, Seen } from '../bench/benchWork.ts';
import { bringIn, stop } from '../store.ts';

/** A photograph in the maker's hand. */
export interface HeldPhotograph {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly address: string;
}

export const photograph = signal<HeldPhotograph | null>(null);
export const said = signal<SeeingWords & { readonly family: Family }>({
  face: 'top',
  family: 'violin',
  sheetBar: '',
  edgeHeight: '',
  bodyLength: '',
  lowerBout: '',
  stretches: [],
});
/** Share of the way while the edge is looked for; null while nobody looks. */
export const lookedAt = signal<number | null>(null);
export const seen = signal<Seen | null>(null);
export const seeingTrouble = signal<readonly string[]>([]);

/** A photograph was dropped, chosen or taken: it is shown, and what is known about it is asked. */
export async function holdPhotograph(file: File): Promise<void> {
  if (photograph.value !== null) URL.revokeObjectURL(photograph.value.address);
  const bytes = new Uint8Array(await file.arrayBuffer());
  photograph.value = { name: file.name, bytes, address: URL.createObjectURL(file) };
  said.value = { ...said.value, stretches: [] };
  seen.value = null;
  seeingTrouble.value = [];
  stop.value = 'photograph';
}

export function putPhotographAway(): void {
  if (photograph.value !== null) URL.revokeObjectURL(photograph.value.address);
  photograph.value = null;
  seen.value = null;
  seeingTrouble.value = [];
}

/** Looks for the edge with what was said. */
export async function look(): Promise<void> {
  const held = photograph.value;
  if (held === null || lookedAt.value !== null) return;
  lookedAt.value = 0;
  seeingTrouble.value = [];
  try {
    const answer = await seeingBench().see(
      held.bytes,
      held.name,
      said.value,
      proxy((_: string, share: number) => {
        lookedAt.value = share;
      }),
    );
    if (photograph.value !== held) return;
    if (answer.ok) seen.value = answer.value;
    else seeingTrouble.value = answer.faults.map((fault: Fault) => faultSentence(fault));
  } finally {
    lookedAt.value = null;
  }
}

/** Leaves a stretch as worn as it is, or puts it back after all, and looks again. */
export async function ruleStretch(words: string): Promise<void> {
  const { stretches } = said.value;
  const isRuled = stretches.includes(words);
  said.value = {
    ...said.value,
    stretches: isRuled ? stretches.filter((one) => one !== words) : [...stretches, words],
  };
  await look();
}

/** The outline as meant becomes a design. */
export async function settleOutline(): Promise<void> {
  const held = photograph.value;
  if (held === null || seen.value === null) return;
  const { document, shown } = seen.value;
  const name = held.name.replace(/\.[^.]+$/, '');
  const drafted = await slowBench.draft([
    { name: held.name, json: document },
    {
      name,
      json: {
        format: 'garland-measurements',
        version: 1,
        family: said.value.family,
        name,
        values: { bodyLength: shown.lengthMm },
      },
    },
  ]);
  if (!drafted.ok) {
    seeingTrouble.value = drafted.faults.map((fault: Fault) => faultSentence(fault));
    return;
  }
  await bringIn({ ...drafted.value.design, settled: ['photograph'] });
  stop.value = 'outline';
}
