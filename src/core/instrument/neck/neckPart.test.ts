import { describe, expect, test } from 'vitest';
import { contourFaults } from '../../../../test/laws/parts.ts';
import {
  arcOf,
  areaOf,
  boundsOf,
  containsPoint,
  headingOn,
  nearestOn,
  placeChain,
  segments,
} from '../../curve/index.ts';
import { draftDesign, type Family, type ValueName } from '../../design/index.ts';
import { sizesOf } from '../../knowledge/index.ts';
import { measured } from '../../quantity/index.ts';
import { deriveInstrument } from '../deriveInstrument.ts';
import { boardHollow } from './boardHollow.ts';
import { boardScoop } from './boardScoop.ts';
import { boardThickness, boardWidth } from './boardSection.ts';
import type { Neck } from './neckPart.ts';
import { neckRound } from './neckSection.ts';
import { alongNeck, neckPlace } from './neckSet.ts';

function derived(family: Family, lengthMm: number, given: Partial<Record<ValueName, number>> = {}) {
  const values = Object.fromEntries(
    Object.entries({ bodyLength: lengthMm, ...given }).map(([name, value]) => [
      name,
      { value, unit: name.endsWith('Angle') ? 'deg' : 'mm', origin: measured('the check') } as const,
    ]),
  );
  const drafted = draftDesign({ family, name: family, values });
  if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
  return deriveInstrument(drafted.value.design);
}

function neckOf(family: Family, lengthMm: number, given: Partial<Record<ValueName, number>> = {}): Neck {
  const instrument = derived(family, lengthMm, given);
  if (!instrument.ok) throw new Error(JSON.stringify(instrument.faults));
  return instrument.value.neck;
}

const SIZES = (['violin', 'viola', 'cello'] as const).flatMap((family) =>
  sizesOf(family).map(({ name, values }) => [family, name, values.bodyLength?.value ?? 0] as const),
);

describe.each(SIZES)('the neck of a %s %s', (family, _size, lengthMm) => {
  const neck = neckOf(family, lengthMm);
  const { sizes, set, shape, mortise, bodyHeightMm } = neck;

  test('has nothing against it that a maker would have to change', () => {
    expect(neck.findings.filter(({ weight }) => weight !== 'remark')).toEqual([]);
  });

  test('is one closed side, smooth from its back into the heel', () => {
    const drawn = placeChain<'drawing', 'section'>(shape.side, { turnRad: 0, shift: [0, 0] });
    expect(contourFaults(drawn, 'anticlockwise')).toEqual([]);
    const [back, upper, lower] = segments(shape.side);
    if (!back || !upper || !lower) throw new Error('no heel');
    expect(headingOn(upper, 0)).toBeCloseTo(headingOn(back, 1), 9);
    expect(headingOn(lower, 0)).toBeCloseTo(headingOn(upper, 1), 9);
  });

  test('stands with its root in the mortise: as deep as it says at the edge and at the back', () => {
    const along = (x: number, z: number) => {
      const { alongMm, upMm } = alongNeck(sizes, set.neckAngleRad, x, z);
      return { x: alongMm, y: upMm };
    };
    const reach = (xMm: number, zMm: number) => nearestOn(shape.side, along(xMm, zMm)).distanceMm;
    expect(reach(mortise.depthAtTopMm, 0)).toBeLessThan(1e-9);
    expect(reach(mortise.depthAtBackMm, -bodyHeightMm)).toBeLessThan(1e-9);
    expect(reach(-neck.button.heightMm, -bodyHeightMm)).toBeLessThan(1e-9);
    expect(containsPoint(shape.side, along(mortise.depthAtTopMm / 2, -bodyHeightMm / 2))).toBe(true);
  });

  test('has rounds of its own depth and width, tangent all the way, upright at the board', () => {
    for (const { round, widthMm, woodMm, withBoardMm, alongMm } of shape.sections) {
      const box = boundsOf(round);
      expect(box.max.x - box.min.x).toBeCloseTo(widthMm, 9);
      expect(widthMm).toBeCloseTo(boardWidth(sizes.board, alongMm), 9);
      expect(-box.min.y).toBeCloseTo(woodMm, 6);
      expect(withBoardMm - woodMm).toBeCloseTo(boardThickness(sizes.board, alongMm), 9);
      const parts = segments(round);
      parts.slice(1).forEach((part, at) => {
        const before = parts[at];
        if (before) expect(Math.abs(headingOn(part, 0) - headingOn(before, 1))).toBeLessThan(1e-9);
      });
      expect(headingOn(parts[0] as (typeof parts)[number], 0)).toBeCloseTo(-Math.PI / 2, 9);
    }
  });

  test('has a root whose widths lie on one taper, and a button on the outline', () => {
    const { root } = shape;
    const share = root.edgeFromTopMm / root.heightMm;
    expect(root.edgeWidthMm).toBeCloseTo(root.topWidthMm * (1 - share) + root.backWidthMm * share, 9);
    expect(boundsOf(neck.button.edge).max.y).toBeCloseTo(lengthMm + neck.button.heightMm, 9);
    expect(Math.max(...neck.button.edge.vertices.map(({ x }) => x))).toBeCloseTo(root.backWidthMm / 2, 9);
  });
});

test('a root of its own widths is what was given, and both stand in the register', () => {
  const { shape, registerEntries } = neckOf('violin', 355, { rootWidthTop: 34.9, rootWidthBack: 30.2 });
  const { topWidthMm, edgeWidthMm, backWidthMm, mouthWidthMm } = shape.root;
  expect([topWidthMm, backWidthMm]).toEqual([34.9, 30.2]);
  expect(edgeWidthMm).toBeGreaterThan(34);
  expect(mouthWidthMm).toBeCloseTo(24 + (18 * 130) / 270, 9);
  const entry = registerEntries.find(({ name }) => name === 'neck.rootWidthTop');
  expect(entry?.origin).toMatchObject({ from: expect.arrayContaining(['rootWidthTop', 'rootWidthBack']) });
});

test('a place over the body goes to the neck and comes back', () => {
  const { sizes, set } = neckOf('violin', 355);
  const { alongMm, upMm } = alongNeck(sizes, set.neckAngleRad, 17, -9);
  const back = neckPlace(sizes, set.neckAngleRad, alongMm, upMm);
  expect(back.xMm).toBeCloseTo(17, 12);
  expect(back.zMm).toBeCloseTo(-9, 12);
});

test('a half round as wide as it is deep is a half circle nearly, and a deeper one stands upright first', () => {
  const even = neckRound(24, 11.5);
  expect(Math.abs(areaOf({ ...even.round, closed: true })) / (Math.PI * 6 * 11.5)).toBeCloseTo(1, 1);
  const deep = neckRound(24, 16);
  expect(deep.round.vertices.length).toBe(even.round.vertices.length + 2);
  for (const arc of segments(deep.round).map(arcOf)) if (arc) expect(arc.sweepRad).toBeLessThan(0);
});

test('the scoop of a board whose outer strings spread needs a rounder board half way', () => {
  const board = { lengthMm: 270, widthAtNutMm: 24, widthAtEndMm: 42, radiusMm: 42, sideMm: 5 };
  const scoop = boardScoop(board, 0.75, 0.25);
  expect(scoop.middleMm).toBe(0.5);
  expect(scoop.acrossRadiusMm).toBeLessThan(42);
  const even = boardScoop({ ...board, widthAtEndMm: 24 }, 0.75, 0.25);
  expect(even.acrossRadiusMm).toBeCloseTo(42, 9);
  expect(even.middleOfOneRoundMm).toBeCloseTo(0.5, 9);
});

test('a hollow leaves its roof, and there is none in a board no thicker', () => {
  const board = { lengthMm: 270, widthAtNutMm: 24, widthAtEndMm: 42, radiusMm: 42, sideMm: 5 };
  expect(boardHollow(board, 130, 5)?.depthMm).toBeCloseTo(boardThickness(board, 270) - 5, 12);
  expect(boardHollow(board, 130, 11)).toBeNull();
});

describe('what is given of the set decides it, and habits fill the rest', () => {
  test('a string length moves the neck stop, a bridge the projection, and both are said', () => {
    const neck = neckOf('violin', 355, { stringLength: 330, bridgeHeight: 33.5 });
    expect(neck.set.stringLengthMm).toBeCloseTo(330, 4);
    expect(neck.set.bridgeHeightMm).toBeCloseTo(33.5, 4);
    expect(neck.sizes.overstandMm).toBe(6);
    expect(neck.findings.filter(({ code }) => code === 'neck.moved').map(({ at }) => at)).toEqual([
      'neckStop',
      'projection',
    ]);
  });

  test.each([
    ['neck.contradiction', 'contradiction', { overstand: 6, projection: 27, boardEndHeight: 18 }],
    ['neck.doubtful', 'caution', { neckStop: 130, stop: 195, stringLength: 330.5 }],
    ['neck.unusual', 'remark', { projection: 24 }],
    ['neck.mortise-shallow', 'caution', { mortiseDepth: 3 }],
    ['neck.block-thin', 'caution', { mortiseDepth: 10 }],
    ['neck.block-narrow', 'caution', { upperBlockWidth: 38 }],
    ['neck.mortise-lean', 'caution', { rootAngle: 82 }],
    ['neck.heel-tight', 'caution', { heelStart: 28 }],
    ['board.long', 'caution', { boardLength: 285 }],
    ['board.solid', 'remark', { boardRoof: 12 }],
    ['board.diameter', 'caution', { boardRadius: 84 }],
  ] as const)('%s', (code, weight, given) => {
    const found = neckOf('violin', 355, given).findings.filter((finding) => finding.code === code);
    expect([...new Set(found.map((finding) => finding.weight))]).toEqual([weight]);
    expect(neckOf('violin', 355).findings.map((finding) => finding.code)).not.toContain(code);
  });

  test.each([
    ['neck.thin', 'neckThicknessNut', { neckThicknessNut: 6 }],
    ['neck.heel', 'heelStart', { heelStart: 12 }],
    ['neck.heel', 'heelStart', { heelStart: 14 }],
    ['neck.button', 'buttonWidth', { buttonWidth: 250 }],
    ['neck.board-round', 'boardRadius', { boardRadius: 21 }],
    ['neck.board-end', 'boardLength', { boardLength: 340 }],
  ] as const)('%s is refused at %s', (code, at, given) => {
    const instrument = derived('violin', 355, given);
    expect(instrument.ok ? [] : instrument.faults.map((fault) => [fault.code, fault.at])).toEqual([
      [code, at],
    ]);
  });
});

test('every derived number of neck and board is in the register, with what it depends on', () => {
  const instrument = derived('violin', 355);
  if (!instrument.ok) throw new Error('not derived');
  const names = instrument.value.register.entries.map(({ name }) => name);
  for (const name of [
    'neck.angle',
    'neck.boardEnd',
    'neck.bridge',
    'neck.mortiseAtBack',
    'neck.rootWidthTop',
    'board.roundHalfWay',
  ])
    expect(names).toContain(name);
});
