import type { Point } from '../../base/index.ts';
import type { TraceHints } from '../../photo/index.ts';

type Spot = Point<'photo'>;

/** Hints carried into another picture of the same thing, place by place. */
export function movedHints(hints: TraceHints, move: (at: Spot) => Spot): TraceHints {
  return Object.fromEntries(
    Object.entries(hints).map(([name, places]) => [
      name,
      (places as readonly (Spot | readonly Spot[])[]).map((one) =>
        Array.isArray(one) ? one.map(move) : move(one as Spot),
      ),
    ]),
  );
}
