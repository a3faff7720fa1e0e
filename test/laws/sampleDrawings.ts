import type { Chain, Vertex } from '../../src/core/curve/index.ts';
import { circleChain } from '../../src/core/curve/index.ts';
import type { Drawing, DrawnLine } from '../../src/core/drawing/index.ts';

/** Invented pieces of every kind that pages and writers meet: large, small, with holes, marks and lettering. */
export function sampleDrawings(): Drawing[] {
  return [fiddleForm(), ...[0, 1, 2, 3, 4].map(archGauge), block(), longRule()];
}

/** The right half of an invented body outline, from the lower end up: x, y, bulge. */
const RIGHT_HALF: readonly (readonly [number, number, number])[] = [
  [0, 0, 0.1],
  [60, 11, 0.26],
  [102, 72, 0.17],
  [88, 128, -0.02],
  [95, 137, 0],
  [92, 142, -0.14],
  [62, 168, -0.24],
  [57, 208, -0.16],
  [79, 236, 0],
  [78, 242, 0.02],
  [73, 250, 0.2],
  [82, 300, 0.26],
  [40, 350, 0.1],
];

/** A form as large as a violin's, with six recesses' worth of holes, a centre line and stations. */
export function fiddleForm(scale = 1): Drawing {
  const vertices: Vertex<'drawing'>[] = RIGHT_HALF.map(([x, y, bulge]) => ({
    x: x * scale,
    y: y * scale,
    bulge,
  }));
  vertices.push({ x: 0, y: 356 * scale, bulge: RIGHT_HALF.at(-1)?.[2] ?? 0 });
  for (let index = RIGHT_HALF.length - 1; index > 0; index--) {
    const [x, y] = RIGHT_HALF[index] as (typeof RIGHT_HALF)[number];
    vertices.push({ x: -x * scale, y: y * scale, bulge: RIGHT_HALF[index - 1]?.[2] ?? 0 });
  }
  const holes = [
    [0, 60],
    [55, 60],
    [-55, 60],
    [0, 178],
    [0, 300],
    [45, 290],
    [-45, 290],
  ] as const;
  const lines: DrawnLine[] = [
    { meaning: 'cut', chain: { closed: true, vertices } },
    ...holes.map(
      ([x, y]): DrawnLine => ({
        meaning: 'cut-inside',
        chain: circleChain({ x: x * scale, y: y * scale }, 12 * scale, true),
      }),
    ),
    { meaning: 'score', chain: line(0, 100 * scale, 0, 140 * scale) },
    { meaning: 'draw', centreLine: true, chain: line(0, 4 * scale, 0, 352 * scale) },
    { meaning: 'draw', chain: line(-90 * scale, 120 * scale, 90 * scale, 120 * scale) },
  ];
  return {
    name: 'inner-form',
    title: 'Inner form, whole',
    part: 'form',
    lines,
    lettering: [
      { text: 'Garland 356 · top side', at: { x: 0, y: 150 }, heightMm: 5, turnRad: 0, anchor: 'middle' },
      { text: 'widest lower bout', at: { x: 88, y: 122 }, heightMm: 3, turnRad: 0, anchor: 'end' },
    ],
    notes: [
      'Plywood or solid wood 12.7 mm thick. The blocks are glued to the form with one spot only, so that it can be taken out.',
    ],
    count: 1,
    routes: ['print', 'laser', 'router'],
    checks: [{ name: 'length', valueMm: 356 }],
  };
}

function archGauge(index: number): Drawing {
  const half = [84, 72, 55, 76, 102][index] ?? 80;
  const names = ['upper bout', 'upper corner', 'waist', 'lower corner', 'lower bout'];
  const rise = 11 + index;
  return {
    name: `arch-back-${index + 1}`,
    title: `Arching gauge, back, ${names[index]}`,
    part: 'arching',
    lines: [
      {
        meaning: 'cut',
        chain: {
          closed: true,
          vertices: [
            { x: -half, y: 0, bulge: 0 },
            { x: -half + 8, y: 0, bulge: -(2 * rise) / (2 * half - 16) },
            { x: half - 8, y: 0, bulge: 0 },
            { x: half, y: 0, bulge: 0 },
            { x: half, y: 38, bulge: 0 },
            { x: -half, y: 38, bulge: 0 },
          ],
        },
      },
      { meaning: 'score', chain: line(0, rise + 1, 0, 37) },
    ],
    lettering: [
      { text: `Back · ${names[index]}`, at: { x: 4, y: 30 }, heightMm: 3.5, turnRad: 0, anchor: 'start' },
      { text: 'Größe 4/4', at: { x: 4, y: 24 }, heightMm: 2.5, turnRad: 0, anchor: 'start' },
    ],
    notes: [],
    count: 1,
    routes: ['print', 'laser'],
    checks: [{ name: 'width', valueMm: 2 * half }],
  };
}

function block(): Drawing {
  return {
    name: 'corner-block',
    title: 'Corner block',
    part: 'blocks',
    lines: [{ meaning: 'cut', chain: rectangle(0, 0, 24, 30) }],
    lettering: [
      { text: 'grain', at: { x: 12, y: 13 }, heightMm: 2.5, turnRad: Math.PI / 2, anchor: 'middle' },
    ],
    notes: ['Grain runs along the ribs’ height.'],
    count: 4,
    routes: ['print'],
    checks: [{ name: 'width', valueMm: 24 }],
  };
}

function longRule(): Drawing {
  return {
    name: 'long-gauge',
    title: 'Arching gauge, back, long arch',
    part: 'arching',
    lines: [{ meaning: 'cut', chain: rectangle(0, 0, 370, 36) }],
    lettering: [{ text: 'Long arch', at: { x: 185, y: 16 }, heightMm: 4, turnRad: 0, anchor: 'middle' }],
    notes: [],
    count: 1,
    routes: ['print', 'laser'],
    checks: [{ name: 'length', valueMm: 370 }],
  };
}

function line(fromX: number, fromY: number, toX: number, toY: number): Chain<'drawing'> {
  return {
    closed: false,
    vertices: [
      { x: fromX, y: fromY, bulge: 0 },
      { x: toX, y: toY, bulge: 0 },
    ],
  };
}

export function rectangle(left: number, low: number, width: number, height: number): Chain<'drawing'> {
  return {
    closed: true,
    vertices: [
      { x: left, y: low, bulge: 0 },
      { x: left + width, y: low, bulge: 0 },
      { x: left + width, y: low + height, bulge: 0 },
      { x: left, y: low + height, bulge: 0 },
    ],
  };
}
