/**
 * Program: SciPy 1.10 (2022), scipy.integrate.fixed_quad, scipy.optimize.brentq and fsolve, run by Debian's python3.
 * Claim: ribs and linings laid flat, and where their trimmed ends leave both faces, agree with quadrature along numerically
 * displaced curves. The program gets the edge of the plate and the sizes only: it displaces points by numerical normals,
 * integrates the speed of the middle line by numerical derivatives, and finds ends by root search, where we use closed forms
 * of arcs. Lengths agree to 0.001 mm; the derivative by differences is good to less than that. Ribs that are drawn together meet
 * a little beyond the end of their outer faces: the program goes on straight there, our strips in their last bend. So the ends of
 * their inner faces agree to 0.01 mm only.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { draftDesign, type Family, halfOf, type ValueName } from '../src/core/design/index.ts';
import { planParts } from '../src/core/instrument/index.ts';
import { chosen } from '../src/core/quantity/index.ts';

const SCRIPT = `
import json, sys, math
import numpy as np
from scipy.integrate import fixed_quad
from scipy.optimize import brentq, fsolve

job = json.load(sys.stdin)
STEP = 1e-4
NODES, WEIGHTS = np.polynomial.legendre.leggauss(12)

class Section:
    """Points of an edge by distance along it, straight beyond both ends."""
    def __init__(self, rows):
        parts = []
        for (x0, y0, b), (x1, y1, _) in zip(rows, rows[1:]):
            chord = math.hypot(x1 - x0, y1 - y0)
            sweep = 4 * math.atan(b)
            length = chord if abs(b) < 1e-12 else chord * (sweep / 2) / math.sin(sweep / 2)
            parts.append((x0, y0, math.atan2(y1 - y0, x1 - x0) - sweep / 2, sweep / length, length))
        self.x, self.y, self.heading, self.turn, self.lengths = map(np.array, zip(*parts))
        self.knots = np.concatenate([[0.0], np.cumsum(self.lengths)])
        self.length = self.knots[-1]
    def at(self, s):
        """Points of an arc by Gauss quadrature of its heading, not by its centre."""
        s = np.asarray(s, float)
        k = np.clip(np.searchsorted(self.knots, s, side='right') - 1, 0, len(self.x) - 1)
        inside = np.clip(s - self.knots[k], 0.0, self.lengths[k])
        beyond = s - self.knots[k] - inside
        h = self.heading[k][..., None] + self.turn[k][..., None] * (inside[..., None] * (NODES + 1) / 2)
        end = self.heading[k] + self.turn[k] * inside
        px = self.x[k] + inside / 2 * (np.cos(h) @ WEIGHTS) + beyond * np.cos(end)
        py = self.y[k] + inside / 2 * (np.sin(h) @ WEIGHTS) + beyond * np.sin(end)
        return np.stack([px, py], -1)
    def inset(self, s, d):
        s = np.asarray(s, float)
        t = self.at(s + STEP) - self.at(s - STEP)
        t = t / np.hypot(t[..., 0], t[..., 1])[..., None]
        return self.at(s) + d * np.stack([-t[..., 1], t[..., 0]], -1)
    def run(self, s0, s1, d):
        """Length of the line at inset d between two places, arc by arc."""
        def speed(s):
            q = self.inset(s + STEP, d) - self.inset(s - STEP, d)
            return np.hypot(q[..., 0], q[..., 1]) / (2 * STEP)
        low, high = min(s0, s1), max(s0, s1)
        stops = [low, *[k for k in self.knots if low < k < high], high]
        total = 0.0
        for a, b in zip(stops, stops[1:]):
            # Differences that reach over a joint would mix two arcs; its neighbourhood is left to its arc.
            edge = min(4 * STEP, (b - a) / 4)
            total += fixed_quad(speed, a + edge, b - edge, n=20)[0] * (b - a) / (b - a - 2 * edge)
        return math.copysign(total, s1 - s0)

low, mid, up = (Section(job[n]) for n in ('lowerBout', 'cBout', 'upperBout'))
v = job['values']
o, t, c = v['overhang'], v['ribThickness'], v['cornerOverhang']

def end_of_corner(arriving, leaving):
    a, b = arriving.at(arriving.length), leaving.at(0.0)
    along = (b - a) / np.hypot(*(b - a))
    inward = np.array([-along[1], along[0]])
    return lambda p: (p - a) @ inward

def meets(section, d, depth_of, near):
    """Where the line at inset d reaches the end of the rib corner."""
    f = lambda s: depth_of(section.inset(s, d)) - c
    grid = np.linspace(near - 20, near + 20, 161)
    values = f(grid)
    roots = [brentq(f, a, b, xtol=1e-11) for a, b, fa, fb in zip(grid, grid[1:], values, values[1:]) if fa * fb <= 0]
    return min(roots, key=lambda s: abs(s - near))

def corner(arriving, leaving):
    depth_of = end_of_corner(arriving, leaving)
    outer = meets(arriving, o, depth_of, arriving.length), meets(leaving, o, depth_of, 0.0)
    inner = meets(arriving, o + t, depth_of, arriving.length), meets(leaving, o + t, depth_of, 0.0)
    def gap(u):
        return arriving.inset(u[0], o + t) - leaving.inset(u[1], o + t)
    tip, info, found, _ = fsolve(gap, inner, full_output=True, xtol=1e-12)
    pointed = found == 1 and depth_of(arriving.inset(tip[0], o + t)) > c
    return outer, (tuple(tip) if pointed else inner)

(lo, li), (uo, ui) = corner(low, mid), corner(mid, up)
d = o + t / 2
answer = {
    'lower': [low.run(0, lo[0], d), low.run(0, li[0], d)],
    'waist': [mid.run(lo[1], uo[0], d), mid.run(lo[1], li[1], d), mid.run(lo[1], ui[0], d)],
    'upper': [up.run(uo[1], up.length, d), up.run(uo[1], ui[1], d)],
}

# Linings: on the inner face, from block to block.
g, lt = o + t, v['liningThickness']
def along(section, start, mm, d):
    """The place so far along the line at inset d from a start; mm may be negative."""
    s = start + mm
    for _ in range(30):
        miss = section.run(start, s, d) - mm
        s -= miss
        if abs(miss) < 1e-8: break
    return s
def crossing(section, d, axis, value, near, span):
    f = lambda s: section.inset(s, d)[..., axis] - value
    grid = np.linspace(near - span, near + span, 81)
    vals = f(grid)
    roots = [brentq(f, a, b, xtol=1e-11) for a, b, fa, fb in zip(grid, grid[1:], vals, vals[1:]) if fa * fb < 0]
    return min(roots, key=lambda s: abs(s - near))
m = g + lt / 2
def ends(section, glue0, free0, glue1, free1):
    at = lambda s: section.run(glue0, s, m)
    return max(at(glue1), at(free1)) - min(0.0, at(free0))
half = v['lowerBlockWidth'] / 2
s0 = crossing(low, g, 0, half, half, 12)
f0 = crossing(low, g + lt, 0, half, half, 12)
s1 = along(low, li[0], -v['lowerCornerBlockAlongBout'], g)
f1 = crossing(low, g + lt, 1, low.inset(s1, g)[1], s1, 6)
answer['lowerLining'] = ends(low, s0, f0, s1, f1)
a0 = along(mid, li[1], v['lowerCornerBlockAlongWaist'], g)
a1 = along(mid, ui[0], -v['upperCornerBlockAlongWaist'], g)
q0 = crossing(mid, g + lt, 0, mid.inset(a0, g)[0], a0, 8)
q1 = crossing(mid, g + lt, 0, mid.inset(a1, g)[0], a1, 8)
r0 = along(mid, q0, -v['liningLetIn'], g + lt)
r1 = along(mid, q1, v['liningLetIn'], g + lt)
answer['waistLining'] = mid.run(r0, r1, m)
print(json.dumps(answer))
`;

const VALUES = [
  'overhang',
  'cornerOverhang',
  'ribThickness',
  'liningThickness',
  'liningLetIn',
  'lowerBlockWidth',
  'lowerCornerBlockAlongBout',
  'lowerCornerBlockAlongWaist',
  'upperCornerBlockAlongWaist',
] as const;

interface Answer {
  readonly lower: readonly [number, number];
  readonly waist: readonly [number, number, number];
  readonly upper: readonly [number, number];
  readonly lowerLining: number;
  readonly waistLining: number;
}

function bodyOf(
  family: Family,
  lengthMm: number,
  change: Partial<Record<ValueName, number>>,
  corners: 'drawn-together' | 'parallel',
) {
  const mm = (value: number) => ({ value, unit: 'mm', origin: chosen('test') }) as const;
  const values = Object.fromEntries(
    Object.entries({ bodyLength: lengthMm, ...change }).map(([name, value]) => [name, mm(value)]),
  );
  const drafted = draftDesign({ family, name: 'sample', values, ribs: { joint: 'mitred', corners } });
  if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
  const { design } = drafted.value;
  const outline = halfOf(design);
  if (!outline.ok) throw new Error(JSON.stringify(outline.faults));
  const parts = planParts(design, outline.value.half);
  if (!parts.ok) throw new Error(JSON.stringify(parts.faults));
  return { design, parts: parts.value };
}

test.each([
  ['violin', 355, {}, 'parallel'],
  ['violin', 355, { overhang: 3.1 }, 'parallel'],
  ['violin', 280, {}, 'parallel'],
  ['viola', 380, {}, 'parallel'],
  ['viola', 440, { overhang: 3.2 }, 'parallel'],
  ['cello', 755, {}, 'parallel'],
  ['violin', 355, {}, 'drawn-together'],
  ['viola', 400, {}, 'drawn-together'],
  ['cello', 755, {}, 'drawn-together'],
] as const)(
  'ribs and linings of a %s of %d mm with %j and corners %s are as long as quadrature has them',
  (family, length, change, corners) => {
    const { design, parts } = bodyOf(family, length, change, corners);
    // Ribs drawn together are no parallels of the edge: their outer face itself stands for it, with no overhang.
    const isParallel = corners === 'parallel';
    const rows = Object.fromEntries(
      Object.entries(isParallel ? parts.outline.half : parts.ribs.outer.sections).map(
        ([name, { vertices }]) => [
          name,
          (vertices as readonly { x: number; y: number; bulge: number }[]).map(({ x, y, bulge }) => [
            x,
            y,
            bulge,
          ]),
        ],
      ),
    );
    const values = {
      ...Object.fromEntries(VALUES.map((name) => [name, design.values[name]?.value])),
      ...(!isParallel && { overhang: 0, cornerOverhang: 0 }),
    };
    const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], { input: JSON.stringify({ ...rows, values }) });
    if (run.status !== 0) throw new Error(`python3 with SciPy is needed: ${run.stderr}`);
    const known = JSON.parse(run.stdout.toString()) as Answer;
    const { lowerBout, cBout, upperBout } = parts.ribs;
    const within = (found: number, expected: number | undefined, mm = 0.001): void =>
      expect(Math.abs(found - (expected ?? Number.NaN))).toBeLessThan(mm);
    const endMm = isParallel ? 0.001 : 0.01;
    within(lowerBout.developed.lengthMm, known.lower[0]);
    within(lowerBout.piece.to.innerMm, known.lower[1], endMm);
    within(cBout.developed.lengthMm, known.waist[0]);
    within(cBout.piece.from.innerMm, known.waist[1], endMm);
    within(cBout.piece.to.innerMm, known.waist[2], endMm);
    within(upperBout.developed.lengthMm, known.upper[0]);
    within(upperBout.piece.from.innerMm, known.upper[1], endMm);
    within(parts.linings.lower.lengthMm, known.lowerLining);
    within(parts.linings.waist.lengthMm, known.waistLining);
    expect(parts.ribs.joints.lower.seam !== undefined).toBe(!isParallel || Object.keys(change).length > 0);
  },
);
