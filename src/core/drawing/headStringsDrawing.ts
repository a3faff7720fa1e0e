import { hypot } from '../base/index.ts';
import { boundsOf, type Chain, circleChain, closeChain, sampleChain } from '../curve/index.ts';
import { type Head, insideWidth, outsideWidth } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { type HeadPlan, headScale, sheetBorder } from './headPiece.ts';
import { straightChain } from './neckPiece.ts';
import { drawnLine } from './outlineDrawingsMarks.ts';

/** mm on a head of 107 mm: between the two views, round them, of neck under the nut, and letter heights. */
const BETWEEN_MM = 14;
const ROUND_MM = 7;
const NECK_MM = 10;
const LETTER_MM = 2.2;

/** mm. The caption needs so much. */
const LEAST_WIDTH_MM = 105;

/** mm. Chord of the edges of the front view. */
const CHORD_MM = 0.05;

/**
 * How the strings run from the nut to their pegs, from the side and from the front, with the room that each has beside the
 * pegs that it passes and the walls; only printed.
 */
export function headStringsDrawing({ head, plan }: HeadPlan): Drawing {
  const scale = headScale(head);
  const side = sideView(head, scale);
  const front = frontView(head);
  const sideBox = boxOf(side);
  const frontBox = boxOf(front);
  const across = sideBox.max.x + BETWEEN_MM * scale - frontBox.min.x;
  const moved = front.map((line) => ({ ...line, chain: shifted(line.chain, across) }));
  const lines = [...side, ...moved];
  const box = boxOf(lines);
  const letters = [
    ...head.strings.flatMap((path): Lettering[] => {
      const centre = head.pegs[path.peg - 1]?.centre;
      return centre ? [letterAt(path.letter, centre.x, centre.y, scale)] : [];
    }),
    ...head.strings.map(
      (path): Lettering => ({
        ...letterAt(
          path.letter,
          across + path.side * (outsideWidth(head.pegbox, path.to.y) / 2 + 2 * scale),
          path.to.y,
          scale,
        ),
        anchor: path.side < 0 ? 'end' : 'start',
      }),
    ),
  ];
  const left = box.min.x - ROUND_MM * scale;
  const right = Math.max(box.max.x + ROUND_MM * scale, left + LEAST_WIDTH_MM);
  const caption = captionBelow(
    [
      'STRINGS TO THE PEGS',
      plan.name,
      'left from the side, right from the front; each string from the nut to its peg, pegs as thick as at their heads',
      ...head.strings.map((path) => roomText(path)),
    ],
    { x: left + 2, y: box.min.y },
    { scale: Math.min(1, 0.75 * scale), mostMm: right - left - 4 },
  );
  const low = Math.min(...caption.map(({ at }) => at.y)) - 3 * scale;
  const high = box.max.y + ROUND_MM * scale;
  return {
    name: 'head-strings',
    title: 'Strings to the pegs',
    part: 'head',
    lines: [sheetBorder(left, low, right, high), ...lines],
    lettering: [...letters, ...caption],
    notes: [
      'To look at when the peg holes are drilled and the strings put on. A string is drawn straight from the top of the nut to the front of its peg; it is wound toward the side of the peg’s head, so that its last turns lie against the wall there. Turn the head of each peg to the side that is lettered.',
      'Room is counted between the string and the side of a peg that it passes. Where the list says that one touches, move the pegs before anything is drilled.',
    ],
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: right - left },
      { name: 'height', valueMm: high - low },
    ],
  };
}

type Path = Head['strings'][number];

function roomText({ letter, peg, leastRoom, wallRoomMm }: Path): string {
  const room = (mm: number): string => (mm <= 0 ? 'touches' : `${mm.toFixed(1)} mm clear of`);
  const pegs = leastRoom ? `${room(leastRoom.mm)} peg ${leastRoom.peg}, ` : 'passes no peg, ';
  return `${letter} to peg ${peg} from the nut: ${pegs}${room(wallRoomMm)} the wall`;
}

function letterAt(text: string, x: number, y: number, scale: number): Lettering {
  const heightMm = LETTER_MM * scale;
  return { text, at: { x, y: y - heightMm / 2 }, heightMm, turnRad: 0, anchor: 'middle' };
}

/** The head cut through in its middle, pegs as circles, strings as lines; the letter of each stands in its peg. */
function sideView({ profile, pegbox, pegs, strings }: Head, scale: number): readonly DrawnLine[] {
  const { sizes } = profile;
  const bottom = -sizes.chinReachMm - NECK_MM * scale;
  const corners = [
    { x: 0, y: bottom },
    { x: sizes.neckBehindMm, y: bottom },
  ].map((at) => ({ ...at, bulge: 0 }));
  return [
    allRound(onDrawing(closeChain({ closed: false, vertices: [...profile.outline.vertices, ...corners] }))),
    allRound(onDrawing(pegbox.cavity), 'draw'),
    ...pegs.map(({ centre, largeMm }) =>
      allRound(circleChain<'drawing'>({ x: centre.x, y: centre.y }, largeMm / 2)),
    ),
    ...strings.map(({ from, to }) =>
      drawnLine(
        'score',
        straightChain(false, [
          [from.x, from.y],
          [to.x, to.y],
        ]),
      ),
    ),
  ];
}

/** The pegbox from the front: its sides, its opening, pegs across it, and the strings. */
function frontView({ profile, pegbox, pegs, strings }: Head): readonly DrawnLine[] {
  const edge = sampleChain(profile.front, CHORD_MM)
    .toReversed()
    .map(({ x, y }) => [outsideWidth(pegbox, hypot(x, y)) / 2, y] as const);
  const inside = sampleChain(pegbox.opening, CHORD_MM).map(
    ({ x, y }) => [insideWidth(pegbox, hypot(x, y), 0) / 2, y] as const,
  );
  return [
    allRound(band(edge)),
    allRound(band(inside)),
    ...pegs.flatMap(({ centre, largeMm, fromNutMm }) =>
      [-1, 1].map((side) => {
        const half = insideWidth(pegbox, fromNutMm, 0) / 2;
        const y = centre.y + (side * largeMm) / 2;
        return drawnLine(
          'draw',
          straightChain(false, [
            [-half, y],
            [half, y],
          ]),
        );
      }),
    ),
    ...strings.map(({ acrossMm, toAcrossMm, to }) =>
      drawnLine(
        'score',
        straightChain(false, [
          [acrossMm, 0],
          [toAcrossMm, to.y],
        ]),
      ),
    ),
  ];
}

/** A closed shape alike on both sides, from its half widths. */
function band(edge: readonly (readonly [half: number, y: number])[]): Chain<'drawing'> {
  return straightChain(true, [
    ...edge.map(([half, y]): [number, number] => [half, y]),
    ...edge.toReversed().map(([half, y]): [number, number] => [-half, y]),
  ]);
}

function onDrawing(chain: Chain<'head'>): Chain<'drawing'> {
  return { closed: chain.closed, vertices: chain.vertices.map(({ x, y, bulge }) => ({ x, y, bulge })) };
}

/** A line right round as one that ends where it began: nothing is cut here. */
function allRound(chain: Chain<'drawing'>, meaning: 'score' | 'draw' = 'score'): DrawnLine {
  const [first] = chain.vertices;
  const vertices = first ? [...chain.vertices, { ...first, bulge: 0 }] : [];
  return drawnLine(meaning, { closed: false, vertices });
}

function shifted(chain: Chain<'drawing'>, dx: number): Chain<'drawing'> {
  return { ...chain, vertices: chain.vertices.map((one) => ({ ...one, x: one.x + dx })) };
}

function boxOf(lines: readonly DrawnLine[]) {
  const boxes = lines.map(({ chain }) => boundsOf(chain));
  return {
    min: { x: Math.min(...boxes.map(({ min }) => min.x)), y: Math.min(...boxes.map(({ min }) => min.y)) },
    max: { x: Math.max(...boxes.map(({ max }) => max.x)), y: Math.max(...boxes.map(({ max }) => max.y)) },
  };
}
