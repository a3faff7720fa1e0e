import type { Fault } from '../base/index.ts';
import type { Family } from './family.ts';

/**
 * Whether a kind of instrument, in a catalogue's words, has a body that Garland draws.
 *
 * - `drawn`: a body of the violin family with four corners
 * - `questioned`: may be one, or its figures may be of another line; `fault` says what to ask
 * - `refused`: another body; figures alone would not betray it
 */
export type KindScope =
  | { readonly scope: 'drawn'; readonly family: Family }
  | { readonly scope: 'questioned'; readonly family: Family; readonly fault: Fault }
  | { readonly scope: 'refused'; readonly fault: Fault };

interface Kind {
  readonly words: RegExp;
  readonly found: string;
  readonly need: string;
  readonly remedy: string;
}

const FOUR_CORNERS = 'a body of a violin, viola or cello with four corners';

/** Bodies of other outlines. Common knowledge of the trade. */
const OTHER_BODIES: readonly Kind[] = [
  {
    words: /festoon/,
    found: 'a festooned outline, with more curves than two bouts and a waist',
    need: FOUR_CORNERS,
    remedy: 'trace it from a photograph by hand; it cannot be drafted from widths',
  },
  {
    words: /cornerless|without corners|guitar/,
    found: 'a body without corners',
    need: FOUR_CORNERS,
    remedy: 'it cannot be drafted from widths with corners added that it never had',
  },
  {
    words: /gamba|\bviols?\b|violone/,
    found: 'a viol body: sloping shoulders, flat back, wide corners',
    need: FOUR_CORNERS,
    remedy: 'it lies outside what is drawn here',
  },
  {
    words: /double bass|contrabass|\bbass (?:viol|violin)\b/,
    found: 'a bass',
    need: FOUR_CORNERS,
    remedy: 'it lies outside what is drawn here',
  },
];

/** Kinds to ask about. Common knowledge of the trade. */
const TO_ASK: readonly Kind[] = [
  {
    words: /inner form|inner mould|\bmould\b|\bform\b/,
    found: 'an inner form: its widths are those of the line inside the ribs',
    need: 'widths of the plate',
    remedy: 'add twice the overhang and twice the rib thickness to each width, and to the length',
  },
  {
    words: /pochette|\bkit\b/,
    found: 'a pocket instrument, whose body is seldom that of a small violin',
    need: FOUR_CORNERS,
    remedy: 'look whether it has four corners before using the outline',
  },
  {
    words: /d['’]amore/,
    found: 'a viola d’amore, which mostly has a viol’s body',
    need: FOUR_CORNERS,
    remedy: 'look at its corners and shoulders before using the outline',
  },
];

/** What can be made of a kind named in a catalogue. Fault: `outline.kind`. */
export function kindScope(kind: string): KindScope {
  const words = kind.toLowerCase();
  const fault = ({ found, need, remedy }: Kind): Fault => ({
    code: 'outline.kind',
    at: 'family',
    found: `“${kind}”: ${found}`,
    need,
    remedy,
  });
  const other = OTHER_BODIES.find((one) => one.words.test(words));
  if (other) return { scope: 'refused', fault: fault(other) };
  const family = familyIn(words);
  if (!family)
    return {
      scope: 'refused',
      fault: fault({
        words: /$/,
        found: 'not an instrument that is drawn here',
        need: FOUR_CORNERS,
        remedy: 'say which of the three it is',
      }),
    };
  const ask = TO_ASK.find((one) => one.words.test(words));
  return ask ? { scope: 'questioned', family, fault: fault(ask) } : { scope: 'drawn', family };
}

function familyIn(words: string): Family | undefined {
  if (/cello|church bass/.test(words)) return 'cello';
  if (/viola/.test(words)) return 'viola';
  return /violin|pochette|\bkit\b/.test(words) ? 'violin' : undefined;
}
