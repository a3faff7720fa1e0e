import {
  accept,
  atan2,
  type Checked,
  cos,
  type Fault,
  type Point,
  point,
  refuse,
  sin,
} from '../../base/index.ts';
import { fitCircle, fitLine } from '../../numeric/index.ts';
import { inFrame } from './profileFrame.ts';
import type { Silhouette } from './traceSilhouette.ts';

/** A place told from a silhouette alone, with half intervals (k = 2) that say how loosely. */
export interface ToldPlace {
  readonly at: Point<'section'>;
  readonly plusMinusMm: number;
}

/**
 * The side view of a scroll: closed contour and what can be told from it, in a frame of its own: x square to the face of
 * the nut end, towards the turn, y along that face towards the front (where the strings lie), origin at its back corner.
 */
export interface ScrollSide {
  readonly contour: readonly (Point<'section'> & { readonly sigmaMm: number })[];
  readonly lengthMm: number;
  /** Turned over against the photograph, so that the front lies up with the turn on the right. */
  readonly mirrored: boolean;
  readonly nutEnd: { readonly back: ToldPlace; readonly front: ToldPlace };
  /** The place farthest from the nut end. */
  readonly crest: ToldPlace;
  /** The centre of the circle that the outer turn comes nearest to: a guess at the eye. */
  readonly eyeGuess: ToldPlace & { readonly turnRadiusMm: number };
  /** The deepest place of the throat under the turn. */
  readonly throat: ToldPlace;
  /** The back of the pegbox: from the nut end to where the turn begins, and how far it bows from straight. */
  readonly backLine: {
    readonly from: Point<'section'>;
    readonly to: Point<'section'>;
    readonly bowMm: number;
  };
}

/** Share of the length at each end over which heights are compared to tell the turn from the nut end. */
const END_SHARE = 0.3;
/** How much higher the turn's end must be. */
const CLEARLY = 1.15;
/** mm. A throat shallower than this is none. */
const LEAST_THROAT_MM = 2;
/** Share of the length from the nut end to where the pegbox's back is read. */
const BACK_SHARE = { from: 0.05, to: 0.5 };

/**
 * The side of a scroll in its own frame, with its key places as far as a silhouette tells them.
 *
 * Faults: `scroll.no-turn` (neither end is higher than the other: no scroll, or not seen from its side), `scroll.no-throat`.
 * Method: long axis by second moments; the higher end is the turn; the front is the side with the deep hollow; nut end, crest and back
 * by extremes; the eye by a circle through the outer turn, which a spiral is only nearly, so that its ± is wide.
 */
export function traceScrollSide({ contour }: Silhouette): Checked<ScrollSide> {
  const { middle, headingRad } = fitLine(contour);
  const through = point<'scene'>(middle.x, middle.y);
  const along = contour.map((place) => inFrame({ origin: through, headingRad }, place).x);
  const [least, most] = [Math.min(...along), Math.max(...along)];
  const reach = END_SHARE * (most - least);
  const spanAt = (from: number, to: number): number => {
    const ys = contour
      .filter((_, i) => along[i] >= from && along[i] <= to)
      .map((place) => inFrame({ origin: through, headingRad }, place).y);
    return Math.max(...ys) - Math.min(...ys);
  };
  const [low, high] = [spanAt(least, least + reach), spanAt(most - reach, most)];
  if (Math.max(low, high) < CLEARLY * Math.min(low, high)) return refuse(noTurn());
  const toTurn = high > low ? headingRad : headingRad + Math.PI;
  const own = contour.map((place) => ({
    ...inFrame({ origin: through, headingRad: toTurn }, place),
    sigmaMm: place.sigmaMm,
  }));
  const upper = deepestHollow(own);
  const lower = deepestHollow(own.map(({ x, y, sigmaMm }) => ({ x, y: -y, sigmaMm })));
  const hollow = upper.depthMm >= lower.depthMm ? upper : lower;
  if (hollow.depthMm < LEAST_THROAT_MM) return refuse(noThroat());
  // Front up: where it already is, the frame stands; else the head lies the other way round, and is seen from its other side.
  const flipped = hollow === lower;
  const front = own.map(({ x, y, sigmaMm }) => ({ ...point<'section'>(x, flipped ? -y : y), sigmaMm }));
  const side = scrollFrom(front, hollow.at);
  return side ? accept({ ...side, mirrored: flipped }) : refuse(noTurn());
}

type Place = Point<'section'> & { readonly sigmaMm: number };

/** Null where the outer turn is no curve. */
function scrollFrom(
  places: readonly Place[],
  throatAt: Point<'section'>,
): Omit<ScrollSide, 'mirrored'> | null {
  const extreme = (list: readonly Place[], worth: (place: Place) => number) =>
    list.reduce((best, place) => (worth(place) > worth(best) ? place : best));
  const nutBack = extreme(places, ({ x, y }) => -x - y);
  const nutFront = extreme(places, ({ x, y }) => y - x);
  const lean = atan2(nutBack.x - nutFront.x, nutFront.y - nutBack.y);
  const square = ({ x, y }: Point<'section'>): Point<'section'> => {
    const [dx, dy] = [x - nutBack.x, y - nutBack.y];
    return point(dx * cos(lean) + dy * sin(lean), dy * cos(lean) - dx * sin(lean));
  };
  const moved = places.map((place) => ({ ...square(place), sigmaMm: place.sigmaMm }));
  const length = Math.max(...moved.map(({ x }) => x));
  const crest = extreme(moved, ({ x }) => x);
  const throat = square(throatAt);
  const turn = moved.filter(
    ({ x, y }) => x > throat.x && (y > throat.y || x > throat.x + TURN_SHARE * (length - throat.x)),
  );
  const circle = fitCircle(turn);
  if (circle === null) return null;
  const back = moved.filter(
    ({ x, y }) => x > BACK_SHARE.from * length && x < BACK_SHARE.to * length && y < backLimit(moved, x),
  );
  const ordered = back.toSorted((a, b) => a.x - b.x);
  const line = fitLine(ordered);
  const told = (at: Point<'section'>, plusMinusMm: number): ToldPlace => ({
    at: point(at.x, at.y),
    plusMinusMm,
  });
  return {
    contour: moved,
    lengthMm: length,
    nutEnd: {
      back: told(square(nutBack), CORNER_PLUS_MINUS_MM),
      front: told(square(nutFront), CORNER_PLUS_MINUS_MM),
    },
    crest: told(crest, CORNER_PLUS_MINUS_MM),
    eyeGuess: {
      ...told(point(circle.x, circle.y), Math.max(EYE_PLUS_MINUS_MM, 2 * circle.rms)),
      turnRadiusMm: circle.radius,
    },
    throat: told(throat, CORNER_PLUS_MINUS_MM),
    backLine: { from: ordered[0], to: ordered[ordered.length - 1], bowMm: line.rms },
  };
}

/** mm, k = 2. What a place at a rounded corner and a guessed eye are good to. */
const CORNER_PLUS_MINUS_MM = 0.5;
const EYE_PLUS_MINUS_MM = 2;
/** Share of the way from throat to crest beyond which the whole height belongs to the turn. */
const TURN_SHARE = 0.15;

/** Half way between back and front at this place: what lies below is back. */
function backLimit(places: readonly Place[], x: number): number {
  const near = places.filter((place) => Math.abs(place.x - x) < 1).map(({ y }) => y);
  return (Math.min(...near) + Math.max(...near)) / 2;
}

/** How deep the contour lies under the straight line that spans it from above, at its deepest. */
function deepestHollow(places: readonly Place[]): {
  readonly depthMm: number;
  readonly at: Point<'section'>;
} {
  const step = 1;
  const [least, most] = [Math.min(...places.map(({ x }) => x)), Math.max(...places.map(({ x }) => x))];
  const tops: Point<'section'>[] = [];
  for (let x = least + step; x < most - step; x += step) {
    const near = places.filter((place) => Math.abs(place.x - x) < step).map(({ y }) => y);
    if (near.length > 0) tops.push(point(x, Math.max(...near)));
  }
  const hull: Point<'section'>[] = [];
  for (const one of tops) {
    while (hull.length > 1 && !turnsDown(hull[hull.length - 2], hull[hull.length - 1], one)) hull.pop();
    hull.push(one);
  }
  let best = { depthMm: 0, at: tops[0] };
  for (const one of tops) {
    const next = hull.findIndex(({ x }) => x >= one.x);
    const [a, b] = [hull[Math.max(0, next - 1)], hull[next]];
    const share = b.x > a.x ? (one.x - a.x) / (b.x - a.x) : 0;
    const depthMm = a.y + share * (b.y - a.y) - one.y;
    if (depthMm > best.depthMm) best = { depthMm, at: one };
  }
  return best;
}

function turnsDown(a: Point<'section'>, b: Point<'section'>, c: Point<'section'>): boolean {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) < 0;
}

function noTurn(): Fault {
  return {
    code: 'scroll.no-turn',
    at: 'photograph',
    found: 'a thing as high at one end as at the other',
    need: 'a scroll seen from its side, its turn clearly higher than the nut end',
    remedy: 'lay the head flat on its side, and cover or leave out the neck behind the nut',
  };
}

function noThroat(): Fault {
  return {
    code: 'scroll.no-throat',
    at: 'photograph',
    found: 'no hollow between the turn and the pegbox on either side',
    need: 'a scroll seen from its side',
    remedy: 'lay the head flat on its side and photograph it from above',
  };
}
