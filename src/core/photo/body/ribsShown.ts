import { cos, type Point, point, sin } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import type { EdgePoint } from './bodyTrace.ts';
import { valueAt } from './edgeMap.ts';
import type { PictureLevel } from './pictureLevel.ts';
import { isCornerEnd } from './templateStations.ts';

/** A dark band inside the outline on one side that the opposite side does not have: ribs, with the far plate's edge beyond. */
export interface RibsShown {
  /** Share of that side's places with a band clearly darker than at the opposite side's darkest tenth. */
  readonly share: number;
  /** Lightness of the band against the plate beside it, as a share of the plate's; the median, below 0 where darker. */
  readonly darker: number;
  /** Where it shows, from the middle of the body: a direction in the picture. */
  readonly towards: Point<'photo'>;
}

type Strip = readonly [fromMm: number, toMm: number];
/** mm along the outward normal: three strips of the rim, all of which must be dark. */
const RIM_MM: readonly Strip[] = [
  [-3.2, -2.4],
  [-2.4, -1.6],
  [-1.6, -0.8],
];
/** mm: strips of the plate, the median of which is its lightness: seen aslant, ribs reach 10 mm in, and a hole or a chin rest may hide as much. */
const PLATE_MM: readonly Strip[] = [
  [-9, -6.5],
  [-13.5, -11],
  [-18.5, -16],
  [-23, -20.5],
  [-28, -25.5],
];
const STEP_MM = 0.25;
/** Places to either side that a strip is the mean of. */
const BESIDE = 4;
/** Lightness below which a plate is taken as black. */
const LEAST_LIGHT = 8;
const DIRECTIONS = 24;
/** Cosine within which a place faces a direction. */
const FACING = 0.5;
const FEWEST = 40;
/** Share of the opposite side that is darker than its measure, and how much darker still a band must be. */
const [DARKEST_SHARE, CLEARLY] = [0.1, 0.1];

/**
 * Where a camera looks past the near plate it sees the ribs, in their own shade, and the far plate's edge beyond them:
 * the silhouette, which was followed there. Told by comparing the rim with that of the opposite side, over all
 * directions; null where no side has enough places. Lighting alone darkens the rounding of a rim, not 3 mm of it.
 */
export function ribsShown(
  { lab, factor }: Pick<PictureLevel, 'lab' | 'factor'>,
  edge: readonly EdgePoint[],
  pxPerMm: number,
): RibsShown | null {
  const rims = (['treble', 'bass'] as const).flatMap((name) => {
    const own = edge.filter(({ side }) => side === name);
    const strips = own.map((place) =>
      [...RIM_MM, ...PLATE_MM].map((strip) => lightness(lab, place, factor, pxPerMm, strip)),
    );
    return own.flatMap((place, i) =>
      place.state === 'bridged' || isCornerEnd(place.section)
        ? []
        : [{ normal: place.normal, darker: darkerAt(strips, i) }],
    );
  });
  let best: RibsShown | null = null;
  for (let step = 0; step < DIRECTIONS; step++) {
    const turn = (2 * Math.PI * step) / DIRECTIONS;
    const towards = point<'photo'>(cos(turn), sin(turn));
    const facing = (sign: 1 | -1): number[] =>
      rims
        .filter(({ normal }) => sign * (normal.x * towards.x + normal.y * towards.y) > FACING)
        .map(({ darker }) => darker)
        .sort((a, b) => a - b);
    const [own, opposite] = [facing(1), facing(-1)];
    if (own.length < FEWEST || opposite.length < FEWEST) continue;
    const limit = opposite[Math.floor(DARKEST_SHARE * opposite.length)] - CLEARLY;
    const share = own.filter((darker) => darker < limit).length / own.length;
    if (best === null || share > best.share) best = { share, darker: own[own.length >> 1], towards };
  }
  return best;
}

/** How the lightest of the rim's strips stands to the plate, averaged along the edge. */
function darkerAt(strips: readonly (readonly number[])[], i: number): number {
  const near = strips.slice(Math.max(0, i - BESIDE), i + BESIDE + 1);
  const mean = (strip: number): number => near.reduce((sum, one) => sum + one[strip], 0) / near.length;
  const plate = medianOf(PLATE_MM.map((_, strip) => mean(RIM_MM.length + strip)));
  const rim = Math.max(...RIM_MM.map((_, strip) => mean(strip)));
  return (rim - plate) / Math.max(LEAST_LIGHT, plate);
}

function lightness(
  { lightness: plane, widthPx, heightPx }: PictureLevel['lab'],
  { point: at, normal }: EdgePoint,
  factor: number,
  pxPerMm: number,
  [fromMm, toMm]: Strip,
): number {
  const steps = Math.round((toMm - fromMm) / STEP_MM);
  let sum = 0;
  for (let k = 0; k <= steps; k++) {
    const away = pxPerMm * (fromMm + ((toMm - fromMm) * k) / steps);
    const x = Math.min(widthPx - 1, Math.max(0, (at.x + 0.5) * factor - 0.5 + away * normal.x));
    const y = Math.min(heightPx - 1, Math.max(0, (at.y + 0.5) * factor - 0.5 + away * normal.y));
    sum += valueAt(plane, widthPx, heightPx, x, y);
  }
  return sum / (steps + 1);
}
