import { distanceBetween, type Point } from '../base/index.ts';
import {
  boundsOf,
  type Chain,
  chainThrough,
  circleChain,
  lengthOf,
  nearestOn,
  placeAlong,
  subChain,
} from '../curve/index.ts';
import type { PlanParts } from '../instrument/index.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { letteringScale, onDrawing } from './outlineDrawingsMarks.ts';
import { stackedLettering } from './stackedLettering.ts';

/** mm at the usual size: along both sides of the corner, and of card behind them. */
const SIDE_MM = 26;
const BEHIND_MM = 16;

/** mm. A needle goes through, or a sharp knife. */
const PRICK_MM = 0.9;

/** mm before a prick hole at which a scored line stops. */
const CLEAR_MM = 1.2;

/** mm. A slot that leaves less than this before the edge breaks out of card and thin wood. */
const LEAST_WALL_MM = 1.5;

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
  const wood = woodMm(apex, [arriving, leaving]);
  const sting = tip ? stingOpening(apex, tip, [arriving, leaving]) : 'none';
  const isPricked = sting === 'slot' || wood >= LEAST_WALL_MM;
  const clearMm = isPricked ? CLEAR_MM : 0;
  const scored = [lastOf(toApex, shorter, clearMm), firstOf(fromApex, shorter, clearMm)].map(
    (line): DrawnLine => ({ meaning: 'score', chain: onDrawing(line) }),
  );
  const { lengthMm, asideMm } = parts.purfling.corners[which].sting;
  // Where the card is widest: away from the waist.
  const lettered = which === 'lower' ? box.min.y + 2 * scale : box.max.y - BEHIND_MM * scale;
  return {
    name: `corner-template-${which}`,
    title: `Corner template, ${which}`,
    part: 'edge',
    lines: [
      { meaning: 'cut', chain: body },
      ...(isPricked
        ? [
            {
              meaning: 'cut-inside' as const,
              chain:
                tip && sting === 'slot'
                  ? slotChain(apex, tip)
                  : circleChain<'drawing'>({ x: apex.x, y: apex.y }, PRICK_MM / 2, true),
            },
          ]
        : []),
      ...(tip && sting === 'line' ? [stingLine(apex, tip, isPricked ? PRICK_MM / 2 : 0)] : []),
      ...scored,
    ],
    lettering: stackedLettering(['CORNER', `${which}, treble`, parts.name], {
      min: { x: box.min.x + 2 * scale, y: lettered },
      max: { x: box.min.x + BEHIND_MM * scale, y: lettered + (BEHIND_MM - 2) * scale },
    }),
    notes: [
      `Lay it on the edge near the ${which} corners; turn over for the other side. The corner end is ${parts.outline[`${which}Corner`].endWidthMm.toFixed(1)} mm wide. ${isPricked ? 'The hole pricks the mitre, where the outer lines of the purfling meet' : 'Where both scored lines meet is the mitre of the purfling: prick or drill it through there; a hole cut so near to the end would break out'}; ${STING_WORDS[sting]}${sting === 'none' ? '' : ` The point reaches ${lengthMm.toFixed(1)} mm beyond the mitre and bends ${asideMm.toFixed(1)} mm toward the waist.`}`,
      CUTTING_CAUTION,
    ],
    count: 1,
    routes: ['print', 'laser'],
    checks: sizeChecks(box),
  };
}

const STING_WORDS = {
  slot: 'from it a slot runs to the tip of its point, for a knife.',
  line: 'from it a line runs to the tip of its point: a slot would break out there, so prick its end through.',
  none: 'this corner has no room for a point beyond it.',
} as const;

/** Whether the point of the purfling is opened as a slot, scored where a slot would break out, or is not there. */
function stingOpening(
  apex: Point<'body'>,
  tip: Point<'body'>,
  edge: readonly Chain<'body'>[],
): 'slot' | 'line' | 'none' {
  if (distanceBetween(tip, apex) <= PRICK_MM / 2) return 'none';
  return woodMm(tip, edge) >= LEAST_WALL_MM ? 'slot' : 'line';
}

/** What a prick hole at a place leaves before the edge and the corner's end, mm. */
function woodMm(at: Point<'body'>, edge: readonly Chain<'body'>[]): number {
  const end = edge.flatMap(({ vertices }, index) => vertices.at(index === 0 ? -1 : 0) ?? []);
  const lines = [...edge, chainThrough<'body'>(end, false)].filter(({ vertices }) => vertices.length > 1);
  return Math.min(...lines.map((line) => nearestOn(line, at).distanceMm)) - PRICK_MM / 2;
}

/** A slot as wide as a prick hole from one place to another: closed, clockwise. */
function slotChain(from: Point<'body'>, to: Point<'body'>): Chain<'drawing'> {
  const awayMm = distanceBetween(from, to);
  const [ux, uy] = [(to.x - from.x) / awayMm, (to.y - from.y) / awayMm];
  const aside = (at: Point<'body'>, mm: number, bulge: number) => ({
    x: at.x - mm * uy,
    y: at.y + mm * ux,
    bulge,
  });
  const half = PRICK_MM / 2;
  return {
    closed: true,
    vertices: [aside(from, half, 0), aside(to, half, -1), aside(to, -half, 0), aside(from, -half, -1)],
  };
}

/** From the mitre, or from the rim of a hole there, to the tip. */
function stingLine(apex: Point<'body'>, tip: Point<'body'>, holeMm: number): DrawnLine {
  const share = holeMm / distanceBetween(tip, apex);
  const rim = { x: apex.x + share * (tip.x - apex.x), y: apex.y + share * (tip.y - apex.y) };
  return { meaning: 'score', chain: chainThrough<'drawing'>([rim, { x: tip.x, y: tip.y }], false) };
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
