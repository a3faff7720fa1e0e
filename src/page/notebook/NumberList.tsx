import type { Finding, RegisterEntry, ValueName } from '../../core/index.ts';
import { design, faults, findings, whole } from '../store.ts';
import { NumberRow } from './NumberRow.tsx';

/**
 * A group of numbers under a small heading; names that the instrument does not have are left out. Of a design that cannot be derived
 * its own numbers are there all the same: one of them is to be mended.
 */
export function NumberList({ title, names }: { readonly title: string; readonly names: readonly string[] }) {
  const register = whole.value?.register ?? [];
  const byName = new Map(register.map((entry) => [entry.name, entry]));
  const entries = names.flatMap((name): readonly RegisterEntry[] => {
    const given = design.value?.values[name as ValueName];
    const entry = byName.get(name) ?? (given && faults.value.length > 0 ? { name, ...given } : undefined);
    return entry ? [entry] : [];
  });
  if (entries.length === 0) return null;
  return (
    <section>
      <h2 class="group">{title}</h2>
      <ul class="rows">
        {entries.map((entry) => (
          <NumberRow key={entry.name} entry={entry} finding={findingAt(findings.value, entry.name)} />
        ))}
      </ul>
    </section>
  );
}

/** What questions a number; remarks do not. */
export function findingAt(found: readonly Finding[], name: string): Finding | null {
  return (
    found.find(({ at, weight }) => weight !== 'remark' && (at === name || at === `values.${name}`)) ?? null
  );
}
