import { type Chain, lengthOf, placeAlong, subChain } from '../curve/index.ts';
import { formedPiece, type PlanParts } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { formedPieceDrawing } from './formedPieceDrawing.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';

/** mm at the usual size: how deep a gauge is, how far it reaches over the form beyond the block, and its length along a bout. */
const DEPTH_MM = 25;
const OVER_FORM_MM = 8;
const LENGTH_MM = 36;

/** Gauges of both shaped faces of the corner blocks: what the inner faces of the ribs will lie on. */
export function blockGaugeDrawings(parts: PlanParts): readonly Drawing[] {
  return (['lower', 'upper'] as const).flatMap((which) =>
    (['bout', 'waist'] as const).map((side) => gauge(parts, which, side)),
  );
}

function gauge(parts: PlanParts, which: 'lower' | 'upper', side: 'bout' | 'waist'): Drawing {
  const scale = letteringScale(parts.outline.bodyLengthMm);
  const { sections } = parts.ribs.inner;
  const block = which === 'lower' ? parts.blocks.lowerCorner : parts.blocks.upperCorner;
  const section = side === 'waist' ? sections.cBout : sections[`${which}Bout`];
  const place = side === 'waist' ? block.onWaist : block.onBout;
  // Lines run up the body: the corner is at their end where the rib comes up to it.
  const cornerAtEnd = (which === 'lower') === (side === 'bout');
  const start = { segment: 0, fraction: 0 };
  const wholeMm = lengthOf(section);
  const faceMm = cornerAtEnd
    ? wholeMm - lengthOf(subChain(section, start, place))
    : lengthOf(subChain(section, start, place));
  const lengthMm = Math.max(faceMm + OVER_FORM_MM * scale, side === 'bout' ? LENGTH_MM * scale : 0);
  const line: Chain<'body'> = cornerAtEnd
    ? subChain(section, placeAlong(section, wholeMm - lengthMm), placeAlong(section, wholeMm))
    : subChain(section, start, placeAlong(section, lengthMm));
  return formedPieceDrawing(formedPiece(line, DEPTH_MM * scale), {
    name: `block-gauge-${which}-corner-${side}`,
    title: `Face gauge, ${which} corner block, ${side} side`,
    part: 'blocks',
    lettering: [`${which.toUpperCase()} CORNER BLOCK`, `${side} side`, parts.name, 'turn for bass'],
    notes: [
      `Held flat on top of the ${which} corner block with its curved edge against the ${side} face: one end at the tip of the block, the other ${mm(lengthMm - faceMm)} over the edge of the form. No light between means that the rib will lie close. Turn it over for the bass side.`,
      'The back is parallel to the straight line between both ends of the curve, the sides are square to it: with a small square on the back the face is checked upright.',
      CUTTING_CAUTION,
    ],
    count: 1,
    holeRadiusMm: 0,
  });
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
