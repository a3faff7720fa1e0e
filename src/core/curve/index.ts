export { biarc, bulgeLeaving } from './biarc.ts';
export { carryChain } from './carryChain.ts';
export type { Chain, Vertex } from './chain.ts';
export { circleChain } from './circleChain.ts';
export { type CompassArc, compassTable } from './compassTable.ts';
export { containsPoint, spansContain } from './containsPoint.ts';
export { type DraftedHalf, draftHalfOutline } from './draft/draftHalfOutline.ts';
export { type FittedHalf, fitHalfOutline, type HalfFitOptions } from './draft/fitHalfOutline.ts';
export type { OutlinePoint, OutlineStretch } from './draft/fitStart.ts';
export type { BodySizes, BoutArcs, Limits, OutlineHabit, Usual } from './draft/outlineHabit.ts';
export type { OutlineTargets } from './draft/outlineTargets.ts';
export { type ArcFit, type FitOptions, fitArcs } from './fitArcs.ts';
export type { HalfOutline } from './halfOutline.ts';
export { heightOn } from './heightOn.ts';
export { type Crossing, intersections, selfCrossings } from './intersections.ts';
export { chainThrough, closeChain, joinChains } from './joinChains.ts';
export { areaOf, boundsOf, lengthOf, type Moments, momentsOf } from './measure.ts';
export { type Nearest, nearestOn, nearestOnSpans } from './nearestOn.ts';
export { type OffsetOptions, offsetChain } from './offsetChain.ts';
export { outlineChain } from './outlineChain.ts';
export { parallelChain } from './parallelChain.ts';
export { mirrorChain, type Placement, placeChain, reverseChain } from './placeChain.ts';
export { clearRow, type RowSide, rowCrossings, rowEnds, rowSides, turnsOf } from './rowCrossings.ts';
export { sampleChain } from './sampleChain.ts';
export {
  type Arc,
  arcOf,
  bulgeOfSweep,
  headingOn,
  pointOn,
  type Segment,
  segmentLength,
  segments,
  sweepOf,
  wrapAngle,
} from './segment.ts';
export { type Span, spansOf } from './span.ts';
export { distanceToSpans } from './spanDistance.ts';
export { type Place, placeAlong, pointAlong, subChain } from './subChain.ts';
