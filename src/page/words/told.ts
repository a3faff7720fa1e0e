import { VALUES, type ValueName } from '../../core/index.ts';
import designSentences from './german/designSentences.json' with { type: 'json' };
import originSentences from './german/originSentences.json' with { type: 'json' };
import photographSentences from './german/photographSentences.json' with { type: 'json' };
import pieceTitles from './german/pieceTitles.json' with { type: 'json' };
import registerWords from './german/registerWords.json' with { type: 'json' };
import smallWords from './german/smallWords.json' with { type: 'json' };
import valueNames from './german/valueNames.json' with { type: 'json' };
import { namesDe } from './namesDe.ts';

/**
 * What the rooms say in English, in German. A sentence is known by its English text with gaps (`{}`) where it holds numbers and
 * names: so the rooms go on saying what they found in one plain way, and a test sees to it that every sentence has its German.
 */
const CATALOGUE: Readonly<Record<string, string | undefined>> = {
  ...smallWords,
  ...pieceTitles,
  ...originSentences,
  ...photographSentences,
  ...designSentences,
};

/** Numbers that no short name names; what the names of derived numbers are made of, `#` for a number. */
const names: Readonly<Record<string, string | undefined>> = valueNames;
const parts: Readonly<Record<string, string | undefined>> = registerWords;

/** What a number means, in a sentence, by what it is called in the notebook. */
const CALLED: ReadonlyMap<string, string> = new Map(
  (Object.keys(VALUES) as ValueName[]).flatMap((name) => {
    const called = namesDe[name] ?? names[name];
    return called === undefined ? [] : [[VALUES[name].says, called] as const];
  }),
);

interface Pattern {
  readonly test: RegExp;
  readonly german: readonly string[];
  /** Letters outside its gaps: of two patterns that fit, the one with more is meant. */
  readonly letters: number;
}

/** With fewer letters a pattern says little by itself: all that stands in its gaps must be known. */
const TELLING_LETTERS = 12;

const PATTERNS: readonly Pattern[] = Object.entries(CATALOGUE)
  .filter(([english]) => english.includes('{}'))
  .map(([english, german = '']) => ({
    test: new RegExp(`^${english.split('{}').map(escaped).join('(.+?)')}$`, 's'),
    german: german.split('{}'),
    letters: english.replace(/\{\}|[^a-z]/gi, '').length,
  }))
  .sort((a, b) => b.letters - a.letters);

const known = new Map<string, string | null>();

/** The German of what a room says, with numbers in German notation; null where it is not known. */
export function germanOf(text: string): string | null {
  const before = known.get(text);
  if (before !== undefined) return before;
  // Kept first, so that a text cannot ask for itself.
  known.set(text, null);
  const german = found(text);
  known.set(text, german);
  return german;
}

function found(text: string): string | null {
  if (
    /^[^a-zA-ZäöüÄÖÜß]*$/.test(text) ||
    /^[\d.,°\s±–−+×/-]+(mm²?|cm|m|N|kg|g|g\/m|kg\/m³|Hz|%|px|in)?$/.test(text)
  )
    return germanNumbers(text);
  // What somebody typed, or the title of what was printed, stays as it is.
  if (/^“[^”]*”(?: \([^)]*\))?$/.test(text) || /^"[^"]*"$/.test(text)) return text;
  const whole = CATALOGUE[text] ?? CALLED.get(text) ?? namesDe[text] ?? names[text];
  if (whole !== undefined) return whole;
  let nearly: string | null = null;
  for (const { test, german, letters } of PATTERNS) {
    if (nearly !== null && letters < TELLING_LETTERS) break;
    const match = test.exec(text);
    if (!match) continue;
    const gaps = match.slice(1).map((gap) => ({ gap, told: germanOf(gap) }));
    const filled = () =>
      german
        .map(
          (part, index) => part + (gaps[index] ? (gaps[index].told ?? germanNumbers(gaps[index].gap)) : ''),
        )
        .join('');
    if (gaps.every(({ told }) => told !== null)) return filled();
    if (letters >= TELLING_LETTERS) nearly ??= filled();
  }
  return (
    listed(text, ', ') ??
    listed(text, ' and ', ' und ') ??
    listed(text, '; ') ??
    nearly ??
    (/^“/.test(text) ? text : null)
  );
}

/** A list whose every entry is known. */
function listed(text: string, mark: string, german = mark): string | null {
  const entries = text.split(mark);
  if (entries.length < 2) return null;
  const told = entries.map(germanOf);
  return told.some((entry) => entry === null) ? null : told.join(german);
}

function germanNumbers(text: string): string {
  return text.replace(/(\d)\.(\d)/g, '$1,$2');
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** The German name of a number that has no short name: its own, or put together from what its name is made of. */
export function germanNameOf(name: string): string | null {
  const own = names[name];
  if (own !== undefined) return own;
  const told = name.split('.').map((part) => {
    const number = /\d+/.exec(part)?.[0] ?? '';
    const word = parts[part] ?? parts[part.replace(/\d+/, '#')];
    return word?.replace('{}', number);
  });
  return told.every((part) => part !== undefined) ? told.join(', ') : null;
}
