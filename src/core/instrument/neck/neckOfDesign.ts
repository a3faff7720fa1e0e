import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import { type Design, VALUES, type ValueName } from '../../design/index.ts';
import type { Quantity } from '../../quantity/index.ts';
import { type PlateArch, plateHeight } from '../arching/index.ts';
import { type MortiseSlope, mortiseSlope } from './mortise.ts';
import { neckContradiction } from './neckContradiction.ts';
import type { NeckSet, NeckSetSizes } from './neckSet.ts';
import {
  type MetReading,
  type SetName,
  type SetReading,
  type SettledQuestion,
  settledNeck,
} from './settledNeck.ts';

/** The set of an instrument's neck: as given, where that can be, and as near to it as can be where it cannot. */
export interface SetNeck {
  /** What it was solved from; overstand, projection and neck stop as solved. */
  readonly sizes: NeckSetSizes;
  readonly set: NeckSet;
  readonly mortise: MortiseSlope;
  readonly rootAngleRad: number;
  /** From the upper face of the top's edge to the gluing face of the back, at the neck. */
  readonly bodyHeightMm: number;
  /** What was given of the set, each with what the solved set has there. */
  readonly met: readonly MetReading[];
  readonly questions: readonly SettledQuestion[];
  readonly findings: readonly Finding[];
}

/** Standard deviations of what is given without ±, in mm and degrees: how well a maker takes it. Chosen by us. */
const USUAL_SPREAD: Readonly<Record<SetName, number>> = {
  neckStop: 0.5,
  overstand: 0.3,
  projection: 0.5,
  neckAngle: 0.15,
  boardEndHeight: 0.5,
  bridgeHeight: 0.5,
  stringLength: 1,
};

/** No unit. A ± is the half interval at k = 2. */
const SPREADS_IN_PLUS_MINUS = 2;

/** mm, degrees. A ± below this is not believed of a neck: wood and callipers do not hold it. */
const LEAST_SPREAD = 0.05;

/** What the set is made from besides what is sought; all needed. */
const SIZE_NAMES = [
  'neckStop',
  'stop',
  'overstand',
  'projection',
  'edgeHeightTop',
  'ribHeightNeck',
  'boardLength',
  'boardWidthNut',
  'boardWidthEnd',
  'boardRadius',
  'boardSide',
  'stringNutBass',
  'stringNutTreble',
  'stringEndBass',
  'stringEndTreble',
  'mortiseDepth',
  'rootAngle',
] as const satisfies readonly ValueName[];

/** Rounds in which the arch under the end of the board is found where the end comes to lie; each moves it by less than 1 %. */
const ARCH_ROUNDS = 2;

/**
 * The set of a design's neck over the arch of its top. Heights count from the upper face of the top's edge.
 *
 * Faults: `neck.value` (a value that is missing or no length above 0), those of `neckSet`. Findings: those of
 * {@link neckContradiction}.
 */
export function neckOfDesign(design: Design, top: PlateArch): Checked<SetNeck> {
  const unsound = SIZE_NAMES.filter((name) => !((design.values[name]?.value ?? Number.NaN) > 0));
  if (unsound.length > 0) return refuse(...unsound.map((name) => noNumber(name, design.values[name])));
  const value = (name: (typeof SIZE_NAMES)[number]): number => design.values[name]?.value ?? Number.NaN;
  const overEdgeMm = (fromTopEndMm: number): number =>
    plateHeight(top, 0, top.bodyLengthMm - fromTopEndMm, 'finished') - top.numbers.edgeHeightMm;
  const readings = readingsOf(design);
  let endMm = value('boardLength') - value('neckStop');
  const modelOver = (boardEndMm: number): NeckSetSizes => ({
    neckStopMm: value('neckStop'),
    bodyStopMm: value('stop'),
    overstandMm: value('overstand'),
    projectionMm: value('projection'),
    archAtBridgeMm: overEdgeMm(value('stop')),
    archAtBoardEndMm: overEdgeMm(boardEndMm),
    board: {
      lengthMm: value('boardLength'),
      widthAtNutMm: value('boardWidthNut'),
      widthAtEndMm: value('boardWidthEnd'),
      radiusMm: value('boardRadius'),
      sideMm: value('boardSide'),
    },
    // The crown of the strings follows the round of the board nearly, tilted: half way between both outer strings.
    stringsAtNutMm: (value('stringNutBass') + value('stringNutTreble')) / 2,
    stringsAtBoardEndMm: (value('stringEndBass') + value('stringEndTreble')) / 2,
  });
  let settled = settledNeck(modelOver(endMm), readings);
  for (let round = 0; round < ARCH_ROUNDS && settled.ok; round++) {
    endMm = settled.value.set.boardEndFromTopEndMm;
    settled = settledNeck(modelOver(endMm), readings);
  }
  if (!settled.ok) return settled;
  const { sizes, set, met, questions } = settled.value;
  const bodyHeightMm = value('edgeHeightTop') + value('ribHeightNeck');
  const rootAngleRad = (value('rootAngle') * Math.PI) / 180;
  return accept({
    sizes,
    set,
    met,
    questions,
    mortise: mortiseSlope(set.neckAngleRad, rootAngleRad, value('mortiseDepth'), bodyHeightMm),
    rootAngleRad,
    bodyHeightMm,
    findings: neckContradiction(modelOver(endMm), readings, settled.value),
  });
}

const SET_NAMES = Object.keys(USUAL_SPREAD) as readonly SetName[];

function readingsOf(design: Design): readonly SetReading[] {
  return SET_NAMES.flatMap((name) => {
    const quantity = design.values[name];
    if (!quantity) return [];
    const { value, plusMinus } = quantity;
    const spread =
      plusMinus === undefined
        ? USUAL_SPREAD[name]
        : Math.max(LEAST_SPREAD, plusMinus / SPREADS_IN_PLUS_MINUS);
    return [{ name, value, spread, isGiven: isGiven(quantity) }];
  });
}

/** Whether a maker gave it, rather than a habit filled it. */
function isGiven({ origin }: Quantity): boolean {
  return origin.kind === 'measured' || (origin.kind === 'chosen' && !origin.why?.startsWith('by us'));
}

function noNumber(name: ValueName, quantity: Quantity | undefined): Fault {
  return {
    code: 'neck.value',
    at: name,
    found: quantity === undefined ? 'no value' : `${quantity.value}`,
    need: 'a number above 0',
    remedy: `correct it: the ${VALUES[name].says}`,
  };
}
