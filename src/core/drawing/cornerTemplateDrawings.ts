import { boundsOf, type Chain, circleChain, lengthOf, placeAlong, subChain } from '../curve/index.ts';
import type { PlanParts } from '../instrument/index.ts';
import { gaugeBlock } from './archGaugeLettering.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { letteringScale, onDrawing } from './outlineDrawingsMarks.ts';

/** mm at the usual size: along both sides of the corner, and of card behind them. */
const SIDE_MM = 26;
const BEHIND_MM = 16;

/** mm. A needle goes through, or a sharp pencil. */
const PRICK_MM = 1.2;

/** mm before a prick hole at which a scored line stops. */
const CLEAR_MM = 1.2;

/** Templates of the two treble corners, turned over for the bass ones: the corner itself, the mitre of its purfling, the tip of its point. */
export function cornerTemplateDrawings(parts: PlanParts): readonly Drawing[] {
  return [template(parts, 'lower'), template(parts, 'upper')];
}

function template(parts: PlanParts, which: 'lower' | 'upper'): Drawing {
  const scale = letteringScale(parts.outline.bodyLengthMm);
  const { half } = parts.outline;
  const { sections } = parts.purfling.outer;
  const [arriving, leaving] = which === 'lower' ? [half.lowerBout, half.cBout] : [half.cBout, half.upperBout];
  const [toApex, fromApex] =
    which === 'lower' ? [sections.lowerBout, sections.cBout] : [sections.cBout, sections.upperBout];
  const { apex, shape } = parts.purfling.corners[which];
  const tip = shape?.vertices[1];
  const body = card(lastOf(arriving, SIDE_MM * scale), firstOf(leaving, SIDE_MM * scale), scale);
  const box = boundsOf(body);
  const shorter = SIDE_MM * scale * 0.6;
  const scored = [lastOf(toApex, shorter, CLEAR_MM), firstOf(fromApex, shorter, CLEAR_MM)].map(
    (line): DrawnLine => ({ meaning: 'score', chain: onDrawing(line) }),
  );
  const pricks = [apex, ...(tip && Math.hypot(tip.x - apex.x, tip.y - apex.y) > PRICK_MM ? [tip] : [])];
  const { lengthMm, asideMm } = parts.purfling.corners[which].sting;
  return {
    name: `corner-template-${which}`,
    title: `Corner template, ${which}`,
    part: 'edge',
    lines: [
      { meaning: 'cut', chain: body },
      ...pricks.map(
        ({ x, y }): DrawnLine => ({
          meaning: 'cut-inside',
          chain: circleChain<'drawing'>({ x, y }, PRICK_MM / 2, true),
        }),
      ),
      ...scored,
    ],
    lettering: gaugeBlock(
      [which.toUpperCase(), 'corner'],
      { x: box.min.x + 2 * scale, y: box.min.y + BEHIND_MM * scale },
      'start',
      BEHIND_MM * scale,
    ),
    notes: [
      `Lay it on the edge near the ${which} corners; turn over for the other side. The hole at the mitre pricks where the outer lines of the purfling meet${pricks.length > 1 ? ', the other the tip of its point' : ''}; the point reaches ${lengthMm.toFixed(1)} mm beyond the mitre and bends ${asideMm.toFixed(1)} mm toward the waist.`,
      CUTTING_CAUTION,
    ],
    count: 1,
    routes: ['print', 'laser'],
    checks: [
      { name: 'width', valueMm: box.max.x - box.min.x },
      { name: 'height', valueMm: box.max.y - box.min.y },
    ],
  };
}

/** The corner between two stretches of edge, with a square of card behind it toward the middle of the plate. */
function card(arriving: Chain<'body'>, leaving: Chain<'body'>, scale: number): Chain<'drawing'> {
  const edge = [...arriving.vertices, ...leaving.vertices];
  const [first, last] = [edge[0], edge.at(-1)];
  const left = Math.min(first?.x ?? 0, last?.x ?? 0) - BEHIND_MM * scale;
  return {
    closed: true,
    vertices: [
      ...edge.map(({ x, y, bulge }) => ({ x, y, bulge })),
      { x: left, y: last?.y ?? 0, bulge: 0 },
      { x: left, y: first?.y ?? 0, bulge: 0 },
    ],
  };
}

function lastOf(line: Chain<'body'>, lengthMm: number, shortOfMm = 0): Chain<'body'> {
  const whole = lengthOf(line);
  return subChain(line, placeAlong(line, Math.max(0, whole - lengthMm)), placeAlong(line, whole - shortOfMm));
}

function firstOf(line: Chain<'body'>, lengthMm: number, shortOfMm = 0): Chain<'body'> {
  return subChain(line, placeAlong(line, shortOfMm), placeAlong(line, Math.min(lengthOf(line), lengthMm)));
}
