import fc from 'fast-check';
import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { containsPoint, outlineChain } from '../../curve/index.ts';
import type { ValueName } from '../../design/index.ts';
import { makeRegister } from '../../quantity/index.ts';
import { cycloidHeight, longArchHeight, withFullness } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { longProfile, stationProfile } from './archProfile.ts';
import { archRegister } from './archRegister.ts';
import { type EdgeState, edgeDistances } from './edgeShape.ts';
import { type ArchChoices, plateArch } from './plateArch.ts';
import { plateHeight } from './plateHeight.ts';

const half = violinHalf();
const body = outlineChain(half);

function made(
  changes: Partial<Record<ValueName, number>> = {},
  plate: 'back' | 'top' = 'top',
  choices: ArchChoices = {},
): PlateArch {
  const checked = plateArch(archValues(changes), half, plate, choices);
  if (!checked.ok) throw new Error(checked.faults.map(({ code }) => code).join());
  return checked.value;
}

function codes(changes: Partial<Record<ValueName, number>>, choices: ArchChoices = {}): string[] {
  const checked = plateArch(archValues(changes), half, 'top', choices);
  return checked.ok ? [] : checked.faults.map(({ code }) => code);
}

const top = made();
const states: readonly EdgeState[] = ['arched', 'finished'];
const across = fc.integer({ min: -104_000, max: 104_000 }).map((micrometres) => micrometres / 1000);
const along = fc.integer({ min: 0, max: 355_000 }).map((micrometres) => micrometres / 1000);

test('channel and rise follow from edge, scoop and arch heights', () => {
  expect(top.channelZMm).toBe(4 - 1);
  expect(top.riseMm).toBe(15.5 - 3);
  expect(made({}, 'back').riseMm).toBeCloseTo(14.5 - 2.8, 12);
});

test('five stations stand in order, with the rise that the long arch has there', () => {
  expect(top.stations.map(({ name }) => name)).toEqual([
    'lowerBout',
    'lowerCorner',
    'waist',
    'upperCorner',
    'upperBout',
  ]);
  for (const { yMm, riseMm } of top.stations) expect(riseMm).toBe(longArchHeight(top.longArch, yMm));
  expect(top.stations[0]?.halfWidthMm).toBeCloseTo((top.stations[0]?.edgeHalfWidthMm ?? 0) - 7, 6);
});

test.each(states)(
  '%s: a profile is the same on both sides to the last bit, from edge to edge, finely sampled',
  (state) => {
    for (const station of top.stations) {
      const { points } = stationProfile(top, station, state);
      expect(points[0]?.x).toBe(-station.edgeHalfWidthMm);
      points.forEach((place, index) => {
        const twin = points[points.length - 1 - index];
        expect(place.x + (twin?.x ?? 0)).toBe(0);
        expect(place.y).toBe(twin?.y);
        const next = points[index + 1];
        if (next) expect(next.x - place.x).toBeLessThanOrEqual(0.25 + 1e-12);
      });
    }
  },
);

test('where a station is held, its profile is the cycloid with its fullness to a twenty-thousandth of a millimetre', () => {
  for (const station of top.stations)
    for (const { x, y } of stationProfile(top, station, 'finished').points) {
      if (Math.abs(x) > station.heldShare * station.halfWidthMm) continue;
      const zeta = cycloidHeight(station.cycloid, x) / station.riseMm;
      expect(y).toBeCloseTo(top.channelZMm + station.riseMm * withFullness(zeta, station.fullness), 4);
    }
});

test('along the centre line the plate is the long arch between the channel ends', () => {
  for (const { x, y } of longProfile(top, 'finished').points)
    if (x >= 7 && x <= 348) expect(y).toBeCloseTo(top.channelZMm + longArchHeight(top.longArch, x), 9);
});

test('while the plate is arched the edge is flat and whole until the arch rises out of it, inside the channel', () => {
  for (const station of top.stations) {
    const { points, borders } = stationProfile(top, station, 'arched');
    expect(borders[1]).toBeLessThan(station.halfWidthMm);
    expect(plateHeight(top, borders[1], station.yMm, 'finished')).toBeCloseTo(4, 9);
    for (const { x, y } of points)
      if (x > borders[1]) expect(y).toBe(4);
      else if (x > 0 && x < borders[1]) expect(y).toBeGreaterThan(4);
  }
  const { points, borders } = longProfile(top, 'arched');
  expect(borders[0]).toBeGreaterThan(7);
  expect(points.filter(({ x }) => x < borders[0]).every(({ y }) => y === 4)).toBe(true);
});

test('the finished edge has its crest where it was asked for, as high as the edge, and is rounded over outside', () => {
  const station = top.stations[0];
  if (!station) throw new Error('no station');
  const { points, borders } = stationProfile(top, station, 'finished');
  expect(station.edgeHalfWidthMm - borders[1]).toBeCloseTo(1.4, 5);
  expect(points.find(({ x }) => x === borders[1])?.y).toBeCloseTo(4, 9);
  expect(points.at(-1)?.y).toBeCloseTo(4 - 1.4, 4);
});

test('all along its lowest line the channel is level on both sides', () => {
  for (const { x, y, headingRad } of top.channel.line.points.slice(1, -1)) {
    for (const away of [-0.01, 0.01]) {
      const at = { x: x - away * Math.sin(headingRad), y: y + away * Math.cos(headingRad) };
      const rise = plateHeight(top, at.x, at.y, 'finished') - top.channelZMm;
      expect(rise).toBeGreaterThan(-1e-6);
      expect(rise).toBeLessThan(0.01 ** 2 * 0.2);
    }
  }
});

test('half way from channel to crest the scoop has risen by a quarter of its depth', () => {
  const middle = 7 - (7 - 1.4) / 2;
  expect(plateHeight(top, 0, middle, 'finished')).toBeCloseTo(3 + 1 / 4, 4);
  expect(plateHeight(top, 0, 355 - middle, 'finished')).toBeCloseTo(3 + 1 / 4, 4);
});

test('finishing the edge only takes wood away, and nowhere is the plate higher than its arch or hollow below its channel', () => {
  fc.assert(
    fc.property(across, along, (x, y) => {
      fc.pre(containsPoint(body, { x, y }));
      const arched = plateHeight(top, x, y, 'arched');
      const finished = plateHeight(top, x, y, 'finished');
      expect(finished).toBeLessThanOrEqual(arched + 1e-9);
      expect(arched).toBeLessThanOrEqual(15.5);
      expect(arched).toBeGreaterThanOrEqual(top.channelZMm - 0.02);
      expect(plateHeight(top, -x, y, 'arched')).toBe(arched);
    }),
    { numRuns: 200 },
  );
});

test('the height never jumps', () => {
  const turn = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
  fc.assert(
    fc.property(across, along, turn, (x, y, angle) => {
      const near = { x: x + 0.01 * Math.cos(angle), y: y + 0.01 * Math.sin(angle) };
      fc.pre(containsPoint(body, { x, y }) && containsPoint(body, near));
      const step = plateHeight(top, near.x, near.y, 'arched') - plateHeight(top, x, y, 'arched');
      expect(Math.abs(step)).toBeLessThan(0.01 * 1.2);
    }),
    { numRuns: 200 },
  );
});

test.each(states)(
  '%s: across a station the slope never jumps but at the ridge of the edge, or where the arch rises from the flat',
  (state) => {
    for (const station of top.stations) {
      const { borders } = stationProfile(top, station, state);
      const height = (x: number): number => plateHeight(top, x, station.yMm, state);
      const slope = (x: number): number => (height(x + 0.005) - height(x - 0.005)) / 0.01;
      // The tightest scoop, from land to channel, bends by 2 Δ / (distance)² = 0.32 / mm.
      const mostBend = state === 'arched' ? 0.34 : 0.13;
      for (let x = 0.3; x < borders[1] - 0.05; x += 0.11)
        expect(Math.abs(slope(x + 0.02) - slope(x))).toBeLessThan(0.02 * mostBend);
    }
  },
);

test('inside the scoop of the finished edge no crease runs anywhere on the plate', () => {
  const turn = fc.double({ min: 0, max: Math.PI, noNaN: true });
  fc.assert(
    fc.property(across, along, turn, (x, y, angle) => {
      const at = (mm: number): number =>
        plateHeight(top, x + mm * Math.cos(angle), y + mm * Math.sin(angle), 'finished');
      fc.pre(
        containsPoint(body, { x, y }) && Math.min(...edgeDistances(top.edge, { x: Math.abs(x), y })) > 1.5,
      );
      // Change of slope over a fiftieth of a millimetre: a crease of half a degree would show as 0.0087.
      expect(Math.abs(at(0.02) - 2 * at(0) + at(-0.02)) / 0.02).toBeLessThan(0.02 * 0.2);
    }),
    { numRuns: 500 },
  );
});

test('a station that is moved is found again where it was put', () => {
  const moved = made({}, 'top', { stationsMm: { waist: 190 } });
  expect(moved.stations[2]?.yMm).toBeCloseTo(190, 9);
  expect(codes({}, { stationsMm: { waist: 20 } })).toEqual(['arch.stations']);
});

test('other long arches keep crest and channel', () => {
  const flat = made({}, 'top', {
    longArch: { kind: 'two-circles', filletMm: 40, platformMm: 60, platformRadiusMm: 4000 },
  });
  const cycloid = made({}, 'top', { longArch: { kind: 'cycloid' } });
  for (const arch of [flat, cycloid]) expect(plateHeight(arch, 0, 177.5, 'finished')).toBeCloseTo(15.5, 9);
  expect(flat.stations[0]?.riseMm).toBeGreaterThan(top.stations[0]?.riseMm ?? 0);
  expect(cycloid.stations[0]?.riseMm).toBeLessThan(top.stations[0]?.riseMm ?? 0);
});

test.each([
  ['an arch lower than the edge', { archHeightTop: 3.9 }, ['arch.below-edge']],
  ['a scoop through the edge', { scoopDepthTop: 4 }, ['arch.scoop']],
  ['an arch that is sunk behind its edge at the bouts', { archHeightTop: 4.5 }, ['arch.sunk', 'arch.sunk']],
  ['a land wider than the channel is deep in', { edgeLand: 7.2 }, ['arch.edge-order']],
  ['an arch so high that the waist loops', { archHeightTop: 36 }, ['arch.loop']],
  ['a fullness that turns back', { fullnessWaist: 0.3 }, ['arch.fullness']],
  ['a channel beyond the middle of the waist', { channelAtWaist: 60 }, ['channel.corner']],
  ['two contradictions at once', { archHeightTop: 3, scoopDepthTop: 5 }, ['arch.below-edge', 'arch.scoop']],
] as const)('%s is refused', (_what, changes, expected) => {
  expect(codes(changes)).toEqual(expected);
});

test('a value that is missing is named', () => {
  const { longArchFillet: _gone, ...rest } = archValues();
  const checked = plateArch(rest, half, 'top');
  expect(checked.ok ? [] : checked.faults.map(({ code, at }) => [code, at])).toEqual([
    ['arch.missing', 'longArchFillet'],
  ]);
});

test('a steep waist, a tight channel and an unusual fullness are remarked', () => {
  const found = made({ archHeightTop: 19, fullnessWaist: 0.15 }).findings.map(({ code }) => code);
  expect(found).toEqual(
    expect.arrayContaining(['arch.steep', 'arch.tight-channel', 'arch.unusual-fullness']),
  );
  expect(top.findings).toEqual([]);
});

test('every derived number stands in the register with what it comes from', () => {
  const values = Object.entries(archValues()).map(([name, quantity]) => ({ name, ...quantity }));
  const outline = { name: 'outline', value: 355, unit: 'mm', origin: { kind: 'chosen' } } as const;
  const register = makeRegister([
    ...values,
    outline,
    ...archRegister(top),
    ...archRegister(made({}, 'back')),
  ]);
  expect(register.ok ? [] : register.faults).toEqual([]);
  const width = archRegister(top).find(({ name }) => name === 'top.waist.width');
  expect(width?.value).toBeCloseTo(98.01, 2);
});
