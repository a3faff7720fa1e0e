import { boundsOf, type Chain, circleChain, mirrorChain, reverseChain } from '../curve/index.ts';
import type { PlanParts } from '../instrument/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { battenMarks } from './formDrawingsBattens.ts';
import { cornerReference } from './formDrawingsCorners.ts';
import { formNotes, halfFormNotes } from './formDrawingsNotes.ts';
import { pinChains } from './outlineDrawings.ts';
import {
  aboveStation,
  type LetteredPiece,
  letterBlock,
  liesOnPiece,
  stationNames,
} from './outlineDrawingsLettering.ts';
import {
  type Covers,
  centreLineMarks,
  drawnLine,
  letteringScale,
  onDrawing,
  stationMarks,
} from './outlineDrawingsMarks.ts';

/**
 * The inner form: in one piece with the lettering of its top side, the lines and lettering of its back side, and in two
 * halves. The form is symmetric, so the lines of one face are those of the other; only the lettering differs.
 */
export function formDrawings(parts: PlanParts): readonly Drawing[] {
  return [wholeForm(parts), backSide(parts), halfForm(parts, 'treble half'), halfForm(parts, 'bass half')];
}

function wholeForm(parts: PlanParts): Drawing {
  const edge = onDrawing(parts.form.outline);
  const holes = [...clampChains(parts, 'whole'), ...pinChains(parts)];
  return {
    name: 'form',
    title: 'Inner form',
    part: 'form',
    lines: [
      drawnLine('cut', edge),
      ...holes.map((hole) => drawnLine('cut-inside', hole)),
      ...scoredLines(parts, edge, holes),
      ...cornerReference(parts, 'whole'),
    ],
    lettering: formLettering(parts, 'INNER FORM', 'TOP SIDE', pieceOf(parts, edge, holes, 'whole')),
    notes: formNotes(parts),
    count: 1,
    routes: ['print', 'laser', 'router'],
    checks: sizes(edge),
  };
}

/** Printed only: nothing is cut twice, the other face takes the same lines and this lettering. */
function backSide(parts: PlanParts): Drawing {
  const edge = onDrawing(parts.form.outline);
  const holes = [...clampChains(parts, 'whole'), ...pinChains(parts)];
  return {
    name: 'form-back-side',
    title: 'Inner form, marks of the back side',
    part: 'form',
    lines: [
      drawnLine('draw', edge),
      ...holes.map((hole) => drawnLine('draw', hole)),
      ...scoredLines(parts, edge, holes),
    ],
    lettering: formLettering(parts, 'INNER FORM', 'BACK SIDE', pieceOf(parts, edge, holes, 'whole')),
    notes: [
      'Seen on the back of the form: treble and bass side change places.',
      'Lay the pin holes of this sheet on those of the form and prick or score the lines through.',
    ],
    count: 1,
    routes: ['print'],
    checks: sizes(edge),
  };
}

function halfForm(parts: PlanParts, covers: 'treble half' | 'bass half'): Drawing {
  const treble = onDrawing(parts.form.halfOutline);
  const edge = covers === 'treble half' ? treble : reverseChain(mirrorChain(treble));
  const holes = clampChains(parts, covers);
  const word = covers === 'treble half' ? 'treble' : 'bass';
  return {
    name: `form-half-${word}`,
    title: `Inner form in two halves, ${covers}`,
    part: 'form',
    lines: [
      drawnLine('cut', edge),
      ...holes.map((hole) => drawnLine('cut-inside', hole)),
      ...stationMarks(parts.stations, edge, holes, reachOf(parts), 'lines'),
      ...battenMarks(parts, edge, holes, covers),
      ...cornerReference(parts, covers),
    ],
    lettering: formLettering(
      parts,
      `FORM, ${covers.toUpperCase()}`,
      'TOP SIDE',
      pieceOf(parts, edge, holes, covers),
    ),
    notes: halfFormNotes(parts),
    count: 1,
    routes: ['print', 'laser', 'router'],
    checks: sizes(edge),
  };
}

function scoredLines(
  parts: PlanParts,
  edge: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
): readonly DrawnLine[] {
  const reach = reachOf(parts);
  return [
    ...centreLineMarks(edge, holes, reach),
    ...stationMarks(parts.stations, edge, holes, reach, 'lines'),
  ];
}

/** Clamp holes as circles that run clockwise. */
function clampChains(parts: PlanParts, covers: Covers): Chain<'drawing'>[] {
  return parts.form.clampHoles
    .filter((hole) => covers === 'whole' || covers === `${hole.side} half`)
    .map((hole) => circleChain<'drawing'>({ x: hole.centre.x, y: hole.centre.y }, hole.radiusMm, true));
}

function formLettering(parts: PlanParts, title: string, face: Face, piece: LetteredPiece): Lettering[] {
  const block = letterBlock(
    [
      { text: title, heightMm: 5 },
      { text: parts.name, heightMm: 5 },
      { text: face, heightMm: 7 },
      { text: `${parts.form.thicknessMm} mm thick`, heightMm: 3 },
    ],
    {
      topMm: 0.38 * parts.outline.bodyLengthMm,
      floorMm: aboveStation(parts.outline.lowerBout.stationMm, piece.scale),
      mostMm: 0.25 * parts.outline.lowerBout.widthMm,
    },
    piece,
  );
  return [...block, ...stationNames(parts.stations, piece), ...sideNames(parts, face, piece)];
}

/** Which side of the body is which, where a form has room for it: the sides change places on the back. */
function sideNames(parts: PlanParts, face: Face, piece: LetteredPiece): Lettering[] {
  const { covers, scale } = piece;
  const { widthMm, stationMm } = parts.outline.lowerBout;
  const right = face === 'TOP SIDE' ? 'treble' : 'bass';
  const left = face === 'TOP SIDE' ? 'bass' : 'treble';
  const name = (text: string, sign: 1 | -1): Lettering => ({
    text: `${text} side`,
    at: { x: sign * SIDE_NAME_SHARE * widthMm, y: stationMm + 1.2 * scale },
    heightMm: 3 * scale,
    turnRad: 0,
    anchor: 'middle',
  });
  return [
    ...(covers === 'bass half' ? [] : [name(right, 1)]),
    ...(covers === 'treble half' ? [] : [name(left, -1)]),
  ].filter((lettering) => liesOnPiece(lettering, piece));
}

type Face = 'TOP SIDE' | 'BACK SIDE';

/** Where the names of the sides stand, as a share of the lower bout's width from the centre line. */
const SIDE_NAME_SHARE = 0.25;

function pieceOf(
  parts: PlanParts,
  edge: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
  covers: Covers,
): LetteredPiece {
  return { edge, holes, covers, scale: letteringScale(parts.outline.bodyLengthMm) };
}

function reachOf(parts: PlanParts): number {
  return 2 * parts.outline.bodyLengthMm;
}

function sizes(edge: Chain<'drawing'>): Drawing['checks'] {
  const box = boundsOf(edge);
  return [
    { name: 'width', valueMm: box.max.x - box.min.x },
    { name: 'height', valueMm: box.max.y - box.min.y },
  ];
}
