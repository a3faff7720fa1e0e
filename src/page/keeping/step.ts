import type { Design } from '../../core/index.ts';

type Entry = {
  readonly key: string;
  readonly sub?: string;
  readonly before: unknown;
  readonly after: unknown;
};

/** One edit, as it can be undone and done again: what it says, and every entry of the design that it changed. */
export interface Step {
  readonly says: string;
  readonly entries: readonly Entry[];
}

/** Parts of a design that hold entries by name, so that a step keeps only those that changed. */
const BY_NAME = ['values', 'overruled'];

/** The step from one design to another; null where nothing changed. */
export function stepBetween(says: string, before: Design, after: Design): Step | null {
  const [was, is] = [before, after] as unknown as [Entries, Entries];
  const entries = keysOf(was, is).flatMap((key): Entry[] => {
    if (was[key] === is[key]) return [];
    if (!BY_NAME.includes(key)) return [{ key, before: was[key], after: is[key] }];
    const [wasIn, isIn] = [(was[key] ?? {}) as Entries, (is[key] ?? {}) as Entries];
    return keysOf(wasIn, isIn)
      .filter((sub) => wasIn[sub] !== isIn[sub])
      .map((sub) => ({ key, sub, before: wasIn[sub], after: isIn[sub] }));
  });
  return entries.length === 0 ? null : { says, entries };
}

/** The design with a step taken back, or done again. */
export function withStep(design: Design, step: Step, way: 'back' | 'again'): Design {
  const changed = { ...design } as unknown as Entries;
  for (const { key, sub, before, after } of step.entries) {
    const value = way === 'back' ? before : after;
    if (sub === undefined) put(changed, key, value);
    else {
      const inner = { ...((changed[key] ?? {}) as Entries) };
      put(inner, sub, value);
      put(changed, key, Object.keys(inner).length === 0 ? undefined : inner);
    }
  }
  return changed as unknown as Design;
}

type Entries = Record<string, unknown>;

function put(entries: Entries, key: string, value: unknown): void {
  if (value === undefined) delete entries[key];
  else entries[key] = value;
}

function keysOf(one: Entries, other: Entries): readonly string[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)])];
}
