/**
 * Expected trouble as data: what is wrong, where, and what would mend it.
 *
 * `at` is the place in the maker's own input (a value's name, a file, a stretch of the outline), so
 * that a page can mark the field and the command line can print it. `found`, `need` and `remedy` are
 * plain words; together they make one sentence through {@link faultSentence}.
 */
export interface Fault {
  /** Stable dotted name, such as `arch.loop`; programs may rely on it. */
  readonly code: string;
  readonly at: string;
  readonly found: string;
  readonly need: string;
  readonly remedy: string;
}

/** How much a finding weighs: a remark needs no action, a contradiction cannot be built as it stands. */
export type Weight = 'remark' | 'caution' | 'contradiction';

/** Something the maker should know about a result that exists all the same. */
export interface Finding extends Fault {
  readonly weight: Weight;
}

/** A value, or the reasons why there is none. Faults are collected, never the first only where more can be seen. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export function accept<T>(value: T): Checked<T> {
  return { ok: true, value };
}

export function refuse(...faults: readonly Fault[]): {
  readonly ok: false;
  readonly faults: readonly Fault[];
} {
  return { ok: false, faults };
}

/** One sentence for people: place, what was found, what is needed, what to do. */
export function faultSentence(fault: Fault): string {
  return `${fault.at}: ${fault.found}; needs ${fault.need}. ${capital(fault.remedy)}.`;
}

/** A promise inside the code was broken; never caused by the maker's input. */
export class Bug extends Error {
  override readonly name = 'Bug';
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
