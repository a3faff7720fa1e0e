import type { Point } from '../../base/index.ts';
import type { BuiltPart } from '../../checks/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import type { PlanParts } from '../../instrument/index.ts';
import type { ExpectedShape } from '../../photo/index.ts';
import type { BuiltRequest } from './builtRequest.ts';

/** What may lie on the sheet when a part is named: a template also as its half, either way up. */
export function expectedShapes(
  plan: PlanParts,
  part: BuiltPart,
  face: BuiltRequest['face'],
): readonly ExpectedShape[] {
  const mirrored = face === 'back';
  switch (part) {
    case 'form':
      return [{ name: 'form', chain: plan.form.outline, mirrored }];
    case 'garland':
      return [{ name: 'garland', chain: plan.ribs.outer.chain, mirrored }];
    case 'outline':
    case 'inner': {
      const { whole, half } = part === 'outline' ? plan.outlineTemplate : plan.innerTemplate;
      const name = part === 'outline' ? 'outline template' : 'inner template';
      return [
        { name, chain: whole, mirrored },
        { name: `${name}, half`, chain: half, mirrored: false },
        { name: `${name}, half`, chain: half, mirrored: true },
      ];
    }
  }
}

/** How high the upper edge stands over the paper, and where that is known from. */
export interface UpperEdge {
  readonly lowerMm: number;
  readonly upperMm: number;
  /** Half interval (k = 2). */
  readonly plusMinusMm: number;
  /** The values of the design it was taken from, where the maker did not tell it. */
  readonly from: readonly ValueName[];
}

/** mm, k = 2. A thickness taken with callipers; and one that the design says but nobody measured. */
const MEASURED_MM = 0.2;
const UNMEASURED_MM = 0.6;

/** The height of a part's upper edge: as told, or as the design has it. */
export function upperEdgeOf(
  design: Design,
  { part, thicknessMm }: Pick<BuiltRequest, 'part' | 'thicknessMm'>,
): UpperEdge {
  if (thicknessMm) {
    const [lowerMm, upperMm] = thicknessMm;
    return { lowerMm, upperMm, plusMinusMm: MEASURED_MM, from: [] };
  }
  const from = HEIGHT_FROM[part];
  const heights = from.map((name) => design.values[name]?.value ?? 0);
  const [lowerMm = 0, upperMm = lowerMm] = heights;
  return { lowerMm, upperMm, plusMinusMm: UNMEASURED_MM, from };
}

const HEIGHT_FROM: Readonly<Record<BuiltPart, readonly ValueName[]>> = {
  form: ['formThickness'],
  outline: ['gaugeThickness'],
  inner: ['gaugeThickness'],
  garland: ['ribHeightTail', 'ribHeightNeck'],
};

/** The height at a place of the body, straight from the lower to the upper end. */
export function heightAt({ lowerMm, upperMm }: UpperEdge, bodyLengthMm: number) {
  return ({ y }: Point<'body'>): number => lowerMm + ((upperMm - lowerMm) * y) / bodyLengthMm;
}
