/**
 * The fiddle of the demo: invented, unlabelled, as its maker meant it and as the class found it.
 *
 * The shape is given by knots through which cubic splines run, so it is not made of arcs. Tracing code
 * never reads this file; only the painter and the checks of the finished design do.
 */
import { splineThrough } from './painter/spline.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Knots of the treble half as meant, body frame, mm. */
const LOWER_BOUT: readonly Spot[] = spots(
  '0 0  19.3 0.9  37.5 3.5  52.6 7.2  64.6 12.2  75.6 19.1  85.1 27.7  92.7 37.6  98.3 48.4  101.8 60.1  103.2 72.5  102.3 85.6  99.1 99.8  93.5 115.3  89.3 126.2  89.2 133.5  92.3 141.6',
);
const C_BOUT: readonly Spot[] = spots(
  '89.8 147.9  83.1 145.8  76.7 146.2  70.9 148.6  66.3 152.9  62.6 160  59.1 171.3  56.9 184.2  56.3 197.9  57.2 211.4  58.9 219.8  62 224.9  66.6 228.3  72 229.6  78.4 228.4',
);
const UPPER_BOUT: readonly Spot[] = spots(
  '80.4 234  77.2 242.2  76.6 249.3  79.5 260.4  82.7 274.7  84.1 288  83.5 299  80.8 309.7  76.3 319.9  69.9 329.2  62 337.3  52.8 344.1  42.5 349.2  30.1 352.9  15.5 355.5  0 356.4',
);

export const BODY_LENGTH_MM = 356.4;

/** Height of the middle of the near plate's edge above the sheet, as the class measured it, mm. */
export const EDGE_HEIGHT_MM = 36.5;

/** Where wood is gone: the place, how far along the edge either way, how deep; corners lose their tips. */
const WEAR = {
  treble: [
    { at: { x: 78, y: 316 }, reachMm: 34, depthMm: 1.1, corner: false },
    { at: { x: 91, y: 145 }, reachMm: 7, depthMm: 1.8, corner: true },
  ],
  bass: [
    { at: { x: 97, y: 46 }, reachMm: 30, depthMm: 0.9, corner: false },
    { at: { x: 79.4, y: 231 }, reachMm: 6, depthMm: 1.3, corner: true },
  ],
} as const;

/** How far the body has leaned to the treble side over the years, mm, at a height above the lower end. */
function leanMm(yMm: number): number {
  return (
    0.16 * Math.sin((Math.PI * yMm) / BODY_LENGTH_MM) - 0.1 * Math.sin((3 * Math.PI * yMm) / BODY_LENGTH_MM)
  );
}

/** The meant treble half from the lower to the upper centre, corner ends included, a point every `stepMm`. */
export function meantHalf(stepMm: number): Spot[] {
  return [
    ...splineThrough(LOWER_BOUT, stepMm, { x: 1, y: 0 }, undefined),
    ...splineThrough(C_BOUT, stepMm, undefined, undefined),
    ...splineThrough(UPPER_BOUT, stepMm, undefined, { x: -1, y: 0 }),
  ];
}

/** The four corner tips of the meant treble half: lower bout side, lower C side, upper C side, upper bout side. */
export const CORNER_TIPS: readonly Spot[] = [
  LOWER_BOUT[LOWER_BOUT.length - 1],
  C_BOUT[0],
  C_BOUT[C_BOUT.length - 1],
  UPPER_BOUT[0],
];

/** The closed outline as found, anticlockwise looking at the top: worn, and leaning a little. */
export function foundOutline(stepMm: number): Spot[] {
  const half = meantHalf(stepMm);
  const treble = worn(half, 'treble').map((p) => ({ x: p.x + leanMm(p.y), y: p.y }));
  const bass = worn(half, 'bass').map((p) => ({ x: -p.x + leanMm(p.y), y: p.y }));
  return [...treble, ...bass.slice(1, -1).reverse()];
}

/** The closed outline as meant but leaning, which the purfling and the ribs still follow. */
export function unwornOutline(stepMm: number): Spot[] {
  const half = meantHalf(stepMm);
  const treble = half.map((p) => ({ x: p.x + leanMm(p.y), y: p.y }));
  const bass = half.map((p) => ({ x: -p.x + leanMm(p.y), y: p.y }));
  return [...treble, ...bass.slice(1, -1).reverse()];
}

function worn(half: readonly Spot[], side: 'treble' | 'bass'): Spot[] {
  return half.map((p, i) => {
    let { x, y } = p;
    for (const spot of WEAR[side]) {
      const far = Math.hypot(p.x - spot.at.x, p.y - spot.at.y);
      if (far >= spot.reachMm) continue;
      const loss = spot.depthMm * Math.cos((Math.PI * far) / (2 * spot.reachMm)) ** 2;
      const inward = spot.corner ? { x: -1, y: 0 } : inwardNormal(half, i);
      x += loss * inward.x;
      y += loss * inward.y;
    }
    return { x, y };
  });
}

function inwardNormal(half: readonly Spot[], i: number): Spot {
  const before = half[Math.max(0, i - 1)];
  const after = half[Math.min(half.length - 1, i + 1)];
  const length = Math.hypot(after.x - before.x, after.y - before.y);
  return { x: -(after.y - before.y) / length, y: (after.x - before.x) / length };
}

function spots(text: string): Spot[] {
  return text
    .split('  ')
    .map((pair) => pair.split(' ').map(Number))
    .map(([x, y]) => ({ x, y }));
}
