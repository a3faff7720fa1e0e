import { medianOf } from '../../numeric/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { PurflingWitness } from './nearPlateEdgePurfling.ts';

/** What told the near edge at a place, and where. */
export type Told =
  | { readonly by: 'edge'; readonly outPx: number }
  | { readonly by: 'purfling'; readonly outPx: number }
  | { readonly by: 'none' };

/** mm of a 355 mm body's edge to either side over which soft steps are compared with their purfling. */
const TOGETHER_MM = 14;
const FEWEST = 5;
/** mm. Steps as near as this to the place that the purfling tells are believed: so much the purfling's own depth varies. */
const BELIEVED_MM = 0.3;

/**
 * Steps shifted outwards by as much as they lie, in the median of their neighbourhood, inside the place that the
 * purfling tells; the less the nearer they are. The rounding of a rim darkens before it ends, and its end may show no
 * step of its own beside what lies below in the same shade: so the step is found inside, never outside, by an amount
 * that changes slowly along the edge. What is local, a loss or a nick, stays as it was seen.
 */
export function heldToPurfling(
  edge: readonly EdgePoint[],
  told: readonly (Told | null)[],
  witnesses: readonly (PurflingWitness | null)[],
  pxPerMm: number,
): readonly (Told | null)[] {
  return told.map((one, i) => {
    if (one?.by !== 'edge') return one;
    const off: number[] = [];
    for (const j of neighbours(edge, i, TOGETHER_MM)) {
      const [near, witness] = [told[j], witnesses[j]];
      if (near?.by === 'edge' && witness) off.push(near.outPx - witness.outPx);
    }
    if (off.length < FEWEST) return one;
    const insidePx = Math.min(0, medianOf(off));
    const share = insidePx ** 2 / (insidePx ** 2 + (BELIEVED_MM * pxPerMm) ** 2);
    const own = witnesses[i];
    const mostPx = own ? Math.max(one.outPx, own.outPx) : Number.POSITIVE_INFINITY;
    return { ...one, outPx: Math.min(mostPx, one.outPx - share * insidePx) };
  });
}

/** The places of the same smooth stretch so near to a place along the edge, itself among them. */
function neighbours(edge: readonly EdgePoint[], i: number, withinMm: number): readonly number[] {
  const { side, section, along } = edge[i];
  const found: number[] = [];
  for (const by of [-1, 1])
    for (let j = by < 0 ? i : i + 1; j >= 0 && j < edge.length; j += by) {
      const other = edge[j];
      if (other.side !== side || other.section !== section || Math.abs(other.along - along) > withinMm) break;
      found.push(j);
    }
  return found;
}
