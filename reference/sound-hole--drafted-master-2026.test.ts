import { describe, expect, it } from 'vitest';
import { seededRandom } from '../src/core/base/index.ts';
import {
  arcOf,
  areaOf,
  headingOn,
  offsetChain,
  segments,
  selfCrossings,
  wrapAngle,
} from '../src/core/curve/index.ts';
import { type DrawnSizes, drawHole } from '../src/core/instrument/soundHoles/draftHole.ts';

/**
 * Check values of a prototype of the same construction, written apart from this code and fitted to twelve holes of six instruments
 * on photographs. They prove that the construction is computed alike twice, not that its defaults are right.
 */
const MASTER: DrawnSizes = {
  lengthMm: 75,
  upperEyesApartMm: 42,
  upperEyeMm: 6.9,
  lowerEyeMm: 10.2,
  turnsApartMm: 6.9,
  tipGapMm: 1,
};

function scaled(k: number, upperEyesApartMm: number): DrawnSizes {
  return {
    lengthMm: 75 * k,
    upperEyesApartMm,
    upperEyeMm: 6.9 * k,
    lowerEyeMm: 10.2 * k,
    turnsApartMm: 6.9 * k,
    tipGapMm: k,
  };
}

function drafted(sizes: DrawnSizes) {
  const hole = drawHole(sizes);
  if (!hole.ok) throw new Error(JSON.stringify(hole.faults));
  return hole.value;
}

/** Ra up, low; Rb up, low; area; perimeter; wing ends; passages; tip gaps; eye distance. */
const ROWS = [
  ['master', MASTER, [201, 169.9, 8.73, 11.94, 618, 252.5, 6.41, 7.93, 3.45, 5.03, 1, 1.4, 66.02]],
  [
    'violin',
    scaled(0.9733, 42),
    [195.6, 165.4, 8.5, 11.62, 585.4, 245.7, 6.24, 7.72, 3.35, 4.89, 0.97, 1.36, 64.26],
  ],
  [
    'viola',
    scaled(0.97 * 1.04, 48),
    [202.8, 171.4, 8.81, 12.05, 628.9, 254.7, 6.46, 8, 3.48, 5.07, 1.01, 1.41, 66.6],
  ],
  [
    'cello',
    scaled(0.97 * 1.8267, 96),
    [356.2, 301.1, 15.47, 21.16, 1940.2, 447.4, 11.35, 14.05, 6.11, 8.91, 1.77, 2.48, 116.99],
  ],
] as const;

describe('the drafted hole against its prototype', () => {
  it.each(ROWS)('%s', (_, sizes, want) => {
    const { upper, lower, areaMm2, perimeterMm, eyesApartMm } = drafted(sizes);
    const found = [
      upper.stemRadiusMm,
      lower.stemRadiusMm,
      upper.hookRadiusMm,
      lower.hookRadiusMm,
      areaMm2,
      perimeterMm,
      upper.wingEndMm,
      lower.wingEndMm,
      upper.passageMm,
      lower.passageMm,
      upper.tipGapMm,
      lower.tipGapMm,
      eyesApartMm,
    ];
    const off = found.map((value, index) => Math.abs(value - (want[index] ?? Number.NaN)));
    // The table is rounded to its last figure: 0.05 for radii, areas and lengths over 100, 0.005 for the rest.
    for (const [index, mm] of off.entries())
      expect(mm, `figure ${index}`).toBeLessThan((want[index] ?? 0) > 100 ? 0.06 : 0.0061);
  });

  it('has the arcs of the master', () => {
    const arcs = segments(drafted(MASTER).plain).flatMap((segment) => arcOf(segment) ?? []);
    const want = [
      [-155.601, -11.112, 201.001, 7.4],
      [12.416, 17.295, 30.6, 28.1],
      [29.719, 30.668, 8.732, 146.3],
      [24.45, 30.3, 3.45, 251],
      [19.119, 24.61, 17.335, -42.96],
      [-87.065, 6.374, 125.074, -8.54],
      [207.887, 12.553, 169.942, 7.88],
      [80.957, -7.744, 41.4, 23.62],
      [56.167, -23.658, 11.942, 150.3],
      [63, -23.3, 5.1, 249],
      [65.798, -18.259, 18.557, -46.75],
      [151.611, 0.69, 106.437, -10.25],
    ];
    expect(arcs).toHaveLength(12);
    for (const [index, [x, y, radius, sweep]] of want.entries()) {
      const arc = arcs[index];
      expect(arc?.centre.x).toBeCloseTo(x ?? 0, 2);
      expect(arc?.centre.y).toBeCloseTo(y ?? 0, 2);
      expect(arc?.radiusMm).toBeCloseTo(radius ?? 0, 2);
      expect(Math.abs(((arc?.sweepRad ?? 0) * 180) / Math.PI - (sweep ?? 0))).toBeLessThan(0.06);
    }
  });

  it('turns a corner at the wings only', () => {
    const parts = segments(drafted(MASTER).plain);
    const turnsDeg = parts.map((part, index) => {
      const next = parts[(index + 1) % parts.length] ?? part;
      return (Math.abs(wrapAngle(headingOn(next, 0) - headingOn(part, 1))) * 180) / Math.PI;
    });
    const corners = turnsDeg.filter((turn) => turn > 0.001);
    expect(corners).toHaveLength(4);
    for (const [index, turn] of [116.9, 85.4, 112.3, 80.5].entries())
      expect(corners[index]).toBeCloseTo(turn, 1);
  });
});

describe('sound holes of chance', () => {
  const random = seededRandom(20_260_731);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const cases = Array.from({ length: 400 }, (): DrawnSizes => {
    const lengthMm = between(45, 145);
    const k = lengthMm / 75;
    return {
      lengthMm,
      upperEyesApartMm: between(34, 52) * k,
      upperEyeMm: between(5.8, 7.6) * k,
      lowerEyeMm: between(8.4, 12.2) * k,
      turnsApartMm: between(5.4, 7.6) * k,
      tipGapMm: between(0.8, 2) * k,
    };
  });

  it('are closed simple lines that run anticlockwise, with an area between the plain and the nicked one', () => {
    let draftedCount = 0;
    for (const sizes of cases) {
      const hole = drawHole(sizes);
      if (!hole.ok) continue;
      draftedCount++;
      const { chain, plain, areaMm2, innerNick, outerNick } = hole.value;
      expect(chain.closed).toBe(true);
      expect(selfCrossings(chain)).toHaveLength(0);
      expect(areaOf(chain)).toBeGreaterThan(areaOf(plain));
      expect(areaMm2).toBeGreaterThan(0);
      expect(innerNick.foot.y).toBeCloseTo(0, 6);
      expect(outerNick.foot.y).toBeGreaterThan(0);
      expect(hole.value.upper.tipGapMm).toBeCloseTo(sizes.tipGapMm, 2);
    }
    // One in a hundred may be refused, with a reason: drawn at once at several ends of what was measured.
    expect(draftedCount).toBeGreaterThanOrEqual(0.99 * cases.length);
  });

  it('leave wood of 1.5 mm or more everywhere between their arms', () => {
    for (const sizes of cases.filter(({ lengthMm }) => lengthMm > 60).slice(0, 80)) {
      const hole = drawHole(sizes);
      if (!hole.ok) continue;
      // Wood narrower than twice the offset would close off a hollow, which comes back as a loop of its own.
      expect(offsetChain(hole.value.chain, 0.75, { join: 'round' })).toHaveLength(1);
    }
  });
});
