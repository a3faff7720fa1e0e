import type { FoldedPlace } from './foldHalves.ts';
import { halvesDifference } from './halvesDifference.ts';
import type { SeenSide } from './meantWishes.ts';

/** mm. Where the halves differ by more, and ribs show on the outer one, its edge may be the far plate's. */
const FAR_MM = 1.2;
/** Share of the difference that must be able to show beyond the near plate. */
const SHOWS_SHARE = 0.5;
/** The other half must be looked over by less than this share of what the outer one is. */
const CLEAR_SHARE = 0.5;

const OTHER = { left: 'right', right: 'left' } as const;

/** A half set aside at a station, and how far it stood outside the other. */
export interface FarPlateAside {
  readonly side: SeenSide;
  readonly mm: number;
}

/**
 * Stations at which a half was followed on ribs or far plate: it stands outside the other by more than wear is likely to
 * take, where so much of the ribs can show on this half, and not on the other. Without the camera's word wood that one
 * half still has is right; with it the half that cannot be mistaken is. Told over the whole of a lost stretch.
 *
 * @param isRuled whether the maker has said what to take at a place: then nothing is set aside there
 */
export function farPlateAside(
  places: readonly FoldedPlace[],
  isRuled: (place: FoldedPlace) => boolean,
): readonly (FarPlateAside | null)[] {
  const aside = new Array<FarPlateAside | null>(places.length).fill(null);
  if (places.every(({ left, right }) => left.overlookMm === 0 && right.overlookMm === 0)) return aside;
  const { rest, lost } = halvesDifference(places);
  const gapMm = (i: number): number => Math.abs(rest[i]?.restMm ?? 0);
  for (let from = 0; from < places.length; from++) {
    const inner = lost[from] ?? null;
    if (inner === null) continue;
    let to = from;
    while (lost[to + 1] === inner) to++;
    const side = OTHER[inner];
    const isFar = (i: number): boolean => {
      const showsMm = places[i][side].overlookMm;
      return (
        gapMm(i) > FAR_MM &&
        showsMm > SHOWS_SHARE * gapMm(i) &&
        places[i][inner].overlookMm < CLEAR_SHARE * showsMm
      );
    };
    const run = Array.from({ length: to - from + 1 }, (_, k) => from + k);
    if (run.some(isFar))
      for (const i of run)
        if (places[i][side].overlookMm > places[i][inner].overlookMm && !isRuled(places[i]))
          aside[i] = { side, mm: gapMm(i) };
    from = to;
  }
  return aside;
}
