// Arcs through 1000 points of half an ellipse: ours against chains of biarcs and against the least possible.
import { type ArcFit, fitArcs, segments } from '../src/core/index.ts';
import { biarcCount, type DirectedPoint } from './measuring/biarcFit.ts';
import { mediansMs, ROUNDS } from './measuring/median.ts';

const POINTS = 1000;
const HALF_WIDTH_MM = 104;
const HALF_LENGTH_MM = 178;

/** mm^(1/3). The integral of the cube root of the curvature's slope along the half ellipse: 2 x 7.73. */
const HALF_BEND = 15.46;

/** Half an ellipse from its lower end to its upper. */
function half(count: number): readonly DirectedPoint[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (Math.PI * index) / (count - 1) - Math.PI / 2;
    return {
      x: HALF_WIDTH_MM * Math.cos(angle),
      y: HALF_LENGTH_MM * Math.sin(angle),
      headingRad: Math.atan2(HALF_LENGTH_MM * Math.cos(angle), -HALF_WIDTH_MM * Math.sin(angle)),
    };
  });
}

/** The same points with noise of this standard deviation across the line, always the same. */
function noisy(points: readonly DirectedPoint[], sdMm: number): readonly DirectedPoint[] {
  let state = 12_345;
  const even = () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return (state + 1) / 2_147_483_649;
  };
  return points.map(({ x, y, headingRad }) => {
    const off = sdMm * Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
    return { x: x - off * Math.sin(headingRad), y: y + off * Math.cos(headingRad), headingRad };
  });
}

function fitted(points: readonly DirectedPoint[], toleranceMm: number): ArcFit<'body'> {
  const fit = fitArcs<'body'>(points, { toleranceMm });
  if (!fit.ok) throw new Error(JSON.stringify(fit.faults));
  return fit.value;
}

/** Whether a chain stays within a distance of points ten times denser than those that it was fitted to. */
function denserMm({ chain }: ArcFit<'body'>): number {
  const circles = segments(chain).map(({ start, end, bulge }) => {
    const lift = (1 - bulge * bulge) / (4 * bulge);
    const x = (start.x + end.x) / 2 - (end.y - start.y) * lift;
    const y = (start.y + end.y) / 2 + (end.x - start.x) * lift;
    return { x, y, radius: Math.hypot(start.x - x, start.y - y), endY: end.y };
  });
  return half(POINTS * 10).reduce((most, p) => {
    const { x, y, radius } = circles.find(({ endY }) => p.y <= endY) ?? circles[circles.length - 1];
    return Math.max(most, Math.abs(Math.hypot(p.x - x, p.y - y) - radius));
  }, 0);
}

console.log(`${POINTS} points of half an ellipse of 356 by 208 mm, median of ${ROUNDS} (target 150 ms)`);
console.log('tolerance mm  noise mm   ours ms  arcs  least  biarcs  ratio  biarcs ms  off mm at 10x points');
for (const [toleranceMm, sdMm] of [
  [0.1, 0],
  [0.05, 0],
  [0.02, 0],
  [0.1, 0.02],
  [0.12, 0.03],
]) {
  const clean = half(POINTS);
  const points = sdMm > 0 ? noisy(clean, sdMm) : clean;
  const [oursMs, biarcsMs] = mediansMs([
    { name: 'ours', work: () => fitted(points, toleranceMm) },
    { name: 'biarcs', work: () => biarcCount(clean, toleranceMm) },
  ]);
  const fit = fitted(points, toleranceMm);
  const arcs = segments(fit.chain).length;
  const biarcs = biarcCount(clean, toleranceMm);
  const least = HALF_BEND / Math.cbrt(124.7 * toleranceMm);
  console.log(
    [
      toleranceMm.toFixed(2).padStart(12),
      sdMm.toFixed(2).padStart(9),
      oursMs.toFixed(1).padStart(9),
      String(arcs).padStart(5),
      least.toFixed(1).padStart(6),
      String(biarcs).padStart(7),
      (arcs / biarcs).toFixed(2).padStart(6),
      biarcsMs.toFixed(1).padStart(10),
      denserMm(fit).toFixed(4).padStart(21),
    ].join(' '),
  );
}
