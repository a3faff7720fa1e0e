import fc from 'fast-check';
import { expect, test } from 'vitest';
import '../../../../test/fixedSeed.ts';
import { instrumentOf, withScaled, withValues } from '../../../../test/fixtures/heads.ts';
import { TANGENT_RAD } from '../../base/index.ts';
import { areaOf, headingOn, nearestOn, segments, selfCrossings, wrapAngle } from '../../curve/index.ts';
import type { Design } from '../../design/index.ts';
import { type Head, headOfDesign } from './headOfDesign.ts';
import { insideWidth, outsideWidth } from './pegbox.ts';

const violin = instrumentOf('violin', 355);

function headOf(design: Design, instrument = violin): Head {
  const head = headOfDesign(design, instrument.neck, instrument.setUp);
  if (!head.ok) throw new Error(JSON.stringify(head.faults));
  return head.value;
}

const codes = (head: Head): readonly string[] => head.findings.map(({ code }) => code);

test.each([
  ['violin', 355],
  ['violin', 335],
  ['violin', 230],
  ['viola', 380],
  ['viola', 406],
  ['viola', 440],
  ['cello', 755],
  ['cello', 690],
] as const)('the head of a %s of %s mm comes out without a finding, every string clear', (family, length) => {
  const { head, register } = instrumentOf(family, length);
  expect(codes(head)).toEqual([]);
  expect(head.strings.map(({ number }) => number)).toEqual([4, 1, 3, 2]);
  for (const { leastRoom } of head.strings) expect(leastRoom?.mm ?? 1).toBeGreaterThan(0.1);
  expect(register.entries.filter(({ name }) => name.startsWith('head.')).length).toBeGreaterThan(60);
});

test('left alone the pegs stand midway between front and floor, as they were worked', () => {
  const { pegs, pegbox } = violin.head;
  // Worked for 15, 32, 50 and 65.6 mm: (11.55, 9.58) with 7.1 mm in front and to the floor.
  const [first] = pegs;
  expect(first?.movedMm).toBe(0);
  expect(Math.hypot((first?.centre.x ?? 0) - 11.55, (first?.centre.y ?? 0) - 9.58)).toBeLessThan(0.02);
  expect(first?.frontCoverMm).toBeCloseTo(7.1, 1);
  expect(first?.floorCoverMm).toBeCloseTo(7.1, 1);
  for (const peg of pegs) expect(Math.hypot(peg.centre.x, peg.centre.y)).toBeCloseTo(peg.fromNutMm, 9);
  expect(insideWidth(pegbox, 0, 0)).toBeCloseTo(15.6, 9);
  expect(
    nearestOn(violin.head.profile.spine, pegbox.floor.vertices[1] ?? { x: 0, y: 0 }).distanceMm,
  ).toBeCloseTo(4.5, 9);
});

test('the A string would lie on the D peg, were the pegs not moved', () => {
  const { pegs, strings } = violin.head;
  const a = strings.find(({ letter }) => letter === 'A');
  expect(a?.peg).toBe(4);
  expect(a?.leastRoom?.peg).toBe(3);
  const moved = pegs.map(({ movedMm }) => movedMm);
  expect(moved[2]).toBeGreaterThan(0.5);
  expect(moved[3]).toBeLessThan(-0.5);
});

test('a string beside a peg is measured as plain geometry measures it', () => {
  const { pegs, strings } = violin.head;
  for (const { from, to, diameterMm, peg, leastRoom } of strings) {
    const rooms = pegs.slice(0, peg - 1).map(({ centre, largeMm }) => {
      const line = { closed: false, vertices: [from, to].map((at) => ({ ...at, bulge: 0 })) };
      return nearestOn(line, centre).distanceMm - (largeMm + diameterMm) / 2;
    });
    if (leastRoom) expect(Math.min(...rooms)).toBeCloseTo(leastRoom.mm, 9);
    const own = pegs[peg - 1];
    // It touches its own peg: tangent, at half its own thickness from the wood.
    const reach = Math.hypot(to.x - (own?.centre.x ?? 0), to.y - (own?.centre.y ?? 0));
    expect(reach).toBeCloseTo(((own?.largeMm ?? 0) + diameterMm) / 2, 9);
    const across =
      (to.x - from.x) * (to.x - (own?.centre.x ?? 0)) + (to.y - from.y) * (to.y - (own?.centre.y ?? 0));
    expect(across).toBeCloseTo(0, 6);
  }
});

test('left-handed every peg has its head on the other side, and nothing else moves', () => {
  const other = headOf({ ...violin.design, leftHanded: true });
  expect(other.strings.map(({ side }) => -side)).toEqual(violin.head.strings.map(({ side }) => side));
  expect(other.strings.map(({ acrossMm }) => -acrossMm)).toEqual(
    violin.head.strings.map(({ acrossMm }) => acrossMm),
  );
  expect(other.pegs).toEqual(violin.head.pegs);
});

test.each([
  ['thin walls', { pegboxWallThroat: 2 }, 'head.wall-thin'],
  ['a thin floor', { pegboxFloor: 2 }, 'head.floor-thin'],
  ['pegs close together', { peg2: 26 }, 'head.peg-pitch'],
  ['a peg at the end of the pegbox', { peg4: 69 }, 'head.peg-end'],
  ['thick pegs', { pegDiameter: 16 }, 'head.peg-cover'],
  ['pegs too thick for the strings to pass', { pegDiameter: 11 }, 'head.string-on-peg'],
  ['a narrow pegbox', { pegboxWidthNut: 23.5 }, 'head.string-on-wall'],
  ['turns between quarters', { scrollTurns: 2.4 }, 'head.quarter-turns'],
] as const)('%s is told', (_what, given, code) => {
  expect(codes(headOf(withValues(violin.design, given)))).toContain(code);
});

test.each([
  ['a peg beyond the throat', { peg4: 80 }, 'head.peg-outside peg4'],
  ['walls that meet', { pegboxWallThroat: 9 }, 'head.pegbox pegboxWallThroat'],
  ['a chin before the neck', { chinBehind: 10 }, 'head.hollow backHollow'],
  ['an eye as large as the scroll', { scrollEye: 60 }, 'head.spiral scrollHeight'],
  ['no eye', { scrollEye: 0 }, 'head.value scrollEye'],
  ['a throat wider than its round', { throatGap: 4 }, 'head.throat throatRadius'],
  ['a back before its own spiral', { headDepth: 25 }, 'head.back headDepth'],
] as const)('%s is refused in words', (_what, given, expected) => {
  const head = headOfDesign(withValues(violin.design, given), violin.neck, violin.setUp);
  expect(head.ok ? [] : head.faults.map(({ code, at }) => `${code} ${at}`)).toContain(expected);
});

const nearOne = fc.double({ min: 0.96, max: 1.04, noNaN: true });

test('sound heads near the usual ones are fair lines that close, whatever their size', () => {
  let drawn = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(['violin', 355] as const, ['viola', 406] as const, ['cello', 755] as const),
      fc.record({
        headLength: nearOne,
        headTop: nearOne,
        headDepth: nearOne,
        scrollHeight: nearOne,
        scrollEye: fc.double({ min: 0.8, max: 1.3, noNaN: true }),
        backLeanAngle: nearOne,
        backHollow: fc.double({ min: 0.9, max: 1.2, noNaN: true }),
        chinBehind: nearOne,
        pegboxFrontAngle: nearOne,
        scrollEars: nearOne,
      }),
      fc.constantFrom(2, 2.25, 2.5, 2.75, 3),
      ([family, length], factors, scrollTurns) => {
        const instrument = instrumentOf(family, length);
        const design = withValues(withScaled(instrument.design, factors), { scrollTurns });
        const made = headOfDesign(design, instrument.neck, instrument.setUp);
        if (!made.ok) return;
        drawn++;
        const { profile, pegbox } = made.value;
        const value = (name: keyof typeof factors): number => design.values[name]?.value ?? Number.NaN;
        const spine = segments(profile.spine);
        for (const [index, next] of spine.slice(1).entries()) {
          const kink = wrapAngle(headingOn(next, 0) - headingOn(spine[index] as typeof next, 1));
          expect(Math.abs(kink)).toBeLessThan(TANGENT_RAD);
        }
        const ys = profile.outline.vertices.map(({ y }) => y);
        expect(Math.max(...ys) - profile.chinTip.y).toBeCloseTo(value('headLength'), 9);
        const [top, , bottom] = profile.volute.arcs.slice(1);
        const bottomY = (bottom?.centre.y ?? 0) - (bottom?.radiusMm ?? 0);
        expect((top?.centre.y ?? 0) + (top?.radiusMm ?? 0) - bottomY).toBeCloseTo(value('scrollHeight'), 9);
        expect(profile.volute.arcs.at(-1)?.radiusMm).toBeCloseTo(value('scrollEye') / 2, 9);
        expect(selfCrossings({ ...profile.outline, closed: true })).toEqual([]);
        expect(areaOf(pegbox.cavity)).toBeGreaterThan(0);
        expect(selfCrossings(pegbox.cavity)).toEqual([]);
      },
    ),
    { numRuns: 150 },
  );
  expect(drawn).toBeGreaterThan(100);
});

test('a cello’s pegbox rounds out from the neck in its shoulders; a violin’s has none', () => {
  const cello = instrumentOf('cello', 755);
  const { pegbox } = cello.head;
  const { neckWidthMm, widthNutMm, shoulderMm } = pegbox.sizes;
  expect(outsideWidth(pegbox, 0)).toBeCloseTo(neckWidthMm, 9);
  expect(neckWidthMm).toBe(cello.design.values.boardWidthNut?.value);
  expect(widthNutMm - neckWidthMm).toBeGreaterThan(8);
  const widths = [0, 0.1, 0.3, 0.6, 1].map((share) => outsideWidth(pegbox, share * shoulderMm));
  widths.slice(1).forEach((width, index) => expect(width).toBeGreaterThan(widths[index] ?? 0));
  // A quarter of an ellipse: most of it within the first half, no corner at its end.
  expect(outsideWidth(pegbox, shoulderMm / 2) - neckWidthMm).toBeGreaterThan(
    0.8 * (widthNutMm - neckWidthMm),
  );
  const slope = (at: number) => (outsideWidth(pegbox, at + 0.01) - outsideWidth(pegbox, at - 0.01)) / 0.02;
  expect(Math.abs(slope(shoulderMm - 0.02) - slope(shoulderMm + 0.02))).toBeLessThan(0.2);
  // The walls stay: the inside knows nothing of the shoulders.
  expect(insideWidth(pegbox, 0, 0)).toBeCloseTo(widthNutMm - 2 * pegbox.sizes.wallNutMm, 9);
  expect(violin.head.pegbox.sizes.shoulderMm).toBe(0);
  expect(outsideWidth(violin.head.pegbox, 0)).toBe(25);
});

test('a pegbox much wider than the neck without shoulders, and shoulders on a narrow one, are told', () => {
  const cello = instrumentOf('cello', 755);
  const told = (values: Record<string, number>, instrument = cello) =>
    codes(headOf(withValues(instrument.design, values), instrument));
  expect(told({ pegboxShoulder: 0 })).toContain('head.step');
  expect(told({ pegboxShoulder: 4 }, instrumentOf('violin', 355))).toEqual([]);
  expect(told({ pegboxShoulder: 4, boardWidthNut: 26 }, violin)).toContain('head.shoulder');
});

test('pegs too thick for their pegbox are refused in words, shoulders that are none are told', () => {
  const wide = headOfDesign(withValues(violin.design, { pegDiameter: 30 }), violin.neck, violin.setUp);
  expect(wide.ok ? [] : wide.faults.map(({ code, at }) => [code, at])).toEqual([
    ['head.peg-wide', 'pegDiameter'],
  ]);
  const cello = instrumentOf('cello', 755);
  expect(codes(headOf(withValues(cello.design, { pegboxShoulder: 90 }), cello))).toContain(
    'head.shoulder-long',
  );
});
