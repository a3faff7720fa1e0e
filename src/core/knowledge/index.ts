export { FAMILIES, type Family } from './family.ts';
export { familyOfLength } from './familyOfLength.ts';
export { type KindScope, kindScope } from './kindScope.ts';
export {
  BACK_ZONES,
  leastThickness,
  THICKNESS_ZONES,
  type ThicknessZone,
} from './leastThickness.ts';
export { MARKER_BITS, MARKER_CELLS, markerCellIsWhite } from './markers.ts';
export { neckRange } from './neckRanges.ts';
export { outlineHabit } from './outlineHabit.ts';
export {
  LENGTH_LIMITS,
  type LengthLimits,
  NECK_TO_STOP,
  PROPORTIONS,
  type Range,
  rangeFor,
} from './ranges.ts';
export { LEAST_STRING_CROWN_MM, SETUP_RANGES, type SetupRanges } from './setupRanges.ts';
export { lengthOf, type Size, valueAtLength } from './size.ts';
export { nearestSize, ordinarySize, sizeNamed, sizesOf } from './sizes.ts';
export { LOWER_EYE_TO_EDGE, SOUND_HOLE_LEAST } from './soundHoleRanges.ts';
export { HOLE_SHAPE, type HoleEndShape, type HoleShapeHabit } from './soundHoles.ts';
export { type Source, type SourceName } from './sources.ts';
export { PACKET_TUNING_HZ, STRING_HEIGHT_SHARES, STRING_PITCHES, type StringPitch } from './strings.ts';
export {
  type NamedThicknesses,
  THICKNESS_MAP_NAMES,
  THICKNESS_MAPS,
  THICKNESS_VALUES,
} from './thicknessMaps.ts';
