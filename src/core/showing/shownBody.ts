import { type Chain, circleChain, mirrorChain } from '../curve/index.ts';
import type { BodyOutline, PlanParts } from '../instrument/index.ts';
import { type ShownLine, shownLine } from './shownLine.ts';

/** What a line of the body is: the page gives each its weight and its colour. */
export type BodyKind = 'edge' | 'purfling' | 'rib' | 'ribInside' | 'form' | 'clampHole' | 'pin' | 'block';

/** A width that a hand can be laid on: across the body at its station. */
export interface ShownWidth {
  readonly name: 'upperBout' | 'waist' | 'lowerBout';
  readonly widthMm: number;
  readonly stationMm: number;
}

/** A thing in the drawing that a leader points at, with its sizes in millimetres. */
export interface ShownNote {
  readonly what:
    | 'upperBlock'
    | 'clampHole'
    | 'pin'
    | 'upperCornerBlock'
    | 'form'
    | 'ribEnds'
    | 'lowerCornerBlock'
    | 'overhang'
    | 'lowerBlock';
  readonly at: readonly [xMm: number, yMm: number];
  readonly sizesMm: readonly number[];
}

/**
 * The body from the side of the top, everything in its plane: outline, ribs, form, blocks. Millimetres; x to the treble
 * side from the centre line, y down from the upper end. Stations count from the lower end, as makers measure.
 */
export interface ShownBody {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly lines: readonly ShownLine<BodyKind>[];
  readonly widths: readonly ShownWidth[];
  /** Heights of the corners above the lower end, at their outermost tips. */
  readonly cornersMm: { readonly lower: number; readonly upper: number };
  readonly notes: readonly ShownNote[];
}

/** What of the body a hand holds: its outline and the form's edge, and the measures of the outline. As in {@link ShownBody}. */
export interface BodyUnderHand extends Pick<ShownBody, 'lengthMm' | 'widthMm' | 'widths' | 'cornersMm'> {
  readonly edge: ShownLine<'edge'>;
  readonly form: ShownLine<'form'>;
}

/** Numbers that a hand on a line is on. */
const ANSWERS = {
  edge: ['bodyLength', 'upperCornerEnd', 'lowerCornerEnd', 'outline'],
  purfling: ['purflingToEdge', 'purflingWidth', 'purfling.lowerApex', 'purfling.upperApex'],
  ribs: ['overhang', 'cornerOverhang', 'ribThickness'],
  form: ['formThickness', 'form.width', 'form.length'],
  holes: ['clampHoleDiameter', 'clampHoleWall', 'clampHolePitch'],
  pins: ['pinDiameter', 'pinFromEnd'],
} as const;

/** An outline and the edge of its form, as they are shown with the whole body. */
export function bodyUnderHand(outline: BodyOutline, formEdge: Chain<'body'>): BodyUnderHand {
  const top = outline.bodyLengthMm;
  return {
    lengthMm: top,
    widthMm: outline.lowerBout.widthMm,
    widths: (['upperBout', 'waist', 'lowerBout'] as const).map((name) => ({ name, ...outline[name] })),
    cornersMm: { lower: outline.lowerCorner.stationMm, upper: outline.upperCorner.stationMm },
    edge: shownLine('edge', outline.chain, top, ANSWERS.edge),
    form: shownLine('form', formEdge, top, ANSWERS.form),
  };
}

/** The body of a design's parts in the plane. */
export function shownBody(plan: PlanParts): ShownBody {
  const { outline, ribs, form, blocks, purfling } = plan;
  const { edge, form: formEdge, ...measures } = bodyUnderHand(outline, form.outline);
  const top = outline.bodyLengthMm;
  const line = (kind: BodyKind, chain: Chain<'body'>, answersTo: readonly string[]) =>
    shownLine(kind, chain, top, answersTo);
  const both = (kind: BodyKind, chain: Chain<'body'>, answersTo: readonly string[]) => [
    line(kind, chain, answersTo),
    line(kind, mirrorChain(chain), answersTo),
  ];
  const { sections } = ribs.outer;
  return {
    ...measures,
    lines: [
      formEdge,
      ...blocks.parts.flatMap(({ name, count, outline: shape }) => {
        const answers = BLOCK_VALUES[name];
        return count === 2 ? both('block', shape, answers) : [line('block', shape, answers)];
      }),
      ...form.clampHoles.map(({ centre, radiusMm }) =>
        line('clampHole', circleChain(centre, radiusMm, false), ANSWERS.holes),
      ),
      ...form.pins.map(({ centre, radiusMm }) =>
        line('pin', circleChain(centre, radiusMm, false), ANSWERS.pins),
      ),
      line('ribInside', ribs.inner.chain, ANSWERS.ribs),
      ...both('rib', sections.lowerBout, ['lowerBout', 'ribs.lowerLength', ...ANSWERS.ribs]),
      ...both('rib', sections.cBout, ['waist', 'ribs.waistLength', ...ANSWERS.ribs]),
      ...both('rib', sections.upperBout, ['upperBout', 'ribs.upperLength', ...ANSWERS.ribs]),
      line('purfling', purfling.outer.chain, ANSWERS.purfling),
      line('purfling', purfling.inner.chain, ANSWERS.purfling),
      edge,
    ],
    notes: notesOf(plan),
  };
}

const BLOCK_VALUES = {
  'lower block': ['lowerBlockWidth', 'lowerBlockDepth'],
  'lower corner block': ['lowerCornerBlockAlongWaist', 'lowerCornerBlockAlongBout'],
  'upper corner block': ['upperCornerBlockAlongWaist', 'upperCornerBlockAlongBout'],
  'upper block': ['upperBlockWidth', 'upperBlockDepth'],
} as const;

function notesOf({ outline, ribs, form, blocks }: PlanParts): readonly ShownNote[] {
  const top = outline.bodyLengthMm;
  const block = (name: keyof typeof BLOCK_VALUES, what: ShownNote['what']): readonly ShownNote[] =>
    blocks.parts
      .filter((part) => part.name === name)
      .map((part) => {
        const { x, y } = middleOf(part.outline);
        return { what, at: [x, top - y] as const, sizesMm: [part.acrossMm, part.alongMm] };
      });
  const hole = form.clampHoles
    .filter(({ side }) => side === 'treble')
    .toSorted((a, b) => b.centre.y - a.centre.y)[0];
  const pin = form.pins.toSorted((a, b) => b.centre.y - a.centre.y)[0];
  const lowerPin = form.pins.toSorted((a, b) => a.centre.y - b.centre.y)[0];
  const { waist, lowerBout, lowerCorner } = outline;
  return [
    ...block('upper block', 'upperBlock'),
    ...(hole
      ? [
          {
            what: 'clampHole' as const,
            at: [hole.centre.x, top - hole.centre.y] as const,
            sizesMm: [2 * hole.radiusMm, form.clampHoles.length, form.leastWallMm ?? 0],
          },
        ]
      : []),
    ...(pin && lowerPin
      ? [
          {
            what: 'pin' as const,
            at: [pin.centre.x + pin.radiusMm, top - pin.centre.y] as const,
            sizesMm: [2 * pin.radiusMm, lowerPin.centre.y, pin.centre.y],
          },
        ]
      : []),
    ...block('upper corner block', 'upperCornerBlock'),
    {
      what: 'form',
      at: [waist.widthMm / 2 - ribs.inner.insetMm, top - waist.stationMm],
      sizesMm: [form.thicknessMm],
    },
    {
      what: 'ribEnds',
      at: [lowerCorner.boutTip.x, top - lowerCorner.boutTip.y],
      sizesMm: [ribs.outer.lowerCorner.widthMm, lowerCorner.endWidthMm],
    },
    ...block('lower corner block', 'lowerCornerBlock'),
    {
      what: 'overhang',
      at: [lowerBout.widthMm / 2, top - lowerBout.stationMm],
      sizesMm: [ribs.outer.insetMm, ribs.inner.insetMm - ribs.outer.insetMm],
    },
    ...block('lower block', 'lowerBlock'),
  ];
}

function middleOf({ vertices }: Chain<'body'>): { x: number; y: number } {
  const xs = vertices.map(({ x }) => x);
  const ys = vertices.map(({ y }) => y);
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}
