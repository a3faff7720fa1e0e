/**
 * Measured cross arches fitted by another program.
 *
 * Program: SciPy, scipy.optimize.least_squares (trust region reflective), run by Debian's python3, on the parametric curve
 * x = a·ψ + b·sin ψ, z = b·(1 + cos ψ) read between 20 001 of its points, with the fullness ζ + 4 f ζ (1 − ζ) added, turned and shifted.
 * Claim: on the same noisy readings (a fixed seed, 0.05 mm, tilted, off centre) both come to the same arch: centre and half width to
 * 0.01 mm, rise and base to 0.002 mm, fullness to 0.0003, tilt to 0.00005, rms to 0.0005 mm.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { seededNormal, seededRandom } from '../src/core/base/index.ts';
import { fitCrossArch } from '../src/core/surface/index.ts';
import { plainCycloid } from '../test/fixtures/plainArches.ts';

const ARCHES = [
  { half: 47.5, rise: 12, fullness: 0.02 },
  { half: 96, rise: 7.4, fullness: 0.05 },
  { half: 76, rise: 7.7, fullness: -0.04 },
  { half: 155, rise: 21, fullness: 0.01 },
] as const;

/** Readings that stop at the channel's lows, so that both programs have the same of them. */
const READINGS = ARCHES.map(({ half, rise, fullness }, index) => {
  const random = seededRandom(70 + index);
  const arch = plainCycloid(half, rise, fullness);
  const [c, s] = [Math.cos(0.008), Math.sin(0.008)];
  return Array.from({ length: 81 }, (_, i): [number, number] => {
    const x = 0.985 * half * (i / 40 - 1);
    const z = arch(x) + 0.05 * seededNormal(random);
    return [3 + x * c - z * s, 2.8 + x * s + z * c];
  });
});

const SCRIPT = `
import json, sys
import numpy as np
from scipy.optimize import least_squares
psi = np.linspace(0, np.pi, 20001)
def residuals(p, x, y):
    cx, w, h, f, base, t = p
    c, s = np.cos(t), np.sin(t)
    along = np.abs((x - cx) * c + (y - base) * s)
    height = (y - base) * c - (x - cx) * s
    a, b = w / np.pi, h / 2
    zeta = np.interp(along, a * psi + b * np.sin(psi), (1 + np.cos(psi)) / 2)
    return height - h * (zeta + 4 * f * zeta * (1 - zeta))
out = []
for points in json.load(sys.stdin):
    q = np.array(points)
    x, y = q[:, 0], q[:, 1]
    start = [(x[0] + x[-1]) / 2, (x[-1] - x[0]) / 2 * 1.02, y.max() - y.min(), 0, y.min(), 0]
    best = least_squares(residuals, start, args=(x, y), x_scale=[1, 1, 1, 0.01, 1, 0.01],
                         diff_step=1e-5, xtol=1e-14, ftol=1e-14, gtol=1e-14, max_nfev=2000)
    out.append([*best.x.tolist(), float(np.sqrt(np.mean(best.fun ** 2)))])
print(json.dumps(out))
`;

test('both come to the same arch', () => {
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(READINGS),
    encoding: 'utf8',
  });
  expect(run.stderr).toBe('');
  const theirs = JSON.parse(run.stdout) as number[][];
  expect(theirs.length).toBe(ARCHES.length);
  READINGS.forEach((readings, index) => {
    const ours = fitCrossArch(
      readings.map(([x, y]) => ({ x, y })),
      { base: 'free' },
    );
    if (!ours.ok) throw new Error(ours.faults[0]!.found);
    const [centre, half, rise, fullness, base, tilt, rms] = theirs[index]!;
    const { value } = ours;
    expect(Math.abs(value.centreXMm.value - centre!)).toBeLessThan(0.01);
    expect(Math.abs(value.halfWidthMm.value - half!)).toBeLessThan(0.01);
    expect(Math.abs(value.riseMm.value - rise!)).toBeLessThan(0.002);
    expect(Math.abs(value.fullness.value - fullness!)).toBeLessThan(0.0003);
    expect(Math.abs(value.baseMm.value - base!)).toBeLessThan(0.002);
    expect(Math.abs(value.tiltRad.value - tilt!)).toBeLessThan(0.00005);
    expect(Math.abs(value.rmsMm - rms!)).toBeLessThan(0.0005);
  });
});
