/**
 * Whole plates recovered from five sections and the long arch, where the whole is known.
 *
 * Source: domes of our own, each a closed formula (cycloids, raised cosines, a flattened ellipsoid, cosines of a changing power), over a smooth waisted outline
 * of 340 by 196 mm without corners. The code is handed the outline, readings at every 3 mm of five sections and of the long arch, and nothing else: each section is fitted
 * as measured ones are (fullness), the long arch is the tangent arcs through its readings, and what these few numbers leave is drawn in from the same readings.
 * Target: off the sections 0.10 mm at most and 0.03 mm rms, for arches 12 to 15 mm high. Two domes of four reach it; the others say what is reached.
 */
import { expect, test } from 'vitest';
import { point } from '../src/core/base/index.ts';
import { arcOf, fitArcs, segments } from '../src/core/curve/index.ts';
import { squaredBodyWidth } from '../src/core/instrument/arching/bodyWidth.ts';
import { correctionFrame, fairCorrection } from '../src/core/instrument/arching/fairCorrection.ts';
import { heightPull, pulled } from '../src/core/instrument/arching/heightPull.ts';
import { footOn } from '../src/core/instrument/arching/smoothLine.ts';
import { fairSpline, fitCrossArch, type LongArch, loftAt, netAt } from '../src/core/surface/index.ts';
import type { ArcPiece } from '../src/core/surface/longArchArcs.ts';
import { domeChannel, domeStations, KNOWN_DOMES, type KnownDome, LENGTH_MM } from './made/knownDomes.ts';

const READING_MM = 3;
const TARGET = { mostMm: 0.1, rmsMm: 0.03 };
/** What is reached where the target is. */
const MET = {
  'cycloids of changing fullness over a broader arch, 13 mm': { mostMm: 0.012, rmsMm: 0.003 },
  'raised cosines over a broad arch, 12 mm': { mostMm: 0.085, rmsMm: 0.019 },
} as const;
/** Fullness is one number a section and fades toward both ends; what these domes have beside is drawn in near the sections only. */
const MISSED = {
  'a flattened ellipsoid brought level, 15 mm': { mostMm: 0.2, rmsMm: 0.06 },
  'cosines whose power changes along the body, 14 mm': { mostMm: 0.14, rmsMm: 0.031 },
} as const;
/** mm, k = 2: readings are exact, the surface need not pass nearer. */
const READ_TO_MM = 0.01;
const ARC_FIT_MM = 0.005;
const FULLNESS_SPANS = 24;

const channel = domeChannel();
const stations = domeStations();
const width = squaredBodyWidth(channel, stations, LENGTH_MM);
const frame = correctionFrame(channel, stations, LENGTH_MM);
const from = channel.line.points[0]!.y;
const to = channel.line.points.at(-1)!.y;

function evenly(start: number, end: number): readonly number[] {
  const count = Math.ceil((end - start) / READING_MM);
  return Array.from({ length: count + 1 }, (_, index) => start + ((end - start) * index) / count);
}

/** One side of the long arch as tangent arcs through its readings, level at crest and channel. */
function halfArch(heightAt: KnownDome['heightAt'], reachMm: number, side: 1 | -1): readonly ArcPiece[] {
  const crest = (from + to) / 2;
  const readings = evenly(0, reachMm).map((t) => point<'section'>(t, heightAt(0, crest + side * t)));
  const fitted = fitArcs(readings, { toleranceMm: ARC_FIT_MM, startHeadingRad: 0, endHeadingRad: 0 });
  if (!fitted.ok) throw new Error(fitted.faults[0]?.found);
  return segments(fitted.value.chain).map((segment) => {
    const arc = arcOf(segment);
    if (!arc) throw new Error('a straight stretch in a long arch');
    return { toMm: segment.end.x, centre: arc.centre, radiusMm: arc.radiusMm, hollow: arc.sweepRad > 0 };
  });
}

function longArchThrough(heightAt: KnownDome['heightAt']): LongArch {
  const crestMm = (from + to) / 2;
  const half = (side: 1 | -1) => ({ kind: 'arcs', half: halfArch(heightAt, crestMm - from, side) }) as const;
  const riseMm = heightAt(0, crestMm);
  const form = { kind: 'circle', filletMm: 0 } as const;
  return { form, startMm: from, endMm: to, crestMm, riseMm, below: half(-1), above: half(1) };
}

/** The surface from what is read of a dome. */
function recovered({ heightAt }: KnownDome) {
  if (!width.ok || !frame.ok) throw new Error('no ground');
  const arch = longArchThrough(heightAt);
  const fullness = stations.map(({ yMm, halfWidthMm }) => {
    const section = evenly(-halfWidthMm, halfWidthMm).map((x) => point<'section'>(x, heightAt(x, yMm)));
    const fitted = fitCrossArch(section, { base: 'given', centreXMm: 0, halfWidthMm });
    if (!fitted.ok) throw new Error(fitted.faults[0]?.found);
    return { at: yMm, value: fitted.value.fullness.value };
  });
  const level = [from, to];
  const spline = fairSpline(
    {
      from,
      to,
      spans: FULLNESS_SPANS,
      values: [...fullness, ...level.map((at) => ({ at, value: 0 }))],
      slopes: level.map((at) => ({ at, slope: 0 })),
      stiffness: 1,
    },
    'check',
  );
  if (!spline.ok) throw new Error('no fullness');
  const loft = { longArch: arch, squaredHalfWidth: width.value, fullness: spline.value };
  const correction = fairCorrection(frame.value, loft);
  const readings = [
    ...stations.flatMap(({ yMm, halfWidthMm }) => evenly(0, halfWidthMm).map((x) => [x, yMm] as const)),
    ...evenly(from, to).map((y) => [0, y] as const),
  ].map(([x, y]) => [x, y, heightAt(x, y)] as const);
  const pull = heightPull(
    frame.value,
    { plate: 'top', channelZMm: 0, loft, correction },
    { heights: readings, plusMinus: READ_TO_MM },
  );
  if (!pull.ok) throw new Error(pull.faults[0]?.found);
  const drawn = pulled(correction, pull.value);
  return (x: number, y: number): number => loftAt(loft, x, y).zMm + netAt(drawn, x, y).zMm;
}

/** Largest and rms miss over the plate, off the sections. */
function missOf(dome: KnownDome, surface: (x: number, y: number) => number) {
  let [mostMm, sum, count] = [0, 0, 0];
  for (let y = from + 0.5; y < to; y += 1.7)
    for (let x = 0; x < 105; x += 1.9) {
      if (footOn(channel.line, x, y).distanceMm < 0) continue;
      const off = surface(x, y) - dome.heightAt(x, y);
      mostMm = Math.max(mostMm, Math.abs(off));
      sum += off * off;
      count++;
    }
  expect(count).toBeGreaterThan(5000);
  return { mostMm, rmsMm: Math.sqrt(sum / count) };
}

/** A dome held to what is reached of it, when it is one of these. */
function heldTo(reached: Readonly<Record<string, { readonly mostMm: number; readonly rmsMm: number }>>) {
  return KNOWN_DOMES.flatMap((dome) => {
    const limits = reached[dome.name];
    return limits ? [{ ...dome, ...limits }] : [];
  });
}

function expectReached(dome: ReturnType<typeof heldTo>[number]): void {
  const miss = missOf(dome, recovered(dome));
  expect(miss.mostMm).toBeLessThan(dome.mostMm);
  expect(miss.rmsMm).toBeLessThan(dome.rmsMm);
}

test.each(heldTo(MET))(
  '$name: within 0.10 mm at most and 0.03 mm rms, reached $mostMm and $rmsMm',
  (dome) => {
    expect(dome.mostMm).toBeLessThanOrEqual(TARGET.mostMm);
    expect(dome.rmsMm).toBeLessThanOrEqual(TARGET.rmsMm);
    expectReached(dome);
  },
);

test.each(heldTo(MISSED))(
  '$name: target 0.10 mm at most and 0.03 mm rms, reached $mostMm and $rmsMm',
  (dome) => {
    expectReached(dome);
  },
);

test('every dome is among them', () => {
  expect(heldTo({ ...MET, ...MISSED })).toHaveLength(KNOWN_DOMES.length);
});
