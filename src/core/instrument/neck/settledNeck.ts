import { accept, type Checked } from '../../base/index.ts';
import { solveSquare } from '../../numeric/index.ts';
import { type NeckSet, type NeckSetSizes, neckSet } from './neckSet.ts';

/** Numbers that say how a neck is set; any two of the middle ones say it whole, more must agree. */
export type SetName =
  | 'neckStop'
  | 'overstand'
  | 'projection'
  | 'neckAngle'
  | 'boardEndHeight'
  | 'bridgeHeight'
  | 'stringLength';

/** One of them as it was given, or as the habit of the family has it. */
export interface SetReading {
  readonly name: SetName;
  /** mm, angles in degrees. */
  readonly value: number;
  /** Standard deviation, in the same unit. */
  readonly spread: number;
  readonly isGiven: boolean;
}

/** A neck that meets what was given as nearly as it can be met. */
export interface SettledNeck {
  readonly sizes: NeckSetSizes;
  readonly set: NeckSet;
  /** The set itself and the lengths: each settled by its own readings. */
  readonly questions: readonly SettledQuestion[];
  /** What was given and can choose something, each with the number that the settled neck has there. */
  readonly met: readonly MetReading[];
}

/** One question that the readings answer between them. */
export interface SettledQuestion {
  readonly asks: 'set' | 'lengths';
  readonly met: readonly MetReading[];
  /** Sum of squared misses over their spreads. */
  readonly sumOfSquares: number;
  /** How many numbers more were given than there are to choose. */
  readonly surplus: number;
}

export interface MetReading extends SetReading {
  readonly settled: number;
}

/** mm. Step for the slopes of what depends on overstand, projection and neck stop; nearly linear over far more. */
const STEP_MM = 0.01;

/** Rounds of the fit: nearly linear, and the two questions nearly apart, so that each round leaves a hundredth at most. */
const ROUNDS = 5;

type Unknown = 'overstand' | 'projection' | 'neckStop';

/**
 * The set of a neck from whatever is known of it, over a body stop and a board that stand: weighted least squares on those of
 * overstand and projection that are given or that something given decides, and on the neck stop where a length of string is
 * given. What nobody gives keeps its habit: the neck stop, then the overstand, then the projection. A length of string has no
 * vote about angle and heights, though it changes a little with them.
 *
 * @param model overstand, projection and neck stop as given or as the habit has them, and all other sizes
 * Faults: those of {@link neckSet}.
 */
export function settledNeck(model: NeckSetSizes, readings: readonly SetReading[]): Checked<SettledNeck> {
  const given = readings.filter(({ isGiven }) => isGiven);
  const questions = questionsOf(given);
  let sizes = model;
  let solved = neckSet(sizes);
  for (let round = 0; round < ROUNDS; round++)
    for (const { rows, unknowns } of questions) {
      if (!solved.ok || unknowns.length === 0) continue;
      const slopes = slopesOf(sizes, solved.value, rows, unknowns);
      const step = slopes && leastSquaresStep(rows, slopes, sizes, solved.value);
      if (!step) continue;
      sizes = moved(sizes, unknowns, step);
      solved = neckSet(sizes);
    }
  if (!solved.ok) return solved;
  const { value: set } = solved;
  const answered = questions.map(({ asks, rows, unknowns }): SettledQuestion => {
    const met = rows.map((row) => ({ ...row, settled: numberOf(row.name, sizes, set) }));
    return {
      asks,
      met,
      sumOfSquares: met.reduce(
        (sum, { value, settled, spread }) => sum + ((value - settled) / spread) ** 2,
        0,
      ),
      surplus: rows.length - unknowns.length,
    };
  });
  return accept({ sizes, set, questions: answered, met: answered.flatMap(({ met }) => met) });
}

interface Question {
  readonly asks: SettledQuestion['asks'];
  readonly rows: readonly SetReading[];
  readonly unknowns: readonly Unknown[];
}

/** What of a neck is sought from what. Projection and height of the bridge say the same, so that both leave the overstand open. */
function questionsOf(given: readonly SetReading[]): readonly Question[] {
  const has = (name: SetName): boolean => given.some((reading) => reading.name === name);
  const tells = [has('projection') || has('bridgeHeight'), has('neckAngle'), has('boardEndHeight')];
  const count = tells.filter(Boolean).length;
  const isLength = ({ name }: SetReading): boolean => name === 'neckStop' || name === 'stringLength';
  return [
    {
      asks: 'set',
      rows: given.filter((reading) => !isLength(reading)),
      unknowns: [
        ...(has('overstand') || count > 1 ? (['overstand'] as const) : []),
        ...(count > 0 ? (['projection'] as const) : []),
      ],
    },
    {
      asks: 'lengths',
      rows: has('stringLength') ? given.filter(isLength) : [],
      unknowns: has('stringLength') ? ['neckStop'] : [],
    },
  ];
}

/** The number of a set neck that goes by a name; mm, angles in degrees. */
export function numberOf(name: SetName, sizes: NeckSetSizes, set: NeckSet): number {
  switch (name) {
    case 'neckStop':
      return sizes.neckStopMm;
    case 'overstand':
      return sizes.overstandMm;
    case 'projection':
      return sizes.projectionMm;
    case 'neckAngle':
      return (set.neckAngleRad * 180) / Math.PI;
    case 'boardEndHeight':
      return set.boardEndOverTopMm;
    case 'bridgeHeight':
      return set.bridgeHeightMm;
    case 'stringLength':
      return set.stringLengthMm;
  }
}

function moved(sizes: NeckSetSizes, unknowns: readonly Unknown[], step: ArrayLike<number>): NeckSetSizes {
  const by = (name: Unknown): number => step[unknowns.indexOf(name)] ?? 0;
  return {
    ...sizes,
    overstandMm: sizes.overstandMm + by('overstand'),
    projectionMm: sizes.projectionMm + by('projection'),
    neckStopMm: sizes.neckStopMm + by('neckStop'),
  };
}

/** How every row changes with every unknown; undefined beside what can be set at all. */
function slopesOf(
  sizes: NeckSetSizes,
  set: NeckSet,
  rows: readonly SetReading[],
  unknowns: readonly Unknown[],
): readonly Float64Array[] | undefined {
  const slopes = rows.map(() => new Float64Array(unknowns.length));
  for (const [at] of unknowns.entries()) {
    const beside = moved(
      sizes,
      unknowns,
      unknowns.map((_, other) => (other === at ? STEP_MM : 0)),
    );
    const solved = neckSet(beside);
    if (!solved.ok) return undefined;
    rows.forEach(({ name }, row) => {
      const change = numberOf(name, beside, solved.value) - numberOf(name, sizes, set);
      (slopes[row] as Float64Array)[at] = change / STEP_MM;
    });
  }
  return slopes;
}

function leastSquaresStep(
  rows: readonly SetReading[],
  slopes: readonly Float64Array[],
  sizes: NeckSetSizes,
  set: NeckSet,
): Float64Array | undefined {
  const size = slopes[0]?.length ?? 0;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  rows.forEach(({ name, value, spread }, row) => {
    const missing = value - numberOf(name, sizes, set);
    const slope = slopes[row] as Float64Array;
    slope.forEach((s, i) => {
      right[i] = (right[i] ?? 0) + (s * missing) / spread ** 2;
      slope.forEach((t, j) => {
        const line = matrix[i] as Float64Array;
        line[j] = (line[j] ?? 0) + (s * t) / spread ** 2;
      });
    });
  });
  return solveSquare(matrix, right);
}
