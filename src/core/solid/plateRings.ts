import { accept, type Checked, type Point, point, refuse } from '../base/index.ts';
import { type Chain, nearestOnSpans, offsetChain, sampleChain, spansOf } from '../curve/index.ts';

/** A closed row of places. */
export type Ring = readonly Point<'body'>[];

/** rad of the rounded edge between two rings of places. */
const ROUND_STEP_RAD = Math.PI / 14;

/** mm from the crest in to the last rings, where the scoop falls away steepest, most of all in the corners. */
const INSIDE_CREST_MM = [0.5, 1, 1.5] as const;

/** Lines at the distances where the round of the edge is cut, from the edge to just inside its crest. */
export function edgeLines(outline: Chain<'body'>, crestMm: number): Checked<readonly Chain<'body'>[]> {
  const steps = crestMm > 0 ? Math.ceil(Math.PI / 2 / ROUND_STEP_RAD) : 0;
  const lines: Chain<'body'>[] = [];
  const insets = Array.from(
    { length: steps + 1 },
    (_, step) => crestMm * (1 - Math.cos((step * Math.PI) / 2 / Math.max(1, steps))),
  );
  if (steps > 0) insets.push(...INSIDE_CREST_MM.map((insideMm) => crestMm + insideMm));
  for (const insetMm of insets) {
    const [line, second] = insetMm === 0 ? [outline] : offsetChain(outline, -insetMm, { join: 'mitre' });
    if (!line || second)
      return refuse({
        code: 'solid.edge',
        at: 'edgeCrestInset',
        found: `an outline that is too narrow for a crest ${crestMm} mm inside its edge`,
        need: 'one line inside the edge all round',
        remedy: 'move the crest nearer to the edge, or widen the corners',
      });
    lines.push(line);
  }
  return accept(lines);
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
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / stepMm));
    return Array.from({ length: count }, (_, step) => {
      const between = point<'body'>(
        from.x + ((to.x - from.x) * step) / count,
        from.y + ((to.y - from.y) * step) / count,
      );
      return step === 0 ? from : nearestOnSpans(spans, between).point;
    });
  });
}
