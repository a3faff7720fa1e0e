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

/**
 * Knots of the treble sound hole as meant, body frame, mm, anticlockwise: from the tip of the lower wing up the outer edge of the stem
 * into the upper eye, and from the tip of the upper wing down the inner edge into the lower eye. Both ends of the wings are straight.
 */
const HOLE_OUTER: readonly Spot[] = spots(
  '51.64 127.75  48.25 130.61  45.66 134.18  44.05 138.26  43.35 142.56  42.95 146.89  42.81 151.25  42.89 155.62  43.13 160.00  43.27 165.35  43.20 169.74  42.95 174.12  42.53 178.50  41.95 182.85  40.96 187.09  39.38 191.14  37.76 194.13  36.27 196.30  34.27 198.00  31.83 198.99  29.19 199.16  26.60 198.49  24.34 197.07  22.65 195.02  21.70 192.55  21.54 191.04  21.79 189.54  22.66 188.29  23.99 187.54  25.50 187.46  26.87 188.07  27.82 189.23  28.15 190.69  27.80 192.16  26.84 193.33  26.01 193.79',
);
const HOLE_INNER: readonly Spot[] = spots(
  '30.17 198.23  33.10 195.02  35.12 191.14  36.13 186.87  36.65 182.53  37.01 178.18  37.16 173.81  37.07 169.44  36.91 165.04  36.78 159.87  36.76 155.47  36.86 151.08  37.12 146.71  37.81 142.43  39.04 138.27  40.79 134.28  43.11 130.56  46.55 127.80  50.74 126.48  53.41 126.47  55.99 127.05  58.34 128.21  60.33 129.89  61.85 131.99  62.84 134.42  63.24 136.84  63.20 138.37  62.72 139.83  61.84 141.09  60.62 142.02  59.18 142.54  57.65 142.58  56.20 142.14  54.95 141.27  54.04 140.06  53.56 138.62  53.56 137.10  54.03 135.64  54.93 134.39  56.17 133.46  56.52 133.29',
);
/** Where the middles of its nicks meet the edges, their width and depth. */
const HOLE_NICKS = { inner: { x: 36.8, y: 161.2 }, outer: { x: 43.26, y: 164.1 }, widthMm: 2, depthMm: 1 };
/** How far round its sharp places are rubbed off. */
const HOLE_RUBBED_MM = 0.5;

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

/** The sound hole of one side as it was meant and cut, before it leaned: without its nicks, which are small. */
export function meantHole(stepMm: number): Spot[] {
  return [
    ...splineThrough(HOLE_OUTER, stepMm, undefined, undefined),
    ...splineThrough(HOLE_INNER, stepMm, undefined, undefined),
  ];
}

/** The inner nick of the treble hole as meant, where its middle meets the edge. */
export const INNER_NICK: Spot = HOLE_NICKS.inner;

/** The sound hole of the treble side as found: nicks cut in, tips and corners rubbed round, leaning with the body. */
export function foundHole(side: 'treble' | 'bass', stepMm: number): Spot[] {
  const nicked = [HOLE_NICKS.inner, HOLE_NICKS.outer].reduce(
    (line, nick) => withNick(line, nick),
    meantHole(stepMm),
  );
  return rubbed(nicked).map(({ x, y }) => ({ x: (side === 'treble' ? x : -x) + leanMm(y), y }));
}

/** The line with a V cut out into the wood round a place of it. */
function withNick(line: readonly Spot[], nick: Spot): Spot[] {
  const isNear = (p: Spot) => Math.hypot(p.x - nick.x, p.y - nick.y) < HOLE_NICKS.widthMm / 2;
  const start = line.findIndex((p, i) => isNear(p) && !isNear(line[(i + line.length - 1) % line.length]));
  const turned = [...line.slice(start), ...line.slice(0, start)];
  const count = turned.findIndex((p) => !isNear(p));
  const [before, after] = [turned[turned.length - 1], turned[count]];
  const length = Math.hypot(after.x - before.x, after.y - before.y);
  // The hole lies to the left: its wood to the right.
  const apex = {
    x: nick.x + (HOLE_NICKS.depthMm * (after.y - before.y)) / length,
    y: nick.y - (HOLE_NICKS.depthMm * (after.x - before.x)) / length,
  };
  return [...turned.slice(count), apex];
}

/** Every place moved to the middle of the line's stretch round it: smooth stretches stay, sharp places become round. */
function rubbed(line: readonly Spot[]): Spot[] {
  return line.map((at, i) => {
    const near = [at];
    for (const way of [1, -1])
      for (let k = 1; k < line.length; k++) {
        const p = line[(i + way * k + line.length) % line.length];
        if (Math.hypot(p.x - at.x, p.y - at.y) > HOLE_RUBBED_MM) break;
        near.push(p);
      }
    const mean = (of: (p: Spot) => number) => near.reduce((sum, p) => sum + of(p), 0) / near.length;
    return { x: mean((p) => p.x), y: mean((p) => p.y) };
  });
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
