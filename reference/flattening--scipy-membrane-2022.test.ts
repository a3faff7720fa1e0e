/**
 * Surfaces that bend both ways, and a cone, laid flat.
 *
 * Source 1: a cone (textbook) is unrolled exactly: a place at slant s and round by φ comes to (s, φ cos α), α the slope. Claimed:
 * strain below 0.004 %, distances within 2 parts in 100 000.
 * Program: SciPy 1.10 and NumPy 1.24 (2022), scipy.optimize.least_squares, run by Debian's python3. Another route to the same sheet:
 * the elastic membrane itself (Green's strain on the surface's own metric, Poisson's ratio a third, free edges) brought to least
 * energy by Ritz's method, both flat coordinates polynomials of degree 9 in plan, Gauss quadrature; no grid, no ties, no heights
 * but the formula of the surface. Claimed: laid on each other, no place of the patch is farther off than 0.005 mm, on patches as
 * large as a violin's hole takes and more strained than any arch.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { type FlatPatch, flatPlace, flattenPatch, heightField } from '../src/core/surface/index.ts';

const between = (patch: FlatPatch, a: readonly [number, number], b: readonly [number, number]): number => {
  const [from, to] = [flatPlace(patch, ...a), flatPlace(patch, ...b)];
  if (!from || !to) throw new Error('off the patch');
  return Math.hypot(to.uMm - from.uMm, to.vMm - from.vMm);
};

test.each([
  [0.2, 90],
  [0.35, 120],
  [0.5, 150],
])('a cone that slopes by %s rad is unrolled', (slope, apexMm) => {
  const field = heightField(
    { fromXMm: 0, fromYMm: -40, stepMm: 2, columns: 31, rows: 41 },
    (x, y) => -Math.tan(slope) * Math.hypot(x + apexMm, y),
  );
  const patch = flattenPatch(field);
  expect(patch.strainMost).toBeLessThan(0.000_04);
  const unrolled = ([x, y]: readonly [number, number]) => {
    const slant = Math.hypot(x + apexMm, y) / Math.cos(slope);
    const turn = Math.atan2(y, x + apexMm) * Math.cos(slope);
    return [slant * Math.cos(turn), slant * Math.sin(turn)] as const;
  };
  for (const [a, b] of [
    [
      [1, -38],
      [58, 39],
    ],
    [
      [3, 39],
      [57, 38],
    ],
    [
      [0.5, -39],
      [0.5, 39],
    ],
    [
      [20.3, 11.7],
      [45.1, -23.3],
    ],
  ] as const) {
    const [p, q] = [unrolled(a), unrolled(b)];
    const trueMm = Math.hypot(p[0] - q[0], p[1] - q[1]);
    expect(Math.abs(between(patch, a, b) / trueMm - 1)).toBeLessThan(0.000_02);
  }
});

const SCRIPT = `
import json, sys
import numpy as np
from numpy.polynomial import legendre as L
from scipy.optimize import least_squares
job = json.load(sys.stdin)
x0, x1, y0, y1 = job['box']
DEG, NODES = 9, 20

def surface(x, y):
    """Height and both slopes, by formula."""
    if job['kind'] == 'ellipsoid':
        a, b, c = job['axes']
        q = np.sqrt(1 - (x / a) ** 2 - (y / b) ** 2)
        return -c * x / a ** 2 / q, -c * y / b ** 2 / q
    R, r = job['radii']
    rho = np.sqrt((x + R) ** 2 + y ** 2)
    t = rho - R
    f = -t / np.sqrt(r ** 2 - t ** 2)
    return f * (x + R) / rho, f * y / rho

t, w = L.leggauss(NODES)
X, Y = np.meshgrid((x0 + x1) / 2 + (x1 - x0) / 2 * t, (y0 + y1) / 2 + (y1 - y0) / 2 * t)
W = np.outer(w, w)
X, Y, W = X.ravel(), Y.ravel(), W.ravel()
powers = [(i, j) for i in range(DEG + 1) for j in range(DEG + 1 - i) if i + j > 0]
def basis(x, y):
    s, u = (2 * x - x0 - x1) / (x1 - x0), (2 * y - y0 - y1) / (y1 - y0)
    P = np.stack([L.legval(s, np.eye(DEG + 1)[i]) for i in range(DEG + 1)])
    Q = np.stack([L.legval(u, np.eye(DEG + 1)[i]) for i in range(DEG + 1)])
    dP = np.stack([L.legval(s, L.legder(np.eye(DEG + 1)[i])) for i in range(DEG + 1)]) * 2 / (x1 - x0)
    dQ = np.stack([L.legval(u, L.legder(np.eye(DEG + 1)[i])) for i in range(DEG + 1)]) * 2 / (y1 - y0)
    return (np.stack([P[i] * Q[j] for i, j in powers]), np.stack([dP[i] * Q[j] for i, j in powers]), np.stack([P[i] * dQ[j] for i, j in powers]))
_, BX, BY = basis(X, Y)
zx, zy = surface(X, Y)
# The surface's metric G = 1 + dz dz^T; strains in its own orthonormal frame by the inverse of its root.
n2 = zx ** 2 + zy ** 2
root = np.sqrt(1 + n2)
safe = np.where(n2 > 0, n2, 1)
k = np.where(n2 > 0, (1 / root - 1) / safe, -0.5)
h11, h12, h22 = 1 + k * zx * zx, k * zx * zy, 1 + k * zy * zy
dA = np.sqrt(W * root)
N = len(powers)
def misses(c):
    cu, cv = c[:N], c[N:]
    ux, uy, vx, vy = 1 + cu @ BX, cu @ BY, cv @ BX, 1 + cv @ BY
    a11, a12 = ux * h11 + uy * h12, ux * h12 + uy * h22
    b11, b12 = vx * h11 + vy * h12, vx * h12 + vy * h22
    e11 = (a11 ** 2 + b11 ** 2 - 1) / 2
    e22 = (a12 ** 2 + b12 ** 2 - 1) / 2
    e12 = (a11 * a12 + b11 * b12) / 2
    return np.concatenate([dA * (e11 + e22) / np.sqrt(2), dA * e11, dA * e22, dA * np.sqrt(2) * e12, 1e-6 * c])
found = least_squares(misses, np.zeros(2 * N), method='trf', xtol=1e-14, ftol=1e-14, gtol=1e-14, x_scale=1.0)
px, py = np.array(job['places']).T
B, _, _ = basis(px, py)
u, v = px + found.x[:N] @ B, py + found.x[N:] @ B
print(json.dumps({'places': np.stack([u, v], -1).tolist(), 'strain': float(np.max(np.abs(misses(found.x)[len(X):2*len(X)] / dA)))}))
`;

type Spot = readonly [number, number];

/** Both rows laid on each other as well as can be: how far the worst place is off. */
function apart(one: readonly Spot[], other: readonly Spot[]): number {
  const middle = (of: readonly Spot[]): Spot => [
    of.reduce((sum, [x]) => sum + x, 0) / of.length,
    of.reduce((sum, [, y]) => sum + y, 0) / of.length,
  ];
  const [p, q] = [middle(one), middle(other)];
  let [along, across] = [0, 0];
  for (const [i, [x, y]] of one.entries()) {
    const [u, v] = other[i] as Spot;
    along += (x - p[0]) * (u - q[0]) + (y - p[1]) * (v - q[1]);
    across += (y - p[1]) * (u - q[0]) - (x - p[0]) * (v - q[1]);
  }
  const far = Math.hypot(along, across);
  const [cos, sin] = [along / far, across / far];
  return Math.max(
    ...one.map(([x, y], i) => {
      const [u, v] = other[i] as Spot;
      const [a, b] = [u - q[0], v - q[1]];
      return Math.hypot(p[0] + cos * a - sin * b - x, p[1] + sin * a + cos * b - y);
    }),
  );
}

const BOX = { x: [0, 60], y: [-40, 40] } as const;
const PLACES: readonly Spot[] = [0, 7.3, 21, 33.7, 48, 60].flatMap((x) =>
  [-40, -27.1, -9, 0.4, 16, 33.3, 40].map((y): Spot => [x, y]),
);

test.each([
  {
    kind: 'ellipsoid',
    axes: [90, 120, 30],
    heightAt: (x: number, y: number) => 30 * Math.sqrt(1 - (x / 90) ** 2 - (y / 120) ** 2),
  },
  {
    kind: 'torus',
    radii: [160, 150],
    heightAt: (x: number, y: number) => Math.sqrt(150 ** 2 - (Math.hypot(x + 160, y) - 160) ** 2),
  },
])(
  'a patch of the $kind comes out as the membrane of SciPy has it',
  ({ heightAt, ...job }) => {
    const field = heightField({ fromXMm: 0, fromYMm: -40, stepMm: 2.5, columns: 25, rows: 33 }, heightAt);
    const patch = flattenPatch(field);
    const ran = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
      input: JSON.stringify({ ...job, box: [...BOX.x, ...BOX.y], places: PLACES }),
      encoding: 'utf8',
    });
    expect(ran.stderr).toBe('');
    const theirs = JSON.parse(ran.stdout) as { places: Spot[]; strain: number };
    const ours = PLACES.map(([x, y]): Spot => {
      const flat = flatPlace(patch, x, y);
      if (!flat) throw new Error('off the patch');
      return [flat.uMm, flat.vMm];
    });
    // The patches are strained, or the check would say nothing.
    expect(theirs.strain).toBeGreaterThan(0.001);
    expect(apart(theirs.places, ours)).toBeLessThan(0.005);
  },
  60_000,
);
