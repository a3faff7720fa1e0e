import { computed } from '@preact/signals';
import { dependsOn } from '../../core/index.ts';
import { touched, whole } from '../store.ts';

/** How a number stands to the one that the hand is on: that one rests on it, or it rests on that one; at once, or by way of others. */
export interface Kin {
  readonly lies: 'beneath' | 'above';
  readonly isNear: boolean;
}

type Links = ReadonlyMap<string, readonly string[]>;

/** What every number rests on, and what rests on it. */
const links = computed((): { readonly beneath: Links; readonly above: Links } => {
  const entries = whole.value?.register ?? [];
  const above = new Map<string, string[]>();
  for (const entry of entries)
    for (const name of dependsOn(entry)) above.set(name, [...(above.get(name) ?? []), entry.name]);
  return { beneath: new Map(entries.map((entry) => [entry.name, dependsOn(entry)])), above };
});

/** Numbers near and far that the one under the hand rests on, and those that rest on it. */
export const kin = computed((): ReadonlyMap<string, Kin> => {
  const name = touched.value;
  const found = new Map<string, Kin>();
  if (name === null) return found;
  for (const lies of ['beneath', 'above'] as const) {
    const from = links.value[lies];
    const near = from.get(name) ?? [];
    const waiting = [...near];
    for (const one of near) found.set(one, { lies, isNear: true });
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop())
      for (const one of from.get(next) ?? []) {
        if (found.has(one)) continue;
        found.set(one, { lies, isNear: false });
        waiting.push(one);
      }
  }
  return found;
});

/** Numbers that rest on this one at once. */
export function carriedBy(name: string): readonly string[] {
  return links.value.above.get(name) ?? [];
}
