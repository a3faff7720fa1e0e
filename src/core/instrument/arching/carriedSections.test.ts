import { describe, expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { seededNormal, seededRandom } from '../../base/index.ts';
import type { MeasuredHeights } from '../../design/index.ts';
import { bodyHalfWidth } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { carriedSections } from './carriedSections.ts';
import { plateArch } from './plateArch.ts';
import { plateGround } from './plateGround.ts';
import { plateHeight } from './plateHeight.ts';
import { footOn } from './smoothLine.ts';
import { stationArcs } from './workingEdge.ts';

const half = violinHalf();

function made(changes: Parameters<typeof archValues>[0], heights?: MeasuredHeights): PlateArch {
  const checked = plateArch(archValues(changes), half, 'back', heights ? { heights } : {});
  if (!checked.ok) throw new Error(checked.faults.map(({ found }) => found).join());
  return checked.value;
}

const plain = made({});
const base = made({ archHeightBack: 14.8, fullnessWaist: 0.03, fullnessLowerBout: 0.04 });

/** An original of a shape that fullness does not have: leaner at the foot of its arch and broader at the crest, more so below. */
function originalAt(x: number, y: number): number {
  const u = Math.abs(x) / bodyHalfWidth(base.loft, y);
  const more = u < 1 ? Math.sin(2 * Math.PI * u) * (1 - u) * u * 0.2 * (1.3 - y / 355) : 0;
  return plateHeight(base, x, y, 'finished') * (1 + more) - base.channelZMm * more;
}

const places = base.stations.map(({ yMm }) => yMm);

/** Heights every 4 mm across at these places and along the centre line. */
function sections(at: readonly number[], sigmaMm: number): MeasuredHeights['heights'] {
  const random = seededRandom(21);
  const across = at.flatMap((y) => Array.from({ length: 51 }, (_, index) => [4 * index - 100, y] as const));
  const along = Array.from({ length: 86 }, (_, index) => [0, 8 + 4 * index] as const);
  return [...across, ...along]
    .filter(([x, y]) => footOn(base.channel.line, Math.abs(x), y).distanceMm > 0.5)
    .map(([x, y]) => [x, y, originalAt(x, y) + sigmaMm * seededNormal(random)]);
}

function offMm(arch: PlateArch): { rms: number; most: number } {
  let [square, most, count] = [0, 0, 0];
  for (let y = 8; y < 350; y += 2.3)
    for (let x = 0; x < 105; x += 2.3) {
      if (!(footOn(base.channel.line, x, y).distanceMm > 0)) continue;
      const mm = plateHeight(arch, x, y, 'finished') - originalAt(x, y);
      square += mm * mm;
      most = Math.max(most, Math.abs(mm));
      count++;
    }
  return { rms: Math.sqrt(square / count), most };
}

describe('five sections and the long arch of an original, known to 0.1 mm', () => {
  const arch = made({}, { heights: sections(places, 0.05), plusMinus: 0.1 });

  test('draw the whole plate near to it', () => {
    expect(offMm(plain).rms).toBeGreaterThan(0.29);
    expect(offMm(arch).rms).toBeLessThan(0.04);
    expect(offMm(arch).most).toBeLessThan(0.12);
  });

  test('are told as carried along the body', () => {
    expect(arch.pull?.carried).toBe(5);
    expect(arch.pull?.findings[0]?.found).toContain('5 whole sections is carried along the body');
  });

  test('leave both sides alike, and gauges that are sections of the surface', () => {
    for (const station of arch.stations) {
      const arcs = stationArcs(arch, station, 'finished');
      if (!arcs.ok) throw new Error('no gauge');
      for (const { x, y } of arcs.value.vertices)
        expect(Math.abs(plateHeight(arch, x, station.yMm, 'finished') - y)).toBeLessThan(0.01);
    }
    for (let y = 10; y < 350; y += 7)
      expect(plateHeight(arch, -31.3, y, 'finished')).toBe(plateHeight(arch, 31.3, y, 'finished'));
  });
});

test('a single section moves no station that was not measured, beyond what is known of it', () => {
  const arch = made(
    {},
    {
      heights: sections([places[2] as number], 0).filter(([x, y]) => x !== 0 || y === places[2]),
      plusMinus: 0.02,
    },
  );
  const [lower, upper] = [places[0] as number, places[4] as number];
  for (const y of [lower, upper])
    expect(plateHeight(arch, 50, y, 'finished')).toBeCloseTo(plateHeight(plain, 50, y, 'finished'), 2);
});

test('without whole sections a loft stays the one it was', () => {
  const ground = plateGround(archValues(), half);
  if (!ground.ok) throw new Error('no ground');
  const folded = sections(places, 0).flatMap(([x, y, z], index) =>
    index % 7 === 0 && x !== 0 ? [{ x: Math.abs(x), y, zMm: z - plain.channelZMm }] : [],
  );
  expect(carriedSections(ground.value.correction, plain, folded, 0.01)).toBe(plain);
  const whole = sections(places, 0).map(([x, y, z]) => ({ x: Math.abs(x), y, zMm: z - plain.channelZMm }));
  expect(carriedSections(ground.value.correction, plain, whole, 5)).toBe(plain);
  expect(carriedSections(ground.value.correction, plain, whole, 0.01).loft.measured?.sections).toHaveLength(
    5,
  );
});
