import { expect, test } from 'vitest';
import { seededNormal, seededRandom } from '../../base/index.ts';
import { FULLNESS_VALUES, longProfile, STATION_NAMES, stationProfile } from '../../instrument/index.ts';
import { derive } from '../derive.ts';
import { draft } from '../draft.ts';

/** Every 2 mm (along the body every 4) of a finished plate's outside, edge and channel with it, as a gauge reads it. */
function readings(
  profile: { readonly points: readonly { x: number; y: number }[] },
  every: number,
  seed: number,
) {
  const random = seededRandom(seed);
  return profile.points
    .filter((_, i) => i % every === 0)
    .map(({ x, y }): [number, number] => [x, y + 0.02 * seededNormal(random)]);
}

test.each(['violin', 'viola'] as const)(
  'heights read off a derived %s draft the same arch again',
  (family) => {
    const values = { bodyLength: family === 'violin' ? 354 : 410 };
    const taken = { bodyLength: 'straight', widths: 'edge' };
    const first = draft([{ name: 'first', json: { family, values, taken } }]);
    if (!first.ok) throw new Error(first.faults[0]!.found);
    const instrument = derive(first.value.design);
    if (!instrument.ok) throw new Error(instrument.faults[0]!.found);
    const { back } = instrument.value.plates;
    const arches = {
      back: {
        stations: back.stations.map((station, i) => ({
          station: station.name,
          heights: readings(stationProfile(back, station, 'finished'), 8, i + 1),
        })),
        longArch: readings(longProfile(back, 'finished'), 16, 9),
      },
    };
    const again = draft([{ name: 'again', json: { family, values, taken, arches } }]);
    if (!again.ok) throw new Error(JSON.stringify(again.faults));
    const [before, after] = [first.value.design.values, again.value.design.values];
    expect(after.archHeightBack!.origin.kind).toBe('measured');
    expect(Math.abs(after.archHeightBack!.value - before.archHeightBack!.value)).toBeLessThan(0.05);
    for (const name of STATION_NAMES) {
      const value = FULLNESS_VALUES[name];
      const off = Math.abs(after[value]!.value - before[value]!.value);
      expect([name, off < 0.015, off <= after[value]!.plusMinus!]).toEqual([name, true, true]);
    }
    expect(again.value.findings.map(({ code }) => code)).not.toContain('arch.deviation');
  },
);
