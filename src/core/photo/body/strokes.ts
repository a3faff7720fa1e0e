import { hypot, type Point, point } from '../../base/index.ts';

/** Places along a stroke that are asked: enough to tell on which side of an outline it lies all along. */
const PLACES_A_STROKE = 24;

/** Places along hand-drawn lines: their ends, their corners and between, evenly as far as they allow. */
export function alongStrokes(
  strokes: readonly (readonly Point<'photo'>[])[] | undefined,
): readonly Point<'photo'>[] {
  return (strokes ?? []).flatMap(alongStroke);
}

function alongStroke(stroke: readonly Point<'photo'>[]): readonly Point<'photo'>[] {
  const steps = stroke.map((at, i) => {
    const before = stroke[Math.max(0, i - 1)];
    return hypot(at.x - before.x, at.y - before.y);
  });
  const length = steps.reduce((sum, step) => sum + step, 0);
  if (length === 0) return stroke.slice(0, 1);
  return stroke.flatMap((at, i) => {
    if (i === 0) return [at];
    const before = stroke[i - 1];
    const parts = Math.max(1, Math.ceil((PLACES_A_STROKE * steps[i]) / length));
    return Array.from({ length: parts }, (_, k) => {
      const share = (k + 1) / parts;
      return point<'photo'>(before.x + share * (at.x - before.x), before.y + share * (at.y - before.y));
    });
  });
}
