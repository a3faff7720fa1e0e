/**
 * The curtate cycloid against its own parametric definition, computed another way.
 *
 * Program: SciPy, scipy.optimize.brentq (bracketing root finder, R. P. Brent, Algorithms for Minimization without
 * Derivatives, 1973), run by Debian's python3; and, inside this test, a table of a million parameter steps.
 * Claim: our height at x, found by a guarded Newton step on the angle, is the height of the parametric curve
 * x = a·φ − b·sin φ, z = b − b·cos φ (trough at φ = 0) at the same x, to 1e-10 mm against SciPy, and to the
 * interpolation bound of the table against the table.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { curtateCycloid, cycloidHeight } from '../src/core/surface/index.ts';

const ARCHES = [
  [140, 14.5],
  [96, 13.8],
  [95, 12],
  [425, 23],
  [120, 37.5],
] as const;

const SCRIPT = `
import json, math, sys
from scipy.optimize import brentq
out = []
for width, rise in json.load(sys.stdin):
    a, b = width / (2 * math.pi), rise / 2
    row = []
    for k in range(201):
        x = width / 2 * k / 200
        phi = brentq(lambda p: a * p - b * math.sin(p) - (width / 2 - x), -0.5, math.pi + 0.5, xtol=1e-15, rtol=8.9e-16)
        row.append([x, b - b * math.cos(phi)])
    out.append(row)
print(json.dumps(out))
`;

function heightOf(widthMm: number, riseMm: number): (xMm: number) => number {
  const arch = curtateCycloid(widthMm, riseMm);
  if (!arch.ok) throw new Error('refused');
  return (xMm) => cycloidHeight(arch.value, xMm);
}

test('every height is the one that a bracketing root finder gives', () => {
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(ARCHES),
    encoding: 'utf8',
  });
  expect(run.stderr).toBe('');
  const rows = JSON.parse(run.stdout) as [number, number][][];
  expect(rows.length).toBe(ARCHES.length);
  let worst = 0;
  rows.forEach((row, index) => {
    const [widthMm, riseMm] = ARCHES[index] ?? [0, 0];
    const height = heightOf(widthMm, riseMm);
    for (const [x, z] of row) worst = Math.max(worst, Math.abs(height(x) - z));
  });
  expect(worst).toBeLessThan(1e-10);
});

test.each(ARCHES)(
  'a fine table of the parametric curve, %d mm wide and %d mm high, is met between its points',
  (w, h) => {
    const steps = 1_000_000;
    const a = w / (2 * Math.PI);
    const b = h / 2;
    const height = heightOf(w, h);
    let before = { x: w / 2, z: 0 };
    let worst = 0;
    for (let k = 1; k <= steps; k++) {
      const phi = (Math.PI * k) / steps;
      const at = { x: w / 2 - (a * phi - b * Math.sin(phi)), z: b - b * Math.cos(phi) };
      // Between two points of the table, half way along the chord; every thousandth is enough.
      if (k % 1000 === 0) {
        const middle = height((before.x + at.x) / 2);
        worst = Math.max(worst, Math.abs(middle - (before.z + at.z) / 2));
      }
      before = at;
    }
    // Chord error: step² / 8 times the greatest bend, here at the channel, below 1/(8 · 2 mm) × (step in x)².
    expect(worst).toBeLessThan((w / steps) ** 2);
  },
);
