/** Where a text first stops being JSON (RFC 8259), counted from 1, and what is wrong there. */
export interface JsonTrouble {
  readonly line: number;
  readonly column: number;
  readonly found: string;
}

/** Engines say it in words of their own, some without the place; a table written by hand is mended by its line. Null where all is well. */
export function jsonTrouble(text: string): JsonTrouble | null {
  const reader: Reader = { text, at: 0 };
  try {
    readValue(reader, 0);
    take(reader, SPACE);
    if (reader.at < text.length) stop(reader, 'where the file should end');
    return null;
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    const before = text.slice(0, error.at).split('\n');
    return { line: before.length, column: (before.at(-1) ?? '').length + 1, found: error.message };
  }
}

interface Reader {
  readonly text: string;
  at: number;
}

class Stopped extends Error {
  readonly at: number;
  constructor(message: string, at: number) {
    super(message);
    this.at = at;
  }
}

const SPACE = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;
/** Deeper than any document of ours: no text makes the reader run out of room. */
const DEEPEST = 200;

function take(reader: Reader, pattern: RegExp): boolean {
  pattern.lastIndex = reader.at;
  const length = pattern.exec(reader.text)?.[0].length ?? 0;
  reader.at += length;
  return length > 0;
}

/** Takes one sign after spaces. */
function sign(reader: Reader, ...signs: readonly string[]): string | undefined {
  take(reader, SPACE);
  const next = reader.text[reader.at];
  if (next === undefined || !signs.includes(next)) return undefined;
  reader.at += 1;
  return next;
}

function readValue(reader: Reader, depth: number): void {
  if (depth > DEEPEST) stop(reader, 'brackets within brackets, too many');
  if (sign(reader, '{')) readMembers(reader, depth);
  else if (sign(reader, '[')) readItems(reader, depth);
  else if (!take(reader, STRING) && !take(reader, NUMBER) && !take(reader, WORD))
    stop(reader, 'where a value should stand: a number, a text in "double quotes", { or [');
}

function readMembers(reader: Reader, depth: number): void {
  if (sign(reader, '}')) return;
  do {
    take(reader, SPACE);
    if (!take(reader, STRING)) stop(reader, 'where a name in "double quotes" should stand');
    if (!sign(reader, ':')) stop(reader, 'where a colon should stand after the name');
    readValue(reader, depth + 1);
  } while (sign(reader, ','));
  if (!sign(reader, '}')) stop(reader, 'where a comma or } should stand');
}

function readItems(reader: Reader, depth: number): void {
  if (sign(reader, ']')) return;
  do readValue(reader, depth + 1);
  while (sign(reader, ','));
  if (!sign(reader, ']')) stop(reader, 'where a comma or ] should stand');
}

/** Stops at what comes next, which is not what should stand there. */
function stop(reader: Reader, should: string): never {
  take(reader, SPACE);
  const next = reader.text[reader.at];
  throw new Stopped(`${next === undefined ? 'the file ends' : `‘${next}’`} ${should}`, reader.at);
}
