import { describe, expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { seededNormal, seededRandom } from '../../base/index.ts';
import type { MeasuredHeights } from '../../design/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { type ArchChoices, plateArch } from './plateArch.ts';
import { plateHeight, plateSlopes } from './plateHeight.ts';
import { footOn } from './smoothLine.ts';
import { longArcs, stationArcs } from './workingEdge.ts';

const half = violinHalf();

function made(choices: ArchChoices = {}, changes: Parameters<typeof archValues>[0] = {}): PlateArch {
  const checked = plateArch(archValues(changes), half, 'back', choices);
  if (!checked.ok) throw new Error(checked.faults.map(({ found }) => found).join());
  return checked.value;
}

/** A plate of other numbers: what the measured instrument is, and the code is not told. */
const original = made(
  { crestMm: 186 },
  { archHeightBack: 14.8, fullnessLowerBout: 0.05, fullnessUpperBout: 0.05, fullnessWaist: 0.03 },
);
const plain = made();

function isInside(x: number, y: number, byMm = 0): boolean {
  return footOn(plain.channel.line, Math.abs(x), y).distanceMm > byMm;
}

/** Heights of the original at chance places of both halves, with scatter. */
function read(count: number, sigmaMm: number, seed: number): [number, number, number][] {
  const random = seededRandom(seed);
  const heights: [number, number, number][] = [];
  while (heights.length < count) {
    const [x, y] = [(2 * random() - 1) * 105, random() * 355];
    if (!isInside(x, y, 1)) continue;
    heights.push([x, y, plateHeight(original, x, y, 'finished') + sigmaMm * seededNormal(random)]);
  }
  return heights;
}

function drawn(heights: MeasuredHeights['heights'], plusMinus: number): PlateArch {
  return made({ heights: { heights, plusMinus } });
}

function offMm(arch: PlateArch): { rms: number; most: number } {
  let [square, most, count] = [0, 0, 0];
  for (let y = 8; y < 350; y += 3)
    for (let x = 0; x < 105; x += 3) {
      if (!isInside(x, y)) continue;
      const mm = plateHeight(arch, x, y, 'finished') - plateHeight(original, x, y, 'finished');
      square += mm * mm;
      most = Math.max(most, Math.abs(mm));
      count++;
    }
  return { rms: Math.sqrt(square / count), most };
}

describe('two hundred heights of an original, known to 0.1 mm', () => {
  const arch = drawn(read(200, 0.05, 7), 0.1);

  test('draw the surface of the usual numbers near to it', () => {
    expect(offMm(plain).rms).toBeGreaterThan(0.25);
    expect(offMm(arch).rms).toBeLessThan(0.05);
    expect(offMm(arch).most).toBeLessThan(0.25);
  });

  test('leave the scatter that they have, and no less', () => {
    expect(arch.pull?.rmsMm).toBeLessThanOrEqual(0.05);
    expect(arch.pull?.rmsMm).toBeGreaterThan(0.04);
    expect(arch.pull?.left).toHaveLength(200);
    for (const { xMm, yMm, zMm, leftMm } of arch.pull?.left ?? [])
      expect(zMm - plateHeight(arch, xMm, yMm, 'finished')).toBeCloseTo(leftMm, 2);
  });

  test('leave the channel level where it is, and both halves alike', () => {
    for (const { x, y } of arch.channel.line.points.filter((_, i) => i % 40 === 20)) {
      expect(plateHeight(arch, x, y, 'finished')).toBeCloseTo(arch.channelZMm, 9);
      const { slopeX, slopeY } = plateSlopes(arch, x, y);
      expect(Math.hypot(slopeX, slopeY)).toBeLessThan(1e-5);
    }
    expect(plateHeight(arch, -31.7, 120, 'finished')).toBe(plateHeight(arch, 31.7, 120, 'finished'));
  });

  test('draw the gauges along', () => {
    const long = longArcs(arch, 'finished');
    const waist = arch.stations.find(({ name }) => name === 'waist');
    if (!long.ok || waist === undefined) throw new Error('no gauge');
    const across = stationArcs(arch, waist, 'finished');
    if (!across.ok) throw new Error('no gauge');
    for (const { x, y } of long.value.vertices)
      expect(Math.abs(plateHeight(arch, 0, x, 'finished') - y)).toBeLessThan(0.006);
    for (const { x, y } of across.value.vertices)
      expect(Math.abs(plateHeight(arch, x, waist.yMm, 'finished') - y)).toBeLessThan(0.006);
    expect(waist.riseMm).toBeCloseTo(plateHeight(arch, 0, waist.yMm, 'finished') - arch.channelZMm, 9);
  });
});

test('the height of an arch is that of the surface as drawn, so that boards, terraces and gauges have room for it', () => {
  const higher = drawn(
    [
      [0, 170, 16.2],
      [0, 180, 16.3],
      [0, 190, 16.2],
      [15, 180, 15.8],
    ],
    0.1,
  );
  let most = 0;
  for (let y = 150; y < 210; y += 0.5)
    for (let x = 0; x < 25; x += 0.5) most = Math.max(most, plateHeight(higher, x, y, 'finished'));
  expect(most).toBeGreaterThan(16);
  expect(higher.archHeightMm).toBeCloseTo(most, 2);
  expect(plain.archHeightMm).toBe(plain.numbers.archHeightMm);
});

test('the more heights and the better known, the nearer it comes', () => {
  const few = offMm(drawn(read(40, 0.1, 3), 0.2)).rms;
  const many = offMm(drawn(read(200, 0.1, 4), 0.2)).rms;
  const good = offMm(drawn(read(1000, 0.05, 5), 0.1)).rms;
  expect(many).toBeLessThan(few);
  expect(good).toBeLessThan(many);
  expect(good).toBeLessThan(0.03);
});

test('heights that the numbers meet already draw nothing', () => {
  const heights = read(60, 0, 9).map(
    ([x, y]) => [x, y, plateHeight(plain, x, y, 'finished') + 0.05] as const,
  );
  const arch = drawn(heights, 0.2);
  expect(arch.pull?.moved.mm).toBe(0);
  expect(plateHeight(arch, 20, 100, 'finished')).toBe(plateHeight(plain, 20, 100, 'finished'));
});

test('a slip of the pen is named with its place, heights off the arch are counted, and a scatter beyond what was said is told', () => {
  const heights = read(300, 0.05, 11);
  const [x, y, z] = heights[40] as [number, number, number];
  heights[40] = [x, y, z + 1];
  const arch = drawn([...heights, [0, 2, 3.5], [104, 80, 3.1]], 0.1);
  const { findings, left, outside } = arch.pull ?? { findings: [], left: [], outside: 0 };
  expect(outside).toBe(2);
  expect(left).toHaveLength(300);
  const off = findings.find(({ code }) => code === 'heights.off');
  expect(off?.found).toContain(
    `${(z + 1).toFixed(2)} at ${Math.abs(x).toFixed(0)} mm beside the centre line, ${y.toFixed(0)} mm up`,
  );
  expect(off?.found).toContain('too high');
  expect(findings.map(({ code }) => code)).toEqual(['heights.drawn', 'heights.outside', 'heights.off']);
  const wild = drawn(read(300, 0.4, 12), 0.1).pull;
  expect(wild?.findings.map(({ code }) => code)).toContain('heights.scatter');
});

test('heights of the edge alone are refused', () => {
  const checked = plateArch(archValues(), half, 'back', { heights: { heights: [[0, 1, 4]] } });
  expect(checked.ok || checked.faults.map(({ code }) => code)).toEqual(['heights.outside']);
});
