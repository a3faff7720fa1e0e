import type { FoldedPlace } from './foldHalves.ts';
import { lostStretches, type RestPlace } from './lostStretches.ts';
import type { SeenSide } from './meantWishes.ts';
import { type SlowDifference, slowDifference } from './slowDifference.ts';

/** How two folded halves differ: slowly, as a body leans, and beyond that; and which half that says has lost wood. */
export interface HalvesDifference {
  readonly slow: SlowDifference;
  readonly rest: readonly RestPlace[];
  /** The half that lies inside the other, by the rule that the outer one is right. */
  readonly lost: readonly (SeenSide | null)[];
}

export function halvesDifference(places: readonly FoldedPlace[]): HalvesDifference {
  const differences = places.map(({ left, right }) =>
    left.edgeMm === null || right.edgeMm === null ? null : right.edgeMm - left.edgeMm,
  );
  const slow = slowDifference(
    places.map(({ alongMm, section, y, normalX }, i) => ({
      alongMm,
      section,
      y,
      normalX,
      difference: differences[i] ?? null,
    })),
  );
  const rest = places.map(({ alongMm, section }, i): RestPlace => {
    const gap = differences[i] ?? null;
    return { alongMm, section, restMm: gap === null ? null : gap - slow.values[i] };
  });
  return { slow, rest, lost: lostStretches(rest, slow.spreadMm) };
}
