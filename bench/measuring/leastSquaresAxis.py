"""Mirror axis of two halves by plain least squares: the peer of bench/axis.ts.

Reads one JSON list of bodies from standard input, each {"left": [[x, y]...], "right": [[x, y]...], "start": [x, y, heading]},
and writes a JSON list of {"through": [x, y], "heading": rad, "ms": milliseconds of the fit alone}.
"""

import json
import sys
import time

import numpy as np
from scipy.optimize import least_squares
from scipy.spatial import cKDTree


def fit(left, right, start):
    x0, y0, heading0 = start
    tree = cKDTree(right)
    tangent = np.gradient(right, axis=0)
    tangent /= np.linalg.norm(tangent, axis=1)[:, None]
    normal = np.column_stack([tangent[:, 1], -tangent[:, 0]])

    def gaps(u):
        heading = heading0 - u[1]
        along = np.array([np.cos(heading), np.sin(heading)])
        through = np.array([x0, y0]) + u[0] * np.array([np.sin(heading0), -np.cos(heading0)])
        off = left - through
        mirrored = through + 2 * np.outer(off @ along, along) - off
        _, nearest = tree.query(mirrored)
        return np.sum((mirrored - right[nearest]) * normal[nearest], axis=1)

    found = least_squares(gaps, [0.0, 0.0], method="lm")
    across, turn = found.x
    through = [x0 + across * np.sin(heading0), y0 - across * np.cos(heading0)]
    return through, heading0 - turn


answers = []
for body in json.load(sys.stdin):
    halves = [np.array(body[name]) for name in ("left", "right")]
    fit(*halves, body["start"])
    spent = []
    for _ in range(5):
        begun = time.perf_counter()
        through, heading = fit(*halves, body["start"])
        spent.append(1000 * (time.perf_counter() - begun))
    answers.append({"through": list(through), "heading": heading, "ms": sorted(spent)[2]})
json.dump(answers, sys.stdout)
