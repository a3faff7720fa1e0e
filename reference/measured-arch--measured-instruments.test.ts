/**
 * Measured arch heights of a real violin, read back through a table of heights.
 *
 * Source: Museo della Musica Bologna, catalogue by van der Meer, a violin of 356 mm: widths 157, 102, 197, arches of 18 (top) and
 * 15 mm (back); the row BO-01 of the measured instruments kept in reference/data. The catalogue gives heights only; the profiles between are
 * plain circles and cycloids of those heights, so this is a check of plausibility, not of a published profile.
 * Claim: read every 3 mm with a dial gauge's spread of 0.05 mm, the design's arch heights are those of the catalogue within 0.15 mm and
 * within their own ±, and both lie in the range that the trade uses (13 to 18 mm), the back at its usual height.
 */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { seededNormal, seededRandom } from '../src/core/base/index.ts';
import { draft } from '../src/core/index.ts';
import { plainCircle, plainCycloid } from '../test/fixtures/plainArches.ts';

const [head, ...rows] = readFileSync(resolve(import.meta.dirname, 'data/measured-instruments.csv'), 'utf8')
  .trim()
  .split('\n')
  .map((line) => line.split(','));
const row = rows.find(([id]) => id === 'BO-01')!;
const of = (name: string) => Number(row[head!.indexOf(name)]);

function readings(archHeight: number, seed: number) {
  const random = seededRandom(seed);
  const noise = () => 0.05 * seededNormal(random);
  const channel = 2.9;
  const [half, chord] = [of('centre') / 2 - 7, of('body_length') - 14];
  const cross = plainCycloid(half, archHeight - channel);
  const long = plainCircle(chord / 2, archHeight - channel, 40);
  const heights: [number, number][] = [];
  for (let x = -half - 3; x <= half + 3; x += 3) heights.push([x, channel + cross(x) + noise()]);
  const longArch: [number, number][] = [];
  for (let y = 4; y <= of('body_length') - 4; y += 6)
    longArch.push([y, channel + long(y - of('body_length') / 2) + noise()]);
  return { stations: [{ station: 'waist', heights }], longArch };
}

test('a catalogue’s arch heights come back through a table of heights', () => {
  expect([of('arch_top'), of('arch_back')]).toEqual([18, 15]);
  const drafted = draft([
    {
      name: 'BO-01',
      json: {
        family: 'violin',
        values: {
          bodyLength: of('body_length'),
          upperBout: of('upper'),
          waist: of('centre'),
          lowerBout: of('lower'),
        },
        taken: { bodyLength: 'straight', widths: 'edge' },
        arches: { back: readings(of('arch_back'), 1), top: readings(of('arch_top'), 2) },
      },
    },
  ]);
  if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
  const { values } = drafted.value.design;
  for (const [name, height] of [
    ['archHeightBack', of('arch_back')],
    ['archHeightTop', of('arch_top')],
  ] as const) {
    const found = values[name]!;
    expect(found.origin.kind).toBe('measured');
    expect(Math.abs(found.value - height)).toBeLessThan(0.15);
    expect(Math.abs(found.value - height)).toBeLessThan(found.plusMinus!);
    expect(found.value).toBeGreaterThan(12.9);
    expect(found.value).toBeLessThan(18.2);
  }
  expect(Math.abs(values.fullnessWaist!.value)).toBeLessThan(0.02);
});
