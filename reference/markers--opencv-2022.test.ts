/**
 * The square codes and the saddles of the calibration sheet against an independent vision library.
 *
 * Program: OpenCV 4.6.0 (2022), modules aruco and imgproc, run by Debian's python3. Source of the codes: S.
 * Garrido-Jurado, R. Muñoz-Salinas, F. J. Madrid-Cuevas, M. J. Marín-Jiménez, "Automatic generation and detection of
 * highly reliable fiducial markers under occlusion", 2014.
 * Claims: the cells of all 1000 codes are those of the library's predefined dictionary; the library finds the printed
 * codes in our picture of the sheet, named as we name them; and its corner refinement, started at the true places, finds the
 * saddles where ours does, to 0.2 px each and 0.02 px on the mean (its window of 5 px sees only the middle of a saddle).
 * The saddles are not taken from the library's interpolation of board corners, which in this version is half a pixel off.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { MARKER_BITS } from '../src/core/knowledge/index.ts';
import { calibrationSheet, grayOf, readSheet } from '../src/core/photo/index.ts';
import { type Lens, lensMap, photographSheet, trueFinder } from '../test/render/sheetPhotograph.ts';

const SCRIPT = `
import json, sys
import cv2, numpy as np
job = json.load(sys.stdin)
codes = cv2.aruco.Dictionary_get(cv2.aruco.DICT_5X5_1000)
bits = []
for i in range(job['codes']):
    cells = cv2.aruco.Dictionary.getBitsFromByteList(codes.bytesList[i:i + 1], 5).flatten()
    bits.append(int(''.join(str(int(cell)) for cell in cells), 2))
gray = np.fromfile(job['file'], np.uint8).reshape(job['heightPx'], job['widthPx'])
corners, ids, _ = cv2.aruco.detectMarkers(gray, codes)
at = np.array(job['saddles'], np.float32).reshape(-1, 1, 2)
rule = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_MAX_ITER, 100, 0.0005)
cv2.cornerSubPix(gray, at, (5, 5), (-1, -1), rule)
print(json.dumps({'bits': bits, 'ids': [int(i) for i in ids.flatten()],
  'corners': [c.reshape(-1).tolist() for c in corners], 'saddles': at.reshape(-1, 2).tolist()}))
`;

interface Answer {
  readonly bits: readonly number[];
  readonly ids: readonly number[];
  readonly corners: readonly (readonly number[])[];
  readonly saddles: readonly (readonly [number, number])[];
}

const sheet = calibrationSheet('A3');
const lens: Lens = {
  widthPx: 2600,
  heightPx: 1950,
  focalPx: 4700,
  centreOffsetPx: [5, -4],
  k1: -0.1,
  k2: 0.03,
  eye: [270, 30, 880],
  target: [212, 148, 0],
  rollRad: 0.04,
};
const truth = lensMap(lens);
const picture = photographSheet(sheet, lens, { blurPx: 1, noise: 3, seed: 21 });
const folder = mkdtempSync(join(tmpdir(), 'codes-'));
let answer: Answer;

beforeAll(() => {
  const file = join(folder, 'gray.raw');
  writeFileSync(file, grayOf(picture).data);
  const saddles = sheet.saddles
    .map((saddle) => truth.toPhoto(saddle.x, saddle.y, 0))
    .map(({ x, y }) => [x, y]);
  const job = { codes: MARKER_BITS.length, file, widthPx: lens.widthPx, heightPx: lens.heightPx, saddles };
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(job),
    maxBuffer: 1 << 26,
  });
  if (run.status !== 0) throw new Error(`python3 with OpenCV is needed: ${run.stderr}`);
  answer = JSON.parse(run.stdout.toString());
});
afterAll(() => rmSync(folder, { recursive: true }));

test('the cells of every code are the dictionary’s', () => {
  expect(MARKER_BITS).toEqual(answer.bits);
});

test('the codes of the printed sheet are found by the library under our names, where they are', () => {
  expect(answer.ids.length).toBeGreaterThan(0.95 * sheet.markers.length);
  answer.ids.forEach((id, place) => {
    const marker = sheet.markers.find((one) => one.id === id)!;
    const first = truth.toPhoto(marker.corners[0].x, marker.corners[0].y, 0);
    const [x, y] = answer.corners[place]!;
    expect(Math.hypot(x! - first.x, y! - first.y)).toBeLessThan(2);
  });
});

test('the saddles lie where the library’s corner refinement finds them, and nearer the truth', () => {
  const reading = readSheet(picture, sheet, trueFinder(sheet, lens, 6));
  if (!reading.ok) throw new Error(reading.faults[0]!.found);
  const place = (x: number, y: number) => sheet.saddles.findIndex((one) => one.x === x && one.y === y);
  const apart: (readonly [number, number])[] = [];
  let [ours, theirs] = [0, 0];
  for (const pair of reading.value.pairs) {
    const other = answer.saddles[place(pair.sheet.x, pair.sheet.y)]!;
    const at = truth.toPhoto(pair.sheet.x, pair.sheet.y, 0);
    apart.push([pair.photo.x - other[0], pair.photo.y - other[1]]);
    ours += (pair.photo.x - at.x) ** 2 + (pair.photo.y - at.y) ** 2;
    theirs += (other[0] - at.x) ** 2 + (other[1] - at.y) ** 2;
  }
  expect(apart.length).toBe(sheet.saddles.length);

  for (const axis of [0, 1] as const)
    expect(Math.abs(apart.reduce((sum, one) => sum + one[axis], 0) / apart.length)).toBeLessThan(0.02);
  expect(Math.max(...apart.map((one) => Math.hypot(...one)))).toBeLessThan(0.2);
  expect(ours).toBeLessThan(theirs);
});
