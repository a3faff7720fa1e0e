export { integrateInside } from './areaIntegral.ts';
export {
  compareFields,
  type DifferencePlace,
  type FieldDifference,
  type WorstChoice,
} from './compareFields.ts';
export type { ContourLine } from './contourLine.ts';
export { contourLevels, contourLines } from './contourLines.ts';
export {
  contourOnSurface,
  placesOf,
  type SurfaceContour,
  type SurfaceContourTask,
} from './contourOnSurface.ts';
export { trimContour } from './contourTrim.ts';
export {
  type CubicKnots,
  cubicKnots,
  knotPlaces,
  knotsAt,
} from './cubicKnots.ts';
export { type CurtateCycloid, curtateCycloid, cycloidHeight } from './curtateCycloid.ts';
export {
  fairNet,
  type NetCondition,
  type NetFrame,
  type NetPlace,
  netFrame,
  solveNet,
} from './fairNet.ts';
export { type FairSpline, type FairSplineTask, fairSpline, splineValue } from './fairSpline.ts';
export { flatPlace } from './flatPlace.ts';
export { type FlatPatch, flattenPatch } from './flatten.ts';
export { FULLNESS_LIMIT, fullnessGain, withFullness } from './fullness.ts';
export { type HeightField, heightField } from './heightField.ts';
export {
  bodyHalfWidth,
  type Loft,
  type LoftRow,
  loftAt,
  loftHeight,
  loftRow,
  loftShape,
  loopRatio,
  type SurfacePoint,
} from './loft.ts';
export { loftAcross } from './loftAcross.ts';
export {
  chordCircleRadius,
  type LongArch,
  type LongArchForm,
  longArch,
  longArchChain,
  longArchHeight,
  longArchJoints,
  longArchRadii,
} from './longArch.ts';
export { type CrossArchKnowns, fitCrossArch, type MeasuredCrossArch } from './measuredCrossArch.ts';
export type { Estimate } from './measuredFit.ts';
export { fitLongArch, type LongArchKnowns, type MeasuredLongArch } from './measuredLongArch.ts';
export type { ArchResidual } from './measuredMisfit.ts';
export type { DeviationName, NamedDeviation, ReadingPlace } from './measuredPlace.ts';
export type { MeasuredSection, MeasuredShape } from './measuredShape.ts';
export type { OnAxis } from './netTerms.ts';
export { type FairNet, type NetGrid, netAt, netRow, netRowHeight, netShape, sumOfNets } from './netValue.ts';
export { scatteredSpline } from './scatteredSpline.ts';
export { sectionLine } from './sectionLine.ts';
export { type Lamp, lampPlace } from './shadingLamp.ts';
export { lampLight } from './shadingLight.ts';
export { type SpaceCurve, type SpacePlace, spaceCurve } from './spaceCurve.ts';
export { type SplineCurve, splineCurve, splineCurveAt } from './splineCurve.ts';
export {
  patchBorder,
  patchCoefficient,
  type SplinePatch,
  splinePatch,
  splinePatchAt,
} from './splinePatch.ts';
export { type SplineGrid, type SplineSurface, splineSurface, splineSurfaceAt } from './splineSurface.ts';
export { principalCurvatures, type SurfaceShape, upwardNormal } from './surfaceShape.ts';
