import type { Origin } from './quantity.ts';

/** Taken off an instrument, a photograph or a maker's own table; `from` says which. */
export function measured(from: string): Origin {
  return { kind: 'measured', from };
}

/** Printed by somebody else; `source` is the citation: author, title, year. */
export function published(source: string): Origin {
  return { kind: 'published', source };
}

/** What makers usually do, without one source for it. */
export function commonPractice(note?: string): Origin {
  return note === undefined ? { kind: 'common-practice' } : { kind: 'common-practice', note };
}

/** Believed, but not yet checked against a source. */
export function fromMemory(note?: string): Origin {
  return note === undefined ? { kind: 'from-memory' } : { kind: 'from-memory', note };
}

/** Decided by the maker, or by us where the trade leaves it open; `why` says which. */
export function chosen(why?: string): Origin {
  return why === undefined ? { kind: 'chosen' } : { kind: 'chosen', why };
}

/** Worked out from the named values of the same register. */
export function derivedFrom(names: readonly string[], how?: string): Origin {
  return how === undefined ? { kind: 'derived', from: names } : { kind: 'derived', from: names, how };
}

/** The origin as words that follow a number, such as `measured: calliper, over the back`. */
export function originText(origin: Origin): string {
  switch (origin.kind) {
    case 'measured':
      return `measured: ${origin.from}`;
    case 'published':
      return `published: ${origin.source}`;
    case 'common-practice':
      return withNote('common practice', origin.note);
    case 'from-memory':
      return withNote('from memory', origin.note);
    case 'chosen':
      return origin.why?.startsWith('by us') ? `chosen ${origin.why}` : withNote('chosen', origin.why);
    case 'derived': {
      const names = origin.from.length > 0 ? `derived from ${origin.from.join(', ')}` : 'derived';
      return withNote(names, origin.how);
    }
  }
}

function withNote(words: string, note: string | undefined): string {
  return note === undefined ? words : `${words}: ${note}`;
}
