import { VALUE_NAMES, VALUES, type ValueName } from '../design/index.ts';
import type { Instrument } from '../instrument/index.ts';

/** Numbers told one by one; more are only counted. */
const MOST_TOLD = 20;

/** Smaller differences are not told: mm, degrees, or of a ratio. */
const LEAST = 0.005;

/** The numbers in which two designs differ, a sentence each, in the order of the design's own list. */
export function differingNumbers(
  { design: first }: Instrument,
  { design: other }: Instrument,
): readonly string[] {
  const told = (design: typeof first, name: ValueName): string => {
    const value = design.values[name];
    if (value === undefined) return 'not given';
    const { unit } = VALUES[name];
    return `${Number(value.value.toFixed(3))}${unit === 'ratio' ? '' : ` ${unit}`}`;
  };
  const differing = VALUE_NAMES.filter((name) => {
    const [one, two] = [first.values[name]?.value, other.values[name]?.value];
    if (one === undefined || two === undefined) return one !== two;
    return Math.abs(two - one) > LEAST;
  });
  const lines = differing
    .slice(0, MOST_TOLD)
    .map((name) => `${name}: ${told(first, name)}, in the other ${told(other, name)}.`);
  const more = differing.length - lines.length;
  return more > 0
    ? [...lines, `${more} more numbers differ; compare what garland derive lists of both.`]
    : lines;
}
