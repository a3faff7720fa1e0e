/** Rounds that are measured; the median of an odd number is one of them. */
export const ROUNDS = 9;

/** Rounds before, so that the compiler has seen every path. */
const WARM_UPS = 10;

/** Something to be timed, with its name in the table. */
export interface Contender {
  readonly name: string;
  readonly work: () => void;
}

/**
 * The median time of each contender, ms, in their order. All take turns round by round, so that what else the
 * machine does falls on all of them alike; a turn begins with a run that is not timed, so that none pays for
 * the caches and the litter that the one before it left.
 */
export function mediansMs(contenders: readonly Contender[]): readonly number[] {
  const times = contenders.map((): number[] => []);
  for (let round = -WARM_UPS; round < ROUNDS; round++) {
    for (const [index, { work }] of contenders.entries()) {
      work();
      const start = performance.now();
      work();
      const spent = performance.now() - start;
      if (round >= 0) times[index].push(spent);
    }
  }
  return times.map((each) => each.sort((a, b) => a - b)[ROUNDS >> 1]);
}
