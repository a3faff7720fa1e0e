/**
 * The camera that we solve from one picture of the sheet against an independent calibration on the same points.
 *
 * Program: OpenCV 4.6.0 (2022), cv2.calibrateCamera and cv2.projectPoints, run by Debian's python3. Source of its method: Z.
 * Zhang, "A flexible new technique for camera calibration", 2000. It is run with square pixels, the centre held in the
 * middle of the picture, two radial terms and no others; the picture's true centre is there too.
 * Claims: over the sheet both cameras show a place within 0.02 px of each other; the focal lengths agree to 0.1 %; and a
 * body of 360 mm at an edge 37.5 mm high has the same length through both to 0.02 mm.
 */
import { spawnSync } from 'node:child_process';
import { beforeAll, expect, test } from 'vitest';
import { point, seededNormal, seededRandom } from '../src/core/base/index.ts';
import { calibrationSheet, projection, type SolvedCamera, solveCamera } from '../src/core/photo/index.ts';
import { type Lens, lensMap } from '../test/render/sheetPhotograph.ts';

const SCRIPT = `
import json, sys
import cv2, numpy as np
job = json.load(sys.stdin)
sheet = np.array(job['sheet'], np.float32)
photo = np.array(job['photo'], np.float32).reshape(-1, 1, 2)
w, h = job['widthPx'], job['heightPx']
start = np.array([[job['focalPx'], 0, (w - 1) / 2], [0, job['focalPx'], (h - 1) / 2], [0, 0, 1]], float)
flags = (cv2.CALIB_USE_INTRINSIC_GUESS | cv2.CALIB_FIX_ASPECT_RATIO | cv2.CALIB_ZERO_TANGENT_DIST
  | cv2.CALIB_FIX_K3 | cv2.CALIB_FIX_PRINCIPAL_POINT)
rule = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_MAX_ITER, 500, 1e-14)
rms, K, d, turns, shifts = cv2.calibrateCamera([sheet], [photo], (w, h), start, np.zeros(5), flags=flags, criteria=rule)
places = np.array(job['places'], float)
seen, _ = cv2.projectPoints(places, turns[0], shifts[0], K, d)
print(json.dumps({'rms': rms, 'focalPx': K[0, 0], 'k1': d.flatten()[0], 'seen': seen.reshape(-1, 2).tolist()}))
`;

const sheet = calibrationSheet('A3');
const lens: Lens = {
  widthPx: 4032,
  heightPx: 3024,
  focalPx: 3900,
  centreOffsetPx: [0, 0],
  k1: -0.09,
  k2: 0.03,
  eye: [290, 40, 470],
  target: [210, 148, 0],
  rollRad: 0.1,
};
const EDGE_MM = 37.5;

let ours: SolvedCamera;
let theirs: { rms: number; focalPx: number; k1: number; seen: readonly (readonly [number, number])[] };
const places = [0, EDGE_MM].flatMap((z) =>
  [30, 120, 210, 300, 390].flatMap((x) => [25, 148, 270].map((y) => [x, y, z] as const)),
);

beforeAll(() => {
  const random = seededRandom(5);
  const { toPhoto } = lensMap(lens);
  const pairs = sheet.saddles.map((saddle) => {
    const at = toPhoto(saddle.x, saddle.y, 0);
    const noise = () => 0.03 * seededNormal(random);
    return { sheet: saddle, photo: point<'photo'>(at.x + noise(), at.y + noise()), sigmaPx: 0.03 };
  });
  const reading = { sheet, pairs, markersSeen: 1, markersTotal: 1 };
  const solved = solveCamera(reading, lens, { sheetBarMm: { xMm: 150, yMm: 150 } });
  if (!solved.ok) throw new Error(solved.faults[0]!.found);
  ours = solved.value;
  const job = {
    sheet: pairs.map((pair) => [pair.sheet.x, pair.sheet.y, 0]),
    photo: pairs.map((pair) => [pair.photo.x, pair.photo.y]),
    places,
    widthPx: lens.widthPx,
    heightPx: lens.heightPx,
    focalPx: 3500,
  };
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], { input: JSON.stringify(job) });
  if (run.status !== 0) throw new Error(`python3 with OpenCV is needed: ${run.stderr}`);
  theirs = JSON.parse(run.stdout.toString());
});

test('both cameras show a place on the sheet at the same point', () => {
  const seen = projection(ours.camera);
  const apart = places.map(([x, y, z], place) => {
    const at = seen.toPhoto(x, y, z);
    const other = theirs.seen[place]!;
    return { z, px: Math.hypot(at.x - other[0], at.y - other[1]) };
  });
  for (const one of apart.filter(({ z }) => z === 0)) expect(one.px).toBeLessThan(0.02);
});

test('both fit the points equally well', () => {
  expect(Math.abs(ours.rmsPx * Math.SQRT2 - theirs.rms)).toBeLessThan(0.003);
});

test('the focal lengths agree to 0.1 %', () => {
  expect(Math.abs(ours.camera.focalPx / theirs.focalPx - 1)).toBeLessThan(0.001);
  expect(Math.abs(ours.camera.focalPx / lens.focalPx - 1)).toBeLessThan(0.005);
});

test('a body at the height of its edge has the same length through both, to 0.02 mm', () => {
  const seen = projection(ours.camera);
  const at = (x: number) =>
    places.findIndex((place) => place[0] === x && place[1] === 148 && place[2] === EDGE_MM);
  const ends = [30, 390].map((x) => {
    const [px, py] = theirs.seen[at(x)]!;
    return seen.toPlane(point(px, py), EDGE_MM);
  });
  const length = Math.hypot(ends[1]!.x - ends[0]!.x, ends[1]!.y - ends[0]!.y);
  expect(Math.abs(length - 360)).toBeLessThan(0.02);
});
