import { VALUES, type ValueName } from '../design/index.ts';
import type { Catalogue } from './catalogue.ts';
import { catalogues } from './german/catalogues.ts';
import { registerWords } from './german/registerWords.ts';
import { shortNames } from './german/shortNames.ts';
import { valueNames } from './german/valueNames.ts';

/** Languages that drawings, print and page speak. */
export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

/**
 * What the rooms say in English, said in one language. A text is known by its English with gaps (`{}`) where it holds numbers
 * and names: so every room goes on saying what it has to say in one plain way, and tests see to it that each text has its German.
 */
export interface Speech {
  readonly language: Language;
  /** The text in this language, numbers in its notation; null where it is not known. */
  readonly say: (text: string) => string | null;
  /** The same; as it stands where it is not known. */
  readonly tell: (text: string) => string;
  /** The same of a family of pieces, where a word may mean another thing: its key is `part/text`. */
  readonly sayOf: (part: string, text: string) => string | null;
}

/** Everything that is said in German, by its English. */
export const GERMAN: Catalogue = Object.assign({}, ...Object.values(catalogues));

/** A language to speak; `kept` are names that somebody gave, which stay as they are in every language. */
export function speechOf(language: Language, kept: readonly string[] = []): Speech {
  if (language === 'en')
    return { language, say: (text) => text, tell: (text) => text, sayOf: (_, text) => text };
  const german = germanSpeech(kept);
  const tell = (text: string): string => german(text) ?? text;
  return { language, say: german, tell, sayOf: (part, text) => GERMAN[`${part}/${text}`] ?? german(text) };
}

/** The German name of a number that has no short name: its own, or put together from what its name is made of. */
export function germanNameOf(name: string): string | null {
  const own = valueNames[name];
  if (own !== undefined) return own;
  const told = name.split('.').map((part) => {
    const number = /\d+/.exec(part)?.[0] ?? '';
    const word = registerWords[part] ?? registerWords[part.replace(/\d+/, '#')];
    return word?.replace('{}', number);
  });
  return told.every((part) => part !== undefined) ? told.join(', ') : null;
}

interface Pattern {
  /** The English before its first and after its last gap: most texts are told apart by these at once. */
  readonly starts: string;
  readonly ends: string;
  readonly test: RegExp;
  readonly german: readonly string[];
  /** Letters outside its gaps: of two patterns that fit, the one with more is meant. */
  readonly letters: number;
}

/** What a photograph or a document is called. */
const FILE_NAME = /^[^“”"]{1,80}\.(?:jpe?g|png|webp|tiff?|json)$/i;

/** With fewer letters a pattern says little by itself: all that stands in its gaps must be known. */
const TELLING_LETTERS = 12;

function germanSpeech(kept: readonly string[]): Speech['say'] {
  const whole = wholeTexts();
  const headings = new Map([...whole].map(([english, german]) => [english.toUpperCase(), german]));
  const patterns = patternsOf(GERMAN);
  const known = new Map<string, string | null>(kept.map((name) => [name, name]));

  const say = (text: string): string | null => {
    const before = known.get(text);
    if (before !== undefined) return before;
    // Kept first, so that a text cannot ask for itself.
    known.set(text, null);
    const german = found(text);
    known.set(text, german);
    return german;
  };

  const found = (text: string): string | null => {
    if (isFigure(text)) return germanNumbers(text);
    // What somebody typed, or the title of what was printed, stays as it is.
    if (/^“[^”]*”(?: \([^)]*\))?$/.test(text) || /^"[^"]*"$/.test(text)) return text;
    const plain = whole.get(text);
    if (plain !== undefined) return plain;
    // Headings are in capitals.
    const heading = /[a-z]/.test(text) ? undefined : headings.get(text);
    if (heading !== undefined) return heading.toUpperCase();
    const sentences = sentenceBySentence(text);
    if (sentences !== null) return sentences;
    const { sure, nearly } = byPattern(text);
    return (
      sure ??
      listed(text, ' · ') ??
      listed(text, ', ') ??
      listed(text, ' and ', ' und ') ??
      listed(text, '; ') ??
      nearly ??
      (/^“/.test(text) || isOfName(text) || FILE_NAME.test(text) ? text : null)
    );
  };

  const byPattern = (text: string): { readonly sure: string | null; readonly nearly: string | null } => {
    let nearly: string | null = null;
    for (const { starts, ends, test, german, letters } of patterns) {
      if (nearly !== null && letters < TELLING_LETTERS) break;
      if (!text.startsWith(starts) || !text.endsWith(ends)) continue;
      const match = test.exec(text);
      if (!match) continue;
      const gaps = match.slice(1).map((gap) => ({ gap, told: say(gap) }));
      const filled = () =>
        german
          .map(
            (part, index) => part + (gaps[index] ? (gaps[index].told ?? germanNumbers(gaps[index].gap)) : ''),
          )
          .join('');
      if (gaps.every(({ told }) => told !== null)) return { sure: filled(), nearly };
      if (letters >= TELLING_LETTERS) nearly ??= filled();
    }
    return { sure: null, nearly };
  };

  /** A list whose every entry is known. */
  const listed = (text: string, mark: string, german = mark): string | null => {
    const entries = text.split(mark);
    if (entries.length < 2) return null;
    const told = entries.map(say);
    return told.some((entry) => entry === null) ? null : told.join(german);
  };

  /** A note of several sentences, each of which is known. */
  const sentenceBySentence = (text: string): string | null => {
    const sentences = text.split(/(?<=\.) (?=[A-Z])/);
    if (sentences.length < 2) return null;
    const told = sentences.map(say);
    return told.some((sentence) => sentence === null) ? null : told.join(' ');
  };

  /** A name that was broken, or cut short where it had no room. */
  const isOfName = (text: string): boolean => {
    const part = text.replace(/(-|\.\.\.)$/, '');
    return kept.some((name) => name.includes(part));
  };

  return say;
}

/** Numbers and units, the letter of a string, the name of a tile. */
function isFigure(text: string): boolean {
  return (
    /^[^a-zA-ZäöüÄÖÜß]*$/.test(text) ||
    /^[A-Z]\d*(?: \+ [A-Z]\d+)?(?: \d+(?:\.\d+)?)?$/.test(text) ||
    /^[\d.,°\s±–−+×/-]+(mm²?|cm|m|N|kg|g|g\/m|kg\/m³|Hz|%|px|in)?$/.test(text)
  );
}

/** Texts without gaps: the catalogue's, what numbers mean by what they are called in the notebook, and their names. */
function wholeTexts(): ReadonlyMap<string, string> {
  const meant = (Object.keys(VALUES) as ValueName[]).flatMap((name) => {
    const called = shortNames[name] ?? valueNames[name];
    return called === undefined ? [] : [[VALUES[name].says, called] as const];
  });
  return new Map([
    ...Object.entries(valueNames),
    ...Object.entries(shortNames),
    ...meant,
    ...Object.entries(GERMAN).filter(([english]) => !english.includes('{}')),
  ]);
}

function patternsOf(catalogue: Catalogue): readonly Pattern[] {
  return Object.entries(catalogue)
    .filter(([english]) => english.includes('{}'))
    .map(([english, german]) => {
      const parts = english.split('{}');
      return {
        starts: parts[0] ?? '',
        ends: parts.at(-1) ?? '',
        test: new RegExp(`^${parts.map(escaped).join('(.+?)')}$`, 's'),
        german: german.split('{}'),
        letters: english.replace(/\{\}|[^a-z]/gi, '').length,
      };
    })
    .sort((a, b) => b.letters - a.letters);
}

function germanNumbers(text: string): string {
  return text.replace(/(\d)\.(\d)/g, '$1,$2');
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
