import { describe, expect, test } from 'vitest';
import { laidOut, type TrueCamera, truePhoto, type Vector } from '../../../../test/render/simulatedShots.ts';
import { point, seededNormal, seededRandom } from '../../base/index.ts';
import { calibrationSheet } from '../sheet/calibrationSheet.ts';
import { cameraView } from './cameraView.ts';
import type { Shot, ShotsOptions } from './shot.ts';
import { planeOfCard } from './solvedScene.ts';
import { solveShots } from './solveShots.ts';
import { toScene } from './view.ts';

const sheet = calibrationSheet('A3');
const small = calibrationSheet('A4');
/** Four by three crossings on a card of 60 by 40 mm. */
const CARD = [10, 20, 30, 40].flatMap((x) => [10, 20, 30].map((y) => ({ x, y })));

const upright = { x: 0, y: 0, turnRad: 0, ratioX: 1, ratioY: 1, z: 0 };

const camera: TrueCamera = {
  widthPx: 4032,
  heightPx: 3024,
  focalPx: 7000,
  offsetPx: [12, -9],
  bending: [-0.08, 0.05, 0.0004, -0.0003, 0],
  eye: [300, 60, 1000],
  target: [210, 148, 0],
  rollRad: 0.05,
};

function seen(
  from: TrueCamera,
  places: readonly { plan: { x: number; y: number }; at: Vector }[],
  noisePx = 0,
  seed = 1,
) {
  const random = seededRandom(seed);
  return places.map(({ plan, at }) => {
    const photo = truePhoto(from, at);
    const [dx, dy] = [noisePx * seededNormal(random), noisePx * seededNormal(random)];
    return {
      sheet: point<'sheet'>(plan.x, plan.y),
      photo: point<'photo'>(photo.x + dx, photo.y + dy),
      sigmaPx: 0.05,
    };
  });
}

function on(plan: readonly { x: number; y: number }[], lies: typeof upright) {
  return plan.map((one) => ({ plan: one, at: laidOut(one, lies) }));
}

function solved(shots: readonly Shot[], options: ShotsOptions = { sheetBarMm: { xMm: 150, yMm: 150 } }) {
  const scene = solveShots(shots, options);
  if (!scene.ok) throw new Error(scene.faults.map(({ code, found }) => `${code}: ${found}`).join());
  return scene.value;
}

describe('one sheet seen without noise', () => {
  const scene = solved([
    { sheets: [{ number: 1, pairs: seen(camera, on(sheet.saddles, upright)) }], picture: camera },
  ]);

  test('gives the places on it to a few hundredths of a millimetre', () => {
    const view = cameraView(scene.shots[0]!, sheet, { heightMm: 0, plusMinusMm: 0 });
    if (!view.ok) throw new Error();
    for (const x of [40, 210, 380])
      for (const y of [40, 148, 250]) {
        const at = toScene(view.value.view, truePhoto(camera, [x, y, 0]));
        expect(Math.hypot(at.x - x, at.y - y)).toBeLessThan(0.01);
      }
    console.log(scene.shots[0]!.rmsPx, scene.shots[0]!.camera, scene.findings);
  });
});
