import { bulgeOfSweep } from '../curve/index.ts';
import type { PlateArch } from '../instrument/index.ts';
import { EDGE_TOOLS_CAUTION } from './archGaugeNotes.ts';
import type { Drawing } from './drawing.ts';
import { stackedLettering } from './stackedLettering.ts';

/** mm to either side: what a maker keeps edge and channel to. Common practice. */
const WITHIN_MM = 0.1;

/** mm at least: a card in the hand. */
const CARD = { width: 62, height: 36, slot: 9, wall: 8, tongue: 3, gap: 3 } as const;

/**
 * Go and no-go for the edge of a plate: above two slots for its thickness, below two tongues for the depth of the channel under
 * the crest. Drawing frame: the feet of the tongues lie on y = 0.
 */
export function edgeStepDrawing({ plate, numbers }: PlateArch, instrumentName: string): Drawing {
  const { edgeHeightMm, scoopDepthMm, crestInsetMm, channelAtBoutsMm } = numbers;
  const reachMm = channelAtBoutsMm - crestInsetMm;
  const width = Math.max(CARD.width, 2 * (2 * CARD.tongue + reachMm + CARD.wall));
  const [go, noGo] = [edgeHeightMm + WITHIN_MM, edgeHeightMm - WITHIN_MM];
  const [shallow, deep] = [scoopDepthMm - WITHIN_MM, scoopDepthMm + WITHIN_MM];
  const top = CARD.height;
  const slot = (left: number, mm: number) => [
    { x: left + mm, y: top, bulge: 0 },
    { x: left + mm, y: top - CARD.slot, bulge: 0 },
    { x: left, y: top - CARD.slot, bulge: 0 },
    { x: left, y: top, bulge: 0 },
  ];
  const radius = CARD.tongue / 2;
  /** From its left side to its right side, round below so that it finds the lowest place. */
  const tongue = (left: number, mm: number) =>
    mm > radius
      ? [
          { x: left, y: 0, bulge: 0 },
          { x: left, y: radius - mm, bulge: bulgeOfSweep(Math.PI) },
          { x: left + CARD.tongue, y: radius - mm, bulge: 0 },
        ]
      : [{ x: left, y: 0, bulge: mm / radius }];
  const vertices = [
    ...tongue(0, shallow),
    { x: CARD.tongue, y: 0, bulge: 0 },
    { x: width - CARD.tongue, y: 0, bulge: 0 },
    ...tongue(width - CARD.tongue, deep),
    { x: width, y: 0, bulge: 0 },
    { x: width, y: top, bulge: 0 },
    ...slot(width - CARD.wall - noGo, noGo),
    ...slot(CARD.wall, go),
    { x: 0, y: top, bulge: 0 },
  ];
  return {
    name: `edge-steps-${plate}`,
    title: `Edge thickness and channel depth, ${plate}`,
    part: 'edge',
    lines: [{ meaning: 'cut', chain: { closed: true, vertices: withoutRepeats(vertices) } }],
    lettering: [
      ...stackedLettering(
        [
          `${plate.toUpperCase()} · EDGE`,
          instrumentName,
          `slots: goes ${mm(go)}, does not ${mm(noGo)}`,
          `tongues: goes ${mm(shallow)}, does not ${mm(deep)}`,
        ],
        {
          min: { x: CARD.gap, y: CARD.gap },
          max: { x: width - CARD.gap, y: top - CARD.slot - CARD.gap },
        },
      ),
    ],
    notes: [
      `Thickness of the edge, at the crest: ${mm(edgeHeightMm)} within ${WITHIN_MM} mm. The left slot (${mm(go)}) goes over it, the right one (${mm(noGo)}) does not.`,
      `Depth of the finished channel: the straight foot rests on the crest, a tongue stands in the channel ${mm(reachMm)} inside it. With the left tongue (${mm(shallow)}) the foot comes down on the crest, with the right one (${mm(deep)}) it does not. At the corners, where many makers leave the edge a little thicker, measure with a calliper.`,
      EDGE_TOOLS_CAUTION,
    ],
    count: 1,
    routes: ['print', 'laser'],
    checks: [
      { name: 'width', valueMm: width },
      { name: 'height', valueMm: top + deep },
    ],
  };
}

type At = { readonly x: number; readonly y: number; readonly bulge: number };

/** Neighbours at one place become one, the later one's bulge kept. */
function withoutRepeats(vertices: readonly At[]): readonly At[] {
  return vertices.filter((at, index) => {
    const next = vertices[(index + 1) % vertices.length];
    return !next || next.x !== at.x || next.y !== at.y;
  });
}

function mm(value: number): string {
  return `${Number(value.toFixed(2))}`;
}
