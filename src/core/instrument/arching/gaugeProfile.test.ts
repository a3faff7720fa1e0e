import fc from 'fast-check';
import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { nearestOn } from '../../curve/index.ts';
import { type GaugePlace, gaugePlace } from './gaugePlace.ts';
import { gaugeProfile, gaugeStuff } from './gaugeProfile.ts';
import { plateArch } from './plateArch.ts';
import { plateHeight } from './plateHeight.ts';
import { stationArcs } from './workingEdge.ts';

const made = plateArch(archValues(), violinHalf(), 'back');
if (!made.ok) throw new Error('refused');
const arch = made.value;

function placeAt(yMm: number): GaugePlace {
  const place = gaugePlace(arch, yMm);
  if (!place.ok) throw new Error(place.faults[0]?.found);
  return place.value;
}

/** Even over an interval, which fast-check's own doubles are not. */
function even(from: number, to: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((share) => from + ((to - from) * share) / 1_000_000);
}

test('a gauge at the height of a station is that of the station', () => {
  for (const station of arch.stations) {
    const place = placeAt(station.yMm);
    expect(place.riseMm).toBeCloseTo(station.riseMm, 9);
    expect(place.edgeHalfWidthMm).toBeCloseTo(station.edgeHalfWidthMm, 9);
    expect(place.halfWidthMm).toBeCloseTo(station.halfWidthMm, 6);
  }
});

test.each([-3, 0, 6, 352, 355, 400, Number.NaN])('a gauge at %s mm is refused in words', (yMm) => {
  const place = gaugePlace(arch, yMm);
  expect(place.ok ? '' : place.faults[0]?.code).toBe('gauge.place');
});

test('the edge of a square gauge lies nowhere below the plate within its thickness', () => {
  fc.assert(
    fc.property(
      even(20, 335),
      even(0.8, 6),
      fc.constantFrom('arched' as const, 'finished' as const),
      even(0, 1),
      even(0, 1),
      (yMm, thicknessMm, state, across, within) => {
        const place = placeAt(yMm);
        const { behindMm } = gaugeStuff(arch, place, state, thicknessMm);
        const edge = stationArcs(arch, place, state, behindMm);
        if (!edge.ok) throw new Error(edge.faults[0]?.found);
        const end = edge.value.vertices.at(-1);
        if (!end) throw new Error('empty');
        const x = across * end.x;
        const z = plateHeight(arch, x, yMm + within * behindMm, state);
        // Arcs are fitted to 0.005 mm; the place just above the wood by a little more must be outside the gauge's edge.
        const { point } = nearestOn(edge.value, { x, y: z });
        const above = z - point.y;
        expect(above).toBeLessThan(0.0055);
      },
    ),
    { numRuns: 60 },
  );
});

test('without thickness the profile is the section itself', () => {
  const place = placeAt(95);
  for (const { x, y } of gaugeProfile(arch, place, 'finished', 0))
    expect(y).toBe(plateHeight(arch, x, 95, 'finished'));
});

test('with thickness the profile is nowhere lower than without, and higher by what the plain one would ride', () => {
  for (const yMm of [95, 138, 170, 300]) {
    const place = placeAt(yMm);
    const stuff = gaugeStuff(arch, place, 'arched', 4);
    const rises = gaugeProfile(arch, place, 'arched', stuff.behindMm).map(
      ({ x, y }) => y - plateHeight(arch, x, yMm, 'arched'),
    );
    expect(Math.min(...rises)).toBeGreaterThan(-1e-9);
    expect(Math.max(...rises)).toBeGreaterThan(stuff.rideMm - 0.001);
    expect(Math.max(...rises)).toBeLessThan(stuff.rideMm + 0.01);
  }
});

test('in the bouts the stuff lies where the plate falls away, so that it hardly rides', () => {
  const [lower, , waist, , upper] = arch.stations;
  if (!lower || !waist || !upper) throw new Error('stations');
  expect(gaugeStuff(arch, lower, 'arched', 3)).toMatchObject({ behindMm: -3 });
  expect(gaugeStuff(arch, upper, 'arched', 3)).toMatchObject({ behindMm: 3 });
  expect(gaugeStuff(arch, lower, 'arched', 3).rideMm).toBeLessThan(0.02);
});
