import type { FoldedPlace } from './foldHalves.ts';
import type { SeenSide } from './meantWishes.ts';

/** mm. Where the halves differ by more, and ribs show on the outer one, its edge may be the far plate's. */
const FAR_MM = 1.2;
/** Share of the difference that must be able to show beyond the near plate. */
const SHOWS_SHARE = 0.5;
/** The other half must be looked over by less than this share of what the outer one is. */
const CLEAR_SHARE = 0.5;

const OTHER = { left: 'right', right: 'left' } as const;

/**
 * Stations at which a half was followed on ribs or far plate: it stands outside the other by more than wear is likely to
 * take, where so much of the ribs can show on this half, and not on the other. Without the camera's word wood that one
 * half still has is right; with it the half that cannot be mistaken is. Told over the whole of a lost stretch.
 *
 * @param lost which half has lost wood at each station, by the rule that the outer one is right
 * @param restMm what the halves differ by beyond their slow difference
 */
export function farPlateTaken(
  places: readonly FoldedPlace[],
  lost: readonly (SeenSide | null)[],
  restMm: readonly (number | null)[],
): readonly (SeenSide | null)[] {
  const taken = new Array<SeenSide | null>(places.length).fill(null);
  for (let from = 0; from < places.length; from++) {
    const inner = lost[from] ?? null;
    if (inner === null) continue;
    let to = from;
    while (lost[to + 1] === inner) to++;
    const outer = OTHER[inner];
    const isFar = (i: number): boolean => {
      const gapMm = Math.abs(restMm[i] ?? 0);
      const showsMm = places[i][outer].overlookMm;
      return (
        gapMm > FAR_MM && showsMm > SHOWS_SHARE * gapMm && places[i][inner].overlookMm < CLEAR_SHARE * showsMm
      );
    };
    const run = Array.from({ length: to - from + 1 }, (_, k) => from + k);
    if (run.some(isFar))
      for (const i of run) if (places[i][outer].overlookMm > places[i][inner].overlookMm) taken[i] = outer;
    from = to;
  }
  return taken;
}
