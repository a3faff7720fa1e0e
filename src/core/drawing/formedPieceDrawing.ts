import type { Box } from '../base/index.ts';
import { boundsOf, type Chain, circleChain, placeChain } from '../curve/index.ts';
import type { FormedPiece } from '../instrument/index.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { drawnLine } from './outlineDrawingsMarks.ts';
import { stackedLettering } from './stackedLettering.ts';

/** What a piece that fits against a line is called, says and is made for. */
export interface FormedPieceText {
  readonly name: string;
  readonly title: string;
  readonly part: Drawing['part'];
  readonly lettering: readonly string[];
  readonly notes: readonly string[];
  readonly count: number;
  /** mm. Of a round hole beside the lettering; none when 0. */
  readonly holeRadiusMm: number;
}

/** mm from the edges of a piece to its lettering. */
const GAP_MM = 2.5;

/** mm. Wood beside the hole, at least. */
const WALL_MM = 2;

/** A flat piece with a fitting edge below and a straight back above; a short score in the middle of the back shows where to press. */
export function formedPieceDrawing(piece: FormedPiece, text: FormedPieceText): Drawing {
  const outline = placeChain<'drawing', 'section'>(piece.outline, { turnRad: 0, shift: [0, 0] });
  const box = boundsOf(outline);
  const faceTop = boundsOf(piece.face).max.y;
  const radius = text.holeRadiusMm;
  const holeAt = radius + Math.max(radius, WALL_MM);
  const hole = radius > 0 && piece.widthMm > 2 * (holeAt + radius + 2 * GAP_MM);
  const room: Box<'drawing'> = {
    min: { x: (hole ? holeAt + radius : 0) + GAP_MM, y: faceTop + GAP_MM / 2 },
    max: { x: piece.widthMm - GAP_MM, y: piece.backMm - MARK_MM - GAP_MM / 2 },
  };
  const lines: DrawnLine[] = [
    drawnLine('cut', outline),
    ...(hole
      ? [
          drawnLine(
            'cut-inside',
            circleChain<'drawing'>({ x: holeAt, y: (faceTop + piece.backMm) / 2 }, radius, true),
          ),
        ]
      : []),
    drawnLine('score', mark(piece.widthMm / 2, piece.backMm)),
  ];
  return {
    name: text.name,
    title: text.title,
    part: text.part,
    lines,
    lettering: stackedLettering(text.lettering, room),
    notes: text.notes,
    count: text.count,
    routes: ['print', 'laser'],
    checks: sizeChecks(box),
  };
}

/** mm. Length of the mark in the middle of the back. */
const MARK_MM = 2.5;

function mark(x: number, backMm: number): Chain<'drawing'> {
  return {
    closed: false,
    vertices: [
      { x, y: backMm, bulge: 0 },
      { x, y: backMm - MARK_MM, bulge: 0 },
    ],
  };
}
