/** Lengths besides those that are always asked for, which the outline in a picture can be held against. */
export const FURTHER_LENGTHS = ['upperBout', 'waist'] as const;

/** A known length as it is typed; empty where nothing is typed yet. */
export interface TypedKnown {
  readonly name: string;
  readonly length: string;
  readonly taken: string;
}

/** A known length in the words of the command line: `upperBout=168±0.3 edge`. */
export function knownWords({ name, length, taken }: TypedKnown): string {
  return `${name}=${length}${taken && ` ${taken}`}`;
}

/** The same, read back. */
export function typedKnown(words: string): TypedKnown {
  const [, name = '', length = '', taken = ''] =
    /^([^=]*)=(.*?)(?: (straight|over-arch|edge|purfling))?$/s.exec(words) ?? [];
  return { name, length, taken };
}
