import { describe, expect, test } from 'vitest';
import { bump, plainCircle, plainCycloid } from '../../../../test/fixtures/plainArches.ts';
import { seededNormal, seededRandom } from '../../base/index.ts';
import { deriveInstrument } from '../../instrument/index.ts';
import { type Drafted, draft } from '../draft.ts';

const CHANNEL = 2.8;

/** Heights from the gluing face, every 2 mm across, as a table holds them. */
function across(half: number, rise: number, fullness: number, seed: number, moved = (_: number) => 0) {
  const random = seededRandom(seed);
  const arch = plainCycloid(half, rise, fullness);
  const heights: [number, number][] = [];
  for (let x = -half - 4; x <= half + 4; x += 2)
    heights.push([x, Math.round(100 * (CHANNEL + arch(x) + moved(x) + 0.03 * seededNormal(random))) / 100]);
  return heights;
}

function along(rise: number, seed: number) {
  const random = seededRandom(seed);
  const arch = plainCircle(170, rise, 40);
  const heights: [number, number][] = [];
  for (let y = 3; y <= 351; y += 6) heights.push([y, CHANNEL + arch(y - 177) + 0.03 * seededNormal(random)]);
  return heights;
}

function drafted(arches: unknown, values: object = {}): Drafted {
  const json = {
    family: 'violin',
    values: { bodyLength: 354, ...values },
    taken: { bodyLength: 'straight', widths: 'edge' },
    arches,
  };
  const result = draft([{ name: 'table', json }]);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

function codes({ findings }: Drafted) {
  return findings.map(({ code, at }) => [code, at]);
}

describe('measured arches in a table of measurements', () => {
  const whole = drafted(
    {
      back: {
        source: 'dial gauge, 2 mm grid',
        stations: [
          { station: 'waist', heights: across(47.5, 12, 0.03, 1) },
          { station: 72, heights: across(96, 7.4, 0.05, 2) },
        ],
        longArch: along(12.1, 3),
      },
    },
    { edgeHeightBack: 3.8 },
  );
  const { values } = whole.design;

  test('give the arch height by the long arch, measured and with ±', () => {
    const height = values.archHeightBack;
    expect(height?.origin).toEqual({
      kind: 'measured',
      from: 'long arch fitted to dial gauge, 2 mm grid',
    });
    expect(Math.abs((height?.value ?? 0) - 14.9)).toBeLessThan(0.05);
    expect(height?.plusMinus).toBeGreaterThan(0.005);
    expect(height?.plusMinus).toBeLessThan(0.1);
  });

  test('give the fullness at a station named or given by its height, and leave the others to habit', () => {
    expect(Math.abs((values.fullnessWaist?.value ?? 0) - 0.03)).toBeLessThan(0.01);
    expect(values.fullnessWaist?.origin.kind).toBe('measured');
    expect(Math.abs((values.fullnessLowerBout?.value ?? 0) - 0.05)).toBeLessThan(0.01);
    expect(values.fullnessUpperBout?.origin.kind).not.toBe('measured');
  });

  test('give the scoop where the edge is known', () => {
    expect(Math.abs((values.scoopDepthBack?.value ?? 0) - 1)).toBeLessThan(0.05);
    expect(values.scoopDepthTop?.origin.kind).not.toBe('measured');
  });

  test('tell how well every fit comes out', () => {
    expect(codes(whole).filter(([code]) => code === 'arch.fitted')).toEqual([
      ['arch.fitted', 'arches.back.stations[0]'],
      ['arch.fitted', 'arches.back.stations[1]'],
      ['arch.fitted', 'arches.back.longArch'],
    ]);
    const [waist] = whole.findings.filter(({ code }) => code === 'arch.fitted');
    expect(waist?.found).toMatch(
      /^waist: rise 1[12]\.\d\d ± 0\.0\d mm, half width 47\.\d\d ± 0\.1\d mm, fullness 0\.0\d\d ± 0\.00\d; 5\d of 52 readings, 0\.0\d mm rms/,
    );
  });
});

test('a post bulge is named, kept until the maker agrees, and then left out', () => {
  const heights = across(47.5, 12, 0.02, 4, (x) => bump(x, 18, 13, 0.5));
  const kept = drafted({ top: { stations: [{ station: 'waist', heights }] } });
  const left = drafted({ top: { leaveOut: true, stations: [{ station: 'waist', heights }] } });
  const told = kept.findings.find(({ code }) => code === 'arch.deviation');
  expect(told?.found).toMatch(/^a bulge where the post presses, 1\d mm from the centre line, treble side/);
  expect(left.findings.map(({ code }) => code)).toContain('arch.deviation-left-out');
  const off = ({ design }: Drafted) => Math.abs((design.values.fullnessWaist?.value ?? 0) - 0.02);
  expect(off(left)).toBeLessThan(0.008);
  expect(off(left)).toBeLessThan(off(kept));
});

test('a value that the table gives stands, and readings that say otherwise are told', () => {
  const arches = { back: { stations: [{ station: 'waist', heights: across(47.5, 12, 0.02, 5) }] } };
  const one = drafted(arches, { archHeightBack: 15.6 });
  expect(one.design.values.archHeightBack?.value).toBe(15.6);
  expect(codes(one)).toContainEqual(['arch.given-differs', 'archHeightBack']);
  expect(codes(drafted(arches, { archHeightBack: 14.7 }))).not.toContainEqual([
    'arch.given-differs',
    'archHeightBack',
  ]);
});

test('two plates that are not equally full have each their own fullness; alike they share one', () => {
  const at = (fullness: number, seed: number) => ({
    stations: [{ station: 'waist', heights: across(47.5, 12, fullness, seed) }],
  });
  const one = drafted({ back: at(0, 6), top: at(0.08, 7) });
  expect(Math.abs((one.design.values.fullnessWaist?.value ?? 1) - 0)).toBeLessThan(0.015);
  expect(Math.abs((one.design.values.fullnessTopWaist?.value ?? 0) - 0.08)).toBeLessThan(0.015);
  expect(codes(one)).toContainEqual(['arch.plates-differ', 'fullnessWaist']);
  const instrument = deriveInstrument(one.design);
  if (!instrument.ok) throw new Error('refused');
  const fullness = (plate: 'back' | 'top') =>
    instrument.value.plates[plate].stations.find(({ name }) => name === 'waist')?.fullness;
  expect(fullness('back')).toBe(one.design.values.fullnessWaist?.value);
  expect(fullness('top')).toBe(one.design.values.fullnessTopWaist?.value);
  const alike = drafted({ back: at(0.04, 6), top: at(0.045, 7) });
  expect(alike.design.values.fullnessTopWaist).toBeUndefined();
  expect(Math.abs((alike.design.values.fullnessWaist?.value ?? 0) - 0.0425)).toBeLessThan(0.01);
  const given = drafted({ back: at(0, 6), top: at(0.08, 7) }, { fullnessWaist: 0.02 });
  expect(given.design.values.fullnessTopWaist).toBeUndefined();
  expect(given.design.values.fullnessWaist?.value).toBe(0.02);
});

test('one station read twice with other crests, and a corner higher than the crest, are told', () => {
  const waist = (rise: number, seed: number) => ({ station: 'waist', heights: across(47.5, rise, 0, seed) });
  const twice = drafted({ back: { stations: [waist(12, 3), waist(14, 4)] } });
  expect(codes(twice)).toContainEqual(['arch.read-twice', 'arches.back.stations[1]']);
  const corner = { station: 'lowerCorner', heights: across(80, 14, -0.05, 5) };
  expect(codes(drafted({ back: { stations: [waist(12, 3), corner] } }))).toContainEqual([
    'arch.over-crest',
    'arches.back',
  ]);
  const lower = { station: 'lowerCorner', heights: across(80, 10, -0.05, 5) };
  const sound = codes(drafted({ back: { stations: [waist(12, 3), waist(12.1, 4), lower] } })).flat();
  expect(sound).not.toContain('arch.read-twice');
  expect(sound).not.toContain('arch.over-crest');
});

test('heights that do not count from the gluing face give fullness and no arch height', () => {
  const tilted = across(47.5, 12, 0.03, 8).map(([x, z]) => [x, z + 20 + 0.02 * x]);
  const one = drafted({ back: { heightsFrom: 'open', stations: [{ station: 'waist', heights: tilted }] } });
  expect(Math.abs((one.design.values.fullnessWaist?.value ?? 0) - 0.03)).toBeLessThan(0.01);
  expect(one.design.values.archHeightBack?.origin.kind).not.toBe('measured');
  expect(codes(one)).toContainEqual(['arch.height-open', 'arches.back']);
});

test('a reading between the stations is fitted, told and not used', () => {
  const one = drafted({ back: { stations: [{ station: 20, heights: across(60, 4, 0, 9) }] } });
  expect(codes(one)).toContainEqual(['arch.station-unknown', 'arches.back.stations[0]']);
  expect(one.design.values.fullnessLowerBout?.origin.kind).not.toBe('measured');
});

test('readings that no arch comes near are refused with their place in the table', () => {
  const result = draft([
    {
      name: 'table',
      json: {
        family: 'violin',
        values: { bodyLength: 354 },
        arches: {
          top: {
            stations: [
              {
                station: 'waist',
                heights: [
                  [0, 1],
                  [1, 2],
                ],
              },
            ],
          },
        },
      },
    },
  ]);
  expect(result.ok ? [] : result.faults.map(({ code, at }) => [code, at])).toEqual([
    ['arch.readings', 'arches.top.stations[0]'],
  ]);
});

describe('a profile traced from a photograph beside a table', () => {
  const table = { name: 'table', json: { family: 'violin', values: { bodyLength: 354 } } };
  const heights = across(47.5, 12, 0.04, 11, (x) => bump(x, 18, 13, 0.5));
  const profile = (more: object = {}) => ({
    name: 'waist.profile.json',
    json: {
      format: 'garland-profile',
      version: 1,
      units: 'mm',
      of: 'crossArch',
      name: 'waist.jpg',
      face: 'back',
      station: 'waist',
      base: 'face',
      points: heights,
      ...more,
    },
  });

  test('gives the fullness and the arch height of its plate', () => {
    const result = draft([table, profile({ leaveOut: true, sidesKnown: true })]);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    const { fullnessWaist, archHeightBack } = result.value.design.values;
    expect(Math.abs((fullnessWaist?.value ?? 0) - 0.04)).toBeLessThan(0.01);
    expect(fullnessWaist?.origin).toEqual({
      kind: 'measured',
      from: 'cross arch of the back fitted to profile in waist.jpg',
    });
    expect(Math.abs((archHeightBack?.value ?? 0) - 14.8)).toBeLessThan(0.1);
  });

  test('names no side while it is not known how the card lay', () => {
    const result = draft([table, profile()]);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    const told = result.value.findings.find(({ code }) => code === 'arch.deviation');
    expect(told?.found).toMatch(/^a swelling, 1\d mm from the centre line, right of the centre/);
  });

  test.each([
    ['without its plate', { face: undefined }, 'profile.missing', 'waist.profile.json, face'],
    ['without its station', { station: undefined }, 'profile.no-station', 'waist.profile.json, station'],
    ['of a thing that is none', { of: 'elbow' }, 'profile.wrong', 'waist.profile.json, of'],
  ])('is refused %s', (_what, more, code, at) => {
    const result = draft([table, profile(more)]);
    expect(result.ok ? [] : result.faults.map((fault) => [fault.code, fault.at])).toEqual([[code, at]]);
  });

  test('is not enough alone', () => {
    const result = draft([profile()]);
    expect(result.ok ? [] : result.faults.map((fault) => fault.code)).toEqual(['draft.inputs']);
  });
});

describe('heights that are kept', () => {
  const readings = {
    source: 'dial gauge',
    keepHeights: true,
    plusMinus: 0.1,
    stations: [
      { station: 'waist', heights: across(47.5, 12, 0.03, 1).map(([x, z]) => [x + 3, z]) },
      { station: 72, heights: across(96, 7.4, 0.05, 2) },
    ],
    longArch: along(12.1, 3),
  };

  test('stand in the design at their places, counted from the centre line that the readings show', () => {
    const { design } = drafted({ back: readings });
    const kept = design.measuredHeights?.back;
    expect(kept).toMatchObject({ plusMinus: 0.1, source: 'dial gauge' });
    const heights = kept?.heights ?? [];
    expect(heights).toHaveLength(52 + 101 + 59);
    const waist = heights.slice(0, 52);
    expect(new Set(waist.map(([, y]) => y)).size).toBe(1);
    expect(waist[0]?.[1]).toBeGreaterThan(160);
    expect(waist[0]?.[1]).toBeLessThan(205);
    expect(waist[0]?.[0]).toBeCloseTo(-51.5, 0);
    expect(heights[60]?.[1]).toBe(72);
    expect(heights.at(-1)?.slice(0, 2)).toEqual([0, 351]);
  });

  test('are lifted to the channel and turned level where they do not count from the gluing face', () => {
    const tilt = 0.01;
    const tilted = across(47.5, 12, 0, 1).map(([x, z]) => [
      x * Math.cos(tilt) - (z + 20) * Math.sin(tilt),
      x * Math.sin(tilt) + (z + 20) * Math.cos(tilt),
    ]);
    const { design } = drafted(
      { back: { heightsFrom: 'open', keepHeights: true, stations: [{ station: 'waist', heights: tilted }] } },
      { edgeHeightBack: 3.8 },
    );
    const heights = design.measuredHeights?.back?.heights ?? [];
    const { edgeHeightBack, scoopDepthBack } = design.values;
    const channel = (edgeHeightBack?.value ?? 0) - (scoopDepthBack?.value ?? 0);
    const arch = plainCycloid(47.5, 12, 0);
    expect(heights).toHaveLength(52);
    for (const [x, , z] of heights)
      if (Math.abs(x) < 47) expect(Math.abs(z - channel - arch(x))).toBeLessThan(0.15);
  });

  test('leave out the stretch that post and bar moved, where the maker says so, and join heights of the table', () => {
    const swollen = across(47.5, 12, 0.03, 5, (x) => bump(x, 20, 9, 0.6));
    const arches = {
      back: { keepHeights: true, leaveOut: true, stations: [{ station: 'waist', heights: swollen }] },
    };
    const json = {
      family: 'violin',
      values: { bodyLength: 354 },
      taken: { bodyLength: 'straight', widths: 'edge' },
      measuredHeights: { back: { heights: [[10, 100, 12]], plusMinus: 0.3 } },
      arches,
    };
    const result = draft([{ name: 'table', json }]);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    const kept = result.value.design.measuredHeights?.back;
    expect(kept?.plusMinus).toBe(0.3);
    expect(kept?.heights[0]).toEqual([10, 100, 12]);
    expect(kept?.heights.slice(1).some(([x]) => x > 16 && x < 24)).toBe(false);
    expect(kept?.heights.slice(1).some(([x]) => x > -24 && x < -16)).toBe(true);
  });

  test('are none unless they are asked for', () => {
    expect(drafted({ back: { ...readings, keepHeights: false } }).design.measuredHeights).toBeUndefined();
  });
});
