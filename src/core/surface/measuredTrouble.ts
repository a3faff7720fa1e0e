import type { Fault, Point } from '../base/index.ts';

const FEWEST_READINGS = 10;
/** mm. Heights that differ by less show no arch. */
const LEAST_RISE_MM = 0.12;

/** What is wrong with readings before any fit is tried. */
export function readingFaults(
  readings: readonly Point<'section'>[],
  knowns: { readonly halfWidthMm?: number },
  at: string,
): readonly Fault[] {
  const broken = readings.findIndex(({ x, y }) => !(Number.isFinite(x) && Number.isFinite(y)));
  if (broken >= 0)
    return [
      readingFault(at, `reading ${broken + 1} is not a number`, 'two numbers in millimetres a reading'),
    ];
  const places = new Set(readings.map(({ x }) => x)).size;
  if (places < FEWEST_READINGS)
    return [readingFault(at, `${places} places read`, `${FEWEST_READINGS} or more, from channel to channel`)];
  const heights = readings.map(({ y }) => y);
  if (!(Math.max(...heights) - Math.min(...heights) > LEAST_RISE_MM))
    return [readingFault(at, 'readings of one height', 'heights that rise to a crest')];
  if (knowns.halfWidthMm !== undefined && !(knowns.halfWidthMm > 0))
    return [readingFault(at, `a half width of ${knowns.halfWidthMm} mm`, 'a width above 0 mm')];
  return [];
}

function readingFault(at: string, found: string, need: string): Fault {
  return { code: 'arch.readings', at, found, need, remedy: 'read the arch again, every 2 to 5 mm' };
}

/** They show no crest between two channels. */
export function oneSided(at: string): Fault {
  return {
    code: 'arch.one-sided',
    at,
    found: 'readings that fall from the crest to one side only',
    need: 'both sides, or one side with the centre line marked and the reading level',
    remedy: 'read from channel to channel, or give the centre line',
  };
}

/** They do not show the channel. */
export function shortReach(at: string, reachMm: number, halfMm: number): Fault {
  return {
    code: 'arch.reach',
    at,
    found: `readings end ${reachMm.toFixed(1)} mm from the centre line, and the channel lies about ${halfMm.toFixed(1)} mm from it`,
    need: 'readings into the channel on both sides, or the width from channel to channel',
    remedy: 'read farther out, or measure where the channel is lowest and give that width',
  };
}

/** No arch comes near them. */
export function notSettled(at: string): Fault {
  return {
    code: 'arch.not-settled',
    at,
    found: 'no arch between two channels comes near these readings',
    need: 'heights that rise from a channel to a crest and fall to a channel again',
    remedy: 'check the order and the units of the readings, or read the arch again',
  };
}
