import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { VIOLIN_NECK, VIOLIN_SADDLE } from '../../../../test/fixtures/neckSizes.ts';
import { boardThickness } from './boardSection.ts';
import { mortiseSlope } from './mortise.ts';
import { type NeckSet, type NeckSetSizes, neckSet } from './neckSet.ts';
import { type StringBreak, stringBreak } from './stringBreak.ts';

const DEGREE = Math.PI / 180;

function set(changes: Partial<NeckSetSizes> = {}): NeckSet {
  const checked = neckSet({ ...VIOLIN_NECK, ...changes });
  if (!checked.ok) throw new Error(checked.faults.map(({ code }) => code).join());
  return checked.value;
}

function broken(neck: NeckSet): StringBreak {
  const checked = stringBreak(neck, VIOLIN_SADDLE);
  if (!checked.ok) throw new Error(checked.faults.map(({ code }) => code).join());
  return checked.value;
}

function codes(changes: Partial<NeckSetSizes>): readonly string[] {
  const checked = neckSet({ ...VIOLIN_NECK, ...changes });
  return checked.ok ? [] : checked.faults.map(({ code }) => code);
}

test('the board is as thick as its side and the rise of its round: a half round as the radius and the side', () => {
  const board = { lengthMm: 100, widthAtNutMm: 20, widthAtEndMm: 40, radiusMm: 20, sideMm: 5 };
  expect(boardThickness(board, 100)).toBe(25);
  expect(boardThickness(board, 0)).toBeCloseTo(5 + 20 - Math.sqrt(300), 12);
});

test('a board carried on meets the projection over the top at the bridge', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 34, noNaN: true }),
      fc.double({ min: 3, max: 10, noNaN: true }),
      fc.double({ min: 180, max: 210, noNaN: true }),
      (projectionMm, overstandMm, bodyStopMm) => {
        const { neckAngleRad } = set({ projectionMm, overstandMm, bodyStopMm });
        // Walked along the crown line that goes with the thickness over the bridge.
        const [sin, cos] = [Math.sin(neckAngleRad), Math.cos(neckAngleRad)];
        let along = bodyStopMm;
        for (let round = 0; round < 60; round++)
          along = (bodyStopMm + boardThickness(VIOLIN_NECK.board, 130 + along) * sin) / cos;
        const z = overstandMm + along * sin + boardThickness(VIOLIN_NECK.board, 130 + along) * cos;
        expect(z - VIOLIN_NECK.archAtBridgeMm).toBeCloseTo(projectionMm, 8);
      },
    ),
  );
});

test('raising the projection raises the bridge alike, the board end by two thirds, and sharpens the break', () => {
  const [before, after] = [set(), set({ projectionMm: 28 })];
  expect(after.bridgeHeightMm - before.bridgeHeightMm).toBeCloseTo(1.006, 3);
  expect(after.boardEndOverTopMm - before.boardEndOverTopMm).toBeCloseTo(0.693, 3);
  expect((broken(after).breakAngleRad - broken(before).breakAngleRad) / DEGREE).toBeCloseTo(-0.632, 3);
});

test('a bridge that leans by the halving lean stands alike to both parts of the strings', () => {
  const { rearAngleRad, halvingLeanRad } = broken(set());
  const { frontAngleRad } = set();
  expect(frontAngleRad + halvingLeanRad).toBeCloseTo(rearAngleRad - halvingLeanRad, 12);
});

test('a root square to the ribs makes a mortise as deep at the back as at the top', () => {
  const { evenRootAngleRad } = mortiseSlope(6 * DEGREE, 87 * DEGREE, 6, 34);
  expect(evenRootAngleRad / DEGREE).toBeCloseTo(84, 9);
  expect(mortiseSlope(6 * DEGREE, evenRootAngleRad, 6, 34).depthAtBackMm).toBeCloseTo(6, 9);
  expect(mortiseSlope(6 * DEGREE, 87 * DEGREE, 6, 34).depthAtBackMm).toBeCloseTo(
    6 + 34 * Math.tan(3 * DEGREE),
    9,
  );
});

describe('what cannot be set is refused', () => {
  test.each([
    ['a length that is none', { bodyStopMm: Number.NaN }, 'neck.size'],
    ['an overstand of none', { overstandMm: 0 }, 'neck.size'],
    [
      'a diameter given for a radius, halved once too often',
      { board: { ...VIOLIN_NECK.board, radiusMm: 21 } },
      'neck.board-round',
    ],
    ['a board that runs into the top', { archAtBoardEndMm: 35 }, 'neck.board-end'],
    ['a board past the bridge', { board: { ...VIOLIN_NECK.board, lengthMm: 340 } }, 'neck.board-end'],
  ] as const)('%s', (_what, changes, code) => {
    expect(codes(changes)).toEqual([code]);
  });
});

test('a saddle over the top of the bridge is refused', () => {
  const checked = stringBreak(set(), { fromBridgeMm: 158, overEdgeMm: 60 });
  expect(checked).toMatchObject({ ok: false, faults: [{ code: 'neck.saddle', at: 'saddleHeight' }] });
});
