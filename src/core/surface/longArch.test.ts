import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pointOn, segments } from '../curve/index.ts';
import {
  chordCircleRadius,
  type LongArch,
  type LongArchForm,
  longArch,
  longArchBend,
  longArchChain,
  longArchHeight,
  longArchRadii,
  longArchSlope,
} from './longArch.ts';

function made(form: LongArchForm, riseMm = 12, startMm = 7, endMm = 347): LongArch {
  const checked = longArch(startMm, endMm, riseMm, form);
  if (!checked.ok) throw new Error(checked.faults[0]?.found);
  return checked.value;
}

const circle: LongArchForm = { kind: 'circle', filletMm: 40 };
const twoCircles: LongArchForm = {
  kind: 'two-circles',
  filletMm: 40,
  platformMm: 60,
  platformRadiusMm: 4000,
};
const cycloid: LongArchForm = { kind: 'cycloid' };

test('the plain circle of chord 6 and rise 1 has radius 5', () => {
  expect(chordCircleRadius(6, 1)).toBe(5);
  expect(longArchRadii(made({ kind: 'circle', filletMm: 0 }, 1, 0, 6))[0]).toBeCloseTo(5, 12);
});

test('a fillet makes the circle smaller by its own radius', () => {
  expect(longArchRadii(made(circle))[0]).toBeCloseTo(chordCircleRadius(340, 12) - 40, 9);
});

test.each([circle, twoCircles, cycloid])('$kind: crest and channel ends are met and level', (form) => {
  const arch = made(form);
  expect(longArchHeight(arch, 177)).toBeCloseTo(12, 12);
  expect(longArchSlope(arch, 177)).toBe(0);
  for (const end of [7, 347]) {
    expect(longArchHeight(arch, end)).toBeCloseTo(0, 12);
    expect(longArchHeight(arch, end + (end < 100 ? 1e-5 : -1e-5))).toBeLessThan(1e-9);
  }
  expect(longArchSlope(arch, 7 + 1e-9)).toBeCloseTo(0, 9);
});

test.each([circle, twoCircles, cycloid])(
  '$kind: the slope never jumps and agrees with the height',
  (form) => {
    const arch = made(form);
    for (let y = 7.05; y < 347; y += 0.1) {
      const difference = (longArchHeight(arch, y + 1e-4) - longArchHeight(arch, y - 1e-4)) / 2e-4;
      expect(longArchSlope(arch, y)).toBeCloseTo(difference, 5);
      expect(Math.abs(longArchSlope(arch, y + 0.02) - longArchSlope(arch, y))).toBeLessThan(0.02 / 30);
    }
  },
);

test('a fillet too great for the arch, a rise of nothing and ends the wrong way round are refused', () => {
  const codes = (checked: ReturnType<typeof longArch>): string[] =>
    checked.ok ? [] : checked.faults.map(({ code }) => code);
  expect(codes(longArch(7, 347, 12, { kind: 'circle', filletMm: 1300 }))).toEqual(['arch.fillet']);
  expect(codes(longArch(7, 347, 0, circle))).toEqual(['arch.rise']);
  expect(codes(longArch(347, 7, 12, circle))).toEqual(['arch.chord']);
  expect(
    codes(
      longArch(7, 347, 12, { kind: 'two-circles', filletMm: 40, platformMm: 160, platformRadiusMm: 4000 }),
    ),
  ).toEqual(['arch.platform']);
});

test('the arcs run from channel end to channel end, tangent at every joint, and carry the heights', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 25, noNaN: true }),
      fc.double({ min: 1, max: 100, noNaN: true }),
      fc.constantFrom<LongArchForm['kind']>('circle', 'two-circles'),
      (rise, filletMm, kind) => {
        const arch = made(
          kind === 'circle'
            ? { kind, filletMm }
            : { kind: 'two-circles', filletMm, platformMm: 40, platformRadiusMm: 5000 },
          rise,
        );
        const chain = longArchChain(arch);
        if (!chain) throw new Error('no arcs');
        const pieces = segments(chain);
        expect(pieces.length).toBe(kind === 'circle' ? 3 : 5);
        let heading = 0;
        for (const { start, end, bulge } of pieces) {
          const chord = Math.atan2(end.y - start.y, end.x - start.x);
          expect(chord - 2 * Math.atan(bulge)).toBeCloseTo(heading, 9);
          heading = chord + 2 * Math.atan(bulge);
          expect(longArchHeight(arch, start.x)).toBeCloseTo(start.y, 9);
        }
        expect(heading).toBeCloseTo(0, 9);
      },
    ),
  );
});

test('a second circle makes the long arch fuller than one circle, a cycloid makes it leaner', () => {
  expect(longArchHeight(made(twoCircles), 90)).toBeGreaterThan(longArchHeight(made(circle), 90));
  expect(longArchHeight(made(cycloid), 90)).toBeLessThan(longArchHeight(made(circle), 90));
});

test.each([circle, twoCircles, cycloid])(
  'a crest off the middle is level there and met from both sides: $kind',
  (form) => {
    const checked = longArch(7, 347, 12, form, 'test', 190);
    if (!checked.ok) throw new Error(checked.faults[0]?.found);
    const arch = checked.value;
    expect(longArchHeight(arch, 190)).toBeCloseTo(12, 12);
    for (const y of [7.001, 189.999, 190.001, 346.999])
      expect(Math.abs(longArchSlope(arch, y))).toBeLessThan(1e-3);
    for (const y of [9, 60, 150, 210, 300, 345]) {
      const step = 1e-4;
      const change = longArchSlope(arch, y + step) - longArchSlope(arch, y - step);
      expect(longArchBend(arch, y)).toBeCloseTo(change / (2 * step), 8);
      expect(longArchHeight(arch, y)).toBeLessThan(12);
    }
    const chain = longArchChain(arch);
    if (form.kind === 'cycloid') expect(chain).toBeNull();
    else {
      const { vertices } = chain ?? { vertices: [] };
      for (const { x, y } of vertices) expect(y).toBeCloseTo(longArchHeight(arch, x), 9);
      const highest = vertices.find(({ x }) => x === 190);
      expect(highest?.y).toBe(12);
      for (const side of segments(chain ?? { closed: false, vertices: [] })) {
        const middle = pointOn(side, 0.5);
        expect(middle.y).toBeCloseTo(longArchHeight(arch, middle.x), 9);
      }
    }
  },
);

test.each([7, 347, -20, Number.NaN])('a crest at %s, not between the channel ends, is refused', (crestMm) => {
  expect(longArch(7, 347, 12, circle, 'test', crestMm)).toMatchObject({
    ok: false,
    faults: [{ code: 'arch.crest' }],
  });
});
