import { boundsOf, type Chain, circleChain, closeChain, placeChain } from '../curve/index.ts';
import { EYE_PRICK_MM, type Instrument, PRICK_MM, voluteSlots } from '../instrument/index.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { headSideLettering } from './headSideLettering.ts';
import { drawnLine } from './outlineDrawingsMarks.ts';

/** The side template of the head: cut round, slotted along the spiral. Drawing frame: that of the head. */
export function headDrawings(instrument: Instrument): readonly Drawing[] {
  return [sideTemplate(instrument)];
}

/** mm of neck left below where the chin runs into it. */
const NECK_MM = 12;
/** mm. Length of the mark at the nut. */
const NUT_MARK_MM = 8;

const NOTES = [
  'Lay the straight edge of the neck on the face that the fingerboard is glued to, the mark at the nut on the nut line; draw round it and along the slots, prick the eye. Turn it over on the same two lines for the other side: both spirals must meet square across the block.',
  'Saw outside the line, across the block, and file to it; the scroll is cut down turn by turn to the spirals afterwards. The bridges between the slots are drawn through by hand.',
];

function sideTemplate({ head, plan }: Instrument): Drawing {
  const { profile } = head;
  const body = onDrawing(templateOutline(profile));
  const { slots, pricks, eye, rest } = voluteSlots(profile);
  const box = boundsOf(body);
  const hole = (at: { readonly x: number; readonly y: number }, mm: number): DrawnLine =>
    drawnLine('cut-inside', circleChain<'drawing'>({ x: at.x, y: at.y }, mm / 2, true));
  return {
    name: 'head-side',
    title: 'Head, side',
    part: 'head',
    lines: [
      drawnLine('cut', body),
      ...slots.map((slot) => drawnLine('cut-inside', onDrawing(slot))),
      ...pricks.map((at) => hole(at, PRICK_MM)),
      hole(eye, EYE_PRICK_MM),
      ...(rest ? [drawnLine('score', onDrawing(rest))] : []),
      drawnLine('score', {
        closed: false,
        vertices: [0, NUT_MARK_MM].map((x) => ({ x, y: 0, bulge: 0 })),
      }),
    ],
    lettering: headSideLettering(profile, plan.name),
    notes: [...NOTES, CUTTING_CAUTION],
    count: 1,
    routes: ['print', 'laser'],
    checks: [
      { name: 'width', valueMm: box.max.x - box.min.x },
      { name: 'height', valueMm: box.max.y - box.min.y },
    ],
  };
}

/** The head's outline with a piece of neck, closed, anticlockwise. */
function templateOutline({ outline, sizes }: Instrument['head']['profile']): Chain<'head'> {
  const bottom = -sizes.chinReachMm - NECK_MM;
  const corners = [
    { x: 0, y: bottom },
    { x: sizes.neckBehindMm, y: bottom },
  ].map((at) => ({ ...at, bulge: 0 }));
  return closeChain({ closed: false, vertices: [...outline.vertices, ...corners] });
}

function onDrawing(chain: Chain<'head'>): Chain<'drawing'> {
  return placeChain<'drawing', 'head'>(chain, { turnRad: 0, shift: [0, 0] });
}
