import { hypot } from '../../base/index.ts';
import type { LabPicture } from '../picture/labPicture.ts';
import type { EdgePoint, TraceHints } from './bodyTrace.ts';
import { valueAt } from './edgeMap.ts';
import { HAND_TELLS_MM } from './fitScore.ts';
import type { PictureLevel } from './pictureLevel.ts';
import { isCornerEnd } from './templateStations.ts';

/** Share of the places of each side where what was followed is a line and no step. */
export type LineShares = Readonly<Record<EdgePoint['side'], number>>;

/** mm along the outward normal, from and to: the strips inside and outside, and the place itself between them. */
const STRIPS_MM = [
  [-3.2, -1.4],
  [1.4, 3.2],
  [-0.5, 0.5],
] as const;
const STEP_MM = 0.25;
const CHANNELS = 3;
/** Places to either side that a strip's colour is the mean of: grain and figure even out. */
const BESIDE = 6;
/** Share of line in line and step together from which a place counts as a line. */
const LINE_SHARE = 0.6;
/** Colour difference (Lab) that is nothing but noise. */
const NOISE = 1;

/**
 * Where the body has the colour of what it lies on, its purfling may be followed in place of its edge: a dark line with
 * the same colour on either side. Method: mean colours inside, outside and at the edge, over thirteen places.
 */
export function followedLine(
  { lab, factor }: Pick<PictureLevel, 'lab' | 'factor'>,
  edge: readonly EdgePoint[],
  pxPerMm: number,
  onEdge: TraceHints['onEdge'] = [],
): LineShares {
  const handPx = (HAND_TELLS_MM * pxPerMm) / factor;
  const isAsked = ({ state, section, point }: EdgePoint): boolean =>
    state !== 'bridged' &&
    !isCornerEnd(section) &&
    onEdge.every(({ x, y }) => hypot(x - point.x, y - point.y) >= handPx);
  const share = (side: EdgePoint['side']): number => {
    const own = edge.filter((place) => place.side === side);
    const colours = own.map((place) => stripColours(lab, place, factor, pxPerMm));
    const asked = own.flatMap((place, i) => (isAsked(place) ? [i] : []));
    return asked.filter((i) => isLine(colours, i)).length / Math.max(1, asked.length);
  };
  return { bass: share('bass'), treble: share('treble') };
}

/** L, a, b of the three strips at a place, one strip after the other. */
function stripColours(
  lab: LabPicture,
  { point, normal }: EdgePoint,
  factor: number,
  pxPerMm: number,
): Float64Array {
  const out = new Float64Array(STRIPS_MM.length * CHANNELS);
  const planes = [lab.lightness, lab.a, lab.b];
  for (const [strip, [from, to]] of STRIPS_MM.entries()) {
    const steps = Math.round((to - from) / STEP_MM);
    for (let k = 0; k <= steps; k++) {
      const away = pxPerMm * (from + ((to - from) * k) / steps);
      const x = within((point.x + 0.5) * factor - 0.5 + away * normal.x, lab.widthPx);
      const y = within((point.y + 0.5) * factor - 0.5 + away * normal.y, lab.heightPx);
      for (const [channel, plane] of planes.entries())
        out[strip * CHANNELS + channel] += valueAt(plane, lab.widthPx, lab.heightPx, x, y) / (steps + 1);
    }
  }
  return out;
}

function within(value: number, size: number): number {
  return Math.min(size - 1, Math.max(0, value));
}

function isLine(colours: readonly Float64Array[], i: number): boolean {
  const near = colours.slice(Math.max(0, i - BESIDE), i + BESIDE + 1);
  const mean = (at: number): number => near.reduce((sum, one) => sum + one[at], 0) / near.length;
  let step = 0;
  let line = 0;
  for (let c = 0; c < CHANNELS; c++) {
    const [inside, outside, middle] = [mean(c), mean(CHANNELS + c), mean(2 * CHANNELS + c)];
    step += (inside - outside) ** 2;
    line += (middle - (inside + outside) / 2) ** 2;
  }
  return Math.sqrt(line) > LINE_SHARE * (Math.sqrt(line) + Math.sqrt(step) + NOISE);
}
