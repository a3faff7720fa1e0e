import { type Finding, type Weight, WRITE_MM } from '../base/index.ts';
import { type Design, VALUES, type ValueName } from '../design/index.ts';

/**
 * The bare number of a value; NaN, which fails every comparison, where the design has none that makes sense by
 * itself. `soundFindings` says of those what is wrong, once.
 */
export function valueOf(design: Design, name: ValueName): number {
  const value = design.values[name]?.value ?? Number.NaN;
  return isSound(name, value) ? value : Number.NaN;
}

/** Whether a number can be this value at all: finite, and a length that can be drawn where it must be one. */
export function isSound(name: ValueName, value: number): boolean {
  if (!Number.isFinite(value)) return false;
  if (VALUES[name].unit !== 'mm' || MAY_BE_NEGATIVE.has(name)) return true;
  return MAY_BE_ZERO.has(name) ? value >= 0 : value >= WRITE_MM;
}

/** The overhangs have their own check, in a word that the trade has for it; a scroll may stand before the gluing face. */
const MAY_BE_NEGATIVE: ReadonlySet<ValueName> = new Set([
  'overhang',
  'cornerOverhang',
  'scrollFront',
  'nickAboveStop',
]);

export const MAY_BE_ZERO: ReadonlySet<ValueName> = new Set([
  'scoopDepthBack',
  'scoopDepthTop',
  'edgeCrestInset',
  'longArchFillet',
  'channelCornerRounding',
  'barSpring',
  'chinSpare',
  'pegboxWallLean',
  'pegboxEndSlope',
  'pegboxShoulder',
]);

/** mm or a ratio as text for a sentence, without a tail of zeros. */
export function shown(value: number, digits = 1): string {
  return String(Number(value.toFixed(digits)) + 0);
}

/** A finding on one or more values of the design; their names are its place. */
export function findingOn(
  names: readonly ValueName[],
  weight: Weight,
  code: string,
  words: { readonly found: string; readonly need: string; readonly remedy: string },
): Finding {
  return { code, weight, at: names.join(', '), ...words };
}
