import { accept, Bug, type Checked, type Fault, type Finding, refuse } from '../base/index.ts';
import { lengthOf, NECK_TO_STOP, nearestSize, type Size, valueAtLength } from '../knowledge/index.ts';
import { derivedFrom, printLength, type Quantity } from '../quantity/index.ts';
import type { Design, TracedOutline } from './design.ts';
import type { FittedHoleShape } from './holeShape.ts';
import type { Measurements } from './measurements.ts';
import { withNamedThicknesses } from './namedThickness.ts';
import { lengthQuestions, scaleFault } from './sizeQuestions.ts';
import { NEEDED_VALUES, VALUES, type ValueName } from './values.ts';

/** What a photograph gave: the outline, the values that were measured on it, the shape of a sound hole. */
export interface Traced {
  readonly outline: TracedOutline;
  readonly values: Readonly<Partial<Record<ValueName, Quantity>>>;
  readonly holeShape?: FittedHoleShape | undefined;
}

/** Lengths of a head that keep their proportion to its own length, where that is given, better than to the body. */
const FOLLOWS_HEAD: ReadonlySet<ValueName> = new Set([
  'headTop',
  'headDepth',
  'scrollHeight',
  'scrollFront',
  'scrollEye',
  'backHollow',
  'chinBehind',
  'chinReach',
  'throatGap',
  'throatRadius',
  'scrollEars',
  'headNarrowest',
  'peg1',
  'peg2',
  'peg3',
  'peg4',
]);

type Values = Partial<Record<ValueName, Quantity>>;

const WIDTHS = ['upperBout', 'waist', 'lowerBout'] as const satisfies readonly ValueName[];

/** Values that a given neighbour fixes better than the body length does. */
const PARTNERS: readonly (readonly [ValueName, ValueName])[] = [
  ['upperCornerEnd', 'lowerCornerEnd'],
  ['ribHeightNeck', 'ribHeightTail'],
  ['lowerCornerBlockAlongWaist', 'upperCornerBlockAlongWaist'],
  ['lowerCornerBlockAlongBout', 'upperCornerBlockAlongBout'],
  ['channelAtBouts', 'channelAtWaist'],
];

/**
 * A whole design from what is known: given values stand as given, values measured on a traced outline stand
 * for the outline, and all others are filled from the nearest size of the family, with their origin.
 *
 * Missing widths keep the family's proportion to the widths that are given; a missing neck stop keeps 2 : 3
 * (cello 7 : 10) to the stop; the rest follows the body length. The outline itself is solved by `halfOf`.
 * Faults: `draft.no-length`, `size.body-length`, `size.out-of-scale`. Findings: `size.unusual-length`,
 * `draft.disagrees`, and those of {@link withNamedThicknesses}.
 */
export function draftDesign(
  measurements: Measurements,
  traced?: Traced,
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  const { family } = measurements;
  const given: Values = { ...measurements.values, ...traced?.values };
  const length = given.bodyLength;
  if (!length) return refuse(noLength());
  const questions = lengthQuestions(family, length.value);
  if (questions.faults.length > 0) return refuse(...questions.faults);
  const size = nearestSize(family, length.value);
  const faults = scaleFaults(given, size, length.value);
  if (faults.length > 0) return refuse(...faults);
  const design: Design = {
    format: 'garland-design',
    version: 1,
    name: measurements.name,
    family,
    values: filled(given, size, length.value),
    outline: traced?.outline ?? { kind: 'drafted' },
    ...(traced?.holeShape && { holeShape: traced.holeShape }),
    ...(measurements.thickness && { thickness: measurements.thickness }),
    ...(measurements.longArch && { longArch: measurements.longArch }),
    ...(measurements.ribs && { ribs: measurements.ribs }),
    ...(measurements.measuredHeights && { measuredHeights: measurements.measuredHeights }),
    ...(measurements.leftHanded !== undefined && { leftHanded: measurements.leftHanded }),
    ...(measurements.stringSpread && { stringSpread: measurements.stringSpread }),
  };
  const named = withNamedThicknesses(design);
  return accept({
    design: named.design,
    findings: [...questions.findings, ...named.findings, ...disagreements(measurements, traced)],
  });
}

/** The values with every needed one that is missing filled from the size, brought to the body length. */
export function filled(given: Values, size: Size, lengthMm: number): Values {
  const values: Values = {};
  for (const name of Object.keys(VALUES) as ValueName[]) {
    const own = given[name];
    if (own) values[name] = own;
    else if (NEEDED_VALUES.includes(name)) values[name] = habitFor(name, given, values.stop, size, lengthMm);
  }
  return values;
}

function habitFor(
  name: ValueName,
  given: Values,
  stop: Quantity | undefined,
  size: Size,
  lengthMm: number,
): Quantity {
  const habit = valueAtLength(size, name, lengthMm);
  if (!habit) throw new Bug(`${size.family} ${size.name} has no ${name}`);
  if ((WIDTHS as readonly ValueName[]).includes(name)) return widthByProportion(name, given, size) ?? habit;
  const neckFollows = given.stop !== undefined || habit.origin.kind === 'derived';
  if (name === 'neckStop' && stop && neckFollows) return neckByStop(stop, size);
  if (FOLLOWS_HEAD.has(name) && given.headLength)
    return byPartner(name, 'headLength', given.headLength, size) ?? habit;
  const partner = partnerOf(name);
  return (partner && given[partner] && byPartner(name, partner, given[partner], size)) ?? habit;
}

function neckByStop(stop: Quantity, size: Size): Quantity {
  const share = size.family === 'cello' ? 'seven tenths' : 'two thirds';
  return {
    value: stop.value * NECK_TO_STOP[size.family],
    unit: 'mm',
    origin: derivedFrom(['stop'], `${share} of the body stop`),
  };
}

/** The size's width times how the given widths, taken together, compare with the size's. */
function widthByProportion(name: ValueName, given: Values, size: Size): Quantity | undefined {
  const known = WIDTHS.filter((width) => given[width]);
  const own = size.values[name];
  if (known.length === 0 || !own) return undefined;
  const ratios = known.map((width) => (given[width]?.value ?? 0) / (size.values[width]?.value ?? 1));
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  const how = `proportion of the ${size.family} ${size.name}`;
  return { value: own.value * mean, unit: 'mm', origin: derivedFrom(known, how) };
}

function partnerOf(name: ValueName): ValueName | undefined {
  for (const [one, other] of PARTNERS) {
    if (name === one) return other;
    if (name === other) return one;
  }
  return undefined;
}

function byPartner(name: ValueName, partner: ValueName, known: Quantity, size: Size): Quantity | undefined {
  const own = size.values[name];
  const theirs = size.values[partner];
  if (!own || !theirs) return undefined;
  const how = `as on the ${size.family} ${size.name}`;
  return {
    value: (known.value * own.value) / theirs.value,
    unit: own.unit,
    origin: derivedFrom([partner], how),
  };
}

/** Sizes that go with the body so closely that one out of all scale is a slip. */
const SCALED = [
  'upperBout',
  'waist',
  'lowerBout',
  'stop',
  'neckStop',
  'projection',
  'boardLength',
] as const satisfies readonly ValueName[];

function scaleFaults(given: Values, size: Size, lengthMm: number): readonly Fault[] {
  const scale = lengthMm / lengthOf(size);
  return SCALED.flatMap((name) => {
    const value = given[name]?.value;
    const expected = size.values[name]?.value;
    if (value === undefined || expected === undefined) return [];
    return scaleFault(name, value, expected * scale) ?? [];
  });
}

function noLength(): Fault {
  return {
    code: 'draft.no-length',
    at: 'bodyLength',
    found: 'no body length',
    need: 'the length of the body without the button',
    remedy: 'measure it, or give a photograph with a known length',
  };
}

/** mm. Two measurements of one thing that differ by less agree, whatever their stated ±; chosen by us. */
const AGREE_MM = 0.5;

function disagreements(measurements: Measurements, traced: Traced | undefined): readonly Finding[] {
  if (!traced) return [];
  return (Object.keys(traced.values) as ValueName[]).flatMap((name): Finding[] => {
    const table = measurements.values[name];
    const photo = traced.values[name];
    if (!table || !photo) return [];
    const allowed = Math.max(AGREE_MM, (table.plusMinus ?? 0) + (photo.plusMinus ?? 0));
    if (Math.abs(table.value - photo.value) <= allowed) return [];
    return [
      {
        code: 'draft.disagrees',
        weight: 'caution',
        at: name,
        found: `${printLength(table.value)} in the table, ${photo.value.toFixed(2)} mm on the photograph; the photograph's is used`,
        need: `the two within ${allowed.toFixed(1)} mm`,
        remedy: 'measure it again, or draft from the table alone',
      },
    ];
  });
}
