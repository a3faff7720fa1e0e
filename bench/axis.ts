// The mirror axis of worn bodies: ours against plain least squares by a Python program on the same places.
import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { mirrorAxis } from '../src/core/index.ts';
import { mediansMs, ROUNDS } from './measuring/median.ts';
import { wornBody } from './measuring/wornHalves.ts';

const SPOTS = 2000;
const BODIES = 40;
/** ms for 2000 places, mm rms at 178 mm, mm at worst, and how much nearer than plain least squares. */
const TARGETS = { ms: 15, rmsMm: 0.05, worstMm: 0.15, nearer: 2.5 };

const bodies = Array.from({ length: BODIES }, (_, seed) => wornBody(seed + 1, SPOTS));
const ours = bodies.flatMap((body) => {
  const found = mirrorAxis(body.edge, body.start);
  return found.ok ? body.offMm(found.value) : [];
});
const [ms] = mediansMs([{ name: 'ours', work: () => mirrorAxis(bodies[0].edge, bodies[0].start) }]);
const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
const worst = (values: readonly number[]) => Math.max(...values.map(Math.abs));
const row = (name: string, spentMs: number, off: readonly number[]) =>
  console.log(
    `${name.padEnd(40)} ${spentMs.toFixed(1).padStart(8)} ms  ${rms(off).toFixed(3)} mm rms  ${worst(off).toFixed(3)} mm at worst`,
  );

console.log(
  `Mirror axis of ${BODIES} bodies of ${SPOTS} places, worn in three, off at 178 mm from the middle; time median of ${ROUNDS}` +
    ` (targets ${TARGETS.ms} ms, ${TARGETS.rmsMm} rms, ${TARGETS.worstMm} at worst)`,
);
row('ours', ms, ours);

const script = join(resolve(import.meta.dirname, '..', '..'), 'bench', 'measuring', 'leastSquaresAxis.py');
const pairs = (places: readonly { readonly x: number; readonly y: number }[]) =>
  places.map(({ x, y }) => [x, y]);
const input = bodies.map(({ edge, start }) => ({
  left: pairs(edge.left),
  right: pairs(edge.right),
  start: [start.through.x, start.through.y, start.headingRad],
}));
const peer = spawnSync('/usr/bin/python3', [script], { input: JSON.stringify(input), encoding: 'utf8' });
if (peer.status === 0) {
  const answers: { through: [number, number]; heading: number; ms: number }[] = JSON.parse(peer.stdout);
  const off = answers.flatMap(({ through: [x, y], heading }, i) =>
    bodies[i].offMm({ through: { x, y }, headingRad: heading }),
  );
  row('scipy least squares', answers.map((answer) => answer.ms).sort((a, b) => a - b)[BODIES >> 1], off);
  console.log(
    `nearer than least squares ${(rms(off) / rms(ours)).toFixed(1)} times (target ${TARGETS.nearer})`,
  );
} else console.log('scipy is not there: no peer');
