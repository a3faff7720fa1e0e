/**
 * The name most like the one typed, if one is near enough to be meant (at most a third of its letters
 * differ): for “did you mean …?”. Of equally near ones the first. Case does not count.
 */
export function nearestName(typed: string, names: readonly string[]): string | undefined {
  let best: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const name of names) {
    const steps = editSteps(typed.toLowerCase(), name.toLowerCase());
    if (steps < fewest && steps <= Math.max(1, Math.floor(name.length / 3))) {
      best = name;
      fewest = steps;
    }
  }
  return best;
}

/** Letters to insert, drop, replace or swap with a neighbour to make one word of the other (optimal string alignment). */
function editSteps(from: string, to: string): number {
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const replaced = row[j - 1] + (from[i - 1] === to[j - 1] ? 0 : 1);
      const steps = Math.min(replaced, row[j] + 1, next[j - 1] + 1);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      next.push(swapped ? Math.min(steps, before[j - 2] + 1) : steps);
    }
    before = row;
    row = next;
  }
  return row[to.length];
}
