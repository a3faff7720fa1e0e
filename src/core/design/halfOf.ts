import { accept, type Checked, type Fault, type Finding, refuse } from '../base/index.ts';
import { draftHalfOutline, type HalfOutline, type OutlineTargets } from '../curve/index.ts';
import { outlineHabit } from '../knowledge/index.ts';
import { dependsOn } from '../quantity/index.ts';
import type { Design } from './design.ts';
import type { ValueName } from './values.ts';

/**
 * The treble half of the design's outline: as traced, or solved from the values with the family's habit. The
 * optional stations and corner widths that the design holds are met like the widths. An unusual length is not
 * told again here: `draftDesign` and `check` ask about it, in one sentence.
 * Faults: `design.missing`, and those of the drafting.
 */
export function halfOf(
  design: Design,
): Checked<{ readonly half: HalfOutline; readonly findings: readonly Finding[] }> {
  if (design.outline.kind === 'traced') return accept({ half: design.outline.half, findings: [] });
  const targets = targetsOf(design);
  if (!targets.ok) return targets;
  const drafted = draftHalfOutline(targets.value, outlineHabit(design.family));
  if (!drafted.ok) return refuse(...causes(design, drafted.faults));
  return accept({
    half: drafted.value.half,
    findings: drafted.value.findings.filter(({ code }) => code !== ASKED_BEFORE),
  });
}

/** Whether two designs have the same half outline, told by all that {@link halfOf} draws it from. */
export function hasSameHalf(one: Design, other: Design): boolean {
  if (one.outline.kind === 'traced' || other.outline.kind === 'traced')
    return (
      one.outline.kind === 'traced' &&
      other.outline.kind === 'traced' &&
      isSameHalf(one.outline.half, other.outline.half)
    );
  if (one.family !== other.family) return false;
  return DRAWN_FROM.every((name) => one.values[name]?.value === other.values[name]?.value);
}

function isSameHalf(one: HalfOutline, other: HalfOutline): boolean {
  if (one === other) return true;
  return (['lowerBout', 'cBout', 'upperBout'] as const).every(
    (name) =>
      one[name].vertices.length === other[name].vertices.length &&
      one[name].vertices.every((a, index) => {
        const b = other[name].vertices[index];
        return b !== undefined && a.x === b.x && a.y === b.y && a.bulge === b.bulge;
      }),
  );
}

const ASKED_BEFORE = 'draft.length-unusual';

const NEEDED = {
  bodyLengthMm: 'bodyLength',
  lowerBoutMm: 'lowerBout',
  waistMm: 'waist',
  upperBoutMm: 'upperBout',
  lowerCornerEndMm: 'lowerCornerEnd',
  upperCornerEndMm: 'upperCornerEnd',
} as const satisfies Partial<Record<keyof OutlineTargets, ValueName>>;

const IF_GIVEN = {
  lowerBoutStationMm: 'lowerBoutStation',
  waistStationMm: 'waistStation',
  upperBoutStationMm: 'upperBoutStation',
  lowerCornerStationMm: 'lowerCornerStation',
  upperCornerStationMm: 'upperCornerStation',
  lowerCornersMm: 'lowerCorners',
  upperCornersMm: 'upperCorners',
} as const satisfies Partial<Record<keyof OutlineTargets, ValueName>>;

/** All that a drafted half depends on beside its family. */
const DRAWN_FROM: readonly ValueName[] = [...Object.values(NEEDED), ...Object.values(IF_GIVEN)];

function targetsOf(design: Design): Checked<OutlineTargets> {
  const missing = Object.values(NEEDED).filter((name) => design.values[name] === undefined);
  if (missing.length > 0) return refuse(...missing.map(missingValue));
  const needed = Object.entries(NEEDED).map(([target, name]) => [target, design.values[name]?.value]);
  const optional = Object.entries(IF_GIVEN)
    .filter(([, name]) => design.values[name] !== undefined)
    .map(([target, name]) => [target, design.values[name]?.value]);
  return accept(Object.fromEntries([...needed, ...optional]) as OutlineTargets);
}

/** Without the faults of values that were themselves worked out from one at fault. */
function causes(design: Design, faults: readonly Fault[]): readonly Fault[] {
  const places = new Set(faults.map(({ at }) => at));
  const own = faults.filter(({ at }) => {
    const quantity = design.values[at as ValueName];
    return !(quantity && dependsOn(quantity).some((name) => places.has(name)));
  });
  return own.length > 0 ? own : faults;
}

function missingValue(name: ValueName): Fault {
  return {
    code: 'design.missing',
    at: name,
    found: 'nothing',
    need: 'a value, to draft the outline from',
    remedy: 'add it to the design',
  };
}
