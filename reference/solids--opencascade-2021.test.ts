/**
 * Title: Open CASCADE Technology 7.6, through Gmsh 4.8 (C. Geuzaine, J.-F. Remacle and others); year: 2021.
 * Claim: the STEP of a form or block is read as one solid of as many plane and cylindrical faces as it has sides and caps, in
 * millimetres, its volume the exact area times its height to a part in a hundred million.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { point } from '../src/core/base/index.ts';
import {
  arcOf,
  areaOf,
  boundsOf,
  type Chain,
  circleChain,
  mirrorChain,
  segments,
} from '../src/core/curve/index.ts';
import { draftDesign } from '../src/core/design/index.ts';
import { writeStep } from '../src/core/files/index.ts';
import { deriveInstrument } from '../src/core/instrument/index.ts';
import { chosen } from '../src/core/quantity/index.ts';
import type { Board } from '../src/core/solid/index.ts';

const READ = `
import gmsh, json, sys
gmsh.initialize(); gmsh.option.setNumber('General.Terminal', 0)
parts = gmsh.model.occ.importShapes(sys.argv[1]); gmsh.model.occ.synchronize()
solids = [part for part in parts if part[0] == 3]
kinds = [gmsh.model.getType(2, tag) for _, tag in gmsh.model.getEntities(2)]
print(json.dumps({'solids': len(solids), 'volume': sum(gmsh.model.occ.getMass(*s) for s in solids),
  'planes': kinds.count('Plane'), 'cylinders': kinds.count('Cylinder'), 'faces': len(kinds),
  'box': gmsh.model.occ.getBoundingBox(*solids[0]) if solids else []}))
`;
interface Read {
  readonly solids: number;
  readonly volume: number;
  readonly planes: number;
  readonly cylinders: number;
  readonly faces: number;
  readonly box: readonly number[];
}

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'garland-step-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function read(board: Board): Read {
  const path = join(folder, 'board.step');
  writeFileSync(path, writeStep("a board, named 'so'", board));
  return JSON.parse(execFileSync('/usr/bin/python3', ['-c', READ, path], { encoding: 'utf8' })) as Read;
}

function isAsDrawn(board: Board): void {
  const found = read(board);
  const lines = [board.outer, ...board.holes];
  const sides = lines.flatMap((line) => segments(line));
  const arcs = sides.filter((side) => arcOf(side) !== null).length;
  const areaMm2 =
    Math.abs(areaOf(board.outer)) - board.holes.reduce((sum, hole) => sum + Math.abs(areaOf(hole)), 0);
  expect(found.solids).toBe(1);
  expect(found.cylinders).toBe(arcs);
  expect(found.planes).toBe(sides.length - arcs + 2);
  expect(Math.abs(found.volume / (areaMm2 * (board.toZMm - board.fromZMm)) - 1)).toBeLessThan(1e-8);
  const { min, max } = boundsOf(board.outer);
  const box = [min.x, min.y, board.fromZMm, max.x, max.y, board.toZMm];
  for (const [index, value] of box.entries())
    expect(Math.abs((found.box[index] ?? 0) - value)).toBeLessThan(0.01);
}

const square: Chain<'body'> = {
  closed: true,
  vertices: [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ].map(([x, y]) => ({ ...point<'body'>(x ?? 0, y ?? 0), bulge: 0 })),
};

test('a plate with a round hole, drawn either way round', () => {
  const hole = circleChain(point<'body'>(20, 12), 6);
  isAsDrawn({ outer: square, holes: [hole], fromZMm: 0, toZMm: 12.7 });
  isAsDrawn({
    outer: mirrorChain(square),
    holes: [circleChain(point<'body'>(-20, 12), 6, true)],
    fromZMm: -2,
    toZMm: 3,
  });
});

test.each(['violin', 'viola', 'cello'] as const)(
  'form and blocks of a %s',
  (family) => {
    const length = { violin: 355, viola: 406, cello: 755 }[family];
    const bodyLength = { value: length, unit: 'mm', origin: chosen('test') } as const;
    const drafted = draftDesign({ family, name: family, values: { bodyLength } });
    const instrument = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
    if (!instrument.ok) throw new Error('refused');
    const { form, blocks } = instrument.value.plan;
    const holes = [...form.clampHoles, ...form.pins].map(({ centre, radiusMm }) =>
      circleChain(point<'body'>(centre.x, centre.y), radiusMm, true),
    );
    isAsDrawn({ outer: form.outline, holes, fromZMm: 0, toZMm: form.thicknessMm });
    for (const { outline } of blocks.parts) isAsDrawn({ outer: outline, holes: [], fromZMm: 0, toZMm: 30 });
  },
  60_000,
);
