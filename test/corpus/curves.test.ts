import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { point } from '../../src/core/base/index.ts';
import {
  type Chain,
  fitArcs,
  headingOn,
  nearestOn,
  offsetChain,
  sampleChain,
  segments,
} from '../../src/core/curve/index.ts';
import { chainFaults, simpleLoopFaults } from '../laws/chain.ts';

const FOLDER = join(import.meta.dirname, 'curves');

const WithTrap = z.object({ trap: z.string().min(20) });
const OffsetCase = WithTrap.extend({
  vertices: z.array(z.object({ x: z.number(), y: z.number(), bulge: z.number() })),
  distancesMm: z.array(z.number()).min(1),
  loops: z.array(z.number()),
});
const FitCase = WithTrap.extend({
  points: z.array(z.tuple([z.number(), z.number()])),
  closed: z.boolean(),
  toleranceMm: z.number(),
  arcsAtMost: z.number(),
});

/** Every case of one kind, with its trap in front. */
function cases<T extends { readonly trap: string }>(
  kind: string,
  schema: z.ZodType<T>,
): readonly (readonly [string, T])[] {
  return readdirSync(FOLDER)
    .filter((name) => name.startsWith(`${kind}-`) && name.endsWith('.json'))
    .sort()
    .map((name) => {
      const read = schema.parse(JSON.parse(readFileSync(join(FOLDER, name), 'utf8')));
      return [read.trap, read] as const;
    });
}

const offsets = cases('offset', OffsetCase);
const fits = cases('fit', FitCase);

test('the corpus of curves is not empty', () => {
  expect(offsets.length).toBeGreaterThan(0);
  expect(fits.length).toBeGreaterThan(0);
});

test.each(offsets)('offset: %s', (_trap, { vertices, distancesMm, loops }) => {
  const source: Chain<'body'> = { closed: true, vertices };
  for (const [index, distanceMm] of distancesMm.entries()) {
    const found = offsetChain(source, distanceMm, { join: 'round' });
    expect(found, `at ${distanceMm} mm`).toHaveLength(loops[index]);
    for (const loop of found) {
      expect(simpleLoopFaults(loop)).toEqual([]);
      for (const p of sampleChain(loop, 0.01)) {
        expect(Math.abs(nearestOn(source, p).distanceMm - Math.abs(distanceMm))).toBeLessThan(1e-6);
      }
    }
  }
});

test.each(fits)('fit: %s', (_trap, { points, closed, toleranceMm, arcsAtMost }) => {
  const given = points.map(([x, y]) => point<'body'>(x, y));
  const fit = fitArcs(given, { toleranceMm, closed });
  if (!fit.ok) throw new Error(JSON.stringify(fit.faults));
  const { chain, maxMm } = fit.value;
  expect(chainFaults(chain)).toEqual([]);
  expect(maxMm).toBeLessThanOrEqual(toleranceMm);
  for (const p of given) expect(nearestOn(chain, p).distanceMm).toBeLessThanOrEqual(toleranceMm + 1e-9);
  const all = segments(chain);
  expect(all.length).toBeLessThanOrEqual(arcsAtMost);
  for (const [index, segment] of all.entries()) {
    const before = all[index - 1] ?? (closed ? all[all.length - 1] : undefined);
    if (before) expect(Math.abs(Math.sin(headingOn(segment, 0) - headingOn(before, 1)))).toBeLessThan(1e-9);
  }
});
