import { medianOf } from '../../numeric/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { PurflingPlace, PurflingTrace } from '../lines/purflingTrace.ts';
import { purflingSeenOutMm, silhouetteBeyondMm } from './roundedRim.ts';

/** How a place is looked at. */
export interface SightAt {
  /** px of what lies below that can show beyond the near edge; 0 where the camera stands on the plate's side. */
  readonly gapPx: number;
  /** mm that the sight line leans outwards for each of height; negative where the ribs are looked at; 0 where not known. */
  readonly lean: number;
}

/** Where the near plate's edge lies by its purfling, as seen from a place of the traced edge. */
export interface PurflingWitness {
  /** px along the outward normal from the place to where the near edge should be; negative inward. */
  readonly outPx: number;
  /** px by which that may miss. */
  readonly missPx: number;
  /** px along the outward normal to the purfling's outer dark line: no edge lies inside it. */
  readonly limitPx: number;
}

/** How deep the purfling lies under the near plate's own edge, seen from straight above. */
interface Reference {
  readonly depthPx: number;
  readonly missPx: number;
}

/** Places with nothing looked over that a reference needs; else the usual depth is taken. */
const LEAST_PLACES = 40;
/** mm. Usual depth of the middle line and how it varies between instruments (common practice). */
const USUAL_DEPTH_MM = 4.2;
const USUAL_MISS_MM = 0.9;
/** mm. How the depth varies round one instrument, corners left out (an estimate), and how much wear may add. */
const ROUND_MISS_MM = 0.45;
const MOST_WEAR_MM = 1.5;
/** mm to either side of a place's normal within which its purfling is taken; and how deep it can lie, ribs overlooked. */
const NEIGHBOUR_MM = 1.5;
const DEEPEST_MM = 18;
/** mm from the middle line to where the wood outside the purfling begins. */
const HALF_WIDTH_MM = 1;

/** What the purfling tells about the near edge at every place of the edge; nothing where it is not seen. */
export function purflingWitnesses(
  edge: readonly EdgePoint[],
  purfling: PurflingTrace,
  sights: readonly SightAt[],
  leastGapPx: number,
  pxPerMm: number,
): readonly (PurflingWitness | null)[] {
  const byStretch = new Map<string, PurflingPlace[]>();
  for (const place of purfling.places) {
    const key = `${place.side} ${place.section}`;
    const own = byStretch.get(key);
    if (own) own.push(place);
    else byStretch.set(key, [place]);
  }
  const depths = edge.map((place) =>
    depthUnder(place, byStretch.get(`${place.side} ${place.section}`) ?? [], pxPerMm),
  );
  const reference = referenceOf(edge, depths, sights, leastGapPx, pxPerMm);
  return depths.map((depthPx, i) => {
    if (depthPx === null) return null;
    const outPx = reference.depthPx - depthPx - pxPerMm * purflingSeenOutMm(sights[i].lean);
    const tooDeep = -outPx > sights[i].gapPx + reference.missPx + MOST_WEAR_MM * pxPerMm;
    if (tooDeep || outPx > MOST_WEAR_MM * pxPerMm + reference.missPx) return null;
    return { outPx, missPx: reference.missPx, limitPx: -depthPx + HALF_WIDTH_MM * pxPerMm };
  });
}

/**
 * px from a place inwards along its normal to the purfling opposite it, null where none is seen. The purfling's own
 * depth does not serve: it counts from the edge as traced, which may jump from one plate to the other.
 */
function depthUnder(
  { point: at, normal }: EdgePoint,
  places: readonly PurflingPlace[],
  pxPerMm: number,
): number | null {
  let depthPx = Number.NaN;
  let asidePx = NEIGHBOUR_MM * pxPerMm;
  for (const { point } of places) {
    const x = point.x - at.x;
    const y = point.y - at.y;
    const aside = Math.abs(x * normal.y - y * normal.x);
    const depth = -(x * normal.x + y * normal.y);
    if (aside >= asidePx || depth < 0 || depth > DEEPEST_MM * pxPerMm) continue;
    depthPx = depth;
    asidePx = aside;
  }
  return Number.isNaN(depthPx) ? null : depthPx;
}

function referenceOf(
  edge: readonly EdgePoint[],
  depthsPx: readonly (number | null)[],
  sights: readonly SightAt[],
  leastGapPx: number,
  pxPerMm: number,
): Reference {
  const depths = depthsPx.flatMap((depthPx, i) =>
    depthPx !== null && sights[i].gapPx < leastGapPx && edge[i].state === 'seen'
      ? [depthPx + pxPerMm * (purflingSeenOutMm(sights[i].lean) - silhouetteBeyondMm(sights[i].lean))]
      : [],
  );
  return depths.length >= LEAST_PLACES
    ? { depthPx: medianOf(depths), missPx: ROUND_MISS_MM * pxPerMm }
    : { depthPx: USUAL_DEPTH_MM * pxPerMm, missPx: USUAL_MISS_MM * pxPerMm };
}
