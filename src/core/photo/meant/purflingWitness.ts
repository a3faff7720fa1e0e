import { medianOf } from '../../numeric/index.ts';
import { isCornerEnd, type OutlineSection } from '../body/templateStations.ts';
import type { FoldedPlace, HalfOffset } from './foldHalves.ts';
import { LOSS_MM } from './lostStretches.ts';
import type { SeenSide } from './meantWishes.ts';

/** Where the purfling says that both edges once stood at a station, mm outside the middle place; null: it says nothing. */
export type Witness = Readonly<Record<SeenSide, number | null>> | null;

/** The usual distance from edge to purfling of a stretch of outline, and how far single places scatter about it. */
export interface UsualMargin {
  readonly section: OutlineSection;
  readonly mm: number;
  readonly spreadMm: number;
}

/** Stations of a stretch that a usual distance needs. */
const LEAST_PLACES = 20;
/** mm. A loss must show over this length. */
const LEAST_EXTENT_MM = 5;
/** mm from a corner end within which the purfling runs into the corner and leaves the edge. */
const CORNER_REACH_MM = 8;
const NORMAL_TO_MEDIAN = 1.4826;
/** A loss must stand out of the scatter by this many spreads. */
const LOSS_SPREADS = 3;

/** The usual distances from edge to purfling, by stretch: the median over both halves, so wear must be the exception. */
function usualMargins(places: readonly FoldedPlace[]): readonly UsualMargin[] {
  return (['lowerBout', 'cBout', 'upperBout'] as const).flatMap((section) => {
    const margins = places
      .filter((place) => place.section === section)
      .flatMap((place) => [marginOf(place.left), marginOf(place.right)])
      .filter((margin) => margin !== null);
    if (margins.length < LEAST_PLACES) return [];
    const mm = medianOf(margins);
    const spreadMm = NORMAL_TO_MEDIAN * medianOf(margins.map((margin) => Math.abs(margin - mm)));
    return [{ section, mm, spreadMm }];
  });
}

/**
 * Stations where both edges stand nearer to their purfling than is usual on that stretch: worn on both sides, so that
 * neither half can tell for the other. The purfling keeps its place, so the edge belongs the usual distance outside it.
 */
export function purflingWitness(places: readonly FoldedPlace[]): readonly Witness[] {
  const usual = new Map(usualMargins(places).map((margin) => [margin.section, margin]));
  const corners = places.filter((place) => isCornerEnd(place.section)).map((place) => place.alongMm);
  const short = places.map((place) => {
    const margin = usual.get(place.section);
    const atCorner = corners.some((at) => Math.abs(at - place.alongMm) < CORNER_REACH_MM);
    const [left, right] = [marginOf(place.left), marginOf(place.right)];
    if (margin === undefined || atCorner || left === null || right === null) return null;
    const least = Math.min(margin.mm - left, margin.mm - right);
    const counts = Math.max(LOSS_MM.counts, LOSS_SPREADS * margin.spreadMm);
    return { least, counts, ends: Math.max(LOSS_MM.ends, margin.spreadMm) };
  });
  const worn = new Array<boolean>(places.length).fill(false);
  for (let i = 0; i < places.length; i++) {
    const here = short[i];
    if (worn[i] || here === null || here.least < here.counts) continue;
    const grows = (j: number) => {
      const there = short[j] ?? null;
      return there !== null && there.least > there.ends;
    };
    let [from, to] = [i, i];
    while (grows(from - 1)) from--;
    while (grows(to + 1)) to++;
    if (places[to].alongMm - places[from].alongMm >= LEAST_EXTENT_MM) worn.fill(true, from, to + 1);
  }
  return places.map((place, i) => {
    const margin = usual.get(place.section);
    if (!worn[i] || margin === undefined) return null;
    const edge = ({ purflingMm }: HalfOffset) => (purflingMm === null ? null : purflingMm + margin.mm);
    return { left: edge(place.left), right: edge(place.right) };
  });
}

function marginOf({ edgeMm, purflingMm }: HalfOffset): number | null {
  return edgeMm === null || purflingMm === null ? null : edgeMm - purflingMm;
}
