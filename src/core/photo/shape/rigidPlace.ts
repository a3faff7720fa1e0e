import { cos, norm, type Point, point, sin } from '../../base/index.ts';
import { type Chain, headingOn, nearestOn, type Segment, segments } from '../../curve/index.ts';
import { addRow, emptyEquations, medianOf, solveEquations } from '../../numeric/index.ts';
import { bodyToScene, type ShapeSeat, sceneToBody } from './shapeSeat.ts';

/** A measured place against the expected edge. */
export interface EdgeMiss {
  readonly found: Point<'body'>;
  /** Nearest place on the expected edge, and the unit normal there that points out of the material. */
  readonly expected: Point<'body'>;
  readonly normal: Point<'body'>;
  /** + outside the expected edge, − inside. */
  readonly missMm: number;
}

/** How measured places lie against the expected edge, and what simple faults of the whole would explain. */
export interface SizeMisfit {
  /** Shares by which the thing is too large along and across the centre line, with their spreads. */
  readonly along: number;
  readonly across: number;
  readonly sigma: number;
  /** mm by which it stands out all round. */
  readonly allRoundMm: number;
  /** Root mean square of the misses as they are, after the size, and after the all-round misfit is taken off. */
  readonly rmsMm: number;
  readonly rmsAfterSizeMm: number;
  readonly rmsAfterAllRoundMm: number;
}

/** A fit keeps its weights from Tukey's biweight; 4.685 spreads is its usual cut. */
const CUT = 4.685;
const TO_SPREAD = 1.4826;
/** mm. Misses are never taken for better than this. */
const LEAST_SPREAD_MM = 0.03;
const ROUNDS = 40;
/** mm. A move smaller than this ends the fit. */
const RESTING_MM = 0.0005;

/**
 * The seat moved and turned, and if `free` resized, to where the measured places lie nearest to the expected edge;
 * places far off lose their weight, so that a flaw at one place does not tilt the whole. Null when it does not settle.
 */
export function settleSeat(
  chain: Chain<'body'>,
  start: ShapeSeat,
  places: readonly Point<'scene'>[],
  free: 'rigid' | 'resized',
): ShapeSeat | null {
  let seat = free === 'rigid' ? { ...start, scale: 1 } : start;
  if (free === 'rigid') seat = aboutSame(seat, start, places);
  for (let round = 0; round < ROUNDS; round++) {
    const misses = missesFrom(chain, seat, places);
    const step = leastSquares(misses, weightsOf(misses), free === 'rigid' ? RIGID : RESIZED);
    if (!step) return null;
    const [dx, dy, turn, grow] = [step[0], step[1], step[2] / ARM_MM, (step[3] ?? 0) / ARM_MM];
    seat = moved(seat, dx, dy, turn, grow);
    if (norm(step) < RESTING_MM) return seat;
  }
  return null;
}

/** How far the places miss the expected edge from a seat. */
export function missesFrom(
  chain: Chain<'body'>,
  seat: ShapeSeat,
  places: readonly Point<'scene'>[],
): readonly EdgeMiss[] {
  const all = segments(chain);
  return places.map((place) => {
    const found = sceneToBody(seat, place);
    const { point: expected, distanceMm, side, segment, fraction } = nearestOn(chain, found);
    const missMm = side > 0 ? -distanceMm : distanceMm;
    const normal = outward(found, expected, missMm, all[segment], fraction);
    return { found, expected, missMm, normal };
  });
}

function outward(
  found: Point<'body'>,
  expected: Point<'body'>,
  missMm: number,
  segment: Segment<'body'>,
  fraction: number,
): Point<'body'> {
  if (Math.abs(missMm) > CLEAR_MM)
    return point((found.x - expected.x) / missMm, (found.y - expected.y) / missMm);
  const heading = headingOn(segment, fraction);
  return point(sin(heading), -cos(heading));
}

/** mm. Nearer than this the way to the edge has no sure direction. */
const CLEAR_MM = 0.001;

/** What a wrong size, or an edge that stands out or back all round, would explain of the misses. */
export function sizeMisfit(misses: readonly EdgeMiss[]): SizeMisfit {
  const weights = weightsOf(misses);
  const rmsOf = (rest: (miss: EdgeMiss) => number): number => {
    const total = weights.reduce((sum, one) => sum + one, 0);
    return Math.sqrt(misses.reduce((sum, miss, i) => sum + weights[i] * rest(miss) ** 2, 0) / total);
  };
  const size = leastSquares(misses, weights, SIZED) ?? new Float64Array(SIZED.length);
  const round = leastSquares(misses, weights, ALL_ROUND) ?? new Float64Array(ALL_ROUND.length);
  const rest = (terms: readonly Term[], found: Float64Array) => (miss: EdgeMiss) =>
    miss.missMm + terms.reduce((sum, term, i) => sum + term(miss) * found[i], 0);
  const rmsAfterSizeMm = rmsOf(rest(SIZED, size));
  return {
    along: -size[4] / ARM_MM,
    across: -size[3] / ARM_MM,
    sigma: rmsAfterSizeMm / ARM_MM / Math.sqrt(Math.max(1, misses.length / TOGETHER)),
    allRoundMm: -round[3],
    rmsMm: rmsOf(({ missMm }) => missMm),
    rmsAfterSizeMm,
    rmsAfterAllRoundMm: rmsOf(rest(ALL_ROUND, round)),
  };
}

/** Neighbouring places whose errors go together. */
const TOGETHER = 10;

/** mm. Turns and sizes are counted as moves at this arm, so that all unknowns are lengths. */
const ARM_MM = 100;

/** How much a unit of an unknown adds to a miss. */
type Term = (miss: EdgeMiss) => number;

const RIGID: readonly Term[] = [
  ({ normal }) => normal.x,
  ({ normal }) => normal.y,
  ({ normal, found }) => (normal.y * found.x - normal.x * found.y) / ARM_MM,
];
const ACROSS: Term = ({ normal, found }) => (normal.x * found.x) / ARM_MM;
const ALONG: Term = ({ normal, found }) => (normal.y * found.y) / ARM_MM;
const RESIZED: readonly Term[] = [...RIGID, (miss) => ACROSS(miss) + ALONG(miss)];
const SIZED: readonly Term[] = [...RIGID, ACROSS, ALONG];
const ALL_ROUND: readonly Term[] = [...RIGID, () => 1];

function weightsOf(misses: readonly EdgeMiss[]): readonly number[] {
  const spread = Math.max(
    LEAST_SPREAD_MM,
    TO_SPREAD * medianOf(misses.map(({ missMm }) => Math.abs(missMm))),
  );
  return misses.map(({ missMm }) => {
    const rest = 1 - Math.min(1, (missMm / (CUT * spread)) ** 2);
    return rest * rest;
  });
}

/** The unknowns that bring the misses nearest to none. */
function leastSquares(
  misses: readonly EdgeMiss[],
  weights: readonly number[],
  terms: readonly Term[],
): Float64Array | undefined {
  const equations = emptyEquations(terms.length);
  misses.forEach((miss, place) => {
    const row = Float64Array.from(terms, (term) => term(miss));
    addRow(equations, row, -miss.missMm, weights[place]);
  });
  return solveEquations(equations) ? equations.right : undefined;
}

/** The seat in which every place of the body frame reads moved by (dx, dy), turned and grown about the origin. */
function moved(seat: ShapeSeat, dx: number, dy: number, turn: number, grow: number): ShapeSeat {
  // The body reads a place as B; it is to read it as B + d + turn × B + grow · B: the inverse goes into the seat.
  const scale = seat.scale / (1 + grow);
  const turnRad = seat.turnRad + (seat.mirrored ? turn : -turn);
  const next: ShapeSeat = { ...seat, scale, turnRad };
  const before = bodyToScene(seat, point(0, 0));
  const after = bodyToScene({ ...next, shift: point(0, 0) }, point(dx, dy));
  return { ...next, shift: point(before.x - after.x, before.y - after.y) };
}

/** A seat of true size that keeps the middle of the places where it was. */
function aboutSame(seat: ShapeSeat, start: ShapeSeat, places: readonly Point<'scene'>[]): ShapeSeat {
  const count = Math.max(1, places.length);
  const middle = point<'scene'>(
    places.reduce((sum, { x }) => sum + x, 0) / count,
    places.reduce((sum, { y }) => sum + y, 0) / count,
  );
  const now = bodyToScene(seat, sceneToBody(start, middle));
  return {
    ...seat,
    shift: point(seat.shift.x + middle.x - now.x, seat.shift.y + middle.y - now.y),
  };
}
