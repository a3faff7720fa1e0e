import { describe, expect, test } from 'vitest';
import {
  AT_ORIGIN,
  CARD_PLAN,
  cameraOver,
  type Lies,
  pairsSeen,
} from '../../../../test/render/simulatedSheets.ts';
import { type TrueCamera, truePhoto } from '../../../../test/render/simulatedShots.ts';
import { point, seededRandom } from '../../base/index.ts';
import { calibrationSheet } from '../sheet/calibrationSheet.ts';
import { cameraView } from './cameraView.ts';
import type { ScenePlane } from './scenePlane.ts';
import type { Shot, ShotsOptions } from './shot.ts';
import { planeOfCard, type SolvedScene, sheetPlace } from './solvedScene.ts';
import { solveShots } from './solveShots.ts';
import { toScene } from './view.ts';
import { lengthBetween } from './viewUncertainty.ts';

const sheet = calibrationSheet('A3');
const small = calibrationSheet('A4');
/** A print and a board that are known to be true. */
const EXACT: ShotsOptions = { sheetBarMm: { xMm: 150, yMm: 150, plusMinusMm: 0 }, flatPlusMinusMm: 0 };
const TRUE_BARS: ShotsOptions = { sheetBarMm: { xMm: 150, yMm: 150 } };

function solved(shots: readonly Shot[], options = TRUE_BARS): SolvedScene {
  const scene = solveShots(shots, options);
  if (!scene.ok) throw new Error(scene.faults.map(({ code, found }) => `${code}: ${found}`).join());
  return scene.value;
}

function codesOf(shots: readonly Shot[], options = TRUE_BARS): readonly string[] {
  const scene = solveShots(shots, options);
  return (scene.ok ? scene.value.findings : scene.faults).map(({ code }) => code);
}

function shotOf(camera: TrueCamera, noisePx = 0, random = seededRandom(1)): Shot {
  return {
    sheets: [{ number: 1, pairs: pairsSeen(camera, sheet.saddles, { noisePx, random }) }],
    picture: camera,
  };
}

/** How far places on a plane, and a length of 356 mm on it, come out from where they are. */
function missesOn(scene: SolvedScene, shot: number, camera: TrueCamera, plane: ScenePlane, zMm: number) {
  const view = cameraView(scene.shots[shot]!, sheet, plane);
  if (!view.ok) throw new Error(view.faults[0]!.found);
  const seen = (x: number, y: number) => toScene(view.value.view, truePhoto(camera, [x, y, zMm]));
  const places = [30, 120, 210, 300, 390].flatMap((x) =>
    [30, 90, 148, 206, 267].map((y) => {
      const at = seen(x, y);
      return Math.hypot(at.x - x, at.y - y);
    }),
  );
  const [a, b] = [seen(32, 148), seen(388, 148)];
  return {
    rmsMm: Math.sqrt(places.reduce((sum, one) => sum + one * one, 0) / places.length),
    lengthMm: Math.abs(Math.hypot(b.x - a.x, b.y - a.y) - 356),
  };
}

const rms = (list: readonly number[]) =>
  Math.sqrt(list.reduce((sum, one) => sum + one * one, 0) / list.length);

test('without noise the places on the sheet come out to a hundredth of a millimetre, wherever the camera stood', () => {
  for (const [tilt, way] of [
    [4, 30],
    [15, 200],
    [30, 100],
  ] as const) {
    const camera = cameraOver(tilt, way);
    const misses = missesOn(solved([shotOf(camera)], EXACT), 0, camera, { heightMm: 0, plusMinusMm: 0 }, 0);
    expect(misses.rmsMm).toBeLessThan(0.01);
    expect(misses.lengthMm).toBeLessThan(0.01);
  }
});

describe('20 pairs of photographs, saddles off by 0.05 px, the second 15° aslant', () => {
  const random = seededRandom(5);
  const all = Array.from({ length: 20 }, (_, place) => {
    const cameras = [cameraOver(3, 18 * place), cameraOver(15, 90 + 18 * place)] as const;
    const scene = solved(cameras.map((camera) => shotOf(camera, 0.05, random)));
    return [0, 38].map((z) => missesOn(scene, 0, cameras[0], { heightMm: z, plusMinusMm: 0 }, z));
  });

  test('places on the sheet are true to 0.01 mm rms, and 356 mm to 0.05 mm each time', () => {
    expect(rms(all.map(([low]) => low!.rmsMm))).toBeLessThan(0.01);
    expect(Math.max(...all.map(([low]) => low!.lengthMm))).toBeLessThan(0.05);
  });

  test('356 mm at 38 mm above the sheet are true to 0.1 mm each time', () => {
    expect(Math.max(...all.map(([, high]) => high!.lengthMm))).toBeLessThan(0.1);
  });
});

describe('two A4 sheets and a third, seen two by two', () => {
  const lies: readonly Lies[] = [
    AT_ORIGIN,
    { ...AT_ORIGIN, x: 340, y: 40, turnRad: 0.12 },
    { ...AT_ORIGIN, x: 700, y: 20, turnRad: 3 },
  ];
  const over = (x: number, way: number) =>
    cameraOver(8, way, { eye: [x + 90 * Math.cos(way), 90 * Math.sin(way), 1300], target: [x, 120, 0] });
  const cameras = [over(300, 1), over(560, 4)];
  const seen = (camera: TrueCamera, numbers: readonly number[]) =>
    numbers.map((number) => ({
      number,
      pairs: pairsSeen(camera, small.saddles, { lies: lies[number - 1]! }),
    }));
  const scene = solved([
    { sheets: seen(cameras[0]!, [1, 2]), picture: cameras[0]! },
    { sheets: seen(cameras[1]!, [2, 3]), picture: cameras[1]! },
  ]);

  test('are laid out where they lie', () => {
    scene.sheets.forEach(({ at, turnRad }, place) => {
      expect(Math.hypot(at.x - lies[place]!.x, at.y - lies[place]!.y)).toBeLessThan(0.02);
      expect(Math.abs(Math.sin(turnRad - lies[place]!.turnRad))).toBeLessThan(0.0001);
    });
    const corner = sheetPlace(scene.sheets[1]!, point(297, 0));
    expect(corner.x).toBeCloseTo(340 + 297 * Math.cos(0.12), 1);
  });

  test('are refused when no photograph shows one of them with the others', () => {
    const apart = [
      { sheets: seen(cameras[0]!, [1, 2]), picture: cameras[0]! },
      { sheets: seen(cameras[1]!, [3]), picture: cameras[1]! },
    ];
    expect(codesOf(apart)).toEqual(['sheet.apart']);
  });

  test('printed at two scales are found out, and still lie where they lie', () => {
    const other = { ...lies[1]!, ratioX: 0.98, ratioY: 0.98 };
    const camera = cameras[0]!;
    const shots = [
      {
        sheets: [
          ...seen(camera, [1]),
          { number: 2, pairs: pairsSeen(camera, small.saddles, { lies: other }) },
        ],
        picture: camera,
      },
    ];
    const mixed = solved(shots);
    expect(mixed.findings.map(({ code }) => code)).toEqual(['sheet.printings']);
    expect(mixed.findings[0]!.found).toContain('2.0 % smaller');
    expect(mixed.sheets[1]!.printScale.x).toBeCloseTo(0.98, 3);
    expect(Math.hypot(mixed.sheets[1]!.at.x - 340, mixed.sheets[1]!.at.y - 40)).toBeLessThan(0.05);
  });
});

describe('bars', () => {
  const shot = shotOf(cameraOver(8, 40), 0.05);

  test('that a careful hand read 0.2 mm apart on an even print count as their mean', () => {
    const scene = solved([shot], { sheetBarMm: { xMm: 149.9, yMm: 150.1 } });
    expect(scene.findings).toEqual([]);
    expect(scene.sheets[0]!.printScale.x).toBeCloseTo(1, 3);
    expect(scene.sheets[0]!.printScale.y).toBeCloseTo(1, 3);
  });

  test('that contradict the photograph are refused, with what it shows', () => {
    const scene = solveShots([shot], { sheetBarMm: { xMm: 149, yMm: 151 } });
    expect(scene.ok ? [] : scene.faults.map(({ code }) => code)).toEqual(['sheet.barsApart']);
    expect(scene.ok ? '' : scene.faults[0]!.found).toMatch(
      /bars of 149\.0 and 151\.0 mm.*look more like 149\.\d and 150\.\d mm/,
    );
  });

  test('that nobody measured leave the scale open to 0.3 % and say so', () => {
    const scene = solved([shot], {});
    expect(scene.findings.map(({ code }) => code)).toEqual(['sheet.unmeasured']);
    expect(scene.sheets[0]!.printPlusMinus).toBeGreaterThan(0.0027);
    expect(scene.sheets[0]!.printPlusMinus).toBeLessThan(0.0041);
  });
});

test('a height card tells its own height, and lengths at it, from one photograph taken nearly square on', () => {
  const camera = cameraOver(1, 20);
  const lies = { ...AT_ORIGIN, x: 70, y: 120, turnRad: 0.4, z: 38 };
  const cards = [
    { number: 3, pairs: pairsSeen(camera, CARD_PLAN, { lies, noisePx: 0.05, random: seededRandom(9) }) },
  ];
  const scene = solved([{ ...shotOf(camera, 0.05), cards }]);
  const card = scene.cards[0]!;
  expect(card.number).toBe(3);
  expect(Math.abs(card.heightMm - 38)).toBeLessThan(card.plusMinusMm);
  const misses = missesOn(scene, 0, camera, planeOfCard(scene, 0, 3), 38);
  expect(misses.lengthMm).toBeLessThan(0.15);
});

describe('a sheet that does not lie flat', () => {
  const camera = cameraOver(8, 40);
  const lifted = (lift: (x: number, y: number) => number): Shot => ({
    sheets: [
      {
        number: 1,
        pairs: pairsSeen(camera, sheet.saddles, { lift, noisePx: 0.05, random: seededRandom(4) }),
      },
    ],
    picture: camera,
  });

  test('curled up by 3 mm at both ends is named', () => {
    expect(codesOf([lifted((x) => 3 * ((x - 210) / 210) ** 4)])).toContain('sheet.curled');
  });

  test('folded, one corner standing up by 12 mm, is named', () => {
    const fold = (x: number, y: number) => Math.max(0, (x + y - 560) * 0.12);
    const codes = codesOf([lifted(fold)]);
    expect(codes.some((code) => ['sheet.curled', 'sheet.outliers', 'sheet.notFlat'].includes(code))).toBe(
      true,
    );
  });

  test('rolled up by 40 mm is refused', () => {
    expect(codesOf([lifted((x) => 40 * ((x - 210) / 210) ** 4)])).toEqual(['sheet.notFlat']);
  });
});

test('points that something covers are left out and told, and the rest gives the same camera', () => {
  const shot = shotOf(cameraOver(8, 40), 0.05);
  const pairs = shot.sheets[0]!.pairs.map((pair, place) =>
    place % 5 === 0 ? { ...pair, photo: point<'photo'>(pair.photo.x + 3, pair.photo.y - 2) } : pair,
  );
  const spoiled = solved([{ ...shot, sheets: [{ number: 1, pairs }] }]);
  expect(spoiled.findings.map(({ code }) => code)).toEqual(['sheet.outliers']);
  expect(spoiled.shots[0]!.pointsUsed).toBe(pairs.filter((_, place) => place % 5 !== 0).length);
  expect(spoiled.shots[0]!.rmsPx).toBeLessThan(0.06);
});

test('a noted focal length that the sheet contradicts is set aside and told', () => {
  const camera = cameraOver(12, 40);
  const focal35Mm = (1.4 * camera.focalPx * Math.hypot(36, 24)) / Math.hypot(camera.widthPx, camera.heightPx);
  const scene = solved([{ ...shotOf(camera, 0.03), picture: { ...camera, focal35Mm } }]);
  expect(scene.findings.map(({ code }) => code)).toEqual(['camera.focalNote']);
  expect(Math.abs(scene.shots[0]!.camera.focalPx / camera.focalPx - 1)).toBeLessThan(0.02);
});

test('two shots share one lens; zoomed in between, they have one each', () => {
  const [first, second] = [cameraOver(3, 40), cameraOver(14, 130)];
  const zoomed = { ...second, focalPx: 6000 };
  const same = solved([shotOf(first, 0.03), shotOf(second, 0.03)]);
  expect(same.shots[0]!.camera.focalPx).toBe(same.shots[1]!.camera.focalPx);
  const apart = solved([shotOf(first, 0.03), shotOf(zoomed, 0.03)]);
  expect(Math.abs(apart.shots[1]!.camera.focalPx / 6000 - 1)).toBeLessThan(0.02);
});

test('zoomed a little between two nearly square-on shots, they have one lens each although one would fit both', () => {
  const [first, second] = [cameraOver(4, 40), cameraOver(4, 130)];
  const zoomed = { ...second, focalPx: 1.16 * second.focalPx };
  const lensesOf = (other: typeof second) => {
    const { shots } = solved([shotOf(first, 0.03), shotOf(other, 0.03)]);
    return new Set(shots.map(({ camera }) => camera.focalPx)).size;
  };
  expect(lensesOf(second)).toBe(1);
  expect(lensesOf(zoomed)).toBe(2);
});

test.each([1300, 1700])(
  'square on from %i mm with no focal length noted, the stand is unsure and said to be so',
  (standMm) => {
    const focalPx = 8 * standMm;
    const camera = cameraOver(0.4, 40, { focalPx, eye: [210, 148 + 0.007 * standMm, standMm] });
    const scene = solved([shotOf(camera, 0.05)]);
    expect(scene.shots[0]!.standMm).toBeGreaterThan(0.5 * standMm);
    expect(scene.shots[0]!.standMm).toBeLessThan(1.5 * standMm);
    const view = cameraView(scene.shots[0]!, sheet, { heightMm: 37, plusMinusMm: 0 });
    if (!view.ok) throw new Error();
    expect(view.value.findings.map(({ code }) => code)).toEqual(['camera.heightUnsure']);
    const ends = [32, 388].map((x) => truePhoto(camera, [x, 148, 37]));
    const { mm, plusMinusMm } = lengthBetween(view.value.view, ends[0]!, ends[1]!);
    expect(Math.abs(mm - 356)).toBeLessThan(plusMinusMm);
  },
);

test('a photograph taken 60° aslant is refused', () => {
  expect(codesOf([shotOf(cameraOver(60, 40), 0.03)])).toEqual(['camera.steep']);
});

test('nothing seen, or nothing but four points in a line, is refused in words', () => {
  expect(codesOf([])).toEqual(['camera.unsettled']);
  const line = pairsSeen(cameraOver(3, 40), sheet.saddles.slice(0, 4));
  expect(codesOf([{ sheets: [{ number: 1, pairs: line }], picture: cameraOver(3, 40) }])).toHaveLength(1);
});

test('the same shots give the same numbers to the last bit', () => {
  const shots = [
    shotOf(cameraOver(3, 40), 0.05, seededRandom(2)),
    shotOf(cameraOver(14, 130), 0.05, seededRandom(3)),
  ];
  expect(solved(shots).shots.map(({ camera }) => camera)).toEqual(
    solved(shots).shots.map(({ camera }) => camera),
  );
});
