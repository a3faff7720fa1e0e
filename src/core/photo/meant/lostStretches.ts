import type { OutlineSection } from '../body/templateStations.ts';
import type { SeenSide } from './meantWishes.ts';

/** A station with what the halves differ by there beyond their slow difference: right less left, null unless both are seen. */
export interface RestPlace {
  readonly alongMm: number;
  readonly section: OutlineSection;
  readonly restMm: number | null;
}

/** mm. A loss must be at least this deep somewhere to be put back, and is followed out to where it is this shallow. */
export const LOSS_MM = { counts: 0.2, ends: 0.07 };
/** A loss must also stand out of the scatter by this many spreads. */
const LOSS_SPREADS = 3;
/** mm. Shorter losses are scatter, except at a corner. */
const LEAST_EXTENT_MM = 5;
/** Stations to either side that a rest is averaged over before it is judged. */
const AVERAGED_OVER = 2;

/** Which half has lost wood at each station: grown out from places where the loss is plain. */
export function lostStretches(places: readonly RestPlace[], spreadMm: number): readonly (SeenSide | null)[] {
  const rest = averaged(places);
  const averageSpread = spreadMm / Math.sqrt(2 * AVERAGED_OVER + 1);
  const counts = Math.max(LOSS_MM.counts, LOSS_SPREADS * averageSpread);
  const ends = Math.max(LOSS_MM.ends, averageSpread);
  const lost = new Array<SeenSide | null>(places.length).fill(null);
  const side = (i: number): SeenSide => (rest[i] > 0 ? 'left' : 'right');
  for (let i = 0; i < places.length; i++) {
    if (lost[i] !== null || Math.abs(rest[i]) < counts) continue;
    const grows = (j: number) =>
      j >= 0 && j < places.length && Math.abs(rest[j]) > ends && side(j) === side(i);
    let from = i;
    let to = i;
    while (grows(from - 1)) from--;
    while (grows(to + 1)) to++;
    const extent = places[to].alongMm - places[from].alongMm;
    const atCorner = places.slice(from, to + 1).some((place) => place.section.endsWith('Corner'));
    if (extent >= LEAST_EXTENT_MM || atCorner) lost.fill(side(i), from, to + 1);
  }
  return lost;
}

/** Each rest as the mean of its neighbours of the same stretch of outline; 0 where it is not known. */
function averaged(places: readonly RestPlace[]): readonly number[] {
  return places.map((place, i) => {
    if (place.restMm === null) return 0;
    let [sum, count] = [0, 0];
    for (let j = i - AVERAGED_OVER; j <= i + AVERAGED_OVER; j++) {
      const other = places[j];
      if (other === undefined || other.restMm === null || other.section !== place.section) continue;
      sum += other.restMm;
      count++;
    }
    return sum / count;
  });
}
