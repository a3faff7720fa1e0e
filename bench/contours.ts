// Contours of an arch on a fine grid: ours, all levels in one pass and stitched, against scikit-image level by level.
import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { contourLines, heightField } from '../src/core/index.ts';
import { mediansMs, ROUNDS } from './measuring/median.ts';

/** How many times as long as ours the peer should take at least. */
const TARGET = 5;
const WARM_UPS = 3;

/** An arch over an oblong of 209 by 360 mm, ours, with a weak ripple so that no line is simple: 302 099 places, 15 levels. */
const field = heightField(
  { fromXMm: -104.5, fromYMm: 0, stepMm: 0.5, columns: 419, rows: 721 },
  (x, y) =>
    15 * Math.cos(x / 70) ** 2 * Math.sin((y / 360) * Math.PI) ** 2 + 0.5 * Math.sin(x / 7) * Math.cos(y / 9),
);
const levels = Array.from({ length: 15 }, (_, index) => index + 0.5);

const lines = contourLines(field, levels);
const places = lines.reduce((sum, { closed, xyMm }) => sum + xyMm.length / 2 + (closed ? 1 : 0), 0);
const [ms] = mediansMs([{ name: 'ours', work: () => contourLines(field, levels) }]);
const row = (name: string, spentMs: number, lineCount: number, placeCount: number) =>
  console.log(
    `${name.padEnd(40)} ${spentMs.toFixed(1).padStart(8)} ms  ${lineCount} lines of ${placeCount} places`,
  );

console.log(`${levels.length} levels of ${field.zMm.length} heights, median of ${ROUNDS}`);
row('ours, in order', ms, lines.length, places);
const script = join(resolve(import.meta.dirname, '..', '..'), 'bench', 'measuring', 'contourPeer.py');
const words = [field.rows, field.columns, WARM_UPS, ROUNDS].map(String);
const peer = spawnSync('/usr/bin/python3', [script, ...words, JSON.stringify(levels)], {
  input: new Uint8Array(field.zMm.buffer),
});
if (peer.status === 0) {
  const answer: { ms: number; lines: number; places: number } = JSON.parse(peer.stdout.toString());
  row('skimage.measure.find_contours', answer.ms, answer.lines, answer.places);
  console.log(`${(answer.ms / ms).toFixed(1)} times as long as ours (target ${TARGET})`);
} else console.log(`skimage did not run: ${peer.stderr.toString().trim().split('\n').at(-1)}`);
