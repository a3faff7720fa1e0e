import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Chain, nearestOn, sampleChain } from '../../src/core/curve/index.ts';
import { type Drawing, layoutPages, PAPERS, type PaperName } from '../../src/core/drawing/index.ts';
import { canonicalJson, packManifest, svgPath, writeDxf, writeSvg } from '../../src/core/files/index.ts';
import { fiddleForm, rectangle, sampleDrawings } from './sampleDrawings.ts';

const paper = fc.constantFrom(...(Object.keys(PAPERS) as PaperName[]));

/** A closed chain about the origin: corners at rising angles, each side bowed at random. */
const chains = fc
  .array(
    fc.record({
      radius: fc.double({ min: 5, max: 400, noNaN: true }),
      bulge: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
    }),
    { minLength: 3, maxLength: 14 },
  )
  .map(
    (corners): Chain<'drawing'> => ({
      closed: true,
      vertices: corners.map(({ radius, bulge }, index) => {
        const angle = (2 * Math.PI * index) / corners.length;
        return { x: radius * Math.cos(angle), y: radius * Math.sin(angle), bulge };
      }),
    }),
  );

test('a chain written as an SVG path and read back is the same line within a ten thousandth of a millimetre', () => {
  fc.assert(
    fc.property(chains, (chain) => {
      const read = readSvgPath(svgPath(chain, -1000, 1000), -1000, 1000);
      for (const p of sampleChain(chain, 0.5))
        expect(nearestOn(read, p).distanceMm).toBeLessThanOrEqual(0.0001);
    }),
    { numRuns: 60 },
  );
});

test('every drawn point shows on a tile, and the marks of a seam are one place of the drawing on both pages', () => {
  fc.assert(
    fc.property(chains, paper, (chain, name) => {
      const drawing: Drawing = { ...fiddleForm(), lines: [{ meaning: 'cut', chain }], lettering: [] };
      const set = layoutPages([drawing], { paper: name, title: 'x' });
      if (!set.ok) throw new Error('refused');
      const placements = set.value.pages.flatMap((page) => page.placements);
      for (const p of sampleChain(chain, 0.2)) {
        const shown = placements.some(({ turnRad, shift, window }) => {
          const x = p.x * Math.cos(turnRad) - p.y * Math.sin(turnRad) + shift.x;
          const y = p.x * Math.sin(turnRad) + p.y * Math.cos(turnRad) + shift.y;
          return (
            x >= window.min.x - 1e-9 &&
            x <= window.max.x + 1e-9 &&
            y >= window.min.y - 1e-9 &&
            y <= window.max.y + 1e-9
          );
        });
        expect(shown).toBe(true);
      }
      const marks = set.value.pages.flatMap((page) =>
        page.lines
          .filter((line) => line.pen === 'mark' && line.chain.closed)
          .map((line) => {
            const [right] = line.chain.vertices;
            const shift = page.placements[0]?.shift ?? { x: 0, y: 0 };
            return `${((right?.x ?? 0) - shift.x).toFixed(6)} ${((right?.y ?? 0) - shift.y).toFixed(6)}`;
          }),
      );
      const tally = new Map<string, number>();
      for (const mark of marks) tally.set(mark, (tally.get(mark) ?? 0) + 1);
      expect([...tally.values()].every((count) => count === 2)).toBe(true);
      expect(tally.size % 3).toBe(0);
    }),
    { numRuns: 60 },
  );
});

test('pieces on a shared page never overlap and stay inside the window', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 5, max: 170 }), fc.integer({ min: 5, max: 240 })), {
        minLength: 1,
        maxLength: 15,
      }),
      paper,
      (sizes, name) => {
        const drawings = sizes.map(
          ([w, h]): Drawing => ({
            ...fiddleForm(),
            title: 'p',
            lines: [{ meaning: 'cut', chain: rectangle(-3, 7, w, h) }],
            lettering: [],
            notes: [],
          }),
        );
        const set = layoutPages(drawings, { paper: name, title: 'x' });
        if (!set.ok) throw new Error('refused');
        expect(set.value.pages.flatMap((page) => page.placements).length).toBeGreaterThanOrEqual(
          drawings.length,
        );
        for (const page of set.value.pages) {
          if (page.tile !== undefined) continue;
          const boxes = page.placements.map(({ drawing, turnRad, shift }) => {
            const [a, , c] = drawing.lines[0]?.chain.vertices ?? [];
            if (!a || !c) throw new Error('no box');
            const xs = [a, c].map((p) => (turnRad === 0 ? p.x : -p.y) + shift.x);
            const ys = [a, c].map((p) => (turnRad === 0 ? p.y : p.x) + shift.y);
            return {
              left: Math.min(...xs),
              right: Math.max(...xs),
              low: Math.min(...ys),
              high: Math.max(...ys),
            };
          });
          for (const [index, one] of boxes.entries()) {
            expect(one.left).toBeGreaterThanOrEqual(20.9);
            expect(one.low).toBeGreaterThanOrEqual(29.9);
            expect(one.right).toBeLessThanOrEqual(page.widthMm - 9.9);
            expect(one.high).toBeLessThanOrEqual(page.heightMm - 9.9);
            for (const other of boxes.slice(index + 1))
              expect(
                one.right <= other.left ||
                  other.right <= one.left ||
                  one.high <= other.low ||
                  other.high <= one.low,
              ).toBe(true);
          }
        }
      },
    ),
    { numRuns: 60 },
  );
});

test('a printer that is more than 15 % off, a coordinate that is no number and no line at all are refused in words', () => {
  const options = { paper: 'A4', title: 'x' } as const;
  const off = layoutPages(sampleDrawings(), { ...options, printer: { xMeasuredMm: 120, yMeasuredMm: 150 } });
  const odd = {
    ...fiddleForm(),
    lines: [{ meaning: 'cut' as const, chain: rectangle(0, 0, Number.NaN, 5) }],
  };
  const codes = [off, layoutPages([odd], options), layoutPages([], options)].map((r) =>
    r.ok ? 'ok' : r.faults[0]?.code,
  );
  expect(codes).toEqual(['pages.printer', 'pages.not-finite', 'pages.nothing']);
  expect([writeSvg(odd), writeDxf(odd)].map((r) => (r.ok ? 'ok' : r.faults[0]?.code))).toEqual([
    'file.not-finite',
    'file.not-finite',
  ]);
});

test('the manifest lists files by path with their digests, and refuses paths that climb or clash', () => {
  const digest = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
  const file = (path: string) => ({
    path,
    kind: 'print' as const,
    parts: ['form'],
    bytes: new Uint8Array([1, 2]),
  });
  const text = packManifest({ name: 'd', sha256: 'x' }, [file('b.pdf'), file('a/c.pdf')], digest);
  if (!text.ok) throw new Error('refused');
  expect(JSON.parse(text.value).files.map((f: { path: string }) => f.path)).toEqual(['a/c.pdf', 'b.pdf']);
  for (const bad of ['../x', '/x', 'a//b', 'c:x', 'a/../b'])
    expect(packManifest({ name: 'd', sha256: 'x' }, [file(bad)], digest).ok).toBe(false);
  expect(packManifest({ name: 'd', sha256: 'x' }, [file('A.pdf'), file('a.pdf')], digest).ok).toBe(false);
});

test('equal values have one text, lengths at a tenth of a micrometre, bulges whole', () => {
  const one = canonicalJson({ b: 1.23456789, a: [0.1 + 0.2, -0], vertices: [[1.00004999, 2, 0.123456789]] });
  const two = canonicalJson({ vertices: [[1.00004999, 2, 0.123456789]], a: [0.3, 0], b: 1.23457 });
  expect(one.ok && two.ok && one.value === two.value).toBe(true);
  expect(one.ok ? JSON.parse(one.value) : null).toEqual({
    a: [0.3, 0],
    b: 1.2346,
    vertices: [[1, 2, 0.123456789]],
  });
  expect(canonicalJson({ a: { b: [1, Number.NaN] } })).toMatchObject({
    ok: false,
    faults: [{ at: 'a.b.1' }],
  });
});

/** A reader of its own for the few commands we write. */
function readSvgPath(d: string, left: number, top: number): Chain<'drawing'> {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const [, command, rest] of d.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    const numbers = (rest ?? '')
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    if (command === 'Z') continue;
    const [x = 0, y = 0] = numbers.slice(-2);
    const next = { x: x + left, y: top - y, bulge: 0 };
    const last = vertices.at(-1);
    if (command === 'A' && last) {
      const [radius = 0, , , large, sweep] = numbers;
      expect(large).toBe(0);
      const chord = Math.hypot(next.x - last.x, next.y - last.y);
      last.bulge = Math.tan(Math.asin(Math.min(1, chord / 2 / radius)) / 2) * (sweep === 1 ? -1 : 1);
    }
    vertices.push(next);
  }
  const [first] = vertices;
  const last = vertices.at(-1);
  if (first && last && Math.hypot(first.x - last.x, first.y - last.y) < 1e-9) vertices.pop();
  return { closed: true, vertices };
}
