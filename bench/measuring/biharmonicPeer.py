"""A plate bent least over a grid, by SciPy's sparse LU, timed: what is held, and to what height, comes as doubles on the standard input."""

import json
import sys
import time

import numpy as np
from scipy.sparse import diags, identity, kron
from scipy.sparse.linalg import splu

rows, columns, rounds = (int(word) for word in sys.argv[1:4])
held = np.frombuffer(sys.stdin.buffer.read()).reshape(rows, columns)


def second(count):
    """Second difference along a line of places, 0 at its ends."""
    return diags([1, -2, 1], [0, 1, 2], shape=(count - 2, count))


def first(count):
    return diags([-1, 1], [0, 1], shape=(count - 1, count))


xx = kron(identity(rows), second(columns))
yy = kron(second(rows), identity(columns))
xy = kron(first(rows), first(columns))
energy = (xx.T @ xx + yy.T @ yy + 2 * xy.T @ xy).tocsr()
fixed = np.isfinite(held).ravel()
free = ~fixed
values = held.ravel()[fixed]
inner = energy[free][:, free].tocsc()
right = -energy[free][:, fixed] @ values
factors, solves = [], []
for turn in range(rounds):
    start = time.perf_counter()
    lu = splu(inner)
    middle = time.perf_counter()
    z = lu.solve(right)
    factors.append(1000 * (middle - start))
    solves.append(1000 * (time.perf_counter() - middle))
print(json.dumps({"unknowns": int(free.sum()), "factorMs": sorted(factors)[rounds // 2], "solveMs": sorted(solves)[rounds // 2]}))
