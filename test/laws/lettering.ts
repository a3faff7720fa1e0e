/** What lettering on a piece must keep, whatever drew it: faults in words, none when kept. */
import type { Box } from '../../src/core/base/index.ts';
import {
  areaOf,
  boundsOf,
  type Chain,
  containsPoint,
  intersections,
  nearestOn,
  sampleChain,
} from '../../src/core/curve/index.ts';
import { type Drawing, type Lettering, letteringStrokes } from '../../src/core/drawing/index.ts';

/** mm. A kerf and a burnt edge take less than this from lettering; chosen by us. */
const CLEAR_MM = 0.4;
const FINE_MM = 0.02;
/** mm. What a laser can burn and an eye can read. */
const LEAST_HEIGHT_MM = 1.2;

type Strokes = readonly Chain<'drawing'>[];

/**
 * Every stroke stands on the piece, clear of its edge and holes; no lettering meets another, nor a line that is scored or
 * shown. A caption beneath a piece that is only printed may stand wholly outside it.
 */
export function letteringFaults(drawing: Drawing): string[] {
  const { edge, holes } = pieceOf(drawing);
  const onlyPrinted = drawing.routes.every((route) => route === 'print');
  const lettered = drawing.lettering.map((one) => ({ one, strokes: boxed(letteringStrokes(one)) }));
  const faults: string[] = [];
  const fault = (one: Lettering, what: string): void => {
    faults.push(`${drawing.name}: "${one.text}" ${what}`);
  };
  const inner = drawing.lines
    .map((line) => line.chain)
    .filter((chain) => chain !== edge && !holes.includes(chain))
    .map((chain) => boxed([chain]));
  for (const [index, { one, strokes }] of lettered.entries()) {
    if (one.heightMm < LEAST_HEIGHT_MM) fault(one, `is ${one.heightMm.toFixed(2)} mm high`);
    const points = strokes.chains.flatMap((stroke) => sampleChain(stroke, FINE_MM));
    const outside = points.filter((at) => !containsPoint(edge, at)).length;
    if (outside > 0 && !(onlyPrinted && outside === points.length)) fault(one, 'leaves the piece');
    if (holes.some((hole) => points.some((at) => containsPoint(hole, at)))) fault(one, 'lies over a hole');
    const near = Math.min(
      ...[edge, ...holes].flatMap((line) => points.map((at) => nearestOn(line, at).distanceMm)),
    );
    if (near < CLEAR_MM) fault(one, `comes within ${near.toFixed(2)} mm of an edge`);
    if (inner.some((line) => meets(strokes, line))) fault(one, 'lies over a line');
    for (const other of lettered.slice(index + 1))
      if (meets(strokes, other.strokes)) fault(one, `runs into "${other.one.text}"`);
  }
  return faults;
}

/** The outer edge and the holes; of a drawing where nothing is cut, the largest closed line and the others. */
function pieceOf(drawing: Drawing): { edge: Chain<'drawing'>; holes: Strokes } {
  const of = (meaning: string) =>
    drawing.lines.filter((line) => line.meaning === meaning).map((line) => line.chain);
  const [edge] = of('cut');
  if (edge) return { edge, holes: of('cut-inside') };
  const closed = of('draw').filter((chain) => chain.closed);
  const [largest, ...others] = closed.sort((a, b) => Math.abs(areaOf(b)) - Math.abs(areaOf(a)));
  if (!largest) throw new Error(`${drawing.name} has no edge`);
  return { edge: largest, holes: others };
}

/** Chains with the box around them all, so that what lies far apart is told at once. */
interface Boxed {
  readonly chains: Strokes;
  readonly boxes: readonly Box<'drawing'>[];
  readonly around: Box<'drawing'>;
}

function boxed(chains: Strokes): Boxed {
  const boxes = chains.map((chain) => boundsOf(chain));
  const most = (pick: (box: Box<'drawing'>) => number): number => Math.max(...boxes.map(pick));
  const least = (pick: (box: Box<'drawing'>) => number): number => Math.min(...boxes.map(pick));
  const around = {
    min: { x: least(({ min }) => min.x), y: least(({ min }) => min.y) },
    max: { x: most(({ max }) => max.x), y: most(({ max }) => max.y) },
  };
  return { chains, boxes, around };
}

function meets(ours: Boxed, theirs: Boxed): boolean {
  if (apart(ours.around, theirs.around)) return false;
  return ours.chains.some((a, index) =>
    theirs.chains.some((b, other) => {
      const [box, otherBox] = [ours.boxes[index], theirs.boxes[other]];
      return box && otherBox && !apart(box, otherBox) && intersections(a, b).length > 0;
    }),
  );
}

function apart(one: Box<'drawing'>, other: Box<'drawing'>): boolean {
  return (
    one.max.x < other.min.x || other.max.x < one.min.x || one.max.y < other.min.y || other.max.y < one.min.y
  );
}
