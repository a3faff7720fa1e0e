import {
  accept,
  type Checked,
  cos,
  distanceBetween,
  type Fault,
  type Point,
  point,
  refuse,
} from '../base/index.ts';
import { type Chain, nearestOnSpans, offsetChain, sampleChain, spansOf } from '../curve/index.ts';

/** A closed row of places. */
export type Ring = readonly Point<'body'>[];

/** rad of the rounded edge between two rings of places. */
const ROUND_STEP_RAD = Math.PI / 14;

/** mm from the crest in to the last rings, where the scoop falls away steepest, most of all in the corners. */
const INSIDE_CREST_MM = [0.5, 1, 1.5] as const;

/** A line inside the edge, and how far round from the upright wall it lies: 0 on the wall, a quarter turn on the level. */
export interface EdgeLine {
  readonly line: Chain<'body'>;
  readonly turnRad: number;
}

/** Lines at the distances where the round of the edge is cut, from the edge to just inside its crest. */
export function edgeLines(outline: Chain<'body'>, crestMm: number): Checked<readonly EdgeLine[]> {
  const inside = crestMm > 0 ? INSIDE_CREST_MM.map((insideMm) => crestMm + insideMm) : [];
  const lines = linesAt(outline, [
    ...roundInsets(crestMm),
    ...inside.map((mm) => ({ mm, turnRad: Math.PI / 2 })),
  ]);
  return lines ? accept(lines) : refuse(tooNarrow('edgeCrestInset', `a crest ${crestMm} mm inside its edge`));
}

/** Lines at the distances where the round below the edge is cut, from the edge in to the gluing face. */
export function underLines(outline: Chain<'body'>, radiusMm: number): Checked<readonly EdgeLine[]> {
  const lines = linesAt(outline, roundInsets(radiusMm));
  return lines
    ? accept(lines)
    : refuse(tooNarrow('edgeUnderRounding', `an edge rounded by ${radiusMm} mm below`));
}

function roundInsets(radiusMm: number): readonly { readonly mm: number; readonly turnRad: number }[] {
  const steps = radiusMm > 0 ? Math.ceil(Math.PI / 2 / ROUND_STEP_RAD) : 0;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const turnRad = (step * Math.PI) / 2 / Math.max(1, steps);
    return { mm: radiusMm * (1 - cos(turnRad)), turnRad };
  });
}

function linesAt(outline: Chain<'body'>, insets: ReturnType<typeof roundInsets>): readonly EdgeLine[] | null {
  const lines: EdgeLine[] = [];
  for (const { mm, turnRad } of insets) {
    const [line, second] = mm === 0 ? [outline] : offsetChain(outline, -mm, { join: 'mitre' });
    if (!line || second) return null;
    lines.push({ line, turnRad });
  }
  return lines;
}

function tooNarrow(at: string, forWhat: string): Fault {
  return {
    code: 'solid.edge',
    at,
    found: `an outline that is too narrow for ${forWhat}`,
    need: 'one line inside the edge all round',
    remedy:
      at === 'edgeCrestInset'
        ? 'move the crest nearer to the edge, or widen the corners'
        : 'round the edge less below, or widen the corners',
  };
}

/** Points along a closed chain as {@link along} has them, from its lowest point on. */
export function spaced(chain: Chain<'body'>, chordMm: number, stepMm: number): Ring {
  const dense = along(chain, chordMm, stepMm);
  const lowest = dense.reduce(
    (best, at, index) => (at.y < (dense[best] as Point<'body'>).y ? index : best),
    0,
  );
  return [...dense.slice(lowest), ...dense.slice(0, lowest)];
}

/** Points along a chain, its vertices among them, whose joining lines keep to a chord error and are no longer than a step. */
export function along(chain: Chain<'body'>, chordMm: number, stepMm: number): Ring {
  const spans = spansOf(chain);
  const points = sampleChain(chain, chordMm);
  return points.flatMap((from, index) => {
    const to = points[index + 1] ?? (chain.closed ? points[0] : undefined);
    if (to === undefined) return [from];
    const count = Math.max(1, Math.ceil(distanceBetween(from, to) / stepMm));
    return Array.from({ length: count }, (_, step) => {
      const between = point<'body'>(
        from.x + ((to.x - from.x) * step) / count,
        from.y + ((to.y - from.y) * step) / count,
      );
      return step === 0 ? from : nearestOnSpans(spans, between).point;
    });
  });
}
