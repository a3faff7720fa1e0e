import { type Fault, type Point } from '../../base/index.ts';
import type { TraceHints } from '../../photo/index.ts';
import type { Photograph } from './traceRequest.ts';

/**
 * Marks that lie beside the picture they are for, with all their places: they were made on another photograph, or on this one
 * at another size. A line or polygon that only reaches beyond the margin is as good as one that ends there.
 * Fault: `hints.outside-picture`, one for each photograph.
 */
export function hintsOutsideFaults(photographs: readonly Photograph[]): readonly Fault[] {
  return photographs.flatMap(({ name, picture: { widthPx, heightPx }, hints }) => {
    const marks = marksIn(hints ?? {});
    const beside = marks.filter(({ places }) => isBeside(places, widthPx, heightPx));
    const [first] = beside;
    if (first === undefined) return [];
    const { x, y } = first.places[0];
    return [
      {
        code: 'hints.outside-picture',
        at: name,
        found: `${beside.length} of ${marks.length} marks beside the picture, the first (${first.kind}) at ${Math.round(x)}, ${Math.round(y)} px`,
        need: `marks in a picture of ${widthPx} × ${heightPx} px`,
        remedy:
          'look whether the hints belong to this photograph and were made on it at this size, then mark it anew or remove them',
      },
    ];
  });
}

interface Mark {
  readonly kind: keyof TraceHints;
  readonly places: readonly [Point<'photo'>, ...Point<'photo'>[]];
}

function marksIn(hints: TraceHints): readonly Mark[] {
  return (Object.keys(hints) as (keyof TraceHints)[]).flatMap((kind) =>
    (hints[kind] ?? []).flatMap((mark): Mark[] => {
      const [first, ...rest] = Array.isArray(mark)
        ? (mark as readonly Point<'photo'>[])
        : [mark as Point<'photo'>];
      return first === undefined ? [] : [{ kind, places: [first, ...rest] }];
    }),
  );
}

/** Whether the box round some places misses the picture, (0, 0) the centre of its top left pixel. */
function isBeside(places: readonly Point<'photo'>[], widthPx: number, heightPx: number): boolean {
  const misses = (all: readonly number[], sizePx: number): boolean =>
    Math.max(...all) < -0.5 || Math.min(...all) > sizePx - 0.5;
  return (
    misses(
      places.map(({ x }) => x),
      widthPx,
    ) ||
    misses(
      places.map(({ y }) => y),
      heightPx,
    )
  );
}
