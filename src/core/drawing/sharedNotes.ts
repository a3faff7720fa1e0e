import type { Drawing } from './drawing.ts';

/** A note that several pieces have in common, with the letter by which they point to it. */
export interface SharedNote {
  readonly letter: string;
  readonly text: string;
}

/** A note that this many pieces have stands once, for all of them. */
const SEVERAL = 3;
const LETTERS = 26;

/** The notes that three pieces or more have, in the order in which they first come: lettered a to z, then aa and on. */
export function sharedNotes(drawings: readonly Drawing[]): readonly SharedNote[] {
  const counts = new Map<string, number>();
  for (const { notes } of drawings)
    for (const note of new Set(notes)) counts.set(note, (counts.get(note) ?? 0) + 1);
  return [...counts]
    .filter(([, count]) => count >= SEVERAL)
    .map(([text], index) => ({ letter: letterOf(index), text }));
}

function letterOf(index: number): string {
  const own = String.fromCharCode('a'.charCodeAt(0) + (index % LETTERS));
  return index < LETTERS ? own : letterOf(Math.floor(index / LETTERS) - 1) + own;
}
