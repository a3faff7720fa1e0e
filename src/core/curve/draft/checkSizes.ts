import type { Fault, Finding } from '../../base/index.ts';
import { finding, inMm, MEASURED_AS, type TargetName } from './draftWords.ts';
import type { Limits, OutlineHabit } from './outlineHabit.ts';
import { cornerEndsMm, type OutlineTargets } from './outlineTargets.ts';

/** What can be said about sizes before anything is drawn. */
export interface SizeVerdict {
  readonly faults: readonly Fault[];
  readonly findings: readonly Finding[];
}

/** Room that each small arc of the waist needs between corner and waist, share of the body length. */
const SMALL_ARC_ROOM = 0.025;
/** Least straight of waist between the corner ends, share of the body length. */
const LEAST_WAIST_LENGTH = 0.13;
/** Least way from a corner to the widest place of its bout, share of the body length. */
const LEAST_BOUT_RISE = 0.1;
/** How much wider than its bout a corner may be, as on bodies that were cut down. */
const CUT_DOWN_CORNER = 1.04;
const WIDEST_UPPER_BOUT = 1.05;

/**
 * What is impossible or unusual about the sizes, by plain comparison: absurd sizes can be drawn all the same,
 * so the solver alone would not notice. Every fault names the value and what it needs.
 */
export function checkSizes(targets: OutlineTargets, habit: OutlineHabit): SizeVerdict {
  const numbers = Object.keys(MEASURED_AS).flatMap((name) => notALength(targets, name as TargetName));
  if (numbers.length > 0) return { faults: numbers, findings: [] };
  const length = checkLength(targets, habit);
  // Shares of a wrong length say nothing.
  if (length.length > 0) return { faults: length, findings: [] };
  return merged(checkShares(targets, habit), checkWidths(targets, habit), checkStations(targets, habit));
}

function notALength(targets: OutlineTargets, name: TargetName): Fault[] {
  const value = targets[name];
  if (value === undefined || (Number.isFinite(value) && value > 0)) return [];
  return [
    {
      code: 'draft.not-a-length',
      at: MEASURED_AS[name],
      found: `${value}`,
      need: 'a length in mm above 0',
      remedy: 'measure it again or leave it out',
    },
  ];
}

function checkLength({ bodyLengthMm }: OutlineTargets, habit: OutlineHabit): Fault[] {
  const { least, most } = habit.bodyLengthLimitsMm;
  if (bodyLengthMm >= least && bodyLengthMm <= most) return [];
  const inCm = bodyLengthMm * 10 >= least && bodyLengthMm * 10 <= most;
  return [
    {
      code: 'draft.length',
      at: 'bodyLength',
      found: `${inMm(bodyLengthMm)} for a ${habit.family}`,
      need: `between ${inMm(least)} and ${inMm(most)}`,
      remedy: inCm
        ? `if it was taken in cm, give ${inMm(bodyLengthMm * 10)}`
        : 'check the unit and the family, and measure the body without its button',
    },
  ];
}

function checkShares(targets: OutlineTargets, habit: OutlineHabit): SizeVerdict {
  const faults: Fault[] = [];
  const findings: Finding[] = [];
  const names = ['lowerBout', 'waist', 'upperBout'] as const;
  for (const name of names) {
    const limits = habit.shareLimits[name];
    const value = targets[`${name}Mm`];
    const share = value / targets.bodyLengthMm;
    const need = (from: number, to: number): string =>
      `${inMm(from * targets.bodyLengthMm)} to ${inMm(to * targets.bodyLengthMm)} on a body of ${inMm(targets.bodyLengthMm)}`;
    if (outside(share, limits.least, limits.most))
      faults.push({
        code: 'draft.proportion',
        at: name,
        found: inMm(value),
        need: need(limits.least, limits.most),
        remedy: 'measure this width and the body length again; half a width is a common slip',
      });
    else if (outside(share, limits.usualLeast, limits.usualMost))
      findings.push(unusualShare(name, value, limits, need));
  }
  return { faults, findings };
}

function unusualShare(
  at: string,
  value: number,
  limits: Limits,
  need: (from: number, to: number) => string,
): Finding {
  return finding('remark', {
    code: 'draft.proportion-unusual',
    at,
    found: inMm(value),
    need: `usually ${need(limits.usualLeast, limits.usualMost)}`,
    remedy: 'measure it again if you can; it is drawn as given',
  });
}

const outside = (value: number, least: number, most: number): boolean => value < least || value > most;

function checkWidths(targets: OutlineTargets, habit: OutlineHabit): SizeVerdict {
  const { upperBoutMm, lowerBoutMm, waistMm, bodyLengthMm } = targets;
  const faults: Fault[] = [];
  const findings: Finding[] = [];
  const corners = targets.upperCornersMm ?? habit.upperCornersToBout.value * upperBoutMm;
  const room = corners - 2 * SMALL_ARC_ROOM * bodyLengthMm;
  if (waistMm >= upperBoutMm || waistMm >= room)
    faults.push({
      code: 'draft.waist-too-wide',
      at: 'waist',
      found: `${inMm(waistMm)} between upper corners ${inMm(corners)} wide`,
      need: `less than ${inMm(room)}, so that the upper curves of the waist find room`,
      remedy: 'measure the waist at its narrowest place and the upper bout at its widest',
    });
  if (upperBoutMm > WIDEST_UPPER_BOUT * lowerBoutMm)
    faults.push({
      code: 'draft.upper-bout-wider',
      at: 'upperBout',
      found: `${inMm(upperBoutMm)} above a lower bout of ${inMm(lowerBoutMm)}`,
      need: `no more than ${inMm(WIDEST_UPPER_BOUT * lowerBoutMm)}`,
      remedy: 'check that upper and lower bout were not exchanged',
    });
  else if (upperBoutMm > lowerBoutMm)
    findings.push(
      finding('caution', {
        code: 'draft.upper-bout-wider',
        at: 'upperBout',
        found: `${inMm(upperBoutMm)}, wider than the lower bout`,
        need: 'usually about four fifths of the lower bout',
        remedy: 'check that upper and lower bout were not exchanged',
      }),
    );
  return merged({ faults, findings }, cornerWidth(targets, 'lower'), cornerWidth(targets, 'upper'));
}

function cornerWidth(targets: OutlineTargets, which: 'lower' | 'upper'): SizeVerdict {
  const value = targets[`${which}CornersMm`];
  const boutMm = targets[`${which}BoutMm`];
  if (value === undefined || value < boutMm) return { faults: [], findings: [] };
  const most = which === 'upper' ? CUT_DOWN_CORNER * boutMm : boutMm;
  const at = `${which}Corners`;
  const found = `${inMm(value)}, the ${which} bout being ${inMm(boutMm)}`;
  if (value >= most)
    return {
      faults: [
        {
          code: 'draft.corners-too-wide',
          at,
          found,
          need: `less than ${inMm(most)}`,
          remedy: 'measure straight across from corner tip to corner tip, and the bout at its widest',
        },
      ],
      findings: [],
    };
  const wider: Fault = {
    code: 'draft.corners-wider-than-bout',
    at,
    found,
    need: 'corners usually stand in from the widest place',
    remedy: 'ask whether this part of the body was cut down; it is drawn as given',
  };
  return { faults: [], findings: [finding('caution', wider)] };
}

function checkStations(targets: OutlineTargets, habit: OutlineHabit): SizeVerdict {
  const length = targets.bodyLengthMm;
  const usual = (name: keyof OutlineHabit['stations']): number => habit.stations[name].value * length;
  const ends = cornerEndsMm(targets, habit);
  const lowerBout = targets.lowerBoutStationMm ?? usual('lowerBout');
  const lowerCorner = targets.lowerCornerStationMm ?? usual('lowerCorner');
  const waist = targets.waistStationMm ?? usual('waist');
  const upperCorner = targets.upperCornerStationMm ?? usual('upperCorner');
  const upperBout = targets.upperBoutStationMm ?? usual('upperBout');
  const faults: Fault[] = [];
  const apart = (
    below: [name: TargetName, value: number],
    above: [name: TargetName, value: number],
    least: number,
  ): void => {
    if (above[1] - below[1] >= least) return;
    const blamed = targets[above[0]] === undefined ? below : above;
    const other = blamed === above ? below : above;
    const limit =
      blamed === above ? `at least ${inMm(other[1] + least)}` : `at most ${inMm(other[1] - least)}`;
    const from = targets[other[0]] === undefined ? 'usually' : 'given as';
    faults.push({
      code: 'draft.order',
      at: MEASURED_AS[blamed[0]],
      found: inMm(blamed[1]),
      need: `${limit}, with ${MEASURED_AS[other[0]]} ${from} ${inMm(other[1])}`,
      remedy: 'measure all heights from the lower end, along the centre line',
    });
  };
  const rise = LEAST_BOUT_RISE * length;
  apart(['lowerBoutStationMm', lowerBout], ['lowerCornerStationMm', lowerCorner], rise);
  apart(['lowerCornerStationMm', lowerCorner], ['waistStationMm', waist], ends.lower);
  apart(['waistStationMm', waist], ['upperCornerStationMm', upperCorner], ends.upper);
  const between = LEAST_WAIST_LENGTH * length + ends.lower + ends.upper;
  apart(['lowerCornerStationMm', lowerCorner], ['upperCornerStationMm', upperCorner], between);
  apart(['upperCornerStationMm', upperCorner], ['upperBoutStationMm', upperBout], rise);
  return { faults, findings: [] };
}

function merged(...parts: readonly SizeVerdict[]): SizeVerdict {
  return {
    faults: parts.flatMap((part) => part.faults),
    findings: parts.flatMap((part) => part.findings),
  };
}
