// A painted photograph of 24 million pixels: ours from pixels to the restored outline, against a plain edge map with contours.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { derive, draft, type Picture, sampleChain, trace } from '../src/core/index.ts';

const [WIDTH_PX, HEIGHT_PX, PX_PER_MM] = [4240, 5660, 13.5];
const BODY_MM = 355;
/** A run takes seconds, so few are taken. */
const RUNS = 3;
const MOST_SHARE = 0.5;

/** A brown plate on a light ground that darkens to one side, without blur or noise. */
function paintedPlate(): Picture {
  const table = {
    format: 'garland-measurements',
    version: 1,
    family: 'violin',
    name: 'bench',
    values: { bodyLength: BODY_MM },
  };
  const drafted = draft([{ name: 'table', json: table }]);
  if (!drafted.ok) throw new Error('the bench cannot draft its outline');
  const derived = derive(drafted.value.design);
  if (!derived.ok) throw new Error('the bench cannot derive its outline');
  const places = sampleChain(derived.value.plan.outline.chain, 0.01).map(({ x, y }) => [
    WIDTH_PX / 2 + x * PX_PER_MM,
    HEIGHT_PX / 2 - (y - BODY_MM / 2) * PX_PER_MM,
  ]);
  const rgb = new Uint8Array(3 * WIDTH_PX * HEIGHT_PX);
  for (let y = 0; y < HEIGHT_PX; y++) {
    const crossings = places
      .flatMap(([x0, y0], i) => {
        const [x1, y1] = places[(i + 1) % places.length];
        return y0 <= y === y1 <= y ? [] : [x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)];
      })
      .sort((a, b) => a - b);
    const ground = 225 - Math.round((20 * y) / HEIGHT_PX);
    rgb.fill(ground, 3 * y * WIDTH_PX, 3 * (y + 1) * WIDTH_PX);
    for (let k = 0; k + 1 < crossings.length; k += 2)
      for (let x = Math.ceil(crossings[k]); x <= crossings[k + 1]; x++)
        rgb.set([150, 92 + (x % 7), 48], 3 * (y * WIDTH_PX + x));
  }
  return { widthPx: WIDTH_PX, heightPx: HEIGHT_PX, rgb };
}

const SCRIPT = `
import json, sys, time
import cv2, numpy as np
from skimage import measure
cv2.setNumThreads(1)
job = json.load(sys.stdin)
gray = np.fromfile(job['file'], np.uint8).reshape(job['heightPx'], job['widthPx'])
times = []
for turn in range(job['runs']):
  start = time.perf_counter()
  cv2.Canny(gray, 60, 150)
  measure.find_contours(gray, 160)
  times.append(1000 * (time.perf_counter() - start))
print(json.dumps({'ms': sorted(times)[job['runs'] // 2]}))
`;

function peerMs({ widthPx, heightPx, rgb }: Picture): number | null {
  const folder = mkdtempSync(join(tmpdir(), 'garland-bench-'));
  const file = join(folder, 'gray.raw');
  writeFileSync(
    file,
    Uint8Array.from({ length: widthPx * heightPx }, (_, i) => rgb[3 * i + 1]),
  );
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify({ file, widthPx, heightPx, runs: RUNS }),
  });
  rmSync(folder, { recursive: true });
  return run.status === 0 ? JSON.parse(run.stdout.toString()).ms : null;
}

const picture = paintedPlate();
const times: number[] = [];
for (let run = 0; run < RUNS; run++) {
  const start = performance.now();
  const traced = trace(
    {
      photographs: [{ name: 'painted', picture }],
      face: 'top',
      scan: { mmPerPixel: 1 / PX_PER_MM, plusMinus: 0.001 },
      known: [],
    },
    () => [],
  );
  times.push(performance.now() - start);
  if (!traced.ok) throw new Error(traced.faults.map(({ code }) => code).join(' '));
}
const oursMs = times.sort((a, b) => a - b)[RUNS >> 1];
const theirsMs = peerMs(picture);
console.log(
  `a body in ${((WIDTH_PX * HEIGHT_PX) / 1000000).toFixed(0)} million pixels, median of ${RUNS}, one thread each`,
);
console.log(`ours, pixels to restored outline            ${oursMs.toFixed(0).padStart(6)} ms`);
if (theirsMs === null)
  console.log('cv2.Canny and skimage.find_contours were not measured: they are not here');
else
  console.log(
    `cv2.Canny 4.6 with skimage.find_contours    ${theirsMs.toFixed(0).padStart(6)} ms  ours ${(oursMs / theirsMs).toFixed(2)} x theirs (target ${MOST_SHARE}), which find neither body nor axis`,
  );
