import { expect, test } from 'vitest';
import { drawingFaults, leastDistanceMm } from '../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../test/laws/partsSamples.ts';
import { areaOf, boundsOf, type Chain, containsPoint, nearestOn } from '../curve/index.ts';
import type { Family } from '../design/index.ts';
import { planParts } from '../instrument/index.ts';
import { blockDrawings } from './blockDrawings.ts';
import type { Drawing, Meaning } from './drawing.ts';
import { formDrawings } from './formDrawings.ts';
import { letteringFindings, letteringStrokes } from './lettering.ts';
import { outlineDrawings } from './outlineDrawings.ts';

function partsOf(family: Family) {
  const parts = planParts(sampleDesign(family), sampleHalf(family));
  if (!parts.ok) throw new Error(JSON.stringify(parts.faults));
  return parts.value;
}

const DRAWINGS = new Map(
  FAMILIES.map((family) => {
    const parts = partsOf(family);
    return [family, [...formDrawings(parts), ...outlineDrawings(parts), ...blockDrawings(parts)]];
  }),
);

function allDrawings(family: Family): readonly Drawing[] {
  return DRAWINGS.get(family) ?? [];
}

function chains(drawing: Drawing, meaning: Meaning): Chain<'drawing'>[] {
  return drawing.lines.filter((line) => line.meaning === meaning).map((line) => line.chain);
}

test.each(FAMILIES)(
  'every drawing of a %s can be cut: closed, the right way round, holes inside, nothing twice',
  (family) => {
    expect(allDrawings(family).flatMap(drawingFaults)).toEqual([]);
  },
);

test.each(FAMILIES)(
  'every drawing of a %s has its own name and carries a caution where it leads to a cut',
  (family) => {
    const drawings = allDrawings(family);
    expect(new Set(drawings.map((drawing) => drawing.name)).size).toBe(drawings.length);
    for (const drawing of drawings.filter((each) => each.routes.some((route) => route !== 'print')))
      expect(drawing.notes.join(' ')).toContain('follow the manual of the machine');
  },
);

test.each(FAMILIES)('the sizes to be checked are those of the cut piece of a %s', (family) => {
  for (const drawing of allDrawings(family)) {
    const [piece] = chains(drawing, 'cut');
    if (piece === undefined) continue;
    const box = boundsOf(piece);
    expect(drawing.checks).toEqual([
      { name: 'width', valueMm: expect.closeTo(box.max.x - box.min.x, 9) },
      { name: 'height', valueMm: expect.closeTo(box.max.y - box.min.y, 9) },
    ]);
  }
});

test.each(FAMILIES)(
  'the lettering of a %s lies on its piece, off holes and edges, in letters that exist',
  (family) => {
    for (const drawing of allDrawings(family)) {
      const edges =
        drawing.name === 'form-back-side' ? chains(drawing, 'draw').slice(0, 1) : chains(drawing, 'cut');
      const holes = chains(drawing, 'cut-inside');
      expect(letteringFindings(drawing.lettering)).toEqual([]);
      for (const lettering of drawing.lettering.filter((each) => drawing.part !== 'blocks' || each.at.y > 0))
        for (const vertex of letteringStrokes(lettering).flatMap((stroke) => stroke.vertices)) {
          const place = `${drawing.name}: ${lettering.text}`;
          expect(
            edges.some((edge) => containsPoint(edge, vertex)),
            place,
          ).toBe(true);
          expect(
            holes.some((hole) => containsPoint(hole, vertex)),
            place,
          ).toBe(false);
        }
    }
  },
);

test('a long name is broken into lines that can be read', () => {
  const parts = { ...partsOf('violin'), name: 'Violin after the photograph of a long model, second year' };
  for (const drawing of [...formDrawings(parts), ...outlineDrawings(parts)]) {
    const words = drawing.lettering.map((each) => each.text).join(' ');
    expect(words).toContain(parts.name);
    for (const each of drawing.lettering) expect(each.heightMm).toBeGreaterThan(1.7);
  }
});

test('clamp holes of the drawn form keep the asked wall of a violin', () => {
  const form = allDrawings('violin')[0] as Drawing;
  const [edge] = chains(form, 'cut') as [Chain<'drawing'>];
  for (const hole of chains(form, 'cut-inside').filter((each) => Math.abs(areaOf(each)) > 100))
    expect(leastDistanceMm(hole, edge)).toBeGreaterThan(9.999);
});

test('two halves laid together are the whole form without its pin holes', () => {
  const [whole, , treble, bass] = allDrawings('violin') as [Drawing, Drawing, Drawing, Drawing];
  const area = (drawing: Drawing) => chains(drawing, 'cut').reduce((sum, chain) => sum + areaOf(chain), 0);
  const pins = 2 * Math.PI * 1.5 ** 2;
  expect(area(treble) + area(bass) + pins).toBeCloseTo(area(whole), 6);
  expect(boundsOf(chains(treble, 'cut')[0] as Chain<'drawing'>).min.x).toBe(0);
  expect(boundsOf(chains(bass, 'cut')[0] as Chain<'drawing'>).max.x).toBe(0);
});

test('two battens hold the halves of a violin together, clear of its clamp holes', () => {
  const half = allDrawings('violin').find((drawing) => drawing.name === 'form-half-treble') as Drawing;
  const battens = chains(half, 'draw').filter(
    (chain) => chain.vertices[0]?.x === 0 && chain.vertices.at(-1)?.x === 0,
  );
  expect(battens).toHaveLength(2);
  for (const batten of battens)
    for (const hole of chains(half, 'cut-inside')) expect(leastDistanceMm(hole, batten)).toBeGreaterThan(1);
});

test('both faces of the form are lettered, and the sides change places on the back', () => {
  const [top, back] = allDrawings('violin') as [Drawing, Drawing];
  const side = (drawing: Drawing, text: string) =>
    drawing.lettering.find((each) => each.text === text)?.at.x ?? 0;
  expect(top.lettering.map((each) => each.text)).toContain('TOP SIDE');
  expect(back.lettering.map((each) => each.text)).toContain('BACK SIDE');
  expect(side(top, 'treble side')).toBeGreaterThan(0);
  expect(side(back, 'treble side')).toBeLessThan(0);
  expect(back.routes).toEqual(['print']);
});

test('scored lines stop at the edge and at holes', () => {
  const form = allDrawings('violin')[0] as Drawing;
  const [edge] = chains(form, 'cut') as [Chain<'drawing'>];
  const holes = chains(form, 'cut-inside');
  for (const line of chains(form, 'score'))
    for (const end of line.vertices)
      expect(Math.min(...[edge, ...holes].map((chain) => nearestOn(chain, end).distanceMm))).toBeLessThan(
        1e-6,
      );
});
