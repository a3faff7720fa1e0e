import type { Point } from '../base/index.ts';
import { type Chain, circleChain, mirrorChain, placeChain, reverseChain } from '../curve/index.ts';
import type { BlockPart, EndpinHole, LiningMortise, Neck, PlanParts } from '../instrument/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';
import { endpinNote } from './ribNotes.ts';

/** What is cut out of the end blocks once the body is closed. */
export interface BlockOpenings {
  readonly neck: Neck;
  readonly endpin: EndpinHole;
}

/**
 * The six blocks, each on its blank: the rectangle to saw, the finished shape, the sign of upright grain, and in the end blocks the
 * mortise of the neck and the hole of the end button.
 * Seen from the top side; each drawing has its origin in the lower left corner of the blank.
 */
export function blockDrawings(parts: PlanParts, openings?: BlockOpenings): readonly Drawing[] {
  return parts.blocks.parts.flatMap((part) =>
    part.count === 1
      ? [blockDrawing(parts, part, undefined, openings)]
      : [blockDrawing(parts, part, 'treble'), blockDrawing(parts, part, 'bass')],
  );
}

function blockDrawing(
  parts: PlanParts,
  part: BlockPart,
  side: 'treble' | 'bass' | undefined,
  openings?: BlockOpenings,
): Drawing {
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
      ...(openings ? openingLines(parts, part, openings) : []).map((chain) =>
        drawnLine('draw', placed(chain)),
      ),
      ...grainSign(letteredPlace(parts, part, side)),
    ],
    lettering: blockLettering(parts, part, title, letteredPlace(parts, part, side)),
    notes: [
      `Blank ${acrossMm.toFixed(1)} × ${alongMm.toFixed(1)} mm and ${heightMm.toFixed(1)} mm high; the grain stands upright, along the height of the ribs (the ring with a dot), and splits flat towards the ribs.`,
      'The two faces in the recess are square to each other and to the faces of the form; the other sides are shaped after gluing, with the inner outline template.',
      ...mortiseNotes(mortisesOf(parts, part)),
      ...(openings ? openingNotes(part, openings) : []),
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

/** In plan: both floors of the neck's mortise with its sides, or the sides of the end button's hole as far as the words let them. */
function openingLines(
  { outline }: PlanParts,
  { name, blank }: BlockPart,
  { neck, endpin }: BlockOpenings,
): readonly Chain<'body'>[] {
  const ys = blank.outline.vertices.map(({ y }) => y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  if (name === 'upper block') {
    const { mortise, shape } = neck;
    const notch = (halfMm: number, deepMm: number): Chain<'body'> => {
      const floor = outline.bodyLengthMm - deepMm;
      const corners = [
        [-halfMm, high],
        [-halfMm, floor],
        [halfMm, floor],
        [halfMm, high],
      ] as const;
      return { closed: false, vertices: corners.map(([x, y]) => ({ x, y, bulge: 0 })) };
    };
    return [
      notch(shape.root.edgeWidthMm / 2, mortise.depthAtTopMm),
      notch(shape.root.backWidthMm / 2, mortise.depthAtBackMm),
    ];
  }
  if (name !== 'lower block') return [];
  const scale = letteringScale(outline.bodyLengthMm);
  const words = (LAID_OUT_MM.margin + LAID_OUT_MM.letter + 2 * LAID_OUT_MM.line) * scale;
  const to = high - Math.min(words, (high - low) / 2);
  return [-1, 1].map((side) => ({
    closed: false,
    vertices: [low, to].map((y) => ({ x: (side * endpin.diameterMm) / 2, y, bulge: 0 })),
  }));
}

function openingNotes({ name }: BlockPart, { neck, endpin }: BlockOpenings): readonly string[] {
  const mm = (value: number): string => `${Number(value.toFixed(1))} mm`;
  if (name === 'upper block')
    return [
      `The two dashed notches are the mortise of the neck, at the top (wider) and at the back: ${mm(neck.block.behindMm)} of the block stay behind it. Do not cut it now: it is cut when the body is closed, from the root of the neck.`,
    ];
  if (name === 'lower block')
    return [
      `The dashed lines are the hole of the end button, ${mm(endpin.diameterMm)} at the ribs, ${mm(endpin.upMm)} up from the edge of the ribs toward the back.`,
      endpinNote(endpin),
    ];
  return [];
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
      // Two lines, not three: clear of the mortise of the neck.
      firstY: faceAbove ? firstY : below(margin + line),
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
