import { hypot, type Point, point } from '../../base/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';
import { LOSS_MM } from './lostStretches.ts';
import type { MeantCorner } from './meantCorner.ts';
import { namedSide, type SeenSide } from './meantWishes.ts';
import type { MergedPlace } from './mergeHalves.ts';

/** One place of one half where wood was put back. */
export interface WearPlace {
  readonly side: 'bass' | 'treble';
  readonly section: OutlineSection;
  /** The station along the half outline; the same number on both halves is the same place. */
  readonly alongMm: number;
  /** Where the edge is today, body frame, bass x negative. */
  readonly at: Point<'body'>;
  readonly restoredMm: number;
  /** What told how much: the other half, the purfling, or the arcs that were carried to the corner. */
  readonly from: 'otherHalf' | 'purfling' | 'corner';
}

/** A stretch where wood was lost and is restored. */
export interface BodyWear {
  readonly side: 'bass' | 'treble';
  /** Where its deepest place lies. */
  readonly section: OutlineSection;
  /** Deepest place; bass x negative. */
  readonly at: Point<'body'>;
  readonly depthMm: number;
  readonly extentMm: number;
  readonly from: WearPlace['from'];
}

/** mm. Stretches of one side nearer than this along the edge are one piece of wear. */
const ONE_STRETCH_MM = 6;

/** What was put back at every station of either half, from the lower end up, bass first. */
export function wearMap(
  places: readonly MergedPlace[],
  corners: { readonly lower?: MeantCorner; readonly upper?: MeantCorner },
  lowerEndMm: number,
  face: 'top' | 'back',
): readonly WearPlace[] {
  return (['bass', 'treble'] as const).flatMap((side) => {
    const seen: SeenSide = namedSide('left', face) === side ? 'left' : 'right';
    return places.flatMap((place): readonly WearPlace[] => {
      if (place[seen].edgeMm === null) return [];
      const found = point<'body'>(place[seen].found.x, place[seen].found.y - lowerEndMm);
      const lean = (seen === 'right' ? 1 : -1) * place.leanMm;
      const corner = cornerOf(place, corners);
      const atCorner = corner === undefined ? 0 : insideMm(found, corner) + lean;
      const restoredMm = corner === undefined ? place.restoredMm[seen] : atCorner;
      if (!(restoredMm > LOSS_MM.ends)) return [];
      const from =
        corner !== undefined && corner.from !== 'seen'
          ? 'corner'
          : place.symmetric.from === 'purfling'
            ? 'purfling'
            : 'otherHalf';
      const at = point<'body'>(side === 'bass' ? -found.x : found.x, found.y);
      return [{ side, section: place.section, alongMm: place.alongMm, at, restoredMm, from }];
    });
  });
}

function cornerOf(
  { section }: MergedPlace,
  { lower, upper }: { readonly lower?: MeantCorner; readonly upper?: MeantCorner },
): MeantCorner | undefined {
  return section === 'lowerCorner' ? lower : section === 'upperCorner' ? upper : undefined;
}

/** How far inside a corner end a place lies. */
function insideMm(at: Point<'body'>, { boutTip, waistTip }: MeantCorner): number {
  const dx = waistTip.x - boutTip.x;
  const dy = waistTip.y - boutTip.y;
  // Outwards lies away from the centre line on both corner ends.
  const outward = dy > 0 ? 1 : -1;
  const length = hypot(dx, dy) || 1;
  return (-outward * ((at.x - boutTip.x) * dy - (at.y - boutTip.y) * dx)) / length;
}

/** The pieces of wear worth telling, from the lower end up: near ones of one side joined, shallow ones left out. */
export function wearStretches(map: readonly WearPlace[]): readonly BodyWear[] {
  const runs: WearPlace[][] = [];
  for (const place of map) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && last.side === place.side && place.alongMm - last.alongMm <= ONE_STRETCH_MM)
      run.push(place);
    else runs.push([place]);
  }
  return runs
    .flatMap((run) => {
      const deepest = run.reduce((most, place) => (place.restoredMm > most.restoredMm ? place : most));
      if (deepest.restoredMm < LOSS_MM.counts) return [];
      const extentMm = (run.at(-1)?.alongMm ?? 0) - run[0].alongMm;
      const { side, section, at, restoredMm, from, alongMm } = deepest;
      return [{ alongMm, wear: { side, section, at, depthMm: restoredMm, extentMm, from } }];
    })
    .sort((a, b) => a.alongMm - b.alongMm)
    .map(({ wear }) => wear);
}
