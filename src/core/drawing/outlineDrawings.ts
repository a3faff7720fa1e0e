import { boundsOf, type Chain, circleChain, mirrorChain } from '../curve/index.ts';
import type { PlanParts, TemplateParts } from '../instrument/index.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { aboveStation, letterBlock, stationNames } from './outlineDrawingsLettering.ts';
import {
  type Covers,
  centreLineMarks,
  drawnLine,
  letteringScale,
  onDrawing,
  stationMarks,
} from './outlineDrawingsMarks.ts';

/** The templates of the outline and of the inner outline, each whole and as a half. */
export function outlineDrawings(parts: PlanParts): readonly Drawing[] {
  return [
    template(parts, OUTLINE, 'whole'),
    template(parts, OUTLINE, 'treble half'),
    template(parts, INNER, 'whole'),
    template(parts, INNER, 'treble half'),
  ];
}

interface Kind {
  readonly name: string;
  readonly title: string;
  readonly part: 'outline' | 'form';
  readonly says: string;
  readonly template: (parts: PlanParts) => TemplateParts;
  readonly scored: (parts: PlanParts, covers: Covers) => readonly Chain<'drawing'>[];
  readonly notes: readonly string[];
}

const OUTLINE: Kind = {
  name: 'outline-template',
  title: 'Outline template',
  part: 'outline',
  says: 'edge of the plates',
  template: (parts) => parts.outlineTemplate,
  scored: () => [],
  notes: [
    'For both plates. On the back leave wood for the button at the upper end, and draw it with its own template before sawing.',
  ],
};

const INNER: Kind = {
  name: 'inner-template',
  title: 'Inner outline template',
  part: 'form',
  says: 'inner face of the ribs',
  template: (parts) => parts.innerTemplate,
  scored: recessLines,
  notes: [],
};

function template(parts: PlanParts, kind: Kind, covers: 'whole' | 'treble half'): Drawing {
  const { whole, half } = kind.template(parts);
  const edge = onDrawing(covers === 'whole' ? whole : half);
  const holes = covers === 'whole' ? pinChains(parts) : [];
  const piece = { edge, holes, covers, scale: letteringScale(parts.outline.bodyLengthMm) };
  const reach = 2 * parts.outline.bodyLengthMm;
  const box = boundsOf(edge);
  const title = covers === 'whole' ? kind.title : `${kind.title}, half`;
  const lines: DrawnLine[] = [
    drawnLine('cut', edge),
    ...holes.map((hole) => drawnLine('cut-inside', hole)),
    ...(covers === 'whole' ? centreLineMarks(edge, holes, reach) : []),
    ...stationMarks(parts.stations, edge, holes, reach, 'marks'),
    ...kind.scored(parts, covers).map((chain) => drawnLine('score', chain)),
  ];
  return {
    name: covers === 'whole' ? kind.name : `${kind.name}-half`,
    title,
    part: kind.part,
    lines,
    lettering: [
      ...letterBlock(
        [
          { text: title.toUpperCase(), heightMm: 5 },
          { text: parts.name, heightMm: 5 },
          { text: kind.says, heightMm: 3.5 },
          ...(covers === 'whole' ? [] : [{ text: 'straight edge on the centre line', heightMm: 3 }]),
        ],
        {
          topMm: 0.37 * parts.outline.bodyLengthMm,
          floorMm: aboveStation(parts.outline.lowerBout.stationMm, piece.scale),
          mostMm: 0.26 * parts.outline.lowerBout.widthMm,
        },
        piece,
      ),
      ...stationNames(parts.stations, piece),
    ],
    notes: [...kind.notes, ...notes(parts, covers)],
    count: 1,
    routes: ['print', 'laser'],
    checks: sizeChecks(box),
  };
}

/** Pin holes as circles that run clockwise. */
export function pinChains(parts: PlanParts): Chain<'drawing'>[] {
  return parts.form.pins.map((pin) =>
    circleChain<'drawing'>({ x: pin.centre.x, y: pin.centre.y }, pin.radiusMm, true),
  );
}

function notes(parts: PlanParts, covers: Covers): string[] {
  const pin = 2 * (parts.form.pins[0]?.radiusMm ?? 0);
  return [
    covers === 'whole'
      ? `Both pin holes lie on the centre line; drill ${pin} mm and align with pins.`
      : `Lay the straight edge on the centre line against two pins of ${pin} mm, mark one side, turn over for the other: both sides come out alike.`,
    'Cut outside the line and file to it. Station marks are for checking widths with a calliper.',
    CUTTING_CAUTION,
  ];
}

/** The faces of the block recesses, to be marked on the wood of the form. */
function recessLines(parts: PlanParts, covers: Covers): readonly Chain<'drawing'>[] {
  const { lower, lowerCorner, upperCorner, upper } = parts.blocks;
  const treble = [lower, lowerCorner, upperCorner, upper].map((block) => onDrawing(block.recess));
  return covers === 'whole' ? [...treble, ...treble.map((line) => mirrorChain(line))] : treble;
}
