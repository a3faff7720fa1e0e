import { type Finding, type Point, WELD_MM, WRITE_MM } from '../base/index.ts';
import {
  areaOf,
  type Chain,
  containsPoint,
  intersections,
  nearestOn,
  pointAlong,
  segmentLength,
  segments,
  selfCrossings,
} from '../curve/index.ts';
import type { Drawing, Meaning } from '../drawing/index.ts';
import { commonStretches } from './commonStretches.ts';
import { finiteDrawing } from './millimetres.ts';

interface ToolLine {
  readonly meaning: Meaning;
  readonly chain: Chain<'drawing'>;
}

/**
 * What would spoil the piece at a machine: contours left open, lines drawn twice or partly over each other, contours
 * that cross themselves or each other, stretches without length, holes outside the piece, pieces inside pieces, the
 * wrong way round. Empty when the drawing can be cut as it stands. Reference lines and lettering are not looked at.
 *
 * Findings, all contradictions: `preflight.open`, `.zero-length`, `.double`, `.overlap`, `.self-crossing`,
 * `.crossing`, `.hole-outside`, `.nested`, `.direction`, `.not-finite`.
 */
export function preflight(drawing: Drawing): Finding[] {
  const finite = finiteDrawing(drawing);
  if (!finite.ok)
    return finite.faults.map((fault) => ({
      ...fault,
      code: 'preflight.not-finite',
      weight: 'contradiction',
    }));
  const lines = drawing.lines.filter((line) => line.meaning !== 'draw');
  const contours = lines.filter((line) => line.meaning !== 'score');
  const open = contours.filter((line) => !line.chain.closed);
  const closed = contours.filter((line) => line.chain.closed);
  return [
    ...open.map((line) => found(drawing, 'open', 'a contour left open', startOf(line.chain))),
    ...lines.flatMap((line) => zeroLengths(drawing, line.chain)),
    ...contours.flatMap((line) => selfCrossed(drawing, line.chain)),
    ...pairs(lines).flatMap(([a, b]) => meetings(drawing, a, b)),
    ...closed.flatMap((line) => misplaced(drawing, line, closed)),
  ];
}

function zeroLengths(drawing: Drawing, chain: Chain<'drawing'>): Finding[] {
  if (chain.vertices.length < 2)
    return [found(drawing, 'zero-length', 'a line of a single point', startOf(chain))];
  return segments(chain)
    .filter((segment) => segmentLength(segment) < WRITE_MM)
    .map((segment) => found(drawing, 'zero-length', 'a stretch without length', segment.start));
}

function selfCrossed(drawing: Drawing, chain: Chain<'drawing'>): Finding[] {
  const [crossing] = selfCrossings(chain);
  if (crossing === undefined) return [];
  return [found(drawing, 'self-crossing', 'a contour that crosses or touches itself', crossing.point)];
}

function meetings(drawing: Drawing, a: ToolLine, b: ToolLine): Finding[] {
  const stretches = commonStretches(a.chain, b.chain);
  const [stretch] = stretches;
  if (stretch !== undefined) {
    const whole =
      stretches.every((one) => one.wholeOfA) ||
      commonStretches(b.chain, a.chain).every((one) => one.wholeOfA);
    return whole
      ? [found(drawing, 'double', 'a line drawn twice', stretch.at)]
      : [found(drawing, 'overlap', 'two lines that run over each other', stretch.at)];
  }
  if (a.meaning === 'score' || b.meaning === 'score') return [];
  const [crossing] = intersections(a.chain, b.chain);
  if (crossing === undefined) return [];
  return [found(drawing, 'crossing', 'two contours that cross or touch', crossing.point)];
}

function misplaced(drawing: Drawing, line: ToolLine, closed: readonly ToolLine[]): Finding[] {
  const at = startOf(line.chain);
  // The start may be a touching point; a point further on tells inside from outside as well.
  const probe = pointAlong(line.chain, WELD_MM * 1000);
  const around = closed.filter(
    (other) =>
      other !== line &&
      other.meaning === 'cut' &&
      containsPoint(other.chain, probe) &&
      clear(other.chain, probe),
  );
  const findings: Finding[] = [];
  const hole = line.meaning === 'cut-inside';
  if (hole && around.length === 0)
    findings.push(found(drawing, 'hole-outside', 'a hole outside the piece', at));
  if (!hole && around.length > 0) findings.push(found(drawing, 'nested', 'an outer edge inside another', at));
  const anticlockwise = areaOf(line.chain) > 0;
  if (anticlockwise === hole)
    findings.push(
      found(
        drawing,
        'direction',
        hole ? 'a hole that runs anticlockwise' : 'an outer edge that runs clockwise',
        at,
      ),
    );
  return findings;
}

function clear(chain: Chain<'drawing'>, at: Point<'drawing'>): boolean {
  return nearestOn(chain, at).distanceMm > WELD_MM;
}

function startOf(chain: Chain<'drawing'>): Point<'drawing'> {
  const first = chain.vertices[0];
  return { x: first?.x ?? 0, y: first?.y ?? 0 };
}

function pairs<T>(items: readonly T[]): (readonly [T, T])[] {
  return items.flatMap((a, index) => items.slice(index + 1).map((b) => [a, b] as const));
}

function found(drawing: Drawing, code: string, what: string, at: Point<'drawing'>): Finding {
  return {
    code: `preflight.${code}`,
    weight: 'contradiction',
    at: `${drawing.title}, at ${at.x.toFixed(2)}, ${at.y.toFixed(2)} mm`,
    found: what,
    need: 'closed, simple contours drawn once, holes inside the piece',
    remedy: 'change the values this piece is drawn from; do not cut it as it stands',
  };
}
