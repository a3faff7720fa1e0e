import fc from 'fast-check';
import { expect, test } from 'vitest';
import '../../../test/fixedSeed.ts';
import { instrumentOf, withScaled, withValues } from '../../../test/fixtures/heads.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import {
  arcOf,
  boundsOf,
  type Chain,
  lengthOf,
  nearestOnSpans,
  sampleChain,
  segments,
  spansContain,
  spansOf,
} from '../curve/index.ts';
import { preflight } from '../files/index.ts';
import { headOfDesign, type Instrument } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { headDrawings } from './headDrawings.ts';

/** mm. Narrower wood breaks out of thin plywood. */
const SLIVER_MM = 1.5;

const of = (drawing: Drawing, meaning: 'cut' | 'cut-inside') =>
  drawing.lines.filter((line) => line.meaning === meaning).map(({ chain }) => chain);

/** The least wood between two lines that are cut. */
function leastWoodMm(drawing: Drawing): number {
  const chains = [...of(drawing, 'cut'), ...of(drawing, 'cut-inside')];
  const spans = chains.map((chain) => spansOf(chain));
  let least = Number.POSITIVE_INFINITY;
  for (const [index, chain] of chains.entries())
    for (const at of sampleChain(chain, 0.01))
      for (const [other, line] of spans.entries())
        if (other !== index) least = Math.min(least, nearestOnSpans(line, at, least).distanceMm);
  return least;
}

/** Pieces into which wood falls that is taken off by half a sliver from every cut, counted on a grid. */
function piecesAfterErosion(drawing: Drawing): number {
  const cell = 0.5;
  const [edge] = of(drawing, 'cut') as [Chain<'drawing'>];
  const holes = of(drawing, 'cut-inside').map((hole) => spansOf(hole));
  const edgeSpans = spansOf(edge);
  const all = [...edgeSpans, ...holes.flat()];
  const { min, max } = boundsOf(edge);
  const [columns, rows] = [Math.ceil((max.x - min.x) / cell), Math.ceil((max.y - min.y) / cell)];
  const wood = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const at = { x: min.x + (column + 0.5) * cell, y: min.y + (row + 0.5) * cell };
      const inside = spansContain(edgeSpans, at) && !holes.some((hole) => spansContain(hole, at));
      if (inside && nearestOnSpans(all, at, SLIVER_MM / 2).segment < 0) wood[row * columns + column] = 1;
    }
  let pieces = 0;
  const LEAST_CELLS = 12;
  for (let start = 0; start < wood.length; start++) {
    if (wood[start] !== 1) continue;
    const open = [start];
    wood[start] = 2;
    let size = 0;
    for (let here = open.pop(); here !== undefined; here = open.pop()) {
      size++;
      for (const next of [here - 1, here + 1, here - columns, here + columns])
        if (wood[next] === 1) {
          wood[next] = 2;
          open.push(next);
        }
    }
    if (size >= LEAST_CELLS) pieces++;
  }
  return pieces;
}

function faultsOf(drawing: Drawing): readonly string[] {
  return [...preflight(drawing).map(({ code, at }) => `${code} ${at}`), ...drawingFaults(drawing)];
}

const CASES = [
  ['violin', 355],
  ['violin', 230],
  ['viola', 406],
  ['cello', 755],
] as const;

test.each(CASES)('templates of the head of a %s of %s mm: simple, no sliver, one piece', (family, length) => {
  const drawings = headDrawings(instrumentOf(family, length));
  expect(drawings.map(({ name }) => name)).toEqual([
    'head-side',
    'head-wrap',
    'head-front',
    'head-views',
    'head-comb-outer',
    'head-comb-inner',
    'pegbox-widths',
    'pegbox-depth',
    'head-strings',
    'peg-sight',
    'peg-taper',
  ]);
  for (const drawing of drawings) {
    expect(faultsOf(drawing), drawing.name).toEqual([]);
    if (!drawing.routes.includes('laser')) continue;
    if (drawing.name !== 'head-front')
      expect(leastWoodMm(drawing), drawing.name).toBeGreaterThan(SLIVER_MM - 1e-6);
    expect(piecesAfterErosion(drawing), drawing.name).toBe(1);
  }
});

test('the slots lie along the spiral, half their width to either side, and reach into its last turn', () => {
  const { head } = instrumentOf('violin', 355);
  const [side] = headDrawings(instrumentOf('violin', 355));
  const spine = spansOf(head.profile.spine);
  const slots = of(side as Drawing, 'cut-inside').filter((hole) => lengthOf(hole) > 5);
  expect(slots.length).toBeGreaterThan(5);
  for (const slot of slots)
    for (const segment of segments(slot)) {
      const radius = arcOf(segment)?.radiusMm ?? 0;
      if (Math.abs(radius - 0.5) < 1e-6) continue;
      expect(nearestOnSpans(spine, segment.start).distanceMm).toBeCloseTo(0.5, 6);
    }
  const slotted = slots.reduce((sum, slot) => sum + (lengthOf(slot) - Math.PI) / 2 + 1, 0);
  const whole = lengthOf(head.profile.spine) - head.widths.bottomMm;
  expect(slotted / whole).toBeGreaterThan(0.6);
});

test('bridges of neighbouring turns do not stand in one ray', () => {
  const { head } = instrumentOf('violin', 355);
  const [side] = headDrawings(instrumentOf('violin', 355));
  const eye = head.profile.volute.arcs.at(-1)?.centre ?? { x: 0, y: 0 };
  const slots = of(side as Drawing, 'cut-inside').filter((hole) => lengthOf(hole) > 5);
  const middles = slots.slice(1).map((slot, index) => {
    const before = slots[index] as Chain<'drawing'>;
    const far = (chain: Chain<'drawing'>) =>
      chain.vertices.map(({ x, y }) => Math.atan2(y - eye.y, x - eye.x));
    const [ends, starts] = [far(before), far(slot)];
    const gaps = ends.flatMap((a) => starts.map((b) => [a, b] as const));
    const [a, b] = gaps.reduce((best, pair) =>
      Math.abs(Math.sin((pair[0] - pair[1]) / 2)) < Math.abs(Math.sin((best[0] - best[1]) / 2)) ? pair : best,
    );
    return a + Math.atan2(Math.sin(b - a), Math.cos(b - a)) / 2;
  });
  for (const [index, rad] of middles.entries())
    for (const other of middles.slice(index + 2))
      expect(Math.abs(Math.atan2(Math.sin(rad - other), Math.cos(rad - other)))).toBeGreaterThan(0.15);
});

test('a wall of sound heads: every template closes, and the side template holds together', () => {
  const near = fc.double({ min: 0.95, max: 1.05, noNaN: true });
  let drawn = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(['violin', 355] as const, ['violin', 285] as const, ['cello', 755] as const),
      fc.record({ headLength: near, scrollHeight: near, headDepth: near, scrollEars: near, scrollEye: near }),
      fc.constantFrom(2, 2.5, 2.75, 3),
      ([family, length], factors, scrollTurns) => {
        const instrument = instrumentOf(family, length);
        const design = withValues(withScaled(instrument.design, factors), { scrollTurns });
        const head = headOfDesign(design, instrument.neck, instrument.setUp);
        if (!head.ok) return;
        const drawings = headDrawings({ ...instrument, head: head.value } as Instrument);
        drawn++;
        for (const drawing of drawings) expect(faultsOf(drawing), drawing.name).toEqual([]);
        expect(leastWoodMm(drawings[0] as Drawing)).toBeGreaterThan(SLIVER_MM - 1e-6);
        expect(piecesAfterErosion(drawings[0] as Drawing)).toBe(1);
      },
    ),
    { numRuns: 6 },
  );
  expect(drawn).toBeGreaterThan(3);
}, 60_000);

test.each([
  ['violin', 355],
  ['viola', 400],
  ['cello', 755],
] as const)(
  'the strings of a %s are drawn to their own pegs, as clear of the others as the sheet says',
  (family, length) => {
    const instrument = instrumentOf(family, length);
    const sheet = headDrawings(instrument).find(({ name }) => name === 'head-strings');
    if (!sheet) throw new Error('no sheet of strings');
    const { pegs, strings } = instrument.head;
    const drawn = sheet.lines.filter(
      ({ meaning, chain }) => meaning === 'score' && !chain.closed && chain.vertices.length === 2,
    );
    const words = sheet.lettering.map(({ text }) => text).join(' ');
    for (const { letter, peg, from, to, diameterMm } of strings) {
      const line = drawn.find(
        ({ chain: { vertices } }) =>
          vertices[0]?.x === from.x && vertices[1]?.x === to.x && vertices[1]?.y === to.y,
      );
      expect(line).toBeDefined();
      const own = pegs[peg - 1];
      if (!own) throw new Error('no peg');
      // The middle of the string, wound on the front of its peg.
      expect(Math.hypot(to.x - own.centre.x, to.y - own.centre.y)).toBeCloseTo(
        (own.largeMm + diameterMm) / 2,
        1,
      );
      const along = Math.hypot(to.x - from.x, to.y - from.y);
      const rooms = pegs.slice(0, peg - 1).map(({ centre, largeMm }) => {
        const away = ((centre.x - from.x) * (to.y - from.y) - (centre.y - from.y) * (to.x - from.x)) / along;
        return Math.abs(away) - (largeMm + diameterMm) / 2;
      });
      const said = rooms.length === 0 ? 'passes no peg' : `${Math.min(...rooms).toFixed(1)} mm clear of peg`;
      expect(words).toContain(`${letter} to peg ${peg} from the nut: ${said}`);
    }
  },
);
