// A plate's outside, built, changed and told at 75 000 places, against a plate bent least over the same places by SciPy.
import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { archOn, plateField, plateGround } from '../src/core/instrument/index.ts';
import { benchInstrument } from './measuring/benchInstrument.ts';
import { mediansMs, ROUNDS } from './measuring/median.ts';

const TARGETS = { heightsMs: 5, timesScipy: 100 };
/** mm apart: 75 000 places on a violin's plate. */
const STEP_MM = 0.858;
/** A turn of the peer takes many seconds. */
const PEER_ROUNDS = 3;

const { design, half, plates } = benchInstrument();
const arch = plates.top;
const ground = plateGround(design.values, half);
if (!ground.ok) throw new Error('no ground');
const higher = { ...design.values };
const rise = higher.archHeightTop;
if (!rise) throw new Error('no rise');
higher.archHeightTop = { ...rise, value: rise.value + 0.1 };

const [groundMs, archMs, changeMs, heightsMs] = mediansMs([
  { name: 'ground', work: () => plateGround(design.values, half) },
  { name: 'arch', work: () => archOn(ground.value, design.values, 'top') },
  { name: 'change', work: () => archOn(ground.value, higher, 'top') },
  { name: 'heights', work: () => plateField(arch, 'finished', STEP_MM) },
]);
const field = plateField(arch, 'finished', STEP_MM);
const places = field.zMm.reduce((count, z) => count + (Number.isNaN(z) ? 0 : 1), 0);
const row = (name: string, ms: number, more = '') =>
  console.log(`${name.padEnd(56)} ${ms.toFixed(1).padStart(8)} ms  ${more}`);

console.log(`The top of a violin, ${places} places; median of ${ROUNDS}, of the peer ${PEER_ROUNDS}`);
row('ours, ground of both plates: channel, stations, matrix', groundMs);
row('ours, one plate on its ground', archMs);
row('ours, its rise changed, matrix kept', changeMs);
row(`ours, heights at all places`, heightsMs, `(target ${TARGETS.heightsMs} ms)`);

/** What the peer holds: all beyond the edge level, centre line and stations at our heights, the rest free. */
const held = Float64Array.from(field.zMm, (z, at) => {
  if (Number.isNaN(z)) return 0;
  const [x, y] = [at % field.columns, Math.floor(at / field.columns) * STEP_MM];
  const onStation = arch.stations.some(({ yMm }) => Math.abs(yMm - y) <= STEP_MM / 2);
  return x === (field.columns - 1) / 2 || onStation ? z : Number.NaN;
});
const script = join(resolve(import.meta.dirname, '..', '..'), 'bench', 'measuring', 'biharmonicPeer.py');
const peer = spawnSync(
  '/usr/bin/python3',
  [script, ...[field.rows, field.columns, PEER_ROUNDS].map(String)],
  {
    input: new Uint8Array(held.buffer),
    maxBuffer: 1 << 24,
  },
);
if (peer.status === 0) {
  const answer: { unknowns: number; factorMs: number; solveMs: number } = JSON.parse(peer.stdout.toString());
  row('scipy.sparse.linalg.splu, matrix taken apart', answer.factorMs, `${answer.unknowns} unknowns`);
  row('scipy.sparse.linalg.splu, solved again', answer.solveMs);
  const built = (answer.factorMs + answer.solveMs) / (groundMs + archMs + heightsMs);
  const changed = answer.factorMs / (changeMs + heightsMs);
  console.log(
    `built and told: ${built.toFixed(0)} times as quick (target ${TARGETS.timesScipy}); a rise changed and told, against the whole of the peer: ${changed.toFixed(0)} times`,
  );
} else console.log(`scipy did not run: ${peer.stderr.toString().trim().split('\n').at(-1)}`);
