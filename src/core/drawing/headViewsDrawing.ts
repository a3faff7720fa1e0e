import { cos, distanceBetween } from '../base/index.ts';
import { boundsOf, type Chain, chainThrough, pointAlong } from '../curve/index.ts';
import {
  boardWidth,
  type Head,
  type Neck,
  outsideWidth,
  type WidthStation,
  widthAlong,
} from '../instrument/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { type HeadPlan, headScale, sheetBorder } from './headPiece.ts';
import { figure, straightChain } from './neckPiece.ts';
import { drawnLine } from './outlineDrawingsMarks.ts';

/** mm. Step along the edges of the views. */
const STEP_MM = 0.7;
/** mm on a head of 107 mm: between the two views, round them, and letter heights. */
const BETWEEN_MM = 12;
const ROUND_MM = 5;
const TITLE_MM = 3.4;
const TEXT_MM = 2.2;
/** Base line to base line, in letter heights. */
const SPACING = 1.75;

/** Columns of the table: heading, and where its right edge stands, mm. */
const COLUMNS = ['no.', 'place', 'along', 'behind', 'from nut', 'to eye', 'width'] as const;
const COLUMN_MM = [5, 8, 43, 55, 69, 80, 91] as const;

const PLACE_WORDS: Readonly<Record<WidthStation['place'], string>> = {
  chin: 'tip of the chin',
  back: 'back',
  top: 'top',
  front: 'front',
  bottom: 'bottom',
  eye: 'eye, over ears',
};

/** Front and back of the finished head as they are seen, and the table of its widths at stepped places; only printed. */
export function headViewsDrawing({ head, neck, plan }: HeadPlan): Drawing {
  const scale = headScale(head);
  const half = Math.max(...head.widths.stations.map(({ widthMm }) => widthMm)) / 2;
  const middles = [0, 2 * half + BETWEEN_MM * scale] as const;
  const lines = [
    ...frontView(head).map((chain) => shifted(chain, middles[0])),
    ...backView(head).map((chain) => shifted(chain, middles[1])),
  ];
  const stubs = middles.flatMap((x) => neckStub(neck, scale).map((chain) => shifted(chain, x)));
  const boxes = [...lines, ...stubs].map((chain) => boundsOf(chain));
  const low = Math.min(...boxes.map(({ min }) => min.y)) - ROUND_MM * scale;
  const high = Math.max(...boxes.map(({ max }) => max.y)) + ROUND_MM * scale;
  const left = -half - ROUND_MM * scale;
  const right = middles[1] + half + ROUND_MM * scale;
  return {
    name: 'head-views',
    title: 'Head, front and back, table of widths',
    part: 'head',
    lines: [
      sheetBorder(left, low, right, high),
      ...lines.map((chain): DrawnLine => drawnLine('score', chain)),
      ...stubs.map((chain): DrawnLine => drawnLine('draw', chain)),
      ...middles.map(
        (x): DrawnLine => ({
          ...drawnLine(
            'draw',
            straightChain(false, [
              [x, low + 1],
              [x, high - 1],
            ]),
          ),
          centreLine: true,
        }),
      ),
    ],
    lettering: table(head, plan.name, { x: left, y: low }),
    notes: [
      'To look at and to measure from. Left the front, right the back, as they are seen; the widths are held at the numbered stations and run evenly between them. Along: on the line from the tip of the chin up the back, over the top and along the spiral; behind: the gluing face of the fingerboard; to eye: straight to its middle.',
      'The first numbers belong to the pegbox’s back; its front has the width of its own template.',
    ],
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: right - left },
      { name: 'height', valueMm: high - low },
    ],
  };
}

/** Front: the front edges of the pegbox, the edges of all turns from the throat over the top to the eye, and the ears. */
function frontView(head: Head): readonly Chain<'drawing'>[] {
  const { pegbox, widths, profile } = head;
  const eye = widths.stations.at(-1);
  const [nut, throat] = [pegbox.sizes.widthNutMm / 2, pegbox.sizes.widthThroatMm / 2];
  const bottomY = widths.stations.find(({ place }) => place === 'bottom')?.at.y ?? 0;
  const throatY = profile.front.vertices[0]?.y ?? 0;
  const hidden = nut + ((throat - nut) * bottomY) / throatY;
  const edges = edgeOf(head, widths.topMm, eye?.alongMm ?? widths.bottomMm);
  return [
    ...both([...shoulder(head), [hidden, bottomY]]),
    straightChain(false, [
      [-outsideWidth(pegbox, 0) / 2, 0],
      [outsideWidth(pegbox, 0) / 2, 0],
    ]),
    ...both(edges),
    ...both([
      [(eye?.widthMm ?? 0) / 2, (eye?.at.y ?? 0) - profile.sizes.eyeRadiusMm],
      [(eye?.widthMm ?? 0) / 2, (eye?.at.y ?? 0) + profile.sizes.eyeRadiusMm],
    ]),
    ...levelAt(head, 'top', 0),
    ...levelAt(head, 'bottom', 0),
  ];
}

/** Steps round a shoulder of the pegbox. */
const SHOULDER_STEPS = 16;

/** The right side of the pegbox from the nut to the end of its shoulder; the corner at the nut where it has none. */
function shoulder({ pegbox }: Head): readonly (readonly [number, number])[] {
  const { shoulderMm } = pegbox.sizes;
  const steps = shoulderMm > 0 ? SHOULDER_STEPS : 0;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const y = steps === 0 ? 0 : shoulderMm * (1 - cos((step * Math.PI) / 2 / steps));
    return [outsideWidth(pegbox, y) / 2, y] as const;
  });
}

/** mm on a head of 107 mm. How much of the neck is shown below the nut. */
const STUB_MM = 14;

/** The sides of the neck below the nut, as wide as the board. */
function neckStub({ sizes: { board } }: Neck, scale: number): readonly Chain<'drawing'>[] {
  const downMm = STUB_MM * scale;
  return both([
    [boardWidth(board, 0) / 2, 0],
    [boardWidth(board, downMm) / 2, -downMm],
  ]);
}

/** Back: the edges of the back from the chin to the top, and of the turns. */
function backView(head: Head): readonly Chain<'drawing'>[] {
  const { widths } = head;
  const eye = widths.stations.at(-1)?.alongMm ?? widths.bottomMm;
  return [
    ...both(edgeOf(head, 0, widths.topMm)),
    ...both(edgeOf(head, widths.bottomMm, eye)),
    ...levelAt(head, 'chin', 0),
    ...levelAt(head, 'top', 0),
  ];
}

/** The right edge between two places along the head, as it is seen square to the gluing face. */
function edgeOf(head: Head, fromMm: number, toMm: number): readonly (readonly [number, number])[] {
  const count = Math.ceil((toMm - fromMm) / STEP_MM);
  return Array.from({ length: count + 1 }, (_, index) => {
    const alongMm = fromMm + ((toMm - fromMm) * index) / count;
    return [widthAlong(head.widths, alongMm) / 2, pointAlong(head.profile.spine, alongMm).y] as const;
  });
}

/** A level line from edge to edge at the first station of this kind. */
function levelAt(head: Head, place: WidthStation['place'], index: number): readonly Chain<'drawing'>[] {
  const station = head.widths.stations.filter((one) => one.place === place)[index];
  if (!station) return [];
  const half = station.widthMm / 2;
  return [
    straightChain(false, [
      [-half, station.at.y],
      [half, station.at.y],
    ]),
  ];
}

function both(edge: readonly (readonly [number, number])[]): readonly Chain<'drawing'>[] {
  return [1, -1].map((side) =>
    chainThrough(
      edge.map(([x, y]) => ({ x: side * x, y })),
      false,
    ),
  );
}

function shifted(chain: Chain<'drawing'>, dx: number): Chain<'drawing'> {
  return { ...chain, vertices: chain.vertices.map((one) => ({ ...one, x: one.x + dx })) };
}

/** The table of widths under the views. */
function table({ widths }: Head, name: string, corner: Lettering['at']): readonly Lettering[] {
  const rows = widths.stations.map((station) => rowOf(station, widths.stations.at(-1)));
  const texts: Lettering[] = [];
  let y = corner.y - 2 * TITLE_MM;
  const write = (text: string, x: number, heightMm: number, anchor: Lettering['anchor']): void => {
    if (text.length > 0) texts.push({ text, at: { x: corner.x + x, y }, heightMm, turnRad: 0, anchor });
  };
  write(`WIDTHS OF THE HEAD · ${name}`, 0, TITLE_MM, 'start');
  y -= TITLE_MM * SPACING;
  for (const row of [COLUMNS, ...rows]) {
    for (const [column, text] of row.entries())
      write(text, COLUMN_MM[column] ?? 0, TEXT_MM, column === 1 ? 'start' : 'end');
    y -= TEXT_MM * SPACING;
  }
  return texts;
}

function rowOf(station: WidthStation, eye: WidthStation | undefined): readonly string[] {
  const { number, place, alongMm, at, widthMm } = station;
  const toEye = eye ? distanceBetween(at, eye.at) : Number.NaN;
  return [
    `${number}`,
    PLACE_WORDS[place],
    alongMm.toFixed(1),
    at.x.toFixed(1),
    at.y.toFixed(1),
    figure(toEye),
    widthMm.toFixed(1),
  ];
}
