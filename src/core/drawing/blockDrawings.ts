import type { Point } from '../base/index.ts';
import { type Chain, circleChain, mirrorChain, placeChain, reverseChain } from '../curve/index.ts';
import type { BlockPart, PlanParts } from '../instrument/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine } from './outlineDrawingsMarks.ts';

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
      ...grainSign(middleOf(part, side)),
    ],
    lettering: blockLettering(parts, part, title, middleOf(part, side)),
    notes: [
      `Blank ${acrossMm.toFixed(1)} × ${alongMm.toFixed(1)} mm and ${heightMm.toFixed(1)} mm high; the grain stands upright, along the height of the ribs (the ring with a dot), and splits flat towards the ribs.`,
      'The two faces in the recess are square to each other and to the faces of the form; the other sides are shaped after gluing, with the inner outline template.',
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

/** The middle of the part of a blank that stays: nearer to the recess than to the sides that are shaped. */
function middleOf({ name, blank }: BlockPart, side: 'treble' | 'bass' | undefined): Point<'drawing'> {
  const across = { treble: 0.42, bass: 0.58, none: 0.5 }[side ?? 'none'];
  const along = name.startsWith('lower corner') || name === 'upper block' ? 0.4 : 0.6;
  return { x: across * blank.acrossMm, y: along * blank.alongMm };
}

/** mm, radii of the sign for grain that stands upright: an arrow seen from its point. */
const GRAIN_SIGN_MM = { ring: 1.6, dot: 0.4 } as const;

function grainSign(middle: Point<'drawing'>): DrawnLine[] {
  const centre = { x: middle.x, y: middle.y + GRAIN_SIGN_RISE_MM };
  return [GRAIN_SIGN_MM.ring, GRAIN_SIGN_MM.dot].map((radius) =>
    drawnLine('draw', circleChain(centre, radius)),
  );
}

/** mm above the middle of the lettering. */
const GRAIN_SIGN_RISE_MM = 4.6;

/** mm, height of the lettering and from line to line. */
const LETTER_MM = 2;
const LINE_MM = 3.2;

/** Share of the blank's width that lettering may take. */
const LETTERED_SHARE = 0.62;

function blockLettering(
  parts: PlanParts,
  part: BlockPart,
  title: string,
  middle: Point<'drawing'>,
): Lettering[] {
  const { acrossMm, alongMm, heightMm } = part.blank;
  const texts = [
    title,
    parts.name,
    `${acrossMm.toFixed(1)} × ${alongMm.toFixed(1)} × ${heightMm.toFixed(1)}`,
  ];
  const roomMm = LETTERED_SHARE * acrossMm;
  return texts.map((text, at) => {
    const widthMm = letteringWidthMm({ text, heightMm: LETTER_MM });
    return {
      text,
      at: { x: middle.x, y: middle.y - at * LINE_MM },
      heightMm: widthMm > roomMm ? (LETTER_MM * roomMm) / widthMm : LETTER_MM,
      turnRad: 0,
      anchor: 'middle',
    };
  });
}
