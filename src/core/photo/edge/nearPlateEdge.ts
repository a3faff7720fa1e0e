import { type Point, point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { Picture } from '../picture/picture.ts';

/** An edge with the far plate told from the near one, as far as the picture allows. */
export interface NearEdge {
  readonly edge: readonly EdgePoint[];
  /** Places moved inward from the far plate or the ribs to the near plate. */
  readonly moved: number;
  /** Places where ribs should show but no second edge does: which plate they are on cannot be told. */
  readonly untold: number;
}

/** mm. Where less of the ribs can show than this, the one edge is taken as it is. */
const LEAST_OVERLOOK_MM = 0.3;
/** mm. From this on a single edge is not believed: it may be either plate's. */
const UNTOLD_FROM_MM = 0.5;
/** mm looked at beyond the predicted gap, inward and outward. */
const BEYOND_MM = 0.7;
/** mm over which colours are averaged along the edge, either way. */
const ALONG_MM = 0.5;
/** Share of the strongest colour step that still counts as an edge. */
const COUNTS = 0.3;
/** Samples per pixel along a profile, and the half width in samples of the step that is measured. */
const FINE = 2;
const STEP = 4;
const SIGMA_MM = 0.06;
/** mm on either side of a step that are compared, and the share of the step that must be left over them. */
const STAYS_MM = 0.7;
const STAYS_SHARE = 0.45;

/**
 * Where the camera looks down on the ribs (an edge that faces the point under the camera), the silhouette is the far
 * plate's. There the innermost plain colour step near the traced place is the near plate's edge.
 * Limits: a strip of ribs narrower than about half a millimetre beside a lighter rim is taken for a dark line, the place
 * stays where it was; a place already on the near edge, where 3 mm and more are looked over, can fall to the purfling.
 *
 * @param overlookPx how far, in px along the outward normal, the far plate can show beyond the near one at a place
 */
export function nearPlateEdge(
  picture: Picture,
  edge: readonly EdgePoint[],
  overlookPx: (place: Point<'photo'>, normal: Point<'photo'>) => number,
  pxPerMm: number,
): NearEdge {
  let moved = 0;
  let untold = 0;
  const looked = edge.map((place): EdgePoint => {
    const gapPx = overlookPx(place.point, place.normal);
    if (gapPx < LEAST_OVERLOOK_MM * pxPerMm) return place;
    const steps = colourSteps(picture, place, gapPx, pxPerMm);
    const inner = steps[0];
    if (inner === undefined || (steps.length === 1 && gapPx > UNTOLD_FROM_MM * pxPerMm)) {
      untold++;
      return { ...place, state: 'doubtful' };
    }
    if (Math.abs(inner) > LEAST_OVERLOOK_MM * pxPerMm) moved++;
    return {
      ...place,
      point: point(place.point.x + inner * place.normal.x, place.point.y + inner * place.normal.y),
      state: 'seen',
      sigmaPx: Math.max(place.state === 'seen' ? place.sigmaPx : 0, SIGMA_MM * pxPerMm),
    };
  });
  return { edge: looked, moved, untold };
}

/** Offsets along the outward normal (px, inner first) where the colour steps plainly. */
function colourSteps(picture: Picture, place: EdgePoint, gapPx: number, pxPerMm: number): readonly number[] {
  const reach = gapPx + BEYOND_MM * pxPerMm;
  const count = 2 * Math.ceil(reach * FINE) + 1;
  const profile = colourProfile(picture, place, count, Math.round(ALONG_MM * pxPerMm));
  const size = new Float64Array(count);
  for (let i = STEP; i < count - STEP; i++)
    size[i] = Math.hypot(
      profile[3 * (i + STEP)] - profile[3 * (i - STEP)],
      profile[3 * (i + STEP) + 1] - profile[3 * (i - STEP) + 1],
      profile[3 * (i + STEP) + 2] - profile[3 * (i - STEP) + 2],
    );
  const least = COUNTS * Math.max(...size);
  const found: number[] = [];
  for (let i = STEP + 1; i < count - STEP - 1; i++) {
    if (size[i] < least || size[i] < size[i - 1] || size[i] <= size[i + 1]) continue;
    if (!isPeak(size, i) || !staysChanged(profile, i, size[i], Math.round(STAYS_MM * pxPerMm * FINE)))
      continue;
    const bend = size[i - 1] - 2 * size[i] + size[i + 1];
    const top = bend < 0 ? (size[i - 1] - size[i + 1]) / (2 * bend) : 0;
    found.push((i + top - (count - 1) / 2) / FINE);
  }
  return found;
}

/** The highest within a step's own width either way. */
function isPeak(size: Float64Array, at: number): boolean {
  for (let i = Math.max(0, at - STEP); i <= Math.min(size.length - 1, at + STEP); i++)
    if (size[i] > size[at]) return false;
  return true;
}

/** Whether the colour outside a step stays unlike the colour inside it; beyond a thin dark line it does not. */
function staysChanged(profile: Float64Array, at: number, size: number, width: number): boolean {
  const mean = (from: number, to: number, colour: number): number => {
    let sum = 0;
    const [low, high] = [Math.max(0, from), Math.min(profile.length / 3 - 1, to)];
    for (let i = low; i <= high; i++) sum += profile[3 * i + colour];
    return sum / Math.max(1, high - low + 1);
  };
  const change = [0, 1, 2].map(
    (colour) => mean(at + STEP, at + STEP + width, colour) - mean(at - STEP - width, at - STEP, colour),
  );
  return Math.hypot(...change) > STAYS_SHARE * size;
}

function colourProfile(picture: Picture, place: EdgePoint, count: number, alongPx: number): Float64Array {
  const profile = new Float64Array(3 * count);
  const { x, y } = place.point;
  const { x: nx, y: ny } = place.normal;
  const rows = 2 * alongPx + 1;
  for (let i = 0; i < count; i++) {
    const out = (i - (count - 1) / 2) / FINE;
    for (let row = -alongPx; row <= alongPx; row++)
      addColour(picture, x + out * nx - row * ny, y + out * ny + row * nx, profile, 3 * i, 1 / rows);
  }
  return profile;
}

function addColour(
  { widthPx, heightPx, rgb }: Picture,
  x: number,
  y: number,
  into: Float64Array,
  to: number,
  share: number,
): void {
  const column = Math.max(0, Math.min(widthPx - 2, Math.floor(x)));
  const row = Math.max(0, Math.min(heightPx - 2, Math.floor(y)));
  const right = Math.max(0, Math.min(1, x - column));
  const down = Math.max(0, Math.min(1, y - row));
  const at = 3 * (row * widthPx + column);
  const below = at + 3 * widthPx;
  for (let c = 0; c < 3; c++)
    into[to + c] +=
      share *
      ((rgb[at + c] * (1 - right) + rgb[at + 3 + c] * right) * (1 - down) +
        (rgb[below + c] * (1 - right) + rgb[below + 3 + c] * right) * down);
}
