import { cos, log } from './elementary/index.ts';

/**
 * A seeded stream of numbers in [0, 1): the same seed gives the same stream on every machine.
 * Method: mulberry32, a 32-bit counter through an integer mixer.
 */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** One draw from the normal distribution with mean 0 and standard deviation 1 (polar Box-Muller). */
export function seededNormal(random: () => number): number {
  const radius = Math.sqrt(-2 * log(1 - random()));
  return radius * cos(2 * Math.PI * random());
}
