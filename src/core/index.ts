/** The public face of the library: the verbs of `work` and the types that go in and come out of them. */
export {
  accept,
  type Checked,
  type Fault,
  type Finding,
  faultSentence,
  type Point,
  refuse,
} from './base/index.ts';
export type { Design, Family } from './design/index.ts';
export {
  blackBoxesOfMarker,
  type CalibrationSheet,
  calibrationSheet,
  type FoundMarker,
  type GrayPicture,
  type MarkerFinder,
  type Picture,
} from './photo/index.ts';
