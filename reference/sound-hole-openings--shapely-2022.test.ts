/**
 * Sound holes in plan and laid flat, measured again.
 *
 * Program: Shapely 1.8 (GEOS) and NumPy 1.24 (2022), run by Debian's python3: arcs are drawn as short chords from their ends and
 * bulges, independently of our own code. Claimed: one valid polygon each; area and perimeter within 0.01 mm² and 0.01 mm (a chord
 * error of 0.00001 mm); the flat hole is as large as its register line; the wood between its arms stays 1.5 mm wide or more.
 * Source 2: parts note of our own, from another program on another arch of the same height and an earlier shape of hole (arch 15.5,
 * flattened by sparse Gauss-Newton on a 2 mm grid): stem wider by 1 / cos of the slope across it (6.60 to 6.93 at 17.6°), area 4 %
 * larger, eyes 0.3 mm farther apart, 0.8 mm more from the centre line to the stem, strain 0.45 % at most, no place more than 0.53 off.
 * Claimed: the rule of the cosine within 0.5 %; the rest alike in kind (area 3 to 6 %, eyes 0 to 1 mm, stem 0.5 to 1.2 mm, strain
 * 0.45 % or less, 0.3 to 1 mm off).
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import type { Frame } from '../src/core/base/index.ts';
import type { Chain } from '../src/core/curve/index.ts';
import { plateHeight } from '../src/core/instrument/arching/index.ts';
import { holeLaidFlat } from '../src/core/instrument/index.ts';
import { instrumentOf } from '../test/fixtures/heads.ts';

const SCRIPT = `
import json, math, sys
import numpy as np
from shapely.geometry import Polygon
def polygon(vertices):
    out = []
    for (x0, y0, b), (x1, y1, _) in zip(vertices, vertices[1:] + vertices[:1]):
        if abs(b) < 1e-12:
            out.append((x0, y0)); continue
        sweep, chord = 4 * math.atan(b), complex(x1 - x0, y1 - y0)
        centre = complex(x0, y0) + chord / 2 + 1j * chord / 2 / math.tan(sweep / 2)
        spoke = complex(x0, y0) - centre
        n = max(2, math.ceil(abs(sweep) / (2 * math.acos(1 - 1e-5 / abs(spoke)))))
        turned = centre + spoke * np.exp(1j * sweep * np.arange(n) / n)
        out.extend(zip(turned.real, turned.imag))
    return Polygon(out)
answers = []
for vertices in json.load(sys.stdin):
    shape = polygon(vertices)
    # Wood round the hole that a disc of 1.5 mm does not reach: what closing the hole by 0.74 fills for good.
    closed = shape.buffer(0.74, 32).buffer(-0.74, 32)
    filled = closed.difference(shape.buffer(0.01))
    slots = [g for g in getattr(filled, 'geoms', [filled]) if g.area > 3]
    answers.append({'valid': shape.is_valid, 'area': shape.area, 'length': shape.length, 'holes': len(closed.interiors), 'slots': len(slots)})
print(json.dumps(answers))
`;

interface Answer {
  readonly valid: boolean;
  readonly area: number;
  readonly length: number;
  readonly holes: number;
  readonly slots: number;
}

function measured(chains: readonly Chain<Frame>[]): readonly Answer[] {
  const ran = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(chains.map(({ vertices }) => vertices.map(({ x, y, bulge }) => [x, y, bulge]))),
    encoding: 'utf8',
  });
  expect(ran.stderr).toBe('');
  return JSON.parse(ran.stdout) as Answer[];
}

test.each([
  ['violin', 355],
  ['violin', 285],
  ['viola', 380],
  ['viola', 406],
  ['viola', 440],
  ['cello', 755],
] as const)('the openings of a %s of %d mm are the same to Shapely', (family, length) => {
  const instrument = instrumentOf(family, length);
  const { hole, treble } = instrument.soundHoles;
  const flat = holeLaidFlat(instrument);
  if (!flat) throw new Error('not laid flat');
  const [plain, cut, laid] = measured([hole.plain, treble, flat.chain]) as [Answer, Answer, Answer];
  for (const { valid, holes, slots } of [plain, cut, laid]) {
    expect(valid).toBe(true);
    expect(holes).toBe(0);
    expect(slots).toBe(0);
  }
  expect(Math.abs(plain.area - hole.areaMm2)).toBeLessThan(0.01);
  expect(Math.abs(plain.length - hole.perimeterMm)).toBeLessThan(0.01);
  expect(Math.abs(cut.area - flat.planAreaMm2)).toBeLessThan(0.01);
  expect(Math.abs(laid.area - flat.areaMm2)).toBeLessThan(0.01);
});

test('laid flat, the hole of the full-size violin is what another program found on a like arch', () => {
  const instrument = instrumentOf('violin', 355);
  const { soundHoles, plates } = instrument;
  const flat = holeLaidFlat(instrument);
  if (!flat) throw new Error('not laid flat');
  const { inner, outer } = soundHoles.stem;
  const height = ({ x, y }: { readonly x: number; readonly y: number }): number =>
    plateHeight(plates.top, x, y, 'finished');
  const slope = Math.atan((height(inner) - height(outer)) / flat.planStemMm);
  expect(Math.abs((flat.stemMm * Math.cos(slope)) / flat.planStemMm - 1)).toBeLessThan(0.005);
  // Slope across the stem 17.6° there, on an arch of another curve.
  expect((slope * 180) / Math.PI).toBeGreaterThan(14);
  expect((slope * 180) / Math.PI).toBeLessThan(22);
  const grown = flat.areaMm2 / flat.planAreaMm2 - 1;
  expect(grown).toBeGreaterThan(0.03);
  expect(grown).toBeLessThan(0.06);
  const eyes = flat.eyesApartMm - soundHoles.hole.eyesApartMm;
  expect(eyes).toBeGreaterThan(0);
  expect(eyes).toBeLessThan(1);
  const out = flat.innerNick.x - soundHoles.innerNick.x;
  expect(out).toBeGreaterThan(0.5);
  expect(out).toBeLessThan(1.2);
  expect(flat.strainMost).toBeLessThan(0.0045);
  expect(flat.offPlanMm).toBeGreaterThan(0.3);
  expect(flat.offPlanMm).toBeLessThan(1);
});

test('what Shapely calls too narrow is seen: a hole whose arms leave a sliver of 1 mm is told', () => {
  const slot = (from: number, to: number, tall: number): Chain<'drawing'> => ({
    closed: true,
    vertices: [
      [0, 0],
      [20, 0],
      [20, tall],
      [to, tall],
      [to, 4],
      [from, 4],
      [from, tall],
      [0, tall],
    ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 })),
  });
  const [narrow, wide] = measured([slot(9, 10, 30), slot(8, 11, 30)]) as [Answer, Answer];
  expect(narrow.slots + narrow.holes).toBe(1);
  expect(wide.slots + wide.holes).toBe(0);
});
