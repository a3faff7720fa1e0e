import type { Finding } from '../../base/index.ts';
import type { NeckSetSizes } from './neckSet.ts';
import {
  type MetReading,
  numberOf,
  type SetName,
  type SetReading,
  type SettledNeck,
  type SettledQuestion,
  settledNeck,
} from './settledNeck.ts';

/** Chi-square that is exceeded by chance once in twenty, and once in a hundred, by the number of surplus readings. */
const ONE_IN_TWENTY = [3.84, 5.99, 7.81, 9.49, 11.07, 12.59, 14.07];
const ONE_IN_HUNDRED = [6.63, 9.21, 11.34, 13.28, 15.09, 16.81, 18.48];

/** No unit. Readings that would have to be more than so many times as far off as the likeliest one are not named. */
const LESS_LIKELY = 2;

/** What makers call them, in a sentence. */
export const SET_WORDS: Readonly<Record<SetName, string>> = {
  neckStop: 'neck stop',
  overstand: 'overstand',
  projection: 'projection',
  neckAngle: 'neck angle',
  boardEndHeight: 'height of the board’s end',
  bridgeHeight: 'bridge height',
  stringLength: 'string length',
};

/**
 * What was given of the set of a neck and cannot hold together: `neck.contradiction`, or `neck.doubtful` where it may still
 * be the uncertainty of the readings. Names the readings that disagree most (found by leaving each out in turn; of several
 * whose absence would mend it, those that would have to be least far off in their own spreads), what the others would have in
 * their place, and the nearest numbers that fit together.
 */
export function neckContradiction(
  model: NeckSetSizes,
  readings: readonly SetReading[],
  settled: SettledNeck,
): readonly Finding[] {
  return settled.questions.flatMap((question) => contradictionIn(question, model, readings));
}

function contradictionIn(
  question: SettledQuestion,
  model: NeckSetSizes,
  readings: readonly SetReading[],
): readonly Finding[] {
  const { surplus, sumOfSquares, met } = question;
  if (!(surplus > 0 && sumOfSquares > limit(ONE_IN_TWENTY, surplus))) return [];
  const { culprits, rest } = culpritsOf(question, model, readings);
  const others = met.filter(({ name }) => !culprits.some((one) => one.name === name));
  const off = culprits.map(
    ({ name, value, others: fits }) =>
      `${SET_WORDS[name]} ${shown(name, value)} where the others need ${shown(name, fits)} (${shown(name, Math.abs(value - fits))} off)`,
  );
  const isContradiction = sumOfSquares > limit(ONE_IN_HUNDRED, surplus);
  const areSeveral = surplus > 1 && rest > limit(ONE_IN_HUNDRED, surplus - 1);
  return [
    {
      code: isContradiction ? 'neck.contradiction' : 'neck.doubtful',
      weight: isContradiction ? 'contradiction' : 'caution',
      at: [...culprits, ...others].map(({ name }) => name).join(', '),
      found: `${off.join('; or ')}: ${listed(met.map(({ name, value }) => `${SET_WORDS[name]} ${shown(name, value)}`))} ${isContradiction ? 'cannot all hold' : 'hardly hold together'} over a body stop of ${shown('neckStop', model.bodyStopMm)}${areSeveral ? ', and more than one of them is off' : ''}`,
      need: `numbers that one straight board can have; the nearest are ${listed(met.map((one) => `${SET_WORDS[one.name]} ${shown(one.name, one.settled)}`))}`,
      remedy: `measure ${areSeveral ? 'all of them' : `the ${listed(culprits.map(({ name }) => SET_WORDS[name]))}`} again, or leave one of these out; until then the nearest numbers are drawn`,
    },
  ];
}

/** The limit for so many surplus readings. */
function limit(table: readonly number[], surplus: number): number {
  return table[Math.min(surplus, table.length) - 1] ?? 0;
}

interface Culprit extends MetReading {
  /** The number that all the others would have in its place. */
  readonly others: number;
}

/** The readings without which the rest fits best, at least one; and what then is left of the sum of squares. */
function culpritsOf(
  { asks, met }: SettledQuestion,
  model: NeckSetSizes,
  readings: readonly SetReading[],
): { readonly culprits: readonly Culprit[]; readonly rest: number } {
  const tried = met.flatMap((reading) => {
    const without = readings.map((one) => (one.name === reading.name ? { ...one, isGiven: false } : one));
    const refit = settledNeck(model, without);
    if (!refit.ok) return [];
    const others = numberOf(reading.name, refit.value.sizes, refit.value.set);
    const rest = refit.value.questions.find((question) => question.asks === asks)?.sumOfSquares ?? 0;
    return [{ ...reading, others, rest }];
  });
  const best = Math.min(...tried.map(({ rest }) => rest));
  const off = ({ value, others, spread }: Culprit): number => Math.abs(value - others) / spread;
  const mending = tried
    .filter(({ rest }) => rest <= best + limit(ONE_IN_TWENTY, 1))
    .sort((a, b) => off(a) - off(b));
  const [likeliest] = mending;
  const culprits = mending.filter((one) => likeliest && off(one) <= LESS_LIKELY * off(likeliest));
  return { culprits, rest: best };
}

function shown(name: SetName, value: number): string {
  const figure = String(Number(value.toFixed(name === 'neckAngle' ? 2 : 1)));
  return name === 'neckAngle' ? `${figure}°` : `${figure} mm`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
