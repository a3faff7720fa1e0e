/**
 * The set of a neck solved by another program, by another way.
 *
 * Program: SciPy, scipy.optimize.brentq and least_squares, run by Debian's python3. It knows no closed form: it turns a board
 * (points on its crown line, its thickness from side and round) about the overstand until the crown over the bridge has the
 * projection, and lays the strings through two points over the board. Over-determined sets it fits by least squares with its own
 * derivatives.
 * Claim: over the three families and wide ranges (a fixed seed) both agree on angle to 0.0001°, on heights to 0.001 mm; of
 * over-determined input both find the same nearest set to 0.002 mm.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { seededRandom } from '../src/core/base/index.ts';
import { type NeckSetSizes, neckSet } from '../src/core/instrument/neck/neckSet.ts';
import { settledNeck } from '../src/core/instrument/neck/settledNeck.ts';
import { CELLO_NECK, VIOLA_NECK, VIOLIN_NECK } from '../test/fixtures/neckSizes.ts';

const SCRIPT = `
import json, sys
import numpy as np
from scipy.optimize import brentq, least_squares
def thick(b, s):
    half = (b['widthAtNutMm'] + (b['widthAtEndMm'] - b['widthAtNutMm']) * s / b['lengthMm']) / 2
    return b['sideMm'] + b['radiusMm'] - np.sqrt(b['radiusMm'] ** 2 - half ** 2)
def place(n, o, th, s, up):
    d = np.array([np.cos(th), np.sin(th)]); u = np.array([-np.sin(th), np.cos(th)])
    return np.array([0.0, o]) + (s - n) * d + up * u
def crown_at(m, o, th, x):
    # the board carried on as it is: its crown where that comes over x
    s = brentq(lambda s: place(m['neckStopMm'], o, th, s, thick(m['board'], s))[0] - x, m['neckStopMm'] + 0.8 * x, m['neckStopMm'] + 1.2 * x)
    return place(m['neckStopMm'], o, th, s, thick(m['board'], s))[1]
def solved(m, o, P):
    S, A = m['bodyStopMm'], m['archAtBridgeMm']
    th = brentq(lambda t: crown_at(m, o, t, S) - A - P, -0.05, 0.3, xtol=1e-14)
    b = m['board']; L = b['lengthMm']; N = m['neckStopMm']
    end = place(N, o, th, L, thick(b, L))
    nut = place(N, o, th, 0, thick(b, 0) + m['stringsAtNutMm'])
    over = place(N, o, th, L, thick(b, L) + m['stringsAtBoardEndMm'])
    k = np.polyfit([nut[0], over[0]], [nut[1], over[1]], 1)
    top = np.polyval(k, S)
    return dict(th=np.degrees(th), E=end[1] - m['archAtBoardEndMm'], H=top - A, L=np.hypot(S - nut[0], top - nut[1]))
out = []
for m in json.load(sys.stdin):
    r = solved(m, m['overstandMm'], m['projectionMm'])
    g = m['given']
    def miss(u):
        q = solved(m, u[0], u[1])
        return [(u[0] - g['overstand']) / .3, (u[1] - g['projection']) / .5,
                (q['th'] - g['neckAngle']) / .15, (q['E'] - g['boardEndHeight']) / .5]
    f = least_squares(miss, [m['overstandMm'], m['projectionMm']], xtol=1e-13, ftol=1e-13, gtol=1e-13)
    out.append([r['th'], r['E'], r['H'], r['L'], *f.x.tolist(), float(2 * f.cost)])
print(json.dumps(out))
`;

const random = seededRandom(4711);
const spread = (by: number): number => by * (2 * random() - 1);
const CASES = [VIOLIN_NECK, VIOLA_NECK, CELLO_NECK].flatMap((model) =>
  Array.from({ length: 8 }, () => {
    const sizes: NeckSetSizes = {
      ...model,
      overstandMm: model.overstandMm * (1 + spread(0.3)),
      projectionMm: model.projectionMm * (1 + spread(0.1)),
      neckStopMm: model.neckStopMm * (1 + spread(0.05)),
      bodyStopMm: model.bodyStopMm * (1 + spread(0.05)),
      board: { ...model.board, radiusMm: model.board.radiusMm * (1 + spread(0.1)) },
    };
    const given = {
      overstand: sizes.overstandMm + spread(1),
      projection: sizes.projectionMm + spread(2),
      neckAngle: 6 + spread(1),
      boardEndHeight: model.projectionMm * 0.76 + spread(2),
    };
    return { sizes, given };
  }),
);

test('both come to the same neck, and to the same nearest set of four numbers that disagree', () => {
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(CASES.map(({ sizes, given }) => ({ ...sizes, given }))),
    encoding: 'utf8',
  });
  expect(run.stderr).toBe('');
  const theirs = JSON.parse(run.stdout) as number[][];
  CASES.forEach(({ sizes, given }, at) => {
    const [angle, boardEnd, bridge, strings, overstand, projection, sum] = theirs[at] as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const set = neckSet(sizes);
    if (!set.ok) throw new Error(JSON.stringify(set.faults));
    expect(Math.abs((set.value.neckAngleRad * 180) / Math.PI - angle)).toBeLessThan(0.0001);
    expect(Math.abs(set.value.boardEndOverTopMm - boardEnd)).toBeLessThan(0.001);
    expect(Math.abs(set.value.bridgeHeightMm - bridge)).toBeLessThan(0.001);
    expect(Math.abs(set.value.stringLengthMm - strings)).toBeLessThan(0.001);
    const SPREADS = { overstand: 0.3, projection: 0.5, neckAngle: 0.15, boardEndHeight: 0.5 } as const;
    const settled = settledNeck(
      sizes,
      (['overstand', 'projection', 'neckAngle', 'boardEndHeight'] as const).map((name) => ({
        name,
        value: given[name],
        spread: SPREADS[name],
        isGiven: true,
      })),
    );
    if (!settled.ok) throw new Error(JSON.stringify(settled.faults));
    expect(Math.abs(settled.value.sizes.overstandMm - overstand)).toBeLessThan(0.002);
    expect(Math.abs(settled.value.sizes.projectionMm - projection)).toBeLessThan(0.002);
    expect(Math.abs((settled.value.questions[0]?.sumOfSquares ?? 0) / sum - 1)).toBeLessThan(0.001);
  });
});
