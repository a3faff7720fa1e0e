// What a plate weighs and where it balances: ours against NumPy and SciPy from heights over a grid of a millimetre.
import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { point } from '../src/core/base/index.ts';
import { boundsOf, containsPoint, nearestOn } from '../src/core/curve/index.ts';
import { plateHeight, plateWood, thicknessAt } from '../src/core/instrument/index.ts';
import { benchInstrument } from './measuring/benchInstrument.ts';
import { mediansMs, ROUNDS } from './measuring/median.ts';

const TARGET_MS = 10;
const WITHIN = 0.0005;
const STEP_MM = 1;
const WARM_UPS = 3;
const DENSITY = 620;

const { hollows, plan } = benchInstrument();
const plate = hollows.back;
const outline = plan.outline.chain;
const wood = plateWood(plate, outline, DENSITY);
const [ms] = mediansMs([{ name: 'ours', work: () => plateWood(plate, outline, DENSITY) }]);
const row = (name: string, spentMs: number, massG: number, y: number, z: number) =>
  console.log(
    `${name.padEnd(48)} ${spentMs.toFixed(1).padStart(8)} ms  ${massG.toFixed(3)} g, balances at ${y.toFixed(2)} and ${z.toFixed(3)} mm`,
  );

console.log(`The back of a violin weighed; median of ${ROUNDS}`);
row(`ours (target ${TARGET_MS} ms)`, ms, wood.massG, wood.centreYMm, wood.centreZMm);

const { max } = boundsOf(outline);
const [columns, rows] = [Math.ceil(max.x / STEP_MM), Math.ceil(max.y / STEP_MM)];
const grid = (of: (x: number, y: number) => number): Float64Array =>
  Float64Array.from({ length: rows * columns }, (_, at) =>
    of(STEP_MM * ((at % columns) + 0.5), STEP_MM * (Math.floor(at / columns) + 0.5)),
  );
const onPlate = (x: number, y: number): boolean => containsPoint(outline, point<'body'>(x, y));
const given = [
  grid((x, y) => (onPlate(x, y) ? plateHeight(plate.arch, x, y, 'finished') : Number.NaN)),
  grid((x, y) => (onPlate(x, y) ? thicknessAt(plate.thickness, x, y) : Number.NaN)),
  grid((x, y) => {
    const at = point<'body'>(x, y);
    if (!containsPoint(plate.line, at)) return 0;
    const t = Math.min(1, nearestOn(plate.line, at).distanceMm / plate.rampMm);
    return t * t * (3 - 2 * t);
  }),
];
const script = join(resolve(import.meta.dirname, '..', '..'), 'bench', 'measuring', 'volumePeer.py');
const words = [rows, columns, WARM_UPS, ROUNDS, STEP_MM, DENSITY / 1_000_000].map(String);
const peer = spawnSync('/usr/bin/python3', [script, ...words], {
  input: Buffer.concat(given.map(({ buffer }) => new Uint8Array(buffer))),
  maxBuffer: 1 << 24,
});
if (peer.status === 0) {
  const answer: { ms: number; mass: number; y: number; z: number } = JSON.parse(peer.stdout.toString());
  row(`numpy and scipy, ${rows * columns} places`, answer.ms, answer.mass, answer.y, answer.z);
  const apart = Math.abs(answer.mass / wood.massG - 1);
  console.log(
    `${(answer.ms / ms).toFixed(1)} times as long as ours; masses ${(100 * apart).toFixed(3)} % apart (target ${100 * WITHIN} %)`,
  );
} else console.log(`numpy did not run: ${peer.stderr.toString().trim().split('\n').at(-1)}`);
