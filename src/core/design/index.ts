export type { Family } from '../knowledge/index.ts';
export type { ArchReading, ArchReadings, PlateReadings } from './arches.ts';
export type { Design, DraftedOutline, TracedOutline } from './design.ts';
export { designEntries } from './designEntries.ts';
export { draftDesign, type Traced } from './draftDesign.ts';
export { halfOf, hasSameHalf } from './halfOf.ts';
export type { HeadFit } from './headFit.ts';
export type { FittedHoleShape } from './holeShape.ts';
export { highStringSide } from './leftHanded.ts';
export type { MeasuredHeights, MeasuredHeightsOfPlates } from './measuredHeights.ts';
export { type Measurements, readMeasurements } from './measurements.ts';
export { withNamedThicknesses } from './namedThickness.ts';
export { nearestName } from './nearestName.ts';
export { isMakersOwn, overrule, takeMeasured, takeProposal } from './overrule.ts';
export { readDesign } from './readDesign.ts';
export type { RibChoice } from './ribChoice.ts';
export { kindFaults, schemaFaults } from './schemaFaults.ts';
export { lengthQuestions } from './sizeQuestions.ts';
export type { StringSpread } from './stringSpread.ts';
export { takenAsDrawn } from './taken.ts';
export { type AskedThickness, askedThicknesses, askThickness, dropThickness } from './thicknessPoints.ts';
export { markedPlaces, type TraceRecord, traceRecordSchema } from './traceRecord.ts';
export {
  NEEDED_VALUES,
  VALUE_NAMES,
  VALUES,
  VALUES_OVER_PLATES,
  type ValueName,
} from './values.ts';
