import { boundsOf, type Chain, chainThrough, closeChain, joinChains } from '../curve/index.ts';
import type { PlanParts, PlateArch } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { drawnLine, letteringScale, onDrawing } from './outlineDrawingsMarks.ts';

/** What the plan of purfling and channel tells beside its lines, mm. */
export interface PurflingPlan {
  readonly toEdgeMm: number;
  readonly widthMm: number;
  readonly depthMm: number;
}

const CAUTION =
  'Purfling markers, knives and chisels cut toward the hand that slips: clamp the plate, keep both hands behind the edge, cut the groove in several light passes, and wear eye protection; for a router follow the manual of the machine.';

/**
 * Purfling and channel as half a plan at true size: from the edge inwards both lines of the purfling and its middle, the
 * mitres with their points, and the lowest line of the channel. Drawing frame: the treble half of the body frame.
 */
export function purflingPlanDrawing(parts: PlanParts, arch: PlateArch, sizes: PurflingPlan): Drawing {
  const edge = onDrawing(closeChain(joinChains(...arch.edge)));
  const box = boundsOf(edge);
  const { purfling } = parts;
  return {
    name: 'purfling-plan',
    title: 'Purfling and channel, plan',
    part: 'edge',
    lines: [
      drawnLine('draw', edge),
      drawnLine('score', onDrawing(purfling.outer.half)),
      { ...drawnLine('draw', onDrawing(purfling.centre.half)), centreLine: true },
      drawnLine('score', onDrawing(purfling.inner.half)),
      drawnLine('draw', onDrawing(chainThrough(arch.channel.line.points, false))),
      ...(['lower', 'upper'] as const).flatMap((which) => cornerLines(parts, which)),
    ],
    lettering: captionBelow(
      [
        'PURFLING AND CHANNEL',
        parts.name,
        'straight edge on the centre line; from the edge inwards: the purfling, its middle, the lowest line of the channel',
        `purfling ${mm(sizes.toEdgeMm)} from the edge, ${mm(sizes.widthMm)} wide, groove ${mm(sizes.depthMm)} deep`,
      ],
      { x: 0, y: box.min.y },
      { scale: letteringScale(parts.outline.bodyLengthMm), mostMm: box.max.x },
    ),
    notes: notes(parts, arch, sizes),
    count: 1,
    routes: ['print'],
    checks: sizeChecks(box),
  };
}

/** The joint of the strips in a mitre, and the sides of the point that runs on from it. */
function cornerLines({ purfling }: PlanParts, which: 'lower' | 'upper'): readonly DrawnLine[] {
  const { apex, shape } = purfling.corners[which];
  const inner = purfling.inner[`${which}Corner`].from;
  const sides: Chain<'body'>[] = shape ? [{ closed: false, vertices: shape.vertices }] : [];
  return [chainThrough([apex, inner], false), ...sides].map((line) => drawnLine('score', onDrawing(line)));
}

function notes(
  { purfling }: PlanParts,
  { numbers }: PlateArch,
  { depthMm }: PurflingPlan,
): readonly string[] {
  const { lower, upper } = purfling.corners;
  const points = [lower, upper].map(({ sting }) => sting.lengthMm.toFixed(1));
  return [
    `The mitre lies ${purfling.outer.lowerCorner.depthMm.toFixed(1)} mm inside the lower and ${purfling.outer.upperCorner.depthMm.toFixed(1)} mm inside the upper corner ends. The outer strips run on beyond it as a point, ${points[0]} and ${points[1]} mm long, that bends toward the waist: cut it with a knife, no wider than the outer strips together. From memory; give stingLength and stingAside for another.`,
    `Lowest line of the channel: ${mm(numbers.channelAtBoutsMm)} from the edge along the bouts and ends, ${mm(numbers.channelAtWaistMm)} at the waist, ${mm(numbers.channelAtCornersMm)} toward the corners. The groove goes ${mm(depthMm)} down from the flat edge, before the channel is scooped.`,
    'Turn over for the other side; one plan serves both plates.',
    CAUTION,
  ];
}

function mm(value: number): string {
  return `${Number(value.toFixed(2))} mm`;
}
