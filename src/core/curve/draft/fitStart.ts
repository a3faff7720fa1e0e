import type { Point } from '../../base/index.ts';
import { AT } from './arcRun.ts';
import { draftProblem } from './draftProblem.ts';
import type { BodySizes, OutlineHabit } from './outlineHabit.ts';
import { cornerEndsMm, type OutlineTargets } from './outlineTargets.ts';
import { usualNumbers } from './shapeNumbers.ts';
import { FIT_AT, FIT_NUMBERS } from './shapePoint.ts';
import { solveDraft } from './solveDraft.ts';

/** Stretches of a half outline, corner ends included. */
export type OutlineStretch = 'lowerBout' | 'lowerCorner' | 'cBout' | 'upperCorner' | 'upperBout';

/** A place of a half outline (x ≥ 0, mm) with its weight and, where known, the stretch it belongs to. */
export interface OutlinePoint extends Point<'body'> {
  readonly weight: number;
  readonly section?: OutlineStretch;
}

/** Where a fit begins, and the spreads in which its steps are counted. */
export interface FitStart {
  readonly u: Float64Array;
  readonly spread: Float64Array;
}

/** mm. Spread in which steps of the body's ends are counted. */
const END_SPREAD_MM = 1;
const CORNER_END_SPREAD = 0.1; // share of the corner end's width

/** A draft from the points' own widths and corners: near enough for the fit to find every arc. */
export function fitStart(
  points: readonly OutlinePoint[],
  habit: OutlineHabit,
  ends: { readonly lowerEndY: number; readonly lengthMm: number },
): FitStart {
  const raised = points.map((p) => ({ ...p, y: p.y - ends.lowerEndY }));
  const sizes = sizesOf(raised, ends.lengthMm);
  const withCorners = solveDraft(draftProblem({ ...sizes, ...cornersOf(raised, sizes) }, habit));
  const plain = solveDraft(draftProblem(sizes, habit));
  const usual = draftProblem(sizes, habit).usual;
  const shape = withCorners.settled ? withCorners.u : plain.settled ? plain.u : usual;
  const { spread } = usualNumbers(habit, sizes, FIT_NUMBERS);
  const u = new Float64Array(FIT_NUMBERS);
  u.set(shape.subarray(0, AT.lowerEndHeading + 1));
  const corner = cornerEndsMm(sizes, habit).lower;
  u[FIT_AT.lowerEndWidth] = corner;
  u[FIT_AT.lowerEndY] = ends.lowerEndY;
  u[FIT_AT.lengthMm] = ends.lengthMm;
  spread[FIT_AT.lowerEndWidth] = CORNER_END_SPREAD * corner;
  spread[FIT_AT.lowerEndY] = END_SPREAD_MM;
  spread[FIT_AT.lengthMm] = END_SPREAD_MM;
  return { u, spread };
}

/** Where bouts and waist are looked for when points do not say, shares of the body length. */
const LOOKED_FOR = { lowerBout: [0, 0.34], cBout: [0.46, 0.62], upperBout: [0.72, 1] } as const;

function sizesOf(points: readonly OutlinePoint[], bodyLengthMm: number): BodySizes {
  const on = (name: keyof typeof LOOKED_FOR): readonly OutlinePoint[] =>
    points.filter(
      ({ y }) => y >= LOOKED_FOR[name][0] * bodyLengthMm && y <= LOOKED_FOR[name][1] * bodyLengthMm,
    );
  const widest = (name: 'lowerBout' | 'upperBout') => on(name).reduce((most, { x }) => Math.max(most, x), 0);
  return {
    bodyLengthMm,
    lowerBoutMm: 2 * widest('lowerBout'),
    waistMm: 2 * on('cBout').reduce((least, { x }) => Math.min(least, x), Infinity),
    upperBoutMm: 2 * widest('upperBout'),
  };
}

/**
 * The corner tips: the last places of the bouts where the points say to which stretch they belong, else the
 * places that stand out most between bout and waist.
 */
function cornersOf(points: readonly OutlinePoint[], sizes: BodySizes): Partial<OutlineTargets> {
  const tip = (bout: 'lowerBout' | 'upperBout', up: 1 | -1): OutlinePoint | undefined => {
    const [from, to] = CORNER_BETWEEN[bout].map((share) => share * sizes.bodyLengthMm);
    const own = points.filter(({ section }) => section === bout);
    const near = points.filter(
      ({ x, y }) => y >= from && y <= to && x > (WIDE_OF_WAIST * sizes[`${bout}Mm`]) / 2,
    );
    return own.length > 0
      ? farthest(own, ({ y }) => up * y)
      : farthest(near, ({ x, y }) => x + up * LEAN_TO_WAIST * y);
  };
  const lower = tip('lowerBout', 1);
  const upper = tip('upperBout', -1);
  if (!lower || !upper) return {};
  return {
    lowerCornerStationMm: lower.y,
    lowerCornersMm: 2 * lower.x,
    upperCornerStationMm: upper.y,
    upperCornersMm: 2 * upper.x,
  };
}

/** Where corner tips are looked for, shares of the body length; no tip lies as far in as the waist does. */
const CORNER_BETWEEN = { lowerBout: [0.33, 0.5], upperBout: [0.58, 0.74] } as const;
const WIDE_OF_WAIST = 0.75;
/** A tip stands out sideways and, this much, towards the waist: the bout's own flank does not. */
const LEAN_TO_WAIST = 0.3;

function farthest(
  points: readonly OutlinePoint[],
  score: (point: OutlinePoint) => number,
): OutlinePoint | undefined {
  return points.reduce<OutlinePoint | undefined>((a, b) => (a && score(a) >= score(b) ? a : b), undefined);
}

/** Whether the points reach everything that a start is measured from. */
export function missingStretch(
  points: readonly OutlinePoint[],
  lengthMm: number,
  lowerEndY: number,
): string | undefined {
  const names = { lowerBout: 'the lower bout', cBout: 'the waist', upperBout: 'the upper bout' } as const;
  const counts = Object.entries(LOOKED_FOR).map(([name, [from, to]]) => ({
    name: names[name as keyof typeof names],
    count: points.filter(({ y, weight }) => {
      const share = (y - lowerEndY) / lengthMm;
      return weight > 0 && share >= from && share <= to;
    }).length,
  }));
  return counts.find(({ count }) => count < FEWEST)?.name;
}

/** Points that a stretch needs at least: as many as numbers that shape it. */
const FEWEST = 12;
