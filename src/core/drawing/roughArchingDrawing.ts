import { sin } from '../base/index.ts';
import {
  boundsOf,
  type Chain,
  closeChain,
  containsPoint,
  joinChains,
  mirrorChain,
  nearestOn,
  placeChain,
  reverseChain,
  sampleChain,
} from '../curve/index.ts';
import type { PlateArch, RoughNumbers, Terrace } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { letteringStrokes } from './lettering.ts';
import { drawnLine, letteringScale, onDrawing } from './outlineDrawingsMarks.ts';
import { ROUGHING_CAUTION } from './roughingCaution.ts';

/** mm at the usual size: height of the figures, and of the smallest that can be read on the wood. */
const FIGURE_MM = 2.6;
const LEAST_FIGURE_MM = 1.8;
const SHRINK_MM = 0.2;

/** mm from the straight edge to the figures, and free around them. */
const BESIDE_CENTRE_MM = 2.5;
const CLEAR_MM = 0.8;

/** mm. Strokes are followed this finely. */
const FINE_MM = 0.1;

/**
 * The terraces of a plate as half a plan at true size: its straight edge is laid on the centre joint, the lines are pricked
 * through, and it is turned over for the other side. Drawing frame: the outside, treble half of the body frame.
 */
export function roughArchingDrawing(
  arch: PlateArch,
  rough: RoughNumbers,
  steps: readonly Terrace[],
  instrumentName: string,
): Drawing {
  const edge = onDrawing(closeChain(joinChains(...arch.edge)));
  const box = boundsOf(edge);
  const lines = steps.map(({ half }) => onDrawing(half));
  const upsideDown = lines.map((line) =>
    reverseChain(mirrorChain(placeChain<'drawing'>(line, { turnRad: Math.PI, shift: [0, 0] }))),
  );
  const scale = letteringScale(arch.bodyLengthMm);
  return {
    name: `rough-arching-plan-${arch.plate}`,
    title: `Rough arching, ${arch.plate}, terraces`,
    part: 'roughing',
    lines: [drawnLine('draw', edge), ...lines.map((line) => drawnLine('draw', line))],
    lettering: [
      ...steps.flatMap((step, index) => figures(step, lines, index, scale, [0, Math.PI / 2])),
      // Once more toward the neck, so that every sheet of a tiled plan tells its lines apart.
      ...steps.flatMap((step, index) => figures(step, upsideDown, index, scale, [0]).map(turnedBack)),
      ...captionBelow(
        [
          `ROUGH ARCHING · ${arch.plate.toUpperCase()}`,
          instrumentName,
          'straight edge on the centre joint, outside up',
          `at each line: wood left / cut down from a board of ${mm(rough.boardMm)}`,
        ],
        { x: 0, y: box.min.y },
        { scale, mostMm: box.max.x },
      ),
    ],
    notes: notes(rough, steps),
    count: 1,
    routes: ['print'],
    checks: sizeChecks(box),
  };
}

/** What is left and what comes off outside a line, written just inside it at the lower end, where it clears all lines. */
function figures(
  { levelMm, depthMm }: Terrace,
  lines: readonly Chain<'drawing'>[],
  index: number,
  scale: number,
  turnsRad: readonly number[],
): readonly Lettering[] {
  const [own, above] = [lines[index], lines[index + 1]].map((line) => line && lowerEndOf(line));
  const start = own?.line.vertices[0];
  if (!own || !start) return [];
  const roomMm = (above?.line.vertices[0]?.y ?? (own.topMm + start.y) / 2) - start.y;
  const text = `${levelMm.toFixed(1)} / ${depthMm.toFixed(1)}`;
  // A narrow crown holds them only along the centre line.
  for (const turnRad of turnsRad)
    for (let heightMm = FIGURE_MM * scale; heightMm >= LEAST_FIGURE_MM * scale; heightMm -= SHRINK_MM)
      for (let up = CLEAR_MM; up < roomMm; up += CLEAR_MM) {
        const x = BESIDE_CENTRE_MM + heightMm * sin(turnRad);
        const written: Lettering = { text, at: { x, y: start.y + up }, heightMm, turnRad, anchor: 'start' };
        if (liesBetween(written, own, above)) return [written];
      }
  return [];
}

/** Level lettering found on lines that were laid upside down, as it stands on them upright. */
function turnedBack(written: Lettering): Lettering {
  const { x, y } = written.at;
  return { ...written, at: { x, y: -y - written.heightMm } };
}

/** The stretch of a terrace line that figures can come near, and all that lies inside it. */
interface LowerEnd {
  readonly line: Chain<'drawing'>;
  readonly inside: Chain<'drawing'>;
  readonly topMm: number;
}

/** mm from the centre line as far as figures can reach. */
const FIGURES_REACH_MM = 60;

function lowerEndOf({ vertices }: Chain<'drawing'>): LowerEnd {
  const beyond = vertices.findIndex(({ x }) => x > FIGURES_REACH_MM);
  const near = beyond < 0 ? vertices : vertices.slice(0, beyond + 1);
  const topMm = Math.max(...vertices.map(({ y }) => y));
  const end = near.at(-1)?.x ?? 0;
  const over = [end, 0].map((x) => ({ x, y: topMm + CLEAR_MM, bulge: 0 }));
  return {
    line: { closed: false, vertices: near },
    inside: { closed: true, vertices: [...near, ...(end > 0 ? over : [])] },
    topMm,
  };
}

/** Whether lettering stands inside one line and outside the next, clear of both. */
function liesBetween(written: Lettering, own: LowerEnd, above: LowerEnd | undefined): boolean {
  const places = letteringStrokes(written).flatMap((stroke) => sampleChain(stroke, FINE_MM));
  const clear = ({ line, inside }: LowerEnd, within: boolean): boolean =>
    places.every((at) => containsPoint(inside, at) === within && nearestOn(line, at).distanceMm > CLEAR_MM);
  return clear(own, true) && (above === undefined || clear(above, false));
}

function notes(rough: RoughNumbers, steps: readonly Terrace[]): readonly string[] {
  const levels = steps.map(({ levelMm, depthMm }) => `${mm(levelMm)} (${mm(depthMm)} down)`).join(', ');
  return [
    `Outside each line the wood comes down to its level, the lowest last: ${levels}. The flat edge keeps the first.`,
    `Everywhere ${mm(rough.allowanceMm)} and more is left over the arch, edge included; gouge and planes take it down to the gauges. Levels count from the gluing face, depths from the upper face of a board planed level at ${mm(rough.boardMm)}.`,
    'Lay the straight edge on the centre joint, prick the lines through, turn over for the other side. Leave the outline with its margin until the arch is roughed out.',
    ROUGHING_CAUTION,
  ];
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
