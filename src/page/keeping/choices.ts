/**
 * What a maker chose for good at this page, whatever lies on the bench: the screen, the paper in the printer, the language of
 * packs. Kept in the browser by itself; a design that is handed on takes none of it along.
 */
export type ChoiceName = 'px-per-mm' | 'language' | 'pack-language' | 'pack-paper';

/** What was chosen; null where nothing was, or nothing can be kept. */
export function keptChoice(name: ChoiceName): string | null {
  try {
    return localStorage.getItem(keyOf(name));
  } catch {
    return null;
  }
}

/** One of a few that was chosen; null where it is none of them. */
export function keptOneOf<Name extends string>(name: ChoiceName, names: readonly Name[]): Name | null {
  const kept = keptChoice(name);
  return names.find((one) => one === kept) ?? null;
}

/** Keeps a choice; with null it is forgotten. */
export function keepChoice(name: ChoiceName, chosen: string | null): void {
  try {
    if (chosen === null) localStorage.removeItem(keyOf(name));
    else localStorage.setItem(keyOf(name), chosen);
  } catch {
    // Where nothing can be kept it is asked for again.
  }
}

function keyOf(name: ChoiceName): string {
  return `garland-${name}`;
}
