import { atan2, cos, hypot, type Point, point, power, sin } from '../../base/index.ts';
import { arcOf, type Chain, segments } from '../../curve/index.ts';
import { addHold, addRow, emptyEquations, medianOf, solveEquations } from '../../numeric/index.ts';

/** A place of an arm with its scatter, mm, one standard deviation. */
export interface ArmPlace extends Point<'body'> {
  readonly sigmaMm: number;
}

/** The last stretch of an arm before its corner tip, drawn as one bend that runs on past the tip. */
export interface ArmBend {
  /** How far outside a place the bend lies along a normal there, and one standard deviation of it. `fromTipMm` counts inwards. */
  readonly gapAt: (
    place: Point<'body'>,
    normal: { readonly x: number; readonly y: number },
    fromTipMm: number,
  ) => { readonly gapMm: number; readonly sigmaMm: number };
}

/** Places that an arm is not drawn without. */
const LEAST_PLACES = 8;
/** mm. What lies farther from the fitted last arc is no place of this arm. */
const NEAR_MM = 3;
/** Shares of a last arc's bend: by how much the arm's may differ, and by how much it may change along the arm; one standard deviation each. */
const BEND = { differs: 0.5, changes: 0.1 };
/** The usual cut of Tukey's weights: 95 % efficient on normal noise. */
const CUT = 4.685;
const NORMAL_TO_MEDIAN = 1.4826;
/** mm. The scatter of an arm's places is never taken for less. */
const LEAST_SCATTER_MM = 0.04;
/** Rounds of least absolute distances, which no slip leads astray, and of Tukey's weights after them. */
const ROUNDS = { absolute: 5, cut: 6 };
/** Rounds in which the place opposite a normal is found, and the step that tells how it moves, as a share of the arm. */
const OPPOSITE = { rounds: 4, step: 0.01 };
/** Numbers of a bend: place, direction, bend, change of bend. */
const NUMBERS: readonly number[] = [0, 1, 2, 3];

/**
 * An arm as a maker would carry it on: the one bend, evenly more or less bent along its way, that runs through the places of its
 * last `armMm`, slips left aside. The last arc of `chain` at that end is its start and leads it where places are few.
 * Undefined where that arc is a line or the places are too few.
 */
export function armBend(
  chain: Chain<'body'>,
  at: 'start' | 'end',
  places: readonly ArmPlace[],
  armMm: number,
): ArmBend | undefined {
  const segment = segments(chain).at(at === 'end' ? -1 : 0);
  const arc = segment && arcOf(segment);
  if (!segment || !arc) return undefined;
  const { centre, radiusMm } = arc;
  const tip = at === 'end' ? segment.end : segment.start;
  const tipRad = atan2(tip.y - centre.y, tip.x - centre.x);
  // Outward lies to the right of the travel: away from the centre where the arc turns left.
  const outward = Math.sign(arc.sweepRad);
  const inward = at === 'end' ? -outward : outward;
  const seen = places.flatMap(({ x, y, sigmaMm }) => {
    const turnRad = atan2(y - centre.y, x - centre.x) - tipRad;
    const nearRad = turnRad - 2 * Math.PI * Math.round(turnRad / (2 * Math.PI));
    const share = (inward * nearRad * radiusMm) / armMm;
    const gapMm = outward * (hypot(x - centre.x, y - centre.y) - radiusMm);
    return Math.abs(share) > 1 || Math.abs(gapMm) > NEAR_MM ? [] : [{ share, gapMm, sigmaMm }];
  });
  const bend = fittedBend(seen, armMm ** 2 / radiusMm);
  if (bend === undefined) return undefined;
  const placeAt = (share: number) => {
    const angle = tipRad + (inward * share * armMm) / radiusMm;
    const radius = radiusMm + outward * bend.gapMm(share);
    return point<'body'>(centre.x + radius * cos(angle), centre.y + radius * sin(angle));
  };
  return {
    gapAt: (place, normal, fromTipMm) => {
      const besideMm = (share: number) => {
        const { x, y } = placeAt(share);
        return (y - place.y) * normal.x - (x - place.x) * normal.y;
      };
      let share = fromTipMm / armMm;
      for (let round = 0; round < OPPOSITE.rounds; round++) {
        const here = besideMm(share);
        share -= (OPPOSITE.step * here) / (besideMm(share + OPPOSITE.step) - here);
      }
      const { x, y } = placeAt(share);
      return {
        gapMm: (x - place.x) * normal.x + (y - place.y) * normal.y,
        sigmaMm: bend.sigmaMm(share),
      };
    },
  };
}

/** A place of an arm: how far from the tip as a share of the arm, and how far outside the last arc. */
interface SeenGap {
  readonly share: number;
  readonly gapMm: number;
  readonly sigmaMm: number;
}

/** Gaps from an arc as a cubic along the arm, robust; `saggedMm` is the arm's length squared over the arc's radius. */
function fittedBend(seen: readonly SeenGap[], saggedMm: number) {
  if (seen.length < LEAST_PLACES) return undefined;
  let weights = seen.map(() => 1);
  let numbers: readonly number[] = NUMBERS.map(() => 0);
  const gapMm = (share: number) =>
    numbers[0] + share * (numbers[1] + share * (numbers[2] + share * numbers[3]));
  const equations = () => {
    const sums = emptyEquations(NUMBERS.length);
    seen.forEach(({ share, gapMm: mm, sigmaMm }, i) => {
      addRow(sums, row(share), mm, weights[i] / sigmaMm ** 2);
    });
    addHold(sums, 2, 0, (2 / (BEND.differs * saggedMm)) ** 2);
    addHold(sums, 3, 0, (6 / (BEND.changes * saggedMm)) ** 2);
    return sums;
  };
  for (let round = 0; round < ROUNDS.absolute + ROUNDS.cut; round++) {
    const sums = equations();
    if (!solveEquations(sums)) return undefined;
    numbers = [...sums.right];
    const off = seen.map(({ share, gapMm: mm }) => Math.abs(mm - gapMm(share)));
    const cut = CUT * Math.max(LEAST_SCATTER_MM, NORMAL_TO_MEDIAN * medianOf(off));
    weights = off.map((mm) =>
      round < ROUNDS.absolute
        ? LEAST_SCATTER_MM / Math.max(mm, LEAST_SCATTER_MM)
        : Math.max(0, 1 - (mm / cut) ** 2) ** 2,
    );
  }
  const spreads = NUMBERS.map((k) => {
    const sums = equations();
    sums.right.fill(0);
    sums.right[k] = 1;
    return solveEquations(sums) ? [...sums.right] : null;
  });
  if (spreads.some((spread) => spread === null)) return undefined;
  const sigmaMm = (share: number) => {
    const at = row(share);
    const square = NUMBERS.reduce(
      (sum, a) => sum + NUMBERS.reduce((part, b) => part + at[a] * (spreads[a]?.[b] ?? 0) * at[b], 0),
      0,
    );
    return Math.sqrt(Math.max(0, square));
  };
  return { gapMm, sigmaMm };
}

function row(share: number): Float64Array {
  return Float64Array.of(1, share, share ** 2, power(share, 3));
}
