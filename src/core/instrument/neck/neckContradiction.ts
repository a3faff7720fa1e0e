import type { Finding } from '../../base/index.ts';
import type { NeckSetSizes } from './neckSet.ts';
import {
  type MetReading,
  numberOf,
  type SetName,
  type SetReading,
  type SettledNeck,
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
 * be the uncertainty of the readings. Names the readings that disagree most (found by leaving each out in turn; of several whose absence
 * would mend it, those that would have to be least far off in their own spreads), what the
 * others would have in their place, and the nearest numbers that fit together.
 */
export function neckContradiction(
  model: NeckSetSizes,
  readings: readonly SetReading[],
  settled: SettledNeck,
): readonly Finding[] {
  const { surplus, sumOfSquares, met } = settled;
  if (surplus < 1) return [];
  const limits = [ONE_IN_TWENTY, ONE_IN_HUNDRED].map((table) => table[surplus - 1] ?? table.at(-1) ?? 0);
  const [doubtful = 0, impossible = 0] = limits;
  if (!(sumOfSquares > doubtful)) return [];
  const culprits = culpritsOf(model, readings, settled);
  const others = met.filter(({ name }) => !culprits.some((one) => one.name === name));
  const names = [...culprits, ...others].map(({ name }) => name);
  const off = culprits.map(
    ({ name, value, others: fits }) =>
      `${SET_WORDS[name]} ${shown(name, value)} where the others need ${shown(name, fits)} (${shown(name, Math.abs(value - fits))} off)`,
  );
  const isContradiction = sumOfSquares > impossible;
  return [
    {
      code: isContradiction ? 'neck.contradiction' : 'neck.doubtful',
      weight: isContradiction ? 'contradiction' : 'caution',
      at: names.join(', '),
      found: `${off.join('; or ')}: ${listed(met.map(({ name, value }) => `${SET_WORDS[name]} ${shown(name, value)}`))} ${isContradiction ? 'cannot all hold' : 'hardly hold together'} over a body stop of ${shown('neckStop', model.bodyStopMm)}`,
      need: `numbers that one straight board can have; the nearest are ${listed(met.map((one) => `${SET_WORDS[one.name]} ${shown(one.name, one.settled)}`))}`,
      remedy: `measure the ${listed(culprits.map(({ name }) => SET_WORDS[name]))} again, or leave one of these out; until then the nearest numbers are drawn`,
    },
  ];
}

interface Culprit extends MetReading {
  /** The number that all the others would have in its place. */
  readonly others: number;
}

/** The readings without which the rest fits best, at least one. */
function culpritsOf(
  model: NeckSetSizes,
  readings: readonly SetReading[],
  { met }: SettledNeck,
): readonly Culprit[] {
  const tried = met.flatMap((reading) => {
    const without = readings.map((one) => (one.name === reading.name ? { ...one, isGiven: false } : one));
    const refit = settledNeck(model, without);
    if (!refit.ok) return [];
    const others = numberOf(reading.name, refit.value.sizes, refit.value.set);
    return [{ ...reading, others, rest: refit.value.sumOfSquares }];
  });
  const best = Math.min(...tried.map(({ rest }) => rest));
  const off = ({ value, others, spread }: Culprit): number => Math.abs(value - others) / spread;
  const mending = tried
    .filter(({ rest }) => rest <= best + (ONE_IN_TWENTY[0] ?? 0))
    .sort((a, b) => off(a) - off(b));
  const [likeliest] = mending;
  return mending.filter((one) => likeliest && off(one) <= LESS_LIKELY * off(likeliest));
}

function shown(name: SetName, value: number): string {
  const figure = String(Number(value.toFixed(name === 'neckAngle' ? 2 : 1)));
  return name === 'neckAngle' ? `${figure}°` : `${figure} mm`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
