import type { Fault, Point } from '../base/index.ts';

const FEWEST_READINGS = 12;

/** What is wrong with readings before any fit is tried; null where nothing is. */
export function readingFault(readings: readonly Point<'section'>[], at: string): Fault | null {
  const broken = readings.findIndex(({ x, y }) => !(Number.isFinite(x) && Number.isFinite(y)));
  const places = new Set(readings.map(({ x }) => x)).size;
  if (broken < 0 && places >= FEWEST_READINGS) return null;
  return {
    code: 'arch.readings',
    at,
    found: broken < 0 ? `${places} places read` : `reading ${broken + 1} is not a number`,
    need: `${FEWEST_READINGS} readings or more in millimetres, from channel to channel`,
    remedy: 'read the arch again, every 5 to 10 mm',
  };
}

/** They show no crest between two channels. */
export function oneSided(at: string): Fault {
  return {
    code: 'arch.one-sided',
    at,
    found: 'readings that fall from the crest to one end only',
    need: 'both ends of the arch',
    remedy: 'read from channel to channel',
  };
}

/** No form of long arch comes near them. */
export function notSettled(at: string): Fault {
  return {
    code: 'arch.not-settled',
    at,
    found: 'neither circle, flat top nor cycloid comes near these readings',
    need: 'heights that rise from the channel at one end to a crest and fall to the channel at the other',
    remedy: 'check the order and the units of the readings, or read the arch again',
  };
}
