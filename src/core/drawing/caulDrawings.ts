import type { Caul, CaulParts, PlanParts } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { formedPieceDrawing } from './formedPieceDrawing.ts';
import { GLUE_CAUTION } from './glueCaution.ts';

/** mm. Of the hole for a pin or a cord, at most; and its share of the caul's thickness. */
const HOLE_MM = 3;
const HOLE_SHARE = 0.15;

/** The cauls that press the ribs on, each cut from sheet and built up to its height. */
export function caulDrawings({ name, cauls }: PlanParts): readonly Drawing[] {
  return cauls.cauls.map((caul) => caulDrawing(caul, cauls, name));
}

function caulDrawing(caul: Caul, parts: CaulParts, instrumentName: string): Drawing {
  const { piece, count } = caul;
  const [place = '', side] = caul.name.split(', ');
  return formedPieceDrawing(piece, {
    name: `caul-${caul.name.replace(/[, ]+/g, '-')}`,
    title: `Caul, ${caul.name}`,
    part: 'ribs',
    lettering: [
      'CAUL',
      side ? `${place}, ${side}` : place,
      instrumentName,
      `cork ${mm(parts.facingMm)}`,
      ...(count === 2 ? ['turn for bass'] : []),
    ],
    notes: notes(caul, parts),
    count,
    holeRadiusMm: Math.min(HOLE_MM, HOLE_SHARE * piece.backMm),
  });
}

function notes({ name, clamp, count }: Caul, parts: CaulParts): readonly string[] {
  return [
    `Build it up from sheet to at most ${mm(parts.heightMm)} across the rib, so that both edges of the rib stay free for linings and glue. Glue ${mm(parts.facingMm)} of cork or leather on the curved face, which is drawn for it, and wax it or lay paper between: squeezed-out glue must not hold it.`,
    useOf(name, parts, count),
    ...(clamp && name !== 'waist'
      ? [
          `The clamp bears on the back at its mark and in the nearest hole of the form: its jaws open ${mm(Math.ceil(clamp.openingMm))} or more.`,
        ]
      : []),
    CUTTING_CAUTION,
    GLUE_CAUTION,
  ];
}

function useOf(name: Caul['name'], parts: CaulParts, count: 1 | 2): string {
  const turned =
    count === 2 ? ' One piece serves both sides, turned over; two let both be glued at once.' : '';
  if (name === 'waist')
    return `Holds the bent waist rib on the form between the blocks while it cools and dries; take it off before the blocks are glued, it stands in the way of their cauls.${turned}`;
  if (name.endsWith('block'))
    return 'Over the whole end block, with a clamp on either side of the centre line; the groove keeps off the joint of the ribs.';
  const room = name.endsWith('waist side')
    ? ` Between the backs of both waist cauls ${mm(Math.floor(parts.waistRoomMm))} are left for clamps: where that is too little, glue one corner after the other.`
    : '';
  return `Presses the rib on its face of the corner block; it stops short of the rib corner, where the joint is trimmed.${room}${turned}`;
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
