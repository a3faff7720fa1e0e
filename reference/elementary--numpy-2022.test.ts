/**
 * Our elementary functions against a longer kind of number.
 *
 * Program: NumPy's long double (C. R. Harris and others, Array programming with NumPy, 2020), 64 bits of mantissa where the
 * C library has them, run by Debian's python3; its own last place is 1/2048 of ours.
 * Claim: over the ranges that the rooms use, no value is farther from the true one than the units in the last place
 * that its docstring gives.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import {
  acos,
  asin,
  atan,
  atan2,
  cbrt,
  cos,
  exp,
  expm1,
  hypot,
  log,
  power,
  seededRandom,
  sin,
  tan,
  tanh,
} from '../src/core/base/index.ts';

const TIMES = 20_000;

/** Name in NumPy, ours, least and most of each argument, units in the last place. */
const FUNCTIONS = [
  ['sin', sin, [[-40, 40]], 1],
  ['cos', cos, [[-40, 40]], 1],
  ['tan', tan, [[-40, 40]], 2.5],
  ['arcsin', asin, [[-1, 1]], 3],
  ['arccos', acos, [[-1, 1]], 3],
  ['arctan', atan, [[-30, 30]], 1.5],
  [
    'arctan2',
    atan2,
    [
      [-200, 200],
      [-200, 200],
    ],
    2,
  ],
  ['exp', exp, [[-40, 40]], 1],
  ['expm1', expm1, [[-2, 2]], 4],
  ['log', log, [[0, 1000]], 1],
  ['tanh', tanh, [[-3, 3]], 3],
  ['cbrt', cbrt, [[-100, 100]], 1],
  [
    'hypot',
    hypot,
    [
      [-400, 400],
      [-400, 400],
    ],
    1.5,
  ],
  [
    'power',
    power,
    [
      [0.1, 20],
      [-4, 4],
    ],
    17,
  ],
] as const;

const SCRIPT = `
import json, sys
import numpy as np
long = np.longdouble
assert np.finfo(long).nmant >= 63, "no longer numbers on this machine"
off = {}
for name, given, got in json.load(sys.stdin):
    true = getattr(np, name)(*[np.array(one).astype(long) for one in given])
    last = np.spacing(np.abs(true.astype(float))).astype(long)
    off[name] = float(np.max(np.abs(np.array(got).astype(long) - true) / last))
print(json.dumps(off))
`;

test('every elementary function keeps within the last places that it promises', () => {
  const random = seededRandom(7);
  const asked = FUNCTIONS.map(([name, ours, ranges]) => {
    const given = ranges.map(([least, most]) =>
      Array.from(
        { length: TIMES },
        (_, k) => (least + (most - least) * random()) * (k % 4 === 0 && least < 0 ? random() ** 2 : 1),
      ),
    );
    const call = ours as (...values: readonly number[]) => number;
    return [name, given, (given[0] as number[]).map((_, k) => call(...given.map((one) => one[k] as number)))];
  });
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(asked),
    encoding: 'utf8',
  });
  expect(run.stderr).toBe('');
  const off = JSON.parse(run.stdout) as Record<string, number>;
  for (const [name, , , most] of FUNCTIONS)
    expect([name, (off[name] as number) <= most ? 'kept' : off[name]]).toEqual([name, 'kept']);
});
