// Twenty offsets of an outline of forty arcs: ours against libraries that offset arcs or their points.
import { Polyline } from 'cavalier-contours-js';
import clipperLib from 'clipper-lib';
import { areaOf, type Chain, offsetChain, sampleChain } from '../src/core/index.ts';

const ROUNDS = 9;
const DISTANCES_MM = Array.from({ length: 20 }, (_, index) =>
  index < 10 ? -3 * (10 - index) : 3 * (index - 9),
);

/** A waisted closed line of forty arcs, 356 mm long: an invented shape, made of chords of a smooth curve. */
function outline(): Chain<'body'> {
  const at = (index: number) => {
    const angle = (2 * Math.PI * index) / 40;
    const waist = 1 - 0.32 * Math.exp(-((Math.sin(angle) * 3) ** 2));
    return { x: 104 * Math.cos(angle) * waist, y: 178 * Math.sin(angle) };
  };
  const vertices = Array.from({ length: 40 }, (_, index) => {
    const [start, middle, end] = [at(index), at(index + 0.5), at(index + 1)];
    const chordX = end.x - start.x;
    const chordY = end.y - start.y;
    const across = chordX * (middle.y - start.y) - chordY * (middle.x - start.x);
    const chord = Math.hypot(chordX, chordY);
    return { ...start, bulge: (-2 * across) / (chord * chord) };
  });
  return { closed: true, vertices };
}

function medianMs(work: () => number): number {
  work();
  work();
  const times = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return times[ROUNDS >> 1] ?? Number.NaN;
}

const chain = outline();
const ours = () =>
  DISTANCES_MM.reduce(
    (sum, distance) =>
      sum + offsetChain(chain, distance, { join: 'round' }).reduce((total, loop) => total + areaOf(loop), 0),
    0,
  );

const polyline = new Polyline({ isClosed: true });
for (const { x, y, bulge } of chain.vertices) polyline.add(x, y, bulge);
const cavalier = () =>
  DISTANCES_MM.reduce((sum, distance) => sum + polyline.parallelOffset(-distance).length, 0);

function clipper(toleranceMm: number): () => number {
  const scale = 1e4;
  const path = sampleChain(chain, toleranceMm).map(({ x, y }) => ({
    X: Math.round(x * scale),
    Y: Math.round(y * scale),
  }));
  return () =>
    DISTANCES_MM.reduce((sum, distance) => {
      const offset = new clipperLib.ClipperOffset(2, toleranceMm * scale);
      offset.AddPath(path, clipperLib.JoinType.jtRound, clipperLib.EndType.etClosedPolygon);
      const found = new clipperLib.Paths();
      offset.Execute(found, distance * scale);
      return sum + found.length;
    }, 0);
}

const oursMs = medianMs(ours);
const rows: readonly (readonly [string, number])[] = [
  ['ours, exact arcs', oursMs],
  ['cavalier-contours-js, exact arcs', medianMs(cavalier)],
  ['clipper-lib, points within 0.01 mm', medianMs(clipper(0.01))],
  ['clipper-lib, points within 0.001 mm', medianMs(clipper(0.001))],
];
console.log(`20 offsets of 40 arcs, median of ${ROUNDS}`);
for (const [name, ms] of rows) {
  console.log(
    `${name.padEnd(40)} ${ms.toFixed(2).padStart(9)} ms ${(ms / oursMs).toFixed(2).padStart(8)} x ours`,
  );
}
