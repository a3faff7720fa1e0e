import type { Point } from '../base/index.ts';
import { type Chain, circleChain, mirrorChain, placeChain, reverseChain } from '../curve/index.ts';
import type { BlockPart, LiningMortise, PlanParts } from '../instrument/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';

/**
 * The six blocks, each on its blank: the rectangle to saw, the finished shape, and the sign of upright grain.
 * Seen from the top side; each drawing has its origin in the lower left corner of the blank.
 */
export function blockDrawings(parts: PlanParts): readonly Drawing[] {
  return parts.blocks.parts.flatMap((part) =>
    part.count === 1
      ? [blockDrawing(parts, part, undefined)]
      : [blockDrawing(parts, part, 'treble'), blockDrawing(parts, part, 'bass')],
  );
}

function blockDrawing(parts: PlanParts, part: BlockPart, side: 'treble' | 'bass' | undefined): Drawing {
  const turn =
    side === 'bass'
      ? (chain: Chain<'body'>) => reverseChain(mirrorChain(chain))
      : (chain: Chain<'body'>) => chain;
  const blank = turn(part.blank.outline);
  const corner = {
    x: Math.min(...blank.vertices.map((vertex) => vertex.x)),
    y: Math.min(...blank.vertices.map((vertex) => vertex.y)),
  };
  const placed = (chain: Chain<'body'>): Chain<'drawing'> =>
    placeChain<'drawing', 'body'>(chain, { turnRad: 0, shift: [-corner.x, -corner.y] });
  const { acrossMm, alongMm, heightMm } = part.blank;
  const title = side === undefined ? part.name : `${part.name}, ${side} side`;
  return {
    name: `block-${title.replace(/ (block|side)/g, '').replace(/[, ]+/g, '-')}`,
    title: title.charAt(0).toUpperCase() + title.slice(1),
    part: 'blocks',
    lines: [
      drawnLine('cut', placed(blank)),
      drawnLine('score', placed(turn(part.shaped))),
      ...mortisesOf(parts, part).map(({ cut }) => drawnLine('score', placed(turn(cut)))),
      ...grainSign(letteredPlace(parts, part, side)),
    ],
    lettering: blockLettering(parts, part, title, letteredPlace(parts, part, side)),
    notes: [
      `Blank ${acrossMm.toFixed(1)} × ${alongMm.toFixed(1)} mm and ${heightMm.toFixed(1)} mm high; the grain stands upright, along the height of the ribs (the ring with a dot), and splits flat towards the ribs.`,
      'The two faces in the recess are square to each other and to the faces of the form; the other sides are shaped after gluing, with the inner outline template.',
      ...mortiseNotes(mortisesOf(parts, part)),
      CUTTING_CAUTION,
    ],
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: acrossMm },
      { name: 'height', valueMm: alongMm },
    ],
  };
}

/** The holes in a corner block that take the ends of linings. */
function mortisesOf({ linings }: PlanParts, { name }: BlockPart): readonly LiningMortise[] {
  return linings.mortises.filter(({ block }) => name === `${block} corner block`);
}

function mortiseNotes(mortises: readonly LiningMortise[]): readonly string[] {
  const [first] = mortises;
  if (!first) return [];
  const sides = mortises.map(({ side, reachMm }) => `${side} side ${reachMm.toFixed(1)} mm`).join(', ');
  return [
    `The lines behind the shaped sides are mortises for the linings, at the back and at the top: ${first.widthMm.toFixed(1)} mm wide along the rib, ${first.depthMm.toFixed(1)} mm deep from the edge of the ribs, let in at full thickness: ${sides}. Cut them when the ribs are on: knife the sides to depth first, then chisel, both hands behind the edge and the block backed up.`,
  ];
}

/** mm at a body length of 355 mm. */
const LAID_OUT_MM = { letter: 2, line: 3.2, margin: 1.5, signIn: 5, ring: 1.6, dot: 0.4 } as const;

/** Share of the blank's width that lettering may take without meeting the shaped sides. */
const LETTERED_SHARE = 0.54;

/** Where a block is lettered: along the faces of its recess, the wood that is not shaped away. */
interface LetteredPlace {
  readonly anchor: Lettering['anchor'];
  readonly x: number;
  /** Base line of the first of three lines. */
  readonly firstY: number;
  readonly sign: Point<'drawing'>;
  readonly scale: number;
}

function letteredPlace(
  parts: PlanParts,
  { name, blank }: BlockPart,
  side: 'treble' | 'bass' | undefined,
): LetteredPlace {
  const scale = letteringScale(parts.outline.bodyLengthMm);
  const { letter, line, margin, signIn } = LAID_OUT_MM;
  const faceAbove = name === 'lower block' || name === 'upper corner block';
  const stack = margin + letter + 2 * line;
  const below = (mm: number): number => (faceAbove ? blank.alongMm - mm * scale : mm * scale);
  const firstY = faceAbove ? below(margin + letter) : below(margin + 2 * line);
  if (side === undefined)
    return {
      anchor: 'middle',
      x: blank.acrossMm / 2,
      firstY,
      sign: { x: signIn * scale, y: below(signIn) },
      scale,
    };
  const inward = (mm: number): number => (side === 'treble' ? mm * scale : blank.acrossMm - mm * scale);
  return {
    anchor: side === 'treble' ? 'start' : 'end',
    x: inward(margin),
    firstY,
    sign: { x: inward(signIn), y: below(stack + 2 * letter) },
    scale,
  };
}

/** A ring with a dot, as an arrow is seen from its point: the grain stands upright. */
function grainSign({ sign, scale }: LetteredPlace): DrawnLine[] {
  return [LAID_OUT_MM.ring, LAID_OUT_MM.dot].map((radius) =>
    drawnLine('draw', circleChain(sign, radius * scale)),
  );
}

/**
 * On the blank what it is, in single words so that they stay readable; under it everything, for the cut list.
 * The name of the instrument stands on the blank too where it fits.
 */
function blockLettering(parts: PlanParts, part: BlockPart, title: string, place: LetteredPlace): Lettering[] {
  const { acrossMm, alongMm, heightMm } = part.blank;
  const inside = part.count === 1 ? [title] : title.replace(/ block,| side/g, '').split(' ');
  const roomMm = LETTERED_SHARE * acrossMm;
  const letterMm = LAID_OUT_MM.letter * place.scale;
  const words = fits(parts.name, letterMm, roomMm) && inside.length < 3 ? [...inside, parts.name] : inside;
  const below = [
    title,
    parts.name,
    `${acrossMm.toFixed(1)} × ${alongMm.toFixed(1)} × ${heightMm.toFixed(1)} mm`,
  ];
  return [
    ...words.map(
      (text, at): Lettering => ({
        text,
        at: { x: place.x, y: place.firstY - at * LAID_OUT_MM.line * place.scale },
        heightMm: letterMm,
        turnRad: 0,
        anchor: place.anchor,
      }),
    ),
    ...below.map(
      (text, at): Lettering => ({
        text,
        at: { x: 0, y: -(at + 1) * BELOW_MM.line },
        heightMm: BELOW_MM.letter,
        turnRad: 0,
        anchor: 'start',
      }),
    ),
  ];
}

function fits(text: string, heightMm: number, roomMm: number): boolean {
  return letteringWidthMm({ text, heightMm }) <= roomMm;
}

/** mm. Lettering under a blank, the same for every size of instrument. */
const BELOW_MM = { letter: 2.2, line: 4 } as const;
