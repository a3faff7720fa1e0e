import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import { parseLength } from '../../quantity/index.ts';
import type { TraceRequest } from './traceRequest.ts';

type Meant = NonNullable<TraceRequest['meant']>;
type Stretch = NonNullable<Meant['stretches']>[number];

/** Wishes as typed. */
export interface MeantWords {
  /** `average`, `bass` or `treble`. */
  readonly follow?: string;
  readonly keepAsymmetry?: boolean;
  /** Width of the corner ends: `7.2` or `7,2`, or `7.2,6.8` or `7,2; 6,8` for lower and upper. */
  readonly cornerEnd?: string;
  /** `bass 120-150 as-found`, once for each stretch. */
  readonly stretches?: readonly string[];
}

/** The wishes, or none where nothing was said. Faults: `meant.follow`, `meant.stretch`, `meant.corner-end`. */
export function parseMeant(words: MeantWords): Checked<Meant | null> {
  const slow = words.follow === undefined ? accept(null) : parseFollow(words.follow);
  const corner = words.cornerEnd === undefined ? accept(null) : parseCornerEnd(words.cornerEnd);
  const stretches = (words.stretches ?? []).map(parseStretch);
  const faults = [slow, corner, ...stretches].flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0 || !slow.ok || !corner.ok) return refuse(...faults);
  const meant: Meant = {
    ...(slow.value && { slow: slow.value }),
    ...(words.keepAsymmetry && { asymmetry: 'keep' as const }),
    ...(corner.value && { cornerEnd: corner.value }),
    ...(stretches.length > 0 && { stretches: stretches.flatMap((one) => (one.ok ? [one.value] : [])) }),
  };
  return accept(Object.keys(meant).length > 0 ? meant : null);
}

const FOLLOW = ['average', 'bass', 'treble'] as const;

function parseFollow(text: string): Checked<NonNullable<Meant['slow']>> {
  const found = FOLLOW.find((one) => one === text.trim().toLowerCase());
  return found
    ? accept(found)
    : refuse(trouble('meant.follow', '--follow', text, 'average, bass or treble', 'name one of them'));
}

/** A comma alone between two whole numbers: a decimal to some makers, two widths to others. */
const MAY_BE_ONE_OR_TWO = /^\s*\d+,\d+\s*$/;

function parseCornerEnd(text: string): Checked<NonNullable<Meant['cornerEnd']>> {
  if (MAY_BE_ONE_OR_TWO.test(text))
    return refuse(
      trouble(
        'meant.corner-end',
        '--corner-end',
        text,
        'one width, or two that cannot be taken for one',
        'write one with a point (7.2), two with a semicolon between them (7; 2)',
      ),
    );
  const parts = text.split(/;|,\s+|,(?=\d+\.)/).map((part) => parseLength(part));
  const faults = parts.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return refuse(...faults.map((fault) => ({ ...fault, at: '--corner-end' })));
  const [lower, upper] = parts.flatMap((one) => (one.ok ? [one.value.mm] : []));
  const wrong = [lower, upper].some((mm) => mm !== undefined && !(mm >= LEAST_END_MM && mm <= MOST_END_MM));
  if (lower === undefined || parts.length > 2 || wrong)
    return refuse(
      trouble(
        'meant.corner-end',
        '--corner-end',
        text,
        `one width, or two (lower, upper), between ${LEAST_END_MM} and ${MOST_END_MM} mm`,
        'measure the short straight edge at the tip of a corner that is least worn',
      ),
    );
  return accept({ lower, upper: upper ?? lower });
}

/** mm. From a small violin's sharp corner to a cello's (common practice). */
const LEAST_END_MM = 2;
const MOST_END_MM = 20;

const TAKES: Readonly<Record<string, Stretch['take']>> = {
  outer: 'outer',
  'as-found': 'asFound',
  other: 'other',
  mean: 'mean',
};

function parseStretch(text: string): Checked<Stretch> {
  const match = /^\s*(bass|treble)\s+(\d+(?:\.\d+)?)\s*(?:-|–|to)\s*(\d+(?:\.\d+)?)\s+([a-z-]+)\s*$/i.exec(
    text,
  );
  const take = TAKES[(match?.[4] ?? '').toLowerCase()];
  const [from, to] = [Number(match?.[2]), Number(match?.[3])];
  if (match === null || take === undefined || !(from < to))
    return refuse(
      trouble(
        'meant.stretch',
        '--stretch',
        text,
        'a side, two heights above the lower end in mm and what to take there: outer, as-found, other or mean',
        'write it like "bass 120-150 as-found"',
      ),
    );
  return accept({ side: (match[1] as string).toLowerCase() as Stretch['side'], from, to, take });
}

function trouble(code: string, at: string, text: string, need: string, remedy: string): Fault {
  return { code, at, found: `"${text}"`, need, remedy };
}
