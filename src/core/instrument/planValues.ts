import { accept, type Checked, type Fault, refuse } from '../base/index.ts';
import { type Design, VALUES, type ValueName } from '../design/index.ts';

/** The values of a design that the parts in the plane are made from, each in the unit VALUES names (all mm). */
export const PLAN_VALUES = [
  'stop',
  'overhang',
  'cornerOverhang',
  'ribThickness',
  'ribHeightNeck',
  'ribHeightTail',
  'upperBlockWidth',
  'upperBlockDepth',
  'lowerBlockWidth',
  'lowerBlockDepth',
  'lowerCornerBlockAlongWaist',
  'lowerCornerBlockAlongBout',
  'upperCornerBlockAlongWaist',
  'upperCornerBlockAlongBout',
  'liningThickness',
  'liningWidth',
  'liningLetIn',
  'caulDepth',
  'caulFacing',
  'formThickness',
  'clampHoleDiameter',
  'clampHoleWall',
  'clampHolePitch',
  'pinDiameter',
  'pinFromEnd',
  'purflingToEdge',
  'purflingWidth',
] as const satisfies readonly ValueName[];

/** Name of a value that the parts in the plane need. */
export type PlanValueName = (typeof PLAN_VALUES)[number];

/** Bare millimetres by name. */
export type PlanValues = Readonly<Record<PlanValueName, number>>;

/**
 * The plan values of a design as bare millimetres.
 *
 * Faults: `design.value-missing` and `design.value-not-positive`, one for every name concerned.
 */
export function planValues(design: Design): Checked<PlanValues> {
  const faults: Fault[] = [];
  const found: Partial<Record<PlanValueName, number>> = {};
  for (const name of PLAN_VALUES) {
    const value = design.values[name]?.value;
    if (value === undefined) faults.push(missing(name));
    else if (!(value > 0 && Number.isFinite(value))) faults.push(notPositive(name, value));
    else found[name] = value;
  }
  return faults.length > 0 ? refuse(...faults) : accept(found as PlanValues);
}

function missing(name: PlanValueName): Fault {
  return {
    code: 'design.value-missing',
    at: name,
    found: 'no value',
    need: `the ${VALUES[name].says}, in mm`,
    remedy: 'give the value, or fill it from the habits of the family',
  };
}

function notPositive(name: PlanValueName, value: number): Fault {
  return {
    code: 'design.value-not-positive',
    at: name,
    found: `${value} mm`,
    need: 'a length above 0 mm',
    remedy: `correct the ${VALUES[name].says}`,
  };
}
