import type { Finding } from '../../base/index.ts';
import { type EdgePoint, SECTION_WORDS } from '../../photo/index.ts';

/** Fewer stations of a stretch than this, about as many millimetres or half of it at a corner, are a speck or a shadow. */
const LEAST_STATIONS = 6;

/**
 * Stretches where ribs are looked down on and neither half tells which plate its edge is. Where one half tells, the outline
 * stands on that; what something covers on both is told as that. Finding: `trace.which-plate`.
 *
 * @param traced the edge before the plates were told apart, and `near` after it, station by station
 */
export function untoldPlateFindings(
  traced: readonly EdgePoint[],
  near: readonly EdgePoint[],
): readonly Finding[] {
  const stations = new Map<string, boolean[]>();
  near.forEach(({ section, along, state }, i) => {
    const key = `${section} ${along}`;
    const isShown = state === 'seen';
    const isCovered = traced[i].state === 'bridged';
    const [shown, covered] = stations.get(key) ?? [false, true];
    stations.set(key, [shown || isShown, covered && isCovered]);
  });
  const untold = new Map<keyof typeof SECTION_WORDS, number>();
  for (const [key, [shown, covered]] of stations) {
    if (shown || covered) continue;
    const section = key.split(' ')[0] as keyof typeof SECTION_WORDS;
    untold.set(section, (untold.get(section) ?? 0) + 1);
  }
  return [...untold]
    .filter(([, count]) => count >= LEAST_STATIONS)
    .map(([section, count]) => ({
      weight: 'caution' as const,
      code: 'trace.which-plate',
      at: SECTION_WORDS[section],
      found: `on neither side can the plates be told apart over ${count} places here; the outline follows the usual shape`,
      need: 'an edge of the near plate that stands out from the ribs',
      remedy: 'photograph again with the lens straight above the waist, from farther away',
    }));
}
