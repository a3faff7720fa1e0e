import { cos, distanceBetween, type Point, point, sin } from '../../base/index.ts';
import { headingOn, nearestOnSpans, type Span, spansOf } from '../../curve/index.ts';
import { HOLE_SHAPE, type HoleShapeHabit } from '../../knowledge/index.ts';
import { addHold, addRow, clearEquations, emptyEquations, solveEquations } from '../../numeric/index.ts';
import { type DraftedHole, drawHole, type HoleSizes } from './draftHole.ts';
import { type DrawnFrom, FIT_NUMBERS } from './fitNumbers.ts';

/** A treble hole as it was traced: body frame, or a bass one mirrored into it. */
export interface TracedHole {
  /** Round the hole, closed, first place not repeated; weight 0 where something crosses it. */
  readonly contour: readonly (Point<'body'> & { readonly weight: number })[];
  /** Where the middles of the nicks meet the edge, as far as they are seen. */
  readonly innerNick?: Point<'body'>;
  readonly outerNick?: Point<'body'>;
}

/** How far a stretch of a traced hole lies off the drafted one. */
export interface HoleMisfit {
  readonly place: HoleStretch;
  readonly rmsMm: number;
  readonly mostMm: number;
}

/** Stretches of a hole, from the outer edge of the stem round. */
export type HoleStretch =
  | 'outer edge of the stem'
  | 'upper hook'
  | 'upper eye'
  | 'upper wing'
  | 'inner edge of the stem'
  | 'lower hook'
  | 'lower eye'
  | 'lower wing';

/** A hole drafted like a traced one. */
export interface FittedHole {
  /** What {@link draftHole} draws it from. */
  readonly sizes: HoleSizes;
  readonly shape: HoleShapeHabit;
  readonly lowerEye: { readonly centre: Point<'body'>; readonly radiusMm: number };
  /** Height of the inner nick over the lower end; where none was seen, where the shape has it. */
  readonly nickLineMm: number;
  readonly rmsMm: number;
  readonly mostMm: number;
  /** Stretch by stretch, those without a place of the trace left out. */
  readonly misfits: readonly HoleMisfit[];
}

/** The stretch that each arc or line of a drafted hole belongs to. */
const STRETCHES: readonly HoleStretch[] = [
  'outer edge of the stem',
  'upper hook',
  'upper hook',
  'upper eye',
  'upper wing',
  'upper wing',
  'upper wing',
  'inner edge of the stem',
  'lower hook',
  'lower hook',
  'lower eye',
  'lower wing',
  'lower wing',
  'lower wing',
];

/** Places along the contour that the fit looks at. */
const PLACES = 240;
/** No unit. Nicks and what their light spoils are left out: so many of their widths round each. */
const ROUND_NICK = 1.6;
/** mm. What a careful trace leaves by chance; holds the numbers that the trace says little of near the habit. Chosen by us. */
const BY_CHANCE_MM = 0.1;
/** No unit. Numbers may go this many spreads away before they are held back as much as by chance alone. */
const LOOSE = 3;
const MOST_ROUNDS = 60;
/** No unit. A step that improves the sum by less than this share of it is the last. */
const IMPROVED = 0.000_01;
/** Starts: where the rounds run into their eyes, degrees off the habit; a fit can rest in a wrong one of them. */
const STARTS_DEG = [0, -12, 10, -6];

/**
 * The drafted hole that lies nearest to a traced one, by the numbers that every drafted hole has: least squares over the distance
 * of the trace from it, numbers of which the trace says little held loosely near the habit. Nothing where no start can be drawn.
 *
 * Method: Levenberg–Marquardt with differences; the best of four starts. About a second.
 */
export function fitHole(traced: TracedHole, habit: HoleShapeHabit = HOLE_SHAPE): FittedHole | undefined {
  const ys = traced.contour.map(({ y }) => y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const nickLineMm = traced.innerNick?.y ?? high - habit.upper.reach * (high - low);
  const start = startFrom(traced, habit, nickLineMm);
  const places = evenPlaces(traced, start);
  let best: { readonly from: DrawnFrom; readonly sum: number } | undefined;
  for (const deg of STARTS_DEG) {
    const tried = settle(turnedInto(start, deg), start, places);
    if (tried && (best === undefined || tried.sum < best.sum)) best = tried;
  }
  if (best === undefined) return undefined;
  const { sizes, shape } = best.from;
  const hole = drawHole(sizes, shape);
  if (!hole.ok) return undefined;
  const { turnsApartMm: _, ...rest } = sizes;
  const { centre, radiusMm } = hole.value.lower.eye;
  return {
    sizes: { ...rest, stemMm: hole.value.stemMm },
    shape,
    nickLineMm,
    lowerEye: { centre: point(centre.x, centre.y + nickLineMm), radiusMm },
    ...misfitsOf(hole.value, places),
  };
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** The habit at the size and place of the trace; nicks where they are seen. */
function startFrom(traced: TracedHole, habit: HoleShapeHabit, nickLineMm: number): DrawnFrom {
  const xs = traced.contour.map(({ x }) => x);
  const ys = traced.contour.map(({ y }) => y);
  const [top, bottom] = [Math.max(...ys) - nickLineMm, nickLineMm - Math.min(...ys)];
  const lengthMm = top + bottom;
  const upperEyeMm = lengthMm * UPPER_EYE_SHARE;
  // The leftmost place of the hole is the rim of the hook round the upper eye.
  const leftMm = Math.min(...xs) + RIM_SHARE * lengthMm;
  const outerNick =
    traced.outerNick && traced.innerNick
      ? (traced.outerNick.y - traced.innerNick.y) / lengthMm
      : habit.outerNick;
  return {
    sizes: {
      lengthMm,
      upperEyesApartMm: 2 * leftMm,
      upperEyeMm,
      lowerEyeMm: lengthMm * LOWER_EYE_SHARE,
      turnsApartMm: lengthMm * UPPER_EYE_SHARE,
      tipGapMm: lengthMm * TIP_GAP_SHARE,
    },
    shape: {
      ...habit,
      outerNick,
      upper: { ...habit.upper, reach: top / lengthMm },
      lower: { ...habit.lower, reach: bottom / lengthMm },
    },
  };
}

/** Shares of the length of the fitted hole of 75 mm, where the fit starts. */
const UPPER_EYE_SHARE = 6.9 / 75;
const LOWER_EYE_SHARE = 10.2 / 75;
const TIP_GAP_SHARE = 1 / 75;
/** From the leftmost place of the hole to the rim of the eye. */
const RIM_SHARE = 0.01 / 75;

function turnedInto(from: DrawnFrom, deg: number): DrawnFrom {
  const { upper, lower } = from.shape;
  return {
    ...from,
    shape: {
      ...from.shape,
      upper: { ...upper, eyeFromDeg: upper.eyeFromDeg + deg },
      lower: { ...lower, eyeFromDeg: lower.eyeFromDeg + deg },
    },
  };
}

/** Evenly along the contour, from the nick line, those near a nick or under something left out. */
function evenPlaces({ contour, innerNick, outerNick }: TracedHole, start: DrawnFrom): readonly Place[] {
  const nearMm = ROUND_NICK * start.shape.nickWidth * start.sizes.lengthMm;
  const nickLineMm =
    innerNick?.y ?? Math.max(...contour.map(({ y }) => y)) - start.shape.upper.reach * start.sizes.lengthMm;
  const lengths = contour.map((a, index) => {
    const b = contour[(index + 1) % contour.length] as Point<'body'>;
    return distanceBetween(a, b);
  });
  const stepMm = lengths.reduce((sum, each) => sum + each, 0) / PLACES;
  const places: Place[] = [];
  let leftMm = 0;
  for (const [index, a] of contour.entries()) {
    const b = contour[(index + 1) % contour.length] as TracedHole['contour'][number];
    const lengthMm = lengths[index] as number;
    for (; leftMm < lengthMm; leftMm += stepMm) {
      const share = leftMm / lengthMm;
      const at = point<'body'>(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y));
      const weight = Math.min(a.weight, b.weight);
      const spoilt = [innerNick, outerNick].some((nick) => nick && distanceBetween(nick, at) < nearMm);
      if (weight > 0 && !spoilt) places.push({ x: at.x, y: at.y - nickLineMm, weight });
    }
    leftMm -= lengthMm;
  }
  return places;
}

function settle(
  first: DrawnFrom,
  habit: DrawnFrom,
  places: readonly Place[],
): { readonly from: DrawnFrom; readonly sum: number } | undefined {
  const lengthScale = habit.sizes.lengthMm / SPREADS_FOR_MM;
  const spreads = FIT_NUMBERS.map(({ spread, scales }) => (scales ? spread * lengthScale : spread));
  const wished = FIT_NUMBERS.map(({ read }) => read(habit));
  const holds = spreads.map((spread) => (BY_CHANCE_MM / (LOOSE * spread)) ** 2);
  const costOf = (from: DrawnFrom): { readonly misses: Float64Array; readonly sum: number } | undefined => {
    const misses = missesOf(from, places);
    if (misses === undefined) return undefined;
    const held = FIT_NUMBERS.reduce(
      (sum, { read }, i) => sum + (holds[i] as number) * (read(from) - (wished[i] as number)) ** 2,
      0,
    );
    return {
      misses,
      sum: places.reduce((sum, { weight }, i) => sum + weight * (misses[i] as number) ** 2, held),
    };
  };
  let from = first;
  let cost = costOf(from);
  if (cost === undefined) return undefined;
  let damping = 0.01;
  const equations = emptyEquations(FIT_NUMBERS.length);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { misses } = cost;
    const slopes = FIT_NUMBERS.map(({ read, put }, i) => {
      const step = (spreads[i] as number) * DIFFERENCE;
      const ahead = missesOf(put(from, read(from) + step), places);
      const behind = missesOf(put(from, read(from) - step), places);
      if (ahead && behind) return { ahead, behind, over: 2 * step };
      if (ahead) return { ahead, behind: misses, over: step };
      return behind ? { ahead: misses, behind, over: step } : undefined;
    });
    let stepped = false;
    for (let attempt = 0; attempt < MOST_DAMPINGS && !stepped; attempt++) {
      clearEquations(equations);
      const row = new Float64Array(FIT_NUMBERS.length);
      for (const [at, { weight }] of places.entries()) {
        for (const [i, slope] of slopes.entries())
          row[i] = slope ? ((slope.ahead[at] as number) - (slope.behind[at] as number)) / slope.over : 0;
        addRow(equations, row, -(misses[at] as number), weight);
      }
      for (const [i, { read }] of FIT_NUMBERS.entries()) {
        addHold(equations, i, (wished[i] as number) - read(from), holds[i] as number);
        addHold(equations, i, 0, (damping * places.length * BY_CHANCE_MM) / (spreads[i] as number) ** 2);
      }
      if (!solveEquations(equations)) return { from, sum: cost.sum };
      const stepTo = FIT_NUMBERS.reduce(
        (put, number, i) => number.put(put, number.read(from) + (equations.right[i] as number)),
        from,
      );
      const next = costOf(stepTo);
      if (next && next.sum < cost.sum) {
        const better = 1 - next.sum / cost.sum;
        [from, cost, damping, stepped] = [stepTo, next, damping / DAMPED_LESS, true];
        if (better < IMPROVED) return { from, sum: cost.sum };
      } else damping *= DAMPED_MORE;
    }
    if (!stepped) break;
  }
  return { from, sum: cost.sum };
}

/** mm. Length of hole that the spreads were taken at. */
const SPREADS_FOR_MM = 75;
/** Share of a spread by which a slope is taken. */
const DIFFERENCE = 0.02;
const MOST_DAMPINGS = 8;
const DAMPED_LESS = 5;
const DAMPED_MORE = 4;

/** How far every place lies off the hole, outside positive; nothing where the hole cannot be drawn. */
function missesOf(from: DrawnFrom, places: readonly Place[]): Float64Array | undefined {
  const hole = drawHole(from.sizes, from.shape);
  if (!hole.ok) return undefined;
  const spans = spansOf(hole.value.plain);
  return Float64Array.from(places, (place) => missOf(spans, place).offMm);
}

function missOf(
  spans: readonly Span<'section'>[],
  { x, y }: Place,
): { readonly offMm: number; readonly segment: number } {
  const at = point<'section'>(x, y);
  const { point: foot, distanceMm, segment, fraction } = nearestOnSpans(spans, at);
  const span = spans[segment];
  if (!span) return { offMm: distanceMm, segment };
  // Inside lies to the left of the travel.
  const headingRad = headingOn(span.segment, fraction);
  const left = cos(headingRad) * (y - foot.y) - sin(headingRad) * (x - foot.x);
  return { offMm: left > 0 ? -distanceMm : distanceMm, segment };
}

function misfitsOf(
  hole: DraftedHole,
  places: readonly Place[],
): Pick<FittedHole, 'rmsMm' | 'mostMm' | 'misfits'> {
  const spans = spansOf(hole.plain);
  const offs = places.map((place) => missOf(spans, place));
  const measured = (list: readonly { readonly offMm: number }[]) => ({
    rmsMm: Math.sqrt(list.reduce((sum, { offMm }) => sum + offMm * offMm, 0) / Math.max(1, list.length)),
    mostMm: list.reduce((most, { offMm }) => Math.max(most, Math.abs(offMm)), 0),
  });
  const misfits = [...new Set(STRETCHES)].flatMap((place): HoleMisfit[] => {
    const own = offs.filter(({ segment }) => STRETCHES[segment] === place);
    return own.length === 0 ? [] : [{ place, ...measured(own) }];
  });
  return { ...measured(offs), misfits };
}
