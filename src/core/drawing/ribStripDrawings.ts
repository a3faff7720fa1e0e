import { boundsOf, bulgeOfSweep, type Chain } from '../curve/index.ts';
import type { EndpinHole, MortiseInRibs, PlanParts, RibLength, RibStretch } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';
import { endpinNote, RIB_CAUTIONS, ribJointNote } from './ribNotes.ts';

/** mm. Figures stand upright in their stretch, from this far over the level edge, and need so much of its width. */
const FIGURE_MM = { high: 2.5, from: 2.5, room: 4 };

/** mm. Where a cut leaves both faces nearer than this to one place, one line is drawn for both. */
const ONE_CUT_MM = 0.15;

/** Which rib a sheet is for. */
type Which = 'lower' | 'waist' | 'upper';

/** What is cut through the ribs once the body is closed. */
export interface RibOpenings {
  readonly mortise: MortiseInRibs;
  readonly endpin: EndpinHole;
}

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
  /** Where the centre line of the body crosses it; the waist ribs do not reach it. */
  readonly centreMm?: number;
  readonly openings?: RibOpenings;
}

/**
 * The ribs laid flat at true size, as they are seen from outside with the neck to the right: level edge, tapered edge, both ends
 * with what is trimmed there, where one bend goes over into the next with its inside radius, and what mortise and end button take
 * of them. Those of the treble side; a rib in one piece whole.
 */
export function ribStripDrawings(parts: PlanParts, openings?: RibOpenings): readonly Drawing[] {
  const { lowerBout, cBout, upperBout, choice } = parts.ribs;
  const lower = flatRib('lower', lowerBout);
  const upper = flatRib('upper', upperBout);
  const [lowerMm, upperMm] = [0, upperBout.developed.lengthMm];
  const cut = openings && { openings };
  return [
    choice.lowerRib === 'one-piece'
      ? { ...acrossRib(lower, lowerMm), ...cut }
      : { ...lower, centreMm: lowerMm, ...cut },
    flatRib('waist', cBout),
    choice.upperRib === 'one-piece'
      ? { ...acrossRib(upper, upperMm), ...cut }
      : { ...upper, centreMm: upperMm, ...cut },
  ].map((flat) => stripDrawing(flat, parts));
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

/** A rib from corner to corner, its middle at 0: the treble half, shifted so that its centre line lies there, and its mirror image. */
function acrossRib(half: FlatRib, centreMm: number): FlatRib {
  const shifted = half.stretches.map((stretch) => ({
    ...stretch,
    fromMm: stretch.fromMm - centreMm,
    toMm: stretch.toMm - centreMm,
  }));
  const mirrored = shifted
    .toReversed()
    .map((stretch) => ({ ...stretch, fromMm: -stretch.toMm, toMm: -stretch.fromMm }));
  const edge = half.edge.map(({ x, y }) => ({ x: x - centreMm, y }));
  const across = edge.toReversed().map(({ x, y }) => ({ x: -x, y }));
  // The lower rib runs from the centre line out, the upper one up to it.
  const isOut = centreMm === 0;
  const corner = half.cuts[isOut ? 1 : 0];
  const cut = { outerMm: (corner?.outerMm ?? 0) - centreMm, innerMm: (corner?.innerMm ?? 0) - centreMm };
  const other = { outerMm: -cut.outerMm, innerMm: -cut.innerMm };
  return {
    ...half,
    stretches: isOut ? joinedAtMiddle(mirrored, shifted) : joinedAtMiddle(shifted, mirrored),
    edge: isOut ? [...across.slice(0, -1), ...edge] : [...edge, ...across.slice(1)],
    cuts: isOut ? [other, cut] : [cut, other],
    isAcross: true,
    centreMm: 0,
  };
}

/** The arc that crosses the centre line is one bend. */
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
      ...openingLines(flat).map((chain) => drawnLine('draw', chain)),
    ],
    lettering: [
      ...stretches.flatMap((stretch) => figure(stretch, scale, flat)),
      ...captionBelow(
        [
          `${which.toUpperCase()} RIB · ${wordsOfSide}`,
          parts.name,
          `${RUNS[isAcross ? 'across' : which]} ${mm(lengthOf(flat))}, ${mm(trimMm)} more at either end; ${heights(flat)} high`,
          isAcross
            ? `seen from outside, ${which === 'lower' ? 'treble side to the right' : 'bass side to the right'}; the lower edge is level`
            : 'seen from outside, neck to the right; the lower edge is level',
          ...(cuts.some(({ outerMm, innerMm }) => Math.abs(outerMm - innerMm) > ONE_CUT_MM)
            ? ['at the ends: the line across is cut on the outer face, the one beside it on the inner face']
            : []),
          'at each stretch: the radius inside its bend; ) ( hollow to the body',
          ...openingWords(flat),
        ],
        box.min,
        { scale, mostMm: box.max.x - box.min.x },
      ),
    ],
    notes: notes(flat, parts),
    count: 1,
    routes: ['print'],
    checks: sizeChecks(box),
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

/** Sides of the mortise in the upper rib, the hole of the end button in the lower one: half of it where two ribs meet on it. */
function openingLines(flat: FlatRib): readonly Chain<'drawing'>[] {
  const { which, isAcross, centreMm = 0, openings } = flat;
  if (!openings || which === 'waist') return [];
  if (which === 'upper') {
    const { atTop, atBack } = openings.mortise;
    const back = centreMm - atBack.takenMm;
    const top = centreMm - atTop.takenMm;
    const side = (sign: 1 | -1): Chain<'drawing'> => ({
      closed: false,
      vertices: [
        { x: sign * back, y: 0, bulge: 0 },
        { x: sign * top, y: heightAt(flat, top), bulge: 0 },
      ],
    });
    return isAcross ? [side(1), side(-1)] : [side(1)];
  }
  const { diameterMm, upMm } = openings.endpin;
  const [low, high] = [upMm - diameterMm / 2, upMm + diameterMm / 2];
  const half = bulgeOfSweep(Math.PI);
  return [
    {
      closed: isAcross,
      vertices: [
        { x: centreMm, y: low, bulge: half },
        { x: centreMm, y: high, bulge: isAcross ? half : 0 },
      ],
    },
  ];
}

function openingWords({ which, isAcross, openings }: FlatRib): readonly string[] {
  if (!openings || which === 'waist') return [];
  if (which === 'upper') {
    const { atTop, atBack } = openings.mortise;
    return [
      `slanting ${isAcross ? 'lines: sides' : 'line: side'} of the mortise; ${mm(atBack.takenMm)} (back) to ${mm(atTop.takenMm)} (top) from the centre line go`,
    ];
  }
  const { diameterMm, upMm } = openings.endpin;
  return [
    `${isAcross ? 'circle' : 'half circle'}: hole of the end button, ${mm(diameterMm)}, its middle ${mm(upMm)} up from the back`,
  ];
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

function notes(flat: FlatRib, parts: PlanParts): readonly string[] {
  const { rib, isAcross } = flat;
  const { bend } = rib;
  return [
    `Its length is that of the middle of its thickness, which bending leaves as it is. Plane strips ${mm(parts.ribs.stripWidthMm)} wide first; the tapered edge is planed to the line when the garland stands.${isAcross ? '' : ' Turn the sheet over for the bass side.'}`,
    ribJointNote(parts.ribs),
    ...endNotes(flat),
    ...(bend.needsStrap
      ? [
          `Tightest bend ${mm(bend.tightestMm)}, ${(100 * bend.stretch).toFixed(1)} % stretch outside it: hold a metal strap against the outside (beyond 3 %, from memory).`,
        ]
      : []),
    ...RIB_CAUTIONS,
  ];
}

function endNotes({ which, isAcross, openings }: FlatRib): readonly string[] {
  if (which === 'lower')
    return [
      isAcross
        ? 'In one piece from corner to corner: bend its middle first, glue it to the lower block on the centre line, then work out to both corners.'
        : 'Two ribs meet on the centre line of the lower block: trim both square there on a shooting board, so that the joint closes without force.',
      ...(openings ? [endpinNote(openings.endpin)] : []),
    ];
  if (which === 'upper')
    return [
      isAcross
        ? 'In one piece from corner to corner: bend its middle first, glue it to the upper block on the centre line, then work out to both corners. The mortise of the neck cuts it through later.'
        : `The joint on the centre line of the upper block is cut away by the mortise of the neck: a gap there does not show${openings ? `, and each rib may end up to ${mm(openings.mortise.shortOfCentreMm)} short of the centre line` : ''}.`,
      ...(openings
        ? [
            'Do not cut the ribs along the mortise beforehand: it is knifed and sawn through top, ribs and block together, from the root of the neck that was cut.',
          ]
        : []),
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
