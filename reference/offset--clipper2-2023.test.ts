/**
 * Source: Angus Johnson, Clipper2, polygon clipping and offsetting (program, 2023), through its TypeScript port 2.0.1;
 * as a second reader Sean Gillies and others, Shapely (program, 2022), whose buffer is that of GEOS.
 * Claimed: inward and outward offsets with round joins enclose the same area and lie on the same line as those of
 * two independent polygon programs. Both are given the chain as a polygon with chord error e = 0.0005 mm and round
 * their own joins to e, so every point agrees to 2 e (and 0.0001 mm of rounding), every area to that times the length.
 * Where two sides meet in a point of angle a, the point itself agrees to that over sin(a / 2) (drawn further along).
 * A thin sliver may be kept by one and dropped by the other: loops of less than 0.01 mm² are left out on both sides.
 */
import { spawnSync } from 'node:child_process';
import { Clipper, EndType, JoinType } from 'clipper2-ts';
import { expect, test } from 'vitest';
import { point } from '../src/core/base/index.ts';
import {
  areaOf,
  type Chain,
  chainThrough,
  circleChain,
  lengthOf,
  offsetChain,
  outlineChain,
  sampleChain,
} from '../src/core/curve/index.ts';
import { sampleHalf } from '../test/laws/chainSamples.ts';

const CHORD_ERROR_MM = 0.0005;
const BOUND_MM = 2 * CHORD_ERROR_MM + 0.0001;
const UNITS_PER_MM = 100_000;
const SLIVER_MM2 = 0.01;
const DISTANCES_MM = [-30, -12, -6.5, -3, -0.4, 0.4, 3, 7, 20];

type Line = readonly { readonly x: number; readonly y: number }[];

const horseshoe = chainThrough<'body'>(
  [
    [0, 0],
    [60, 0],
    [60, 60],
    [34, 60],
    [34, 52],
    [52, 52],
    [52, 8],
    [8, 8],
    [8, 52],
    [27, 52],
    [27, 60],
    [0, 60],
  ].map(([x, y]) => point<'body'>(x, y)),
  true,
);

/** Outlines, each with 1 / sin(a / 2) of the sharpest point, a, that its offsets have. */
const OUTLINES: readonly (readonly [string, Chain<'body'>, number])[] = [
  ['the outline of a violin', outlineChain(sampleHalf()), 1],
  ['a horseshoe of lines that closes', horseshoe, Math.SQRT2],
  ['a circle', circleChain(point<'body'>(3, -2), 25), 1],
  [
    'a lens with two points',
    {
      closed: true,
      vertices: [
        { x: -50, y: 0, bulge: 0.4 },
        { x: 50, y: 0, bulge: 0.3 },
      ],
    },
    // 12 mm inwards the points have 46.3 degrees, by the cosine rule on both radii and the centres' distance.
    2.55,
  ],
  [
    'a pear with hollow sides',
    {
      closed: true,
      vertices: [
        { x: -45, y: 0, bulge: 1 },
        { x: 45, y: 0, bulge: -0.5 },
        { x: 20, y: 70, bulge: 0.9 },
        { x: -20, y: 70, bulge: -0.5 },
      ],
    },
    1,
  ],
];

function polygon(chain: Chain<'body'>): Line {
  return sampleChain(chain, CHORD_ERROR_MM);
}

function areaMm2(line: Line): number {
  return line.reduce((sum, { x, y }, index) => {
    const next = line[(index + 1) % line.length];
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);
}

function ofSize(lines: readonly Line[]): readonly Line[] {
  return lines.filter((line) => Math.abs(areaMm2(line)) > SLIVER_MM2);
}

function byClipper(chain: Chain<'body'>, distanceMm: number): readonly Line[] {
  const path = polygon(chain).map(({ x, y }) => ({
    x: Math.round(x * UNITS_PER_MM),
    y: Math.round(y * UNITS_PER_MM),
  }));
  const found = Clipper.inflatePaths(
    [path],
    distanceMm * UNITS_PER_MM,
    JoinType.Round,
    EndType.Polygon,
    2,
    CHORD_ERROR_MM * UNITS_PER_MM,
  );
  return found.map((line) => line.map(({ x, y }) => ({ x: x / UNITS_PER_MM, y: y / UNITS_PER_MM })));
}

const SHAPELY = `
import json, math, sys
from shapely.geometry import Polygon
given = json.load(sys.stdin)
polygon = Polygon(given['points'])
found = []
for distance in given['distances']:
    step = 2 * math.acos(1 - min(0.5, given['error'] / abs(distance)))
    shape = polygon.buffer(distance, max(4, math.ceil(math.pi / 2 / step)))
    parts = shape.geoms if hasattr(shape, 'geoms') else [shape]
    rings = []
    for part in parts:
        if part.is_empty: continue
        outer = list(part.exterior.coords)[:-1]
        rings.append(outer if part.exterior.is_ccw else outer[::-1])
        for hole in part.interiors:
            inner = list(hole.coords)[:-1]
            rings.append(inner[::-1] if hole.is_ccw else inner)
    found.append(rings)
json.dump(found, sys.stdout)
`;

function byShapely(chain: Chain<'body'>): readonly (readonly Line[])[] {
  const input = JSON.stringify({
    points: polygon(chain).map(({ x, y }) => [x, y]),
    distances: DISTANCES_MM,
    error: CHORD_ERROR_MM,
  });
  const { stdout, stderr, status } = spawnSync('/usr/bin/python3', ['-c', SHAPELY], {
    input,
    encoding: 'utf8',
    maxBuffer: 1 << 29,
  });
  if (status !== 0) throw new Error(stderr);
  const found: readonly (readonly (readonly [number, number])[][])[] = JSON.parse(stdout);
  return found.map((lines) => lines.map((line) => line.map(([x, y]) => ({ x, y }))));
}

/** The furthest that any point of some lines lies from other lines, mm. */
function furthestMm(from: readonly Line[], to: readonly Line[]): number {
  const cellMm = 2;
  const cells = new Map<string, (readonly [number, number, number, number])[]>();
  for (const line of to) {
    for (const [index, { x, y }] of line.entries()) {
      const next = line[(index + 1) % line.length];
      const low = [Math.floor(Math.min(x, next.x) / cellMm), Math.floor(Math.min(y, next.y) / cellMm)];
      const high = [Math.floor(Math.max(x, next.x) / cellMm), Math.floor(Math.max(y, next.y) / cellMm)];
      for (let column = low[0] - 1; column <= high[0] + 1; column++) {
        for (let row = low[1] - 1; row <= high[1] + 1; row++) {
          const key = `${column} ${row}`;
          const held = cells.get(key);
          if (held) held.push([x, y, next.x, next.y]);
          else cells.set(key, [[x, y, next.x, next.y]]);
        }
      }
    }
  }
  let most = 0;
  for (const { x, y } of from.flat()) {
    const near = cells.get(`${Math.floor(x / cellMm)} ${Math.floor(y / cellMm)}`) ?? [];
    let least = Infinity;
    for (const [startX, startY, endX, endY] of near) {
      const [alongX, alongY] = [endX - startX, endY - startY];
      const square = alongX * alongX + alongY * alongY || 1;
      const share = Math.max(0, Math.min(1, ((x - startX) * alongX + (y - startY) * alongY) / square));
      least = Math.min(least, Math.hypot(x - startX - share * alongX, y - startY - share * alongY));
    }
    most = Math.max(most, least);
  }
  return most;
}

function compare(ours: readonly Chain<'body'>[], theirs: readonly Line[], pointFactor: number): void {
  const ourLines = ofSize(ours.map(polygon));
  const theirLines = ofSize(theirs);
  expect(ourLines).toHaveLength(theirLines.length);
  const lengthMm = ours.reduce((sum, loop) => sum + lengthOf(loop), 0);
  const ourArea = ours.reduce((sum, loop) => sum + areaOf(loop), 0);
  const theirArea = theirLines.reduce((sum, line) => sum + areaMm2(line), 0);
  expect(Math.abs(ourArea - theirArea)).toBeLessThan(BOUND_MM * lengthMm + SLIVER_MM2);
  expect(furthestMm(ourLines, theirLines)).toBeLessThan(BOUND_MM * pointFactor);
  expect(furthestMm(theirLines, ourLines)).toBeLessThan(BOUND_MM * pointFactor);
}

test.each(OUTLINES)('offsets of %s are those of a polygon program', (_name, chain, pointFactor) => {
  for (const distanceMm of DISTANCES_MM) {
    compare(offsetChain(chain, distanceMm, { join: 'round' }), byClipper(chain, distanceMm), pointFactor);
  }
});

test.each(OUTLINES)('offsets of %s are those of a second polygon program', (_name, chain, pointFactor) => {
  for (const [index, theirs] of byShapely(chain).entries()) {
    compare(offsetChain(chain, DISTANCES_MM[index], { join: 'round' }), theirs, pointFactor);
  }
});
