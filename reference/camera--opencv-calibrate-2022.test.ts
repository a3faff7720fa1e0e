/**
 * The adjustment of several invented photographs of the sheet against an independent calibration on the same points.
 *
 * Program: OpenCV 4.6.0 (2022), cv2.calibrateCamera and cv2.projectPoints, run by Debian's python3. Source of its method: Z.
 * Zhang, "A flexible new technique for camera calibration", 2000. Both solve for one focal length, the centre, k1, k2, p1,
 * p2 and three poses, nothing believed beforehand, from saddles off by 0.03 px.
 * Claims: over the sheet both cameras show a place within 0.002 px of each other, and at an edge 37.5 mm high within 0.01 px;
 * both fit equally well; the focal lengths agree to 0.01 %; and a body of 360 mm at that edge has the same length through
 * both to 0.002 mm, and its true one to 0.02 mm.
 */
import { spawnSync } from 'node:child_process';
import { beforeAll, expect, test } from 'vitest';
import { point, seededNormal, seededRandom } from '../src/core/base/index.ts';
import { calibrationSheet, projection, type SolvedScene, solveShots } from '../src/core/photo/index.ts';
import { type Lens, lensMap } from '../test/render/sheetPhotograph.ts';

const SCRIPT = `
import json, sys
import cv2, numpy as np
job = json.load(sys.stdin)
sheet = np.array(job['sheet'], np.float32)
photos = [np.array(one, np.float32).reshape(-1, 1, 2) for one in job['photos']]
w, h = job['widthPx'], job['heightPx']
start = np.array([[job['focalPx'], 0, (w - 1) / 2], [0, job['focalPx'], (h - 1) / 2], [0, 0, 1]], float)
flags = cv2.CALIB_USE_INTRINSIC_GUESS | cv2.CALIB_FIX_ASPECT_RATIO | cv2.CALIB_FIX_K3
rule = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_MAX_ITER, 500, 1e-14)
rms, K, d, turns, shifts = cv2.calibrateCamera([sheet] * len(photos), photos, (w, h), start, np.zeros(5), flags=flags,
  criteria=rule)
places = np.array(job['places'], float)
seen, _ = cv2.projectPoints(places, turns[0], shifts[0], K, d)
print(json.dumps({'rms': rms, 'focalPx': K[0, 0], 'seen': seen.reshape(-1, 2).tolist()}))
`;

const sheet = calibrationSheet('A3');
const lens: Lens = {
  widthPx: 4032,
  heightPx: 3024,
  focalPx: 3900,
  centreOffsetPx: [8, -5],
  k1: -0.09,
  k2: 0.03,
  eye: [290, 40, 470],
  target: [210, 148, 0],
  rollRad: 0.1,
};
const lenses: readonly Lens[] = [
  lens,
  { ...lens, eye: [120, 230, 480], rollRad: -0.2 },
  { ...lens, eye: [330, 260, 450], rollRad: 1.2 },
];
const EDGE_MM = 37.5;

let ours: SolvedScene;
let theirs: { rms: number; focalPx: number; seen: readonly (readonly [number, number])[] };
const places = [0, EDGE_MM].flatMap((z) =>
  [30, 120, 210, 300, 390].flatMap((x) => [25, 148, 270].map((y) => [x, y, z] as const)),
);

beforeAll(() => {
  const random = seededRandom(5);
  const shots = lenses.map((one) => {
    const { toPhoto } = lensMap(one);
    const pairs = sheet.saddles.map((saddle) => {
      const at = toPhoto(saddle.x, saddle.y, 0);
      const noise = () => 0.03 * seededNormal(random);
      return { sheet: saddle, photo: point<'photo'>(at.x + noise(), at.y + noise()), sigmaPx: 0.03 };
    });
    return { sheets: [{ number: 1, pairs }], picture: one };
  });
  const solved = solveShots(shots, { sheetBarMm: { xMm: 150, yMm: 150 }, beliefs: 'open' });
  if (!solved.ok) throw new Error(solved.faults[0]!.found);
  ours = solved.value;
  const job = {
    sheet: sheet.saddles.map(({ x, y }) => [x, y, 0]),
    photos: shots.map(({ sheets }) => sheets[0]!.pairs.map(({ photo }) => [photo.x, photo.y])),
    places,
    widthPx: lens.widthPx,
    heightPx: lens.heightPx,
    focalPx: 3500,
  };
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], { input: JSON.stringify(job) });
  if (run.status !== 0) throw new Error(`python3 with OpenCV is needed: ${run.stderr}`);
  theirs = JSON.parse(run.stdout.toString());
});

test('both cameras show a place at the same point, on the sheet and above it', () => {
  const seen = projection(ours.shots[0]!.camera);
  places.forEach(([x, y, z], place) => {
    const at = seen.toPhoto(x, y, z);
    const other = theirs.seen[place]!;
    expect(Math.hypot(at.x - other[0], at.y - other[1])).toBeLessThan(z === 0 ? 0.002 : 0.01);
  });
});

test('both fit the points equally well', () => {
  const squares = ours.shots.reduce((sum, { rmsPx }) => sum + 2 * rmsPx ** 2, 0) / ours.shots.length;
  expect(Math.abs(Math.sqrt(squares) - theirs.rms)).toBeLessThan(0.0002);
});

test('the focal lengths agree to 0.01 %', () => {
  expect(Math.abs(ours.shots[0]!.camera.focalPx / theirs.focalPx - 1)).toBeLessThan(0.0001);
  expect(Math.abs(ours.shots[0]!.camera.focalPx / lens.focalPx - 1)).toBeLessThan(0.001);
});

test('a body at the height of its edge has the same length through both, and its true one', () => {
  const seen = projection(ours.shots[0]!.camera);
  const lengthOf = (toPhoto: (x: number) => { readonly x: number; readonly y: number }) => {
    const [a, b] = [30, 390].map((x) => {
      const at = toPhoto(x);
      return seen.toPlane(point(at.x, at.y), EDGE_MM);
    });
    return Math.hypot(b!.x - a!.x, b!.y - a!.y);
  };
  const place = (x: number) => places.findIndex(([px, py, z]) => px === x && py === 148 && z === EDGE_MM);
  const through = lengthOf((x) => {
    const [px, py] = theirs.seen[place(x)]!;
    return { x: px, y: py };
  });
  const truth = lengthOf((x) => lensMap(lens).toPhoto(x, 148, EDGE_MM));
  expect(Math.abs(through - 360)).toBeLessThan(0.002);
  expect(Math.abs(truth - 360)).toBeLessThan(0.02);
});
