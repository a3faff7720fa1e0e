/**
 * Head templates, spiral and string paths, worked again by independent programs.
 *
 * Programs: SciPy 1.10 (scipy.optimize.brentq, scipy.integrate.quad) and Shapely 1.8 (GEOS), run by Debian's python3; 2022.
 * Claim: the spiral's radii are those that a bracketing root finder gives for height, eye and turns; the spine from the chin
 * to the throat is as long as quadrature over a dense run of its points says; the side template, its arcs drawn as short chords,
 * is one valid polygon that stays in one piece when 0.74 mm are taken off everywhere, its holes 1.49 mm or more apart; every
 * string keeps from the pegs it passes what is said.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { pointAlong, sampleChain } from '../src/core/curve/index.ts';
import { headDrawings } from '../src/core/drawing/index.ts';
import { instrumentOf } from '../test/fixtures/heads.ts';

const SCRIPT = `
import json, math, sys
from scipy.optimize import brentq
from shapely.geometry import LineString, Point, Polygon
job = json.load(sys.stdin)
s = job['sizes']
K = 3 + s['quarterTurns'] - 1
def radius(k, a):
    return s['eye'] * math.exp(a * (K - k) + s['beta'] * (K * K - k * k))
a = brentq(lambda x: radius(1, x) + radius(2, x) - s['height'], 1e-4, 1, xtol=1e-15, rtol=8.9e-16)
pts = job['spine']
# Richardson on chord sums: half the points and all of them.
def chords(p):
    return sum(math.dist(p[i], p[i + 1]) for i in range(len(p) - 1))
whole, half = chords(pts), chords(pts[::2])
plate = Polygon(job['edge'], job['holes'])
eroded = plate.buffer(-0.74, resolution=32)
pieces = [g for g in getattr(eroded, 'geoms', [eroded]) if g.area > 3]
rings = [Polygon(h) for h in job['holes']]
apart = min(rings[i].distance(rings[j]) for i in range(len(rings)) for j in range(i))
edge = min(r.distance(LineString(job['edge'] + job['edge'][:1])) for r in rings)
rooms = []
for string in job['strings']:
    line = LineString([string['from'], string['to']])
    ds = [line.distance(Point(p['at'])) - p['r'] - string['d'] / 2 for p in job['pegs'][:string['peg'] - 1]]
    rooms.append(min(ds) if ds else None)
print(json.dumps({'radii': [radius(k, a) for k in range(K + 1)], 'length': whole + (whole - half) / 3,
  'valid': plate.is_valid, 'pieces': len(pieces), 'apart': apart, 'edge': edge, 'rooms': rooms}))
`;

test.each([
  ['violin', 355],
  ['violin', 285],
  ['viola', 406],
  ['cello', 755],
] as const)('the head of a %s of %d mm is the same to SciPy and Shapely', (family, length) => {
  const instrument = instrumentOf(family, length);
  const { profile, widths, pegs, strings } = instrument.head;
  const [side] = headDrawings(instrument);
  if (!side) throw new Error('no template');
  const chords = (meaning: string) =>
    side.lines
      .filter((line) => line.meaning === meaning)
      .map(({ chain }) => sampleChain(chain, 0.0005).map(({ x, y }) => [x, y]));
  const { eyeRadiusMm, quarterTurns, quickening, scrollHeightMm } = profile.sizes;
  const STEPS = 20_000;
  const input = {
    sizes: { eye: eyeRadiusMm, quarterTurns, beta: quickening, height: scrollHeightMm },
    spine: Array.from({ length: STEPS + 1 }, (_, index) => {
      const { x, y } = pointAlong(profile.spine, (index / STEPS) * widths.bottomMm);
      return [x, y];
    }),
    edge: chords('cut')[0],
    holes: chords('cut-inside'),
    pegs: pegs.map(({ centre, largeMm }) => ({ at: [centre.x, centre.y], r: largeMm / 2 })),
    strings: strings.map(({ from, to, diameterMm, peg }) => ({
      from: [from.x, from.y],
      to: [to.x, to.y],
      d: diameterMm,
      peg,
    })),
  };
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(input),
    encoding: 'utf8',
  });
  expect(run.stderr).toBe('');
  const told = JSON.parse(run.stdout) as {
    readonly radii: number[];
    readonly length: number;
    readonly valid: boolean;
    readonly pieces: number;
    readonly apart: number;
    readonly edge: number;
    readonly rooms: (number | null)[];
  };
  for (const [k, mm] of told.radii.entries()) expect(profile.volute.arcs[k]?.radiusMm).toBeCloseTo(mm, 9);
  expect(told.length).toBeCloseTo(widths.bottomMm, 6);
  expect(told.valid).toBe(true);
  expect(told.pieces).toBe(1);
  expect(told.apart).toBeGreaterThan(1.49);
  expect(told.edge).toBeGreaterThan(1.49);
  for (const [index, mm] of told.rooms.entries()) {
    const room = strings[index]?.leastRoom;
    if (mm === null) expect(room).toBeNull();
    else expect(room?.mm).toBeCloseTo(mm, 9);
  }
});
