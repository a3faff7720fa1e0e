// Thirteen photographs of a board of 54 points: our adjustment against cv2.calibrateCamera, same points and same model.
import { spawnSync } from 'node:child_process';
import { type Shot, type SolvedScene, solveShots } from '../src/core/index.ts';
import { mediansMs, ROUNDS } from './measuring/median.ts';

const [COLUMNS, ROWS, PITCH_MM, VIEWS] = [9, 6, 25, 13];
const [WIDTH_PX, HEIGHT_PX, FOCAL_PX] = [640, 480, 535];

/** A board tilted and turned in a way that differs from view to view, seen by a lens that bends. */
function seenIn(view: number): { readonly plan: readonly number[]; readonly photo: readonly number[] }[] {
  const [tilt, way, roll] = [0.25 + 0.02 * view, view * 0.9, 0.3 * Math.sin(view)];
  const points = [];
  for (let row = 0; row < ROWS; row++)
    for (let column = 0; column < COLUMNS; column++) {
      const [x, y] = [column * PITCH_MM, -row * PITCH_MM];
      const [a, b] = [x - 100, y + 62];
      const [c, s] = [Math.cos(roll), Math.sin(roll)];
      const [p, q] = [c * a - s * b, s * a + c * b];
      const lean = p * Math.cos(way) + q * Math.sin(way);
      const depth = 420 + lean * Math.sin(tilt);
      const back = lean * (Math.cos(tilt) - 1);
      const [u, v] = [(p + back * Math.cos(way)) / depth, -(q + back * Math.sin(way)) / depth];
      const square = u * u + v * v;
      const stretch = FOCAL_PX * (1 - 0.28 * square + 0.09 * square * square);
      const wobble = 0.1 * Math.sin(13 * view + 7 * row + 3 * column);
      points.push({ plan: [x, y], photo: [325 + u * stretch + wobble, 236 + v * stretch - wobble] });
    }
  return points;
}

const views = Array.from({ length: VIEWS }, (_, view) => seenIn(view));
const shots: readonly Shot[] = views.map((points) => ({
  sheets: [
    {
      number: 1,
      pairs: points.map(({ plan, photo }) => ({
        sheet: { x: plan[0], y: plan[1] },
        photo: { x: photo[0], y: photo[1] },
        sigmaPx: 0.1,
      })),
    },
  ],
  picture: { widthPx: WIDTH_PX, heightPx: HEIGHT_PX },
}));

const SCRIPT = `
import json, sys, time
import cv2, numpy as np
cv2.setNumThreads(1)
job = json.load(sys.stdin)
plans = [np.array([[*p['plan'], 0] for p in view], np.float32) for view in job['views']]
photos = [np.array([p['photo'] for p in view], np.float32).reshape(-1, 1, 2) for view in job['views']]
flags = cv2.CALIB_FIX_ASPECT_RATIO | cv2.CALIB_FIX_K3
rule = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_MAX_ITER, 100, 1e-9)
times = []
for turn in range(job['rounds'] + 2):
  start = time.perf_counter()
  rms, K, d, _, _ = cv2.calibrateCamera(plans, photos, (job['w'], job['h']), np.eye(3), np.zeros(5), flags=flags,
    criteria=rule)
  times.append(1000 * (time.perf_counter() - start))
print(json.dumps({'ms': sorted(times[2:])[job['rounds'] // 2], 'rms': rms, 'focal': K[0, 0]}))
`;

let scene: SolvedScene | null = null;
const [oursMs] = mediansMs([
  {
    name: 'ours',
    work: () => {
      const solved = solveShots(shots, { beliefs: 'open', sheetBarMm: { xMm: 150, yMm: 150 } });
      scene = solved.ok ? solved.value : null;
    },
  },
]);
const squares = (scene as SolvedScene | null)?.shots.map(({ rmsPx }) => 2 * rmsPx ** 2) ?? [];
const rms = Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / squares.length);
const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
  input: JSON.stringify({ views, rounds: ROUNDS, w: WIDTH_PX, h: HEIGHT_PX }),
});
console.log(
  `${VIEWS} photographs of ${COLUMNS * ROWS} points, one lens; median of ${ROUNDS}, one thread each`,
);
console.log(
  `ours, with covariance and strays  ${oursMs.toFixed(1).padStart(8)} ms  rms ${rms.toFixed(4)} px`,
);
if (run.status === 0) {
  const peer = JSON.parse(run.stdout.toString());
  const ratio = peer.ms / oursMs;
  console.log(
    `cv2.calibrateCamera 4.6           ${peer.ms.toFixed(1).padStart(8)} ms  rms ${peer.rms.toFixed(4)} px  ${ratio.toFixed(2)} x ours`,
  );
} else console.log('cv2.calibrateCamera was not measured: no python3 with OpenCV here');
