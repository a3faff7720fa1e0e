"""Volume, centre and moments of a plate by NumPy and SciPy from its outside over a grid, timed: heights, thicknesses and the hollow's share of its depth come as doubles."""

import json
import sys
import time

import numpy as np
from scipy.interpolate import LinearNDInterpolator

rows, columns, warm_ups, rounds = (int(word) for word in sys.argv[1:5])
step, density = float(sys.argv[5]), float(sys.argv[6])
z, t, share = np.frombuffer(sys.stdin.buffer.read()).reshape(3, rows, columns)
x, y = np.meshgrid(step * (np.arange(columns) + 0.5), step * (np.arange(rows) + 0.5))
hollow = share > 0
times = []
for turn in range(-warm_ups, rounds):
    start = time.perf_counter()
    slope_y, slope_x = np.gradient(z, step)
    square = t / np.sqrt(1 + slope_x**2 + slope_y**2)
    moved_x, moved_y, moved_z = x + square * slope_x, y + square * slope_y, z - square
    known = np.isfinite(moved_z)
    places = np.stack([moved_x[known], moved_y[known]], axis=-1)
    mirrored = places[:, 0] < 8
    places = np.concatenate([places, places[mirrored] * [-1, 1]])
    heights = np.concatenate([moved_z[known], moved_z[known][mirrored]])
    inside = np.zeros(z.shape)
    inside[hollow] = share[hollow] * np.maximum(0, LinearNDInterpolator(places, heights)(x[hollow], y[hollow]))
    outside = np.nan_to_num(z)
    column = outside - inside
    mass = 2 * step**2 * density * column.sum()
    by_z = step**2 * density * (outside**2 - inside**2).sum() / mass
    by_y = 2 * step**2 * density * (column * y).sum() / mass
    about = 2 * step**2 * density * (column * (x**2 + (y - by_y) ** 2)).sum()
    spent = 1000 * (time.perf_counter() - start)
    if turn >= 0:
        times.append(spent)
print(json.dumps({"ms": sorted(times)[rounds // 2], "mass": mass, "y": by_y, "z": by_z, "square": about}))
