import { boundsOf, type Chain } from '../curve/index.ts';
import type { DevelopedRib, PlanParts, RibLength, RibStretch } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';

/** mm between two strips, and from a strip's lower edge to its name. */
const APART_MM = 16;
const NAME_MM = { high: 3.5, below: 5 };
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
export function ribStripsDrawing({ name, outline, ribs }: PlanParts): Drawing {
  const scale = letteringScale(outline.bodyLengthMm);
  const strips = [
    { title: 'LOWER RIB', rib: ribs.lowerBout, from: 'centre line', to: 'corner' },
    { title: 'WAIST RIB', rib: ribs.cBout, from: 'lower corner', to: 'upper corner' },
    { title: 'UPPER RIB', rib: ribs.upperBout, from: 'corner', to: 'centre line' },
  ];
  const lines: DrawnLine[] = [];
  const lettering: Lettering[] = [];
  let y = 0;
  for (const { title, rib, from, to } of strips) {
    const { lengthMm, stretches } = rib.developed;
    const trimMm = trimOf(rib);
    lines.push(drawnLine('draw', stripOf(rib, trimMm, y)));
    for (const x of [0, lengthMm]) lines.push(drawnLine('score', upright(x, y, heightAt(rib.developed, x))));
    for (const { toMm } of stretches.slice(0, -1))
      lines.push(drawnLine('draw', upright(toMm, y, heightAt(rib.developed, toMm))));
    lettering.push(
      ...stretches.flatMap((stretch) => figure(stretch, y, scale, heightAt(rib.developed, stretch.fromMm))),
    );
    lettering.push({
      text: `${title} · ${from} to ${to} ${mm(lengthMm)}, ${mm(trimMm)} more at either end · ${heights(rib)} high`,
      at: { x: -trimMm, y: y - NAME_MM.below * scale },
      heightMm: NAME_MM.high * scale,
      turnRad: 0,
      anchor: 'start',
    });
    y += heightAt(rib.developed, lengthMm) + APART_MM * scale;
  }
  const box = boxOf(lines);
  return {
    name: 'rib-strips',
    title: 'Ribs laid flat',
    part: 'ribs',
    lines,
    lettering: [
      ...lettering,
      ...captionBelow(
        [
          'RIBS · TREBLE SIDE',
          name,
          'seen from outside, neck to the right; the lower edge is level',
          'at each stretch: the radius inside its bend; ) ( hollow to the body',
        ],
        { x: box.min.x, y: box.min.y - 2 * NAME_MM.below * scale },
        { scale, mostMm: box.max.x - box.min.x },
      ),
    ],
    notes: notes(strips, ribs.stripWidthMm),
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: box.max.x - box.min.x },
      { name: 'height', valueMm: box.max.y - box.min.y },
    ],
  };
}

/** What is left for trimming at either end. */
function trimOf({ cutMm, lengthMm }: RibLength): number {
  return (cutMm - lengthMm) / 2;
}

/** The strip with what is trimmed off, anticlockwise from its lower left corner. */
function stripOf({ developed }: RibLength, trimMm: number, y: number): Chain<'drawing'> {
  const { lengthMm, edge } = developed;
  const corners = [
    { x: -trimMm, y },
    { x: lengthMm + trimMm, y },
    { x: lengthMm + trimMm, y: y + heightAt(developed, lengthMm) },
    ...edge.toReversed().map((at) => ({ x: at.x, y: y + at.y })),
    { x: -trimMm, y: y + heightAt(developed, 0) },
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

function upright(x: number, y: number, heightMm: number): Chain<'drawing'> {
  return {
    closed: false,
    vertices: [
      { x, y, bulge: 0 },
      { x, y: y + heightMm, bulge: 0 },
    ],
  };
}

/** The radius of a stretch, upright in its middle; none where it has no room. */
function figure(
  { fromMm, toMm, bends, insideRadiusMm }: RibStretch,
  y: number,
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
  const at = { x: (fromMm + toMm) / 2 + heightMm / 2, y: y + FIGURE_MM.from * scale };
  return [{ text, at, heightMm, turnRad: Math.PI / 2, anchor: 'start' }];
}

function notes(
  strips: readonly { readonly title: string; readonly rib: RibLength }[],
  stripWidthMm: number,
): readonly string[] {
  const straps = strips.filter(({ rib }) => rib.bend.needsStrap);
  const strapped = straps.map(
    ({ title, rib }) =>
      `${title.toLowerCase()} ${rib.bend.tightestMm.toFixed(1)} mm, ${(100 * rib.bend.stretch).toFixed(1)} %`,
  );
  return [
    `Lengths are those of the middle of the thickness, which bending leaves as it is. Plane strips ${mm(stripWidthMm)} wide first; the tapered edge is planed to the line when the garland stands.`,
    'Turn the sheet over for the bass side. A lower or upper rib in one piece is both sides of one sheet, joined at the centre line.',
    'Bend the waist ribs first: both ends run past the corner, are trimmed along the outer face of the block and thinned there; the outer ribs go over them, and both are trimmed together to the rib corner.',
    ...(strapped.length > 0
      ? [
          `Tightest bends, and the stretch outside them: ${strapped.join('; ')}. Beyond 3 % hold a metal strap against the outside (from memory).`,
        ]
      : []),
    ...CAUTIONS,
  ];
}

function boxOf(lines: readonly DrawnLine[]) {
  const boxes = lines.map(({ chain }) => boundsOf(chain));
  const of = (pick: (box: (typeof boxes)[number]) => number, best: (...all: number[]) => number): number =>
    best(...boxes.map(pick));
  return {
    min: { x: of(({ min }) => min.x, Math.min), y: of(({ min }) => min.y, Math.min) },
    max: { x: of(({ max }) => max.x, Math.max), y: of(({ max }) => max.y, Math.max) },
  };
}

function heights({ developed: { edge } }: RibLength): string {
  const [from, to] = [edge[0]?.y ?? 0, edge.at(-1)?.y ?? 0].map((value) => Number(value.toFixed(1)));
  return from === to ? `${from} mm` : `${from} to ${to} mm`;
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
