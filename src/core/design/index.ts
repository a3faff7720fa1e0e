export type { Family } from '../knowledge/index.ts';
export type { Design, DraftedOutline, TracedOutline } from './design.ts';
export { draftDesign, type Traced } from './draftDesign.ts';
export { halfOf } from './halfOf.ts';
export { type Measurements, measurementsSchema, readMeasurements } from './measurements.ts';
export { nearestName } from './nearestName.ts';
export { designEntries, designSchema, readDesign } from './readDesign.ts';
export { lengthQuestions } from './sizeQuestions.ts';
export { NEEDED_VALUES, VALUE_NAMES, VALUES, type ValueName } from './values.ts';
