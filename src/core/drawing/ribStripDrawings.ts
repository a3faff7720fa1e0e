import { boundsOf, type Chain } from '../curve/index.ts';
import type { PlanParts, RibLength, RibStretch } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';
import { RIB_CAUTIONS, ribJointNote } from './ribNotes.ts';

/** mm. Figures stand upright in their stretch, from this far over the level edge, and need so much of its width. */
const FIGURE_MM = { high: 2.5, from: 2.5, room: 4 };

/** mm. Where a cut leaves both faces nearer than this to one place, one line is drawn for both. */
const ONE_CUT_MM = 0.15;

/** Which rib a sheet is for. */
type Which = 'lower' | 'waist' | 'upper';

/** A rib laid flat as it is drawn: in one piece across the centre line it is drawn whole. */
interface FlatRib {
  readonly which: Which;
  readonly rib: RibLength;
  readonly stretches: readonly RibStretch[];
  /** The edge that may be tapered, left to right. */
  readonly edge: readonly { readonly x: number; readonly y: number }[];
  /** Where both ends leave the outer and the inner face. */
  readonly cuts: readonly { readonly outerMm: number; readonly innerMm: number }[];
  readonly trimMm: number;
  readonly isAcross: boolean;
}

/**
 * The ribs laid flat at true size, as they are seen from outside with the neck to the right: level edge, tapered edge, both ends
 * with what is trimmed there, and where one bend goes over into the next with its inside radius. Those of the treble side; a
 * lower rib in one piece whole.
 */
export function ribStripDrawings(parts: PlanParts): readonly Drawing[] {
  const { lowerBout, cBout, upperBout, choice } = parts.ribs;
  return [
    stripDrawing(choice.lowerRib === 'one-piece' ? acrossRib(lowerBout) : flatRib('lower', lowerBout), parts),
    stripDrawing(flatRib('waist', cBout), parts),
    stripDrawing(flatRib('upper', upperBout), parts),
  ];
}

function flatRib(which: Which, rib: RibLength): FlatRib {
  const { developed, piece } = rib;
  return {
    which,
    rib,
    stretches: developed.stretches,
    edge: developed.edge,
    cuts: [piece.from, piece.to],
    trimMm: (rib.cutMm - developed.lengthMm) / 2,
    isAcross: false,
  };
}

/** The lower rib from corner to corner, its middle at 0: the treble half and its mirror image. */
function acrossRib(rib: RibLength): FlatRib {
  const half = flatRib('lower', rib);
  const { to } = rib.piece;
  const mirrored = half.stretches.toReversed().map((stretch) => ({
    ...stretch,
    fromMm: -stretch.toMm,
    toMm: -stretch.fromMm,
  }));
  return {
    ...half,
    // The arc that crosses the centre line is one bend.
    stretches: joinedAtMiddle(mirrored, half.stretches),
    edge: [
      ...half.edge
        .slice(1)
        .toReversed()
        .map(({ x, y }) => ({ x: -x, y })),
      ...half.edge,
    ],
    cuts: [{ outerMm: -to.outerMm, innerMm: -to.innerMm }, to],
    isAcross: true,
  };
}

function joinedAtMiddle(before: readonly RibStretch[], after: readonly RibStretch[]): readonly RibStretch[] {
  const [last, first] = [before.at(-1), after[0]];
  if (!last || !first) return [...before, ...after];
  return [...before.slice(0, -1), { ...first, fromMm: last.fromMm }, ...after.slice(1)];
}

function stripDrawing(flat: FlatRib, parts: PlanParts): Drawing {
  const { which, stretches, cuts, trimMm, isAcross } = flat;
  const scale = letteringScale(parts.outline.bodyLengthMm);
  const strip = stripOf(flat);
  const box = boundsOf(strip);
  const wordsOfSide = isAcross ? 'IN ONE PIECE' : 'TREBLE SIDE';
  return {
    name: `rib-${which}`,
    title: `${which[0]?.toUpperCase()}${which.slice(1)} rib laid flat`,
    part: 'ribs',
    lines: [
      drawnLine('draw', strip),
      ...cuts.map(({ outerMm }) => drawnLine('score', upright(flat, outerMm))),
      ...cuts
        .filter(({ outerMm, innerMm }) => Math.abs(outerMm - innerMm) > ONE_CUT_MM)
        .map(({ innerMm }) => drawnLine('draw', upright(flat, innerMm))),
      ...stretches.slice(0, -1).map(({ toMm }): DrawnLine => drawnLine('draw', upright(flat, toMm))),
      ...(isAcross ? [{ ...drawnLine('draw', upright(flat, 0)), centreLine: true }] : []),
    ],
    lettering: [
      ...stretches.flatMap((stretch) => figure(stretch, scale, flat)),
      ...captionBelow(
        [
          `${which.toUpperCase()} RIB · ${wordsOfSide}`,
          parts.name,
          `${RUNS[isAcross ? 'across' : which]} ${mm(lengthOf(flat))}, ${mm(trimMm)} more at either end; ${heights(flat)} high`,
          'seen from outside, neck to the right; the lower edge is level',
          ...(cuts.some(({ outerMm, innerMm }) => Math.abs(outerMm - innerMm) > ONE_CUT_MM)
            ? ['at the ends: the line across is cut on the outer face, the one beside it on the inner face']
            : []),
          'at each stretch: the radius inside its bend; ) ( hollow to the body',
        ],
        box.min,
        { scale, mostMm: box.max.x - box.min.x },
      ),
    ],
    notes: notes(flat, parts),
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: box.max.x - box.min.x },
      { name: 'height', valueMm: box.max.y - box.min.y },
    ],
  };
}

const RUNS = {
  lower: 'centre line to corner',
  waist: 'lower corner to upper corner',
  upper: 'corner to centre line',
  across: 'corner to corner',
} as const;

function lengthOf({ edge }: FlatRib): number {
  return (edge.at(-1)?.x ?? 0) - (edge[0]?.x ?? 0);
}

/** The strip with what is trimmed off, anticlockwise from its lower left corner. */
function stripOf({ edge, trimMm }: FlatRib): Chain<'drawing'> {
  const [first, last] = [edge[0], edge.at(-1)];
  const [left, right] = [(first?.x ?? 0) - trimMm, (last?.x ?? 0) + trimMm];
  const corners = [
    { x: left, y: 0 },
    { x: right, y: 0 },
    { x: right, y: last?.y ?? 0 },
    ...edge.toReversed().map(({ x, y }) => ({ x, y })),
    { x: left, y: first?.y ?? 0 },
  ];
  return { closed: true, vertices: corners.map((at) => ({ ...at, bulge: 0 })) };
}

function heightAt({ edge }: FlatRib, xMm: number): number {
  const [first, last] = [edge[0], edge.at(-1)];
  if (!first || !last || xMm <= first.x) return first?.y ?? 0;
  if (xMm >= last.x) return last.y;
  const after = edge.findIndex(({ x }) => x >= xMm);
  const [a, b] = [edge[after - 1], edge[after]];
  if (!a || !b) return first.y;
  return a.y + ((b.y - a.y) * (xMm - a.x)) / (b.x - a.x);
}

function upright(flat: FlatRib, x: number): Chain<'drawing'> {
  return {
    closed: false,
    vertices: [0, heightAt(flat, x)].map((y) => ({ x, y, bulge: 0 })),
  };
}

/** The radius of a stretch, upright in its middle, or beside the centre line; none where it has no room. */
function figure(
  { fromMm, toMm, bends, insideRadiusMm }: RibStretch,
  scale: number,
  flat: FlatRib,
): readonly Lettering[] {
  const radius =
    insideRadiusMm === null ? 'straight' : `R ${insideRadiusMm.toFixed(insideRadiusMm < 100 ? 1 : 0)}`;
  const text = bends === 'hollow' ? `) ${radius} (` : radius;
  const heightMm = FIGURE_MM.high * scale;
  const hasRoom =
    toMm - fromMm >= FIGURE_MM.room * scale &&
    letteringWidthMm({ text, heightMm }) < heightAt(flat, fromMm) - 2 * FIGURE_MM.from * scale;
  if (!hasRoom) return [];
  const middle = flat.isAcross && fromMm < 0 && toMm > 0 ? toMm / 2 : (fromMm + toMm) / 2;
  const at = { x: middle + heightMm / 2, y: FIGURE_MM.from * scale };
  return [{ text, at, heightMm, turnRad: Math.PI / 2, anchor: 'start' }];
}

function notes({ which, rib, isAcross }: FlatRib, parts: PlanParts): readonly string[] {
  const { bend } = rib;
  return [
    `Its length is that of the middle of its thickness, which bending leaves as it is. Plane strips ${mm(parts.ribs.stripWidthMm)} wide first; the tapered edge is planed to the line when the garland stands.${isAcross ? '' : ' Turn the sheet over for the bass side.'}`,
    ribJointNote(parts.ribs),
    ...endNotes(which, isAcross),
    ...(bend.needsStrap
      ? [
          `Tightest bend ${mm(bend.tightestMm)}, ${(100 * bend.stretch).toFixed(1)} % stretch outside it: hold a metal strap against the outside (beyond 3 %, from memory).`,
        ]
      : []),
    ...RIB_CAUTIONS,
  ];
}

function endNotes(which: Which, isAcross: boolean): readonly string[] {
  if (which === 'lower')
    return [
      isAcross
        ? 'In one piece from corner to corner: bend its middle first, glue it to the lower block on the centre line, then work out to both corners.'
        : 'Two ribs meet on the centre line of the lower block: trim both square there on a shooting board, so that the joint closes without force.',
    ];
  if (which === 'upper')
    return [
      'The joint on the centre line of the upper block is cut away by the mortise of the neck; a small gap there does not show.',
    ];
  return [];
}

function heights({ edge }: FlatRib): string {
  const values = edge.map(({ y }) => y);
  const ends = [values[0] ?? 0, values.at(-1) ?? 0];
  const [from, to] = (ends[0] === ends[1] ? [Math.min(...values), Math.max(...values)] : ends).map((value) =>
    Number(value.toFixed(1)),
  );
  return from === to ? `${from} mm` : `${from} to ${to} mm`;
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
