import { boundsOf, type Chain } from '../curve/index.ts';
import type { DevelopedRib, PlanParts, RibLength, RibStretch } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';

/** mm. Figures stand upright in their stretch, from this far over the level edge, and need so much of its width. */
const FIGURE_MM = { high: 2.5, from: 2.5, room: 4 };

const CAUTIONS = [
  'A bending iron burns wood and skin: wet the rib, try the heat on waste, keep fingers off the inside of the bend, let it cool before it is touched or left. Steam scalds. Follow the manual of the iron.',
  'Thin strips split under plane and knife: plane them on a board against a stop, cut with both hands behind the edge.',
];

/**
 * The three ribs of the treble side laid flat at true size, as they are seen from outside with the neck to the right: level
 * edge, tapered edge, both ends with what is trimmed there, and where one bend goes over into the next with its inside radius.
 */
export function ribStripDrawings({ name, outline, ribs }: PlanParts): readonly Drawing[] {
  const scale = letteringScale(outline.bodyLengthMm);
  return [
    stripDrawing('lower', ribs.lowerBout, 'centre line to corner', name, scale, ribs.stripWidthMm),
    stripDrawing('waist', ribs.cBout, 'lower corner to upper corner', name, scale, ribs.stripWidthMm),
    stripDrawing('upper', ribs.upperBout, 'corner to centre line', name, scale, ribs.stripWidthMm),
  ];
}

function stripDrawing(
  which: 'lower' | 'waist' | 'upper',
  rib: RibLength,
  runs: string,
  instrumentName: string,
  scale: number,
  stripWidthMm: number,
): Drawing {
  const { developed } = rib;
  const { lengthMm, stretches } = developed;
  const trimMm = (rib.cutMm - lengthMm) / 2;
  const edge = stripOf(developed, trimMm);
  const box = boundsOf(edge);
  return {
    name: `rib-${which}`,
    title: `${which[0]?.toUpperCase()}${which.slice(1)} rib laid flat`,
    part: 'ribs',
    lines: [
      drawnLine('draw', edge),
      ...[0, lengthMm].map((x) => drawnLine('score', upright(x, heightAt(developed, x)))),
      ...stretches
        .slice(0, -1)
        .map(({ toMm }): DrawnLine => drawnLine('draw', upright(toMm, heightAt(developed, toMm)))),
    ],
    lettering: [
      ...stretches.flatMap((stretch) => figure(stretch, scale, heightAt(developed, stretch.fromMm))),
      ...captionBelow(
        [
          `${which.toUpperCase()} RIB · TREBLE SIDE`,
          instrumentName,
          `${runs} ${mm(lengthMm)}, ${mm(trimMm)} more at either end; ${heights(developed)} high`,
          'seen from outside, neck to the right; the lower edge is level',
          'at each stretch: the radius inside its bend; ) ( hollow to the body',
        ],
        box.min,
        { scale, mostMm: box.max.x - box.min.x },
      ),
    ],
    notes: notes(which, rib, stripWidthMm),
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: box.max.x - box.min.x },
      { name: 'height', valueMm: box.max.y - box.min.y },
    ],
  };
}

/** The strip with what is trimmed off, anticlockwise from its lower left corner. */
function stripOf({ lengthMm, edge }: DevelopedRib, trimMm: number): Chain<'drawing'> {
  const [left, right] = [edge[0]?.y ?? 0, edge.at(-1)?.y ?? 0];
  const corners = [
    { x: -trimMm, y: 0 },
    { x: lengthMm + trimMm, y: 0 },
    { x: lengthMm + trimMm, y: right },
    ...edge.toReversed().map(({ x, y }) => ({ x, y })),
    { x: -trimMm, y: left },
  ];
  return { closed: true, vertices: corners.map((at) => ({ ...at, bulge: 0 })) };
}

function heightAt({ edge }: DevelopedRib, xMm: number): number {
  const after = Math.max(
    1,
    edge.findIndex(({ x }) => x >= xMm),
  );
  const [a, b] = [edge[after - 1], edge[after]];
  if (!a || !b) return a?.y ?? 0;
  return a.y + ((b.y - a.y) * (xMm - a.x)) / (b.x - a.x);
}

function upright(x: number, heightMm: number): Chain<'drawing'> {
  return {
    closed: false,
    vertices: [0, heightMm].map((y) => ({ x, y, bulge: 0 })),
  };
}

/** The radius of a stretch, upright in its middle; none where it has no room. */
function figure(
  { fromMm, toMm, bends, insideRadiusMm }: RibStretch,
  scale: number,
  roomMm: number,
): readonly Lettering[] {
  const radius =
    insideRadiusMm === null ? 'straight' : `R ${insideRadiusMm.toFixed(insideRadiusMm < 100 ? 1 : 0)}`;
  const text = bends === 'hollow' ? `) ${radius} (` : radius;
  const heightMm = FIGURE_MM.high * scale;
  const hasRoom =
    toMm - fromMm >= FIGURE_MM.room * scale &&
    letteringWidthMm({ text, heightMm }) < roomMm - 2 * FIGURE_MM.from * scale;
  if (!hasRoom) return [];
  const at = { x: (fromMm + toMm) / 2 + heightMm / 2, y: FIGURE_MM.from * scale };
  return [{ text, at, heightMm, turnRad: Math.PI / 2, anchor: 'start' }];
}

function notes(
  which: 'lower' | 'waist' | 'upper',
  { bend }: RibLength,
  stripWidthMm: number,
): readonly string[] {
  return [
    `Its length is that of the middle of its thickness, which bending leaves as it is. Plane strips ${mm(stripWidthMm)} wide first; the tapered edge is planed to the line when the garland stands. Turn the sheet over for the bass side.`,
    which === 'waist'
      ? 'Bend the waist ribs first: both ends run past the corner, are trimmed along the outer face of the block and thinned there; the outer ribs go over them, and both are trimmed together to the rib corner.'
      : 'In one piece it is both sides of this sheet, joined at the centre line. It goes over the end of the waist rib, and both are trimmed together to the rib corner.',
    ...(bend.needsStrap
      ? [
          `Tightest bend ${mm(bend.tightestMm)}, ${(100 * bend.stretch).toFixed(1)} % stretch outside it: hold a metal strap against the outside (beyond 3 %, from memory).`,
        ]
      : []),
    ...CAUTIONS,
  ];
}

function heights({ edge }: DevelopedRib): string {
  const [from, to] = [edge[0]?.y ?? 0, edge.at(-1)?.y ?? 0].map((value) => Number(value.toFixed(1)));
  return from === to ? `${from} mm` : `${from} to ${to} mm`;
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
