// Codes and saddles of a calibration sheet in a photograph of 24 megapixels: ours against cv2.aruco on the same picture.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { markerFinder, type Picture, readSheets } from '../src/core/index.ts';
import { readPicture } from '../src/host/index.ts';
import { enlargedTo } from './measuring/enlargedTo.ts';
import { mediansMs, ROUNDS } from './measuring/median.ts';

const WIDTH_PX = 4250;
/** Of the peer's time. */
const TARGET = 0.8;

const SCRIPT = `
import json, sys, time
import cv2, numpy as np
cv2.setNumThreads(1)
job = json.load(sys.stdin)
rgb = np.fromfile(job['file'], np.uint8).reshape(job['heightPx'], job['widthPx'], 3)
codes = cv2.aruco.Dictionary_get(cv2.aruco.DICT_5X5_1000)
rule = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_MAX_ITER, 30, 0.001)
times, found, saddles = [], 0, 0
for turn in range(job['rounds'] + 2):
  at = np.array(job['saddles'], np.float32).reshape(-1, 1, 2)
  start = time.perf_counter()
  gray = cv2.cvtColor(rgb, cv2.COLOR_RGB2GRAY)
  corners, ids, _ = cv2.aruco.detectMarkers(gray, codes)
  cv2.cornerSubPix(gray, at, (8, 8), (-1, -1), rule)
  times.append(1000 * (time.perf_counter() - start))
  found, saddles = len(ids), len(at)
print(json.dumps({'ms': sorted(times[2:])[job['rounds'] // 2], 'codes': found, 'saddles': saddles}))
`;

const photograph = resolve(import.meta.dirname, '..', '..', 'demo', 'photographs', 'fiddle-top.jpg');
const read = await readPicture(photograph);
if (!read.ok) throw new Error(read.faults[0].found);
const picture: Picture = enlargedTo(read.value, WIDTH_PX);

const find = markerFinder();
let seen = { codes: 0, places: [] as (readonly [number, number])[] };
const [oursMs] = mediansMs([
  {
    name: 'ours',
    work: () => {
      const reading = readSheets(picture, find);
      if (!reading.ok) throw new Error(reading.faults[0].found);
      const [{ markersSeen, pairs }] = reading.value.sheets;
      seen = { codes: markersSeen, places: pairs.map(({ photo }) => [photo.x, photo.y]) };
    },
  },
]);

const folder = mkdtempSync(join(tmpdir(), 'markers-'));
const file = join(folder, 'rgb.raw');
writeFileSync(file, picture.rgb);
const { widthPx, heightPx } = picture;
const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
  input: JSON.stringify({ file, widthPx, heightPx, rounds: ROUNDS, saddles: seen.places }),
});
rmSync(folder, { recursive: true });

const row = (name: string, ms: number, codes: number, saddles: number) =>
  `${name.padEnd(48)} ${ms.toFixed(0).padStart(6)} ms  ${codes} codes, ${saddles} saddles`;
const megapixels = ((widthPx * heightPx) / 1_000_000).toFixed(1);
console.log(
  `Codes and saddles in a photograph of ${megapixels} megapixels; median of ${ROUNDS}, one thread each`,
);
console.log(row('ours, each saddle with its spread', oursMs, seen.codes, seen.places.length));
if (run.status === 0) {
  const peer = JSON.parse(run.stdout.toString());
  const share = (oursMs / peer.ms).toFixed(2);
  console.log(
    `${row('cv2.aruco 4.6 and cornerSubPix at our saddles', peer.ms, peer.codes, peer.saddles)}  ours ${share} of it (target ${TARGET})`,
  );
} else console.log('cv2.aruco was not measured: no python3 with OpenCV here');
