import { describe, expect, test } from 'vitest';
import { cameraOver, pairsSeen } from '../../../../test/render/simulatedSheets.ts';
import { type TrueCamera, truePhoto } from '../../../../test/render/simulatedShots.ts';
import { point, seededNormal, seededRandom } from '../../base/index.ts';
import { calibrationSheet } from '../sheet/calibrationSheet.ts';
import { cameraView } from './cameraView.ts';
import { heightFromViews, type PlaceInTwoViews } from './heightFromViews.ts';
import { heightFindings } from './heightTrouble.ts';
import { solveShots } from './solveShots.ts';
import { lengthBetween } from './viewUncertainty.ts';

const sheet = calibrationSheet('A3');
const EDGE_MM = 37.5;
const EDGE_PX = 0.1;

function sceneOf(cameras: readonly TrueCamera[]) {
  const random = seededRandom(3);
  const shots = cameras.map((camera) => ({
    sheets: [{ number: 1, pairs: pairsSeen(camera, sheet.saddles, { noisePx: 0.05, random }) }],
    picture: camera,
  }));
  const scene = solveShots(shots, { sheetBarMm: { xMm: 150, yMm: 150 } });
  if (!scene.ok) throw new Error(scene.faults[0]!.found);
  return scene.value;
}

/** Twenty-four places round an oval edge; `slideMm` puts the second photo point elsewhere along the edge. */
function edge(cameras: readonly TrueCamera[], slideMm = 0): PlaceInTwoViews[] {
  const random = seededRandom(8);
  return Array.from({ length: 24 }, (_, step) => {
    const angle = (step * Math.PI) / 12;
    const [x, y] = [210 + 170 * Math.cos(angle), 148 + 90 * Math.sin(angle)];
    const acrossRad = Math.atan2(Math.sin(angle) / 90, Math.cos(angle) / 170);
    const [along, up] = [-Math.sin(acrossRad) * slideMm, Math.cos(acrossRad) * slideMm];
    const seen = (camera: TrueCamera, dx: number, dy: number) => {
      const at = truePhoto(camera, [x + dx, y + dy, EDGE_MM]);
      return point<'photo'>(at.x + EDGE_PX * seededNormal(random), at.y + EDGE_PX * seededNormal(random));
    };
    return {
      first: seen(cameras[0]!, 0, 0),
      second: seen(cameras[1]!, along, up),
      sigmaPx: EDGE_PX,
      ...(slideMm > 0 && { acrossRad }),
    };
  });
}

describe('one photograph square on and one 15° aslant', () => {
  const cameras = [cameraOver(2, 40), cameraOver(15, 220)];
  const scene = sceneOf(cameras);
  const found = heightFromViews(scene, [0, 1], edge(cameras));
  if (!found.ok) throw new Error(found.faults[0]!.found);
  const { plane, apartMm } = found.value;

  test('tell the height of an edge seen in both to 0.15 mm, with a ± that holds', () => {
    expect(Math.abs(plane.heightMm - EDGE_MM)).toBeLessThan(plane.plusMinusMm);
    expect(plane.plusMinusMm).toBeLessThan(0.15);
    expect(apartMm).toBeLessThan(0.05);
  });

  test('and a length at that height better still, since height and stand are off together', () => {
    const made = cameraView(scene.shots[0]!, sheet, plane);
    if (!made.ok) throw new Error();
    const [from, to] = [32, 388].map((x) => truePhoto(cameras[0]!, [x, 148, EDGE_MM]));
    const length = lengthBetween(made.value.view, from!, to!);
    expect(Math.abs(length.mm - 356)).toBeLessThan(0.1);
    const untied = cameraView(scene.shots[0]!, sheet, { ...plane, withCamera: undefined });
    if (!untied.ok) throw new Error();
    expect(length.plusMinusMm).toBeLessThan(lengthBetween(untied.value.view, from!, to!).plusMinusMm);
  });

  test('tell it as well when the two points are 1 mm apart along the edge, and only across it counts', () => {
    const slid = heightFromViews(scene, [0, 1], edge(cameras, 1));
    expect(slid.ok && Math.abs(slid.value.plane.heightMm - plane.heightMm)).toBeLessThan(0.1);
  });

  test('are not misled by a few places that are not the same edge', () => {
    const places = edge(cameras).map((place, index) =>
      index % 8 === 0 ? { ...place, second: point<'photo'>(place.second.x + 30, place.second.y) } : place,
    );
    const robust = heightFromViews(scene, [0, 1], places);
    expect(robust.ok && Math.abs(robust.value.plane.heightMm - plane.heightMm)).toBeLessThan(0.2);
  });

  test('agree with a height measured right, and say so when it was measured wrong', () => {
    expect(heightFindings({ heightMm: 37.2, plusMinusMm: 0.5 }, plane, 'two photographs')).toEqual([]);
    const [finding] = heightFindings({ heightMm: 33, plusMinusMm: 0.5 }, plane, 'two photographs');
    expect(finding?.code).toBe('view.heightApart');
    expect(finding?.found).toMatch(/33\.0 mm were given, but the two photographs show 37\.\d ± 0\.\d mm/);
  });
});

test('two photographs from one place are refused, with how to take the second', () => {
  const cameras = [cameraOver(2, 40), cameraOver(2.05, 40)];
  const found = heightFromViews(sceneOf(cameras), [0, 1], edge(cameras));
  expect(found.ok ? [] : found.faults.map(({ code }) => code)).toEqual(['height.views']);
});

test('no places at all are refused in the same words', () => {
  const cameras = [cameraOver(2, 40), cameraOver(15, 220)];
  const found = heightFromViews(sceneOf(cameras), [0, 1], []);
  expect(found.ok ? [] : found.faults.map(({ code }) => code)).toEqual(['height.views']);
});
