import { bulgeOfSweep, circleChain } from '../curve/index.ts';
import type { PlanParts } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { stackedLettering } from './stackedLettering.ts';

/** mm. A card in the hand, the same for every size of instrument. */
const CARD = { width: 46, height: 36, step: 18 } as const;
const MARKER = { width: 56, height: 15 } as const;

/** mm. A scriber or the lead of a mechanical pencil goes through. */
const POINT_MM = 1;

/** mm. Less wood than this before a hole breaks away. */
const LEAST_WALL_MM = 1.5;

const GAP_MM = 3;

/**
 * What the overhang is marked and checked by: a step that touches rib and edge at once, and a card with holes for a point, one
 * end for the bouts and one for the corners. The card with holes is left out where the overhang leaves no wood before them.
 */
export function overhangGaugeDrawings(
  parts: PlanParts,
  overhangs: { readonly boutsMm: number; readonly cornersMm: number },
): readonly Drawing[] {
  const marker = Math.min(overhangs.boutsMm, overhangs.cornersMm) - POINT_MM / 2 >= LEAST_WALL_MM;
  return [stepGauge(parts, overhangs), ...(marker ? [markerCard(parts, overhangs)] : [])];
}

type Overhangs = { readonly boutsMm: number; readonly cornersMm: number };

function stepGauge({ name }: PlanParts, { boutsMm, cornersMm }: Overhangs): Drawing {
  const corners = [
    { x: 0, y: 0 },
    { x: CARD.width, y: 0 },
    { x: CARD.width, y: CARD.step },
    { x: CARD.width - cornersMm, y: CARD.step },
    { x: CARD.width - cornersMm, y: CARD.height },
    { x: boutsMm, y: CARD.height },
    { x: boutsMm, y: CARD.step },
    { x: 0, y: CARD.step },
  ];
  return {
    name: 'overhang-gauge',
    title: 'Overhang gauge',
    part: 'edge',
    lines: [
      { meaning: 'cut', chain: { closed: true, vertices: corners.map((at) => ({ ...at, bulge: 0 })) } },
    ],
    lettering: stackedLettering(
      ['OVERHANG', name, `left: bouts ${mm(boutsMm)}`, `right: corners ${mm(cornersMm)}`],
      {
        min: { x: boutsMm + GAP_MM, y: GAP_MM },
        max: { x: CARD.width - cornersMm - GAP_MM, y: CARD.height - GAP_MM },
      },
    ),
    notes: [
      `Held upright against the closed body, or against the ribs laid on a plate: the lower side on the rib, the step over the edge. Both touch when the plate stands out ${mm(boutsMm)} along the bouts (left) and ${mm(cornersMm)} at the end of a corner (right).`,
      CUTTING_CAUTION,
    ],
    count: 1,
    routes: ['print', 'laser'],
    checks: [
      { name: 'width', valueMm: CARD.width },
      { name: 'height', valueMm: CARD.height },
    ],
  };
}

function markerCard({ name }: PlanParts, { boutsMm, cornersMm }: Overhangs): Drawing {
  const radius = MARKER.height / 2;
  const half = bulgeOfSweep(Math.PI);
  return {
    name: 'overhang-marker',
    title: 'Overhang marker',
    part: 'edge',
    lines: [
      {
        meaning: 'cut',
        chain: {
          closed: true,
          vertices: [
            { x: radius, y: 0, bulge: 0 },
            { x: MARKER.width - radius, y: 0, bulge: half },
            { x: MARKER.width - radius, y: MARKER.height, bulge: 0 },
            { x: radius, y: MARKER.height, bulge: half },
          ],
        },
      },
      ...[boutsMm, MARKER.width - cornersMm].map((x) => ({
        meaning: 'cut-inside' as const,
        chain: circleChain<'drawing'>({ x, y: radius }, POINT_MM / 2, true),
      })),
    ],
    lettering: stackedLettering(
      ['OVERHANG', name, `left: bouts ${mm(boutsMm)}`, `right: corners ${mm(cornersMm)}`],
      {
        min: { x: radius, y: 2 },
        max: { x: MARKER.width - radius, y: MARKER.height - 2 },
      },
      2.2,
    ),
    notes: [
      `Lies on the plate with its round end against the rib, square to it; a scriber or the lead of a mechanical pencil through the hole draws the outline ${mm(boutsMm)} outside the rib along the bouts. The other end is for the end of the corners, ${mm(cornersMm)}; beside a corner, where the plate stands out more, the corner templates draw the edge. Cut it from thin sheet, card or metal of about 1 mm.`,
      CUTTING_CAUTION,
    ],
    count: 1,
    routes: ['print', 'laser'],
    checks: [
      { name: 'width', valueMm: MARKER.width },
      { name: 'height', valueMm: MARKER.height },
    ],
  };
}

function mm(value: number): string {
  return `${Number(value.toFixed(2))} mm`;
}
