import { type Point, point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { PurflingTrace } from '../lines/purflingTrace.ts';
import { tracePurfling } from '../lines/tracePurfling.ts';
import type { Picture } from '../picture/picture.ts';
import { tracedAtExpected } from './edgeLookedAgain.ts';
import { onFarCorners } from './farCorners.ts';
import { type PurflingWitness, purflingWitnesses, type SightAt } from './nearPlateEdgePurfling.ts';
import { type ColourStep, colourSteps } from './nearPlateEdgeSteps.ts';
import { silhouetteBeyondMm } from './roundedRim.ts';
import { heldToPurfling, type Told } from './softSteps.ts';

/** An edge with the far plate told from the near one, as far as the picture allows. */
export interface NearEdge {
  readonly edge: readonly EdgePoint[];
  /** Places moved inward from the far plate or the ribs to the near plate. */
  readonly moved: number;
  /** Places where it cannot be told which plate they are on: no ribs show, or a dark line that may be ribs or purfling. */
  readonly untold: number;
  /** Of those moved, places that only the purfling's distance told: no edge shows where it must be. They stay doubtful. */
  readonly byPurfling: number;
  /** The purfling that was looked along; null where none was needed. */
  readonly purfling: PurflingTrace | null;
}

export interface NearPlateOptions {
  /** The purfling as traced from this edge with the same overlook, when it is known; else it is traced here. */
  readonly purfling?: PurflingTrace;
  /** Height of the edge over the ground: from it and the overlook comes how far sight lines lean, and what a rounded edge hides. */
  readonly edgeHeightMm?: number;
  /** Where the outline is expected, station by station, after a first look: what does not stand there is looked for there. */
  readonly expected?: readonly EdgePoint[];
}

/** mm. Where less of the ribs can show than this, the one edge is taken as it is. */
const LEAST_OVERLOOK_MM = 0.3;
/** mm. A far plate larger than the near one by so much shows also where less than nothing is looked over. */
const PLATES_DIFFER_MM = 0.7;
/** mm. From this on a single edge is not believed without a witness: it may be either plate's. */
const UNTOLD_FROM_MM = 0.5;
/** mm looked at beyond the predicted gap, inward and outward. */
const BEYOND_MM = 0.7;
const SIGMA_MM = 0.06;
/** mm. What an edge that only the purfling tells is good to. */
const WITNESS_SIGMA_MM = 0.4;
/** Share of what a purfling's place may miss within which a faint step counts as near it. */
const NEAR_SHARE = 0.3;
/** mm. Without a purfling seen, a step this deep may be the purfling's own. */
const PURFLING_FROM_MM = 2.8;
/** mm. A thin line this far inside a plain step leaves open which of them is the edge. */
const THIN_LINE_MM = 0.1;
/** mm to either side of an expected place that are looked at, and inside it where no purfling tells. */
const AGAIN_MM = 3;
const EXPECTED_WITHIN_MM = 1.5;
/** mm. How far from its usual depth the purfling costs a fifth of a plain line, once the edge is known nearly. */
const AGAIN_DEPTH_SPREAD_MM = 2;
/** mm by which a worn near edge may lie inside the place that its purfling tells. */
const WORN_MM = 1.2;
/** mm by which a faint edge may lie inside it. */
const FAINTLY_WORN_MM = 0.6;

/**
 * Where the camera looks down on the ribs (an edge that faces the point under the camera), the silhouette is the far
 * plate's. There the near plate's edge is the innermost colour step outside its purfling, near where the purfling's
 * distance elsewhere puts it. Where no purfling is seen, it is the innermost plain step, unless a thin dark line
 * inside (ribs or purfling?) or a step as deep as a purfling leaves it open: then the place stays and is doubtful.
 * Limits: with fewer than forty places free of overlook the purfling is taken 4.2 mm inside, give or take 0.9.
 *
 * @param overlookPx how far, in px along the outward normal, the far plate can show beyond the near one at a place;
 *   negative where it is hidden below the near one by so much
 */
export function nearPlateEdge(
  picture: Picture,
  traced: readonly EdgePoint[],
  overlookPx: (place: Point<'photo'>, normal: Point<'photo'>) => number,
  pxPerMm: number,
  options: NearPlateOptions = {},
): NearEdge {
  const { expected } = options;
  const there =
    expected && tracedAtExpected(traced, expected, overlookPx, LEAST_OVERLOOK_MM * pxPerMm, pxPerMm);
  const edge = expected && there ? expected.map((station, i) => there[i].place ?? station) : traced;
  const isExpected = (i: number) => there !== undefined && there[i].place === null;
  const heightPx = (options.edgeHeightMm ?? 0) * pxPerMm;
  const sights = edge.map((place): SightAt => {
    const gapPx = overlookPx(place.point, place.normal);
    return { gapPx: Math.max(0, gapPx), lean: heightPx > 0 ? -gapPx / heightPx : 0 };
  });
  const leastPx = LEAST_OVERLOOK_MM * pxPerMm;
  if (sights.every(({ gapPx }) => gapPx < leastPx))
    return {
      edge: withoutRim(edge, sights, pxPerMm),
      moved: 0,
      untold: 0,
      byPurfling: 0,
      purfling: options.purfling ?? null,
    };
  const purfling =
    options.purfling ??
    tracePurfling(
      picture,
      edge,
      pxPerMm,
      expected ? { depthSpreadMm: AGAIN_DEPTH_SPREAD_MM } : { overlookPx },
    );
  const witnesses = purflingWitnesses(edge, purfling, sights, leastPx, pxPerMm);
  const signedGapPx = (i: number) => overlookPx(edge[i].point, edge[i].normal);
  const far = onFarCorners(edge, overlookPx, pxPerMm);
  const told = edge.map((place, i): Told | null => {
    const { gapPx } = sights[i];
    const witness = witnesses[i];
    const steps = () => colourSteps(picture, place, gapPx + BEYOND_MM * pxPerMm, pxPerMm);
    if (isExpected(i)) {
      const all = colourSteps(
        picture,
        place,
        Math.max(AGAIN_MM * pxPerMm, gapPx + BEYOND_MM * pxPerMm),
        pxPerMm,
      );
      if (witness) return byWitness(all, witness, pxPerMm);
      return gapPx < leastPx || there?.[i].wasBridged
        ? { by: 'none' }
        : bySteps(
            all.filter(({ outPx }) => outPx > -EXPECTED_WITHIN_MM * pxPerMm),
            gapPx,
            pxPerMm,
          );
    }
    if (gapPx < leastPx) {
      if (witness && signedGapPx(i) > -PLATES_DIFFER_MM * pxPerMm && witness.outPx < -witness.missPx) {
        const inner = byWitness(steps(), witness, pxPerMm);
        return inner.by === 'edge' ? inner : { by: 'none' };
      }
      return far[i] ? { by: 'none' } : null;
    }
    if (witness) {
      const all = steps();
      return isBelieved(all, witness, gapPx, pxPerMm) ? byWitness(all, witness, pxPerMm) : { by: 'none' };
    }
    return far[i] ? { by: 'none' } : bySteps(steps(), gapPx, pxPerMm);
  });
  const held = heldToPurfling(edge, told, witnesses, pxPerMm);
  const looked = edge.map((place, i): EdgePoint => {
    const one = held[i];
    const moved = one ? movedPlace(place, one, pxPerMm) : place;
    const { gapPx } = sights[i];
    const isWitnessed = one?.by === 'edge' && witnesses[i] !== null && expected !== undefined;
    return gapPx < leastPx || isWitnessed ? moved : { ...moved, overlookPx: gapPx };
  });
  const count = (isCounted: (one: Told) => boolean) => held.filter((one) => one && isCounted(one)).length;
  return {
    edge: withoutRim(looked, sights, pxPerMm),
    moved: count((one) => one.by !== 'none' && Math.abs(one.outPx) > leastPx),
    untold: count(({ by }) => by === 'none'),
    byPurfling: count(({ by }) => by === 'purfling'),
    purfling,
  };
}

/**
 * A rounded edge seen from its own side stands out by what its upper shoulder does; that is taken off again. Over the
 * ribs its shading takes away as much, and the purfling has the last word.
 */
function withoutRim(
  edge: readonly EdgePoint[],
  sights: readonly SightAt[],
  pxPerMm: number,
): readonly EdgePoint[] {
  if (sights.every(({ lean }) => lean <= 0)) return edge;
  return edge.map((place, i) => {
    const outPx = pxPerMm * silhouetteBeyondMm(Math.max(0, sights[i].lean));
    const { x, y } = place.point;
    return { ...place, point: point(x - outPx * place.normal.x, y - outPx * place.normal.y) };
  });
}

/**
 * The innermost step about where the purfling puts the near edge, thin strips of ribs included; else a worn one inside
 * it; else a faint one near there; else that place itself.
 */
function byWitness(steps: readonly ColourStep[], witness: PurflingWitness, pxPerMm: number): Told {
  const outside = steps.filter(({ outPx }) => outPx > witness.limitPx);
  const within = (low: number, high: number): readonly ColourStep[] =>
    outside.filter(({ outPx }) => outPx >= witness.outPx + low && outPx <= witness.outPx + high);
  const near = within(-witness.missPx, witness.missPx);
  const worn = within(-WORN_MM * pxPerMm - witness.missPx, -witness.missPx);
  const likeliest = (some: readonly ColourStep[]) =>
    some.find((step) => some.every((other) => faintness(other, witness) >= faintness(step, witness)));
  const found =
    near.find(({ plain }) => plain) ??
    worn.find(({ plain, stays }) => plain && stays) ??
    likeliest(near) ??
    likeliest(
      worn.filter(
        ({ stays, outPx }) => stays && outPx > witness.outPx - witness.missPx - FAINTLY_WORN_MM * pxPerMm,
      ),
    );
  if (found) return { by: 'edge', outPx: found.outPx };
  const plain = Math.abs(witness.outPx) > LEAST_OVERLOOK_MM * pxPerMm && witness.outPx < 0;
  return plain ? { by: 'purfling', outPx: witness.outPx } : { by: 'none' };
}

/**
 * Whether a purfling can be the near plate's: the edge that it tells lies not outside of all that was found, and where
 * much of the ribs is to be seen the far plate ends a whole gap farther out. Else it is another dark line.
 */
function isBelieved(
  steps: readonly ColourStep[],
  witness: PurflingWitness,
  gapPx: number,
  pxPerMm: number,
): boolean {
  if (witness.outPx > witness.missPx) return false;
  if (gapPx < WIDE_GAP_MM * pxPerMm) return true;
  const missPx = (PLATES_DIFFER_MM + WORN_MM) * pxPerMm;
  return steps.some(({ plain, outPx }) => plain && Math.abs(outPx - witness.outPx - gapPx) < missPx);
}

/** mm. From this on a far plate is looked for where the purfling says that it is. */
const WIDE_GAP_MM = 3;

/** The less the likelier a faint step is the edge: a strong one, near the place that the purfling tells. */
function faintness({ size, outPx }: ColourStep, witness: PurflingWitness): number {
  const off = (outPx - witness.outPx) / (NEAR_SHARE * witness.missPx);
  return (1 + off * off) / size;
}

function bySteps(steps: readonly ColourStep[], gapPx: number, pxPerMm: number): Told {
  const plain = steps.filter((step) => step.plain && step.stays);
  const inner = plain[0];
  if (inner === undefined) return { by: 'none' };
  const single = plain.length === 1 && gapPx > UNTOLD_FROM_MM * pxPerMm;
  const thinLine = steps.some(
    (step) => step.plain && !step.stays && step.outPx < inner.outPx - THIN_LINE_MM * pxPerMm,
  );
  // Of an edge that stands out from the ribs both plates show, a whole gap apart.
  const apartPx = (plain.at(-1)?.outPx ?? 0) - inner.outPx;
  if (apartPx < gapPx - (PLATES_DIFFER_MM + WORN_MM) * pxPerMm) return { by: 'none' };
  if (single || thinLine || -inner.outPx > PURFLING_FROM_MM * pxPerMm) return { by: 'none' };
  return { by: 'edge', outPx: inner.outPx };
}

function movedPlace(place: EdgePoint, told: Told, pxPerMm: number): EdgePoint {
  if (told.by === 'none') return { ...place, state: 'doubtful' };
  const seen = told.by === 'edge';
  const least = (seen ? SIGMA_MM : WITNESS_SIGMA_MM) * pxPerMm;
  const { x, y } = place.point;
  return {
    ...place,
    point: point(x + told.outPx * place.normal.x, y + told.outPx * place.normal.y),
    state: seen ? 'seen' : 'doubtful',
    sigmaPx: Math.max(place.state === 'seen' ? place.sigmaPx : 0, least),
  };
}
