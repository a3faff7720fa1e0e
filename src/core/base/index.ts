export {
  accept,
  Bug,
  type Checked,
  type Fault,
  type Finding,
  faultSentence,
  refuse,
  type Weight,
} from './checked.ts';
export {
  acos,
  asin,
  atan,
  atan2,
  cbrt,
  cos,
  exp,
  expm1,
  hypot,
  log,
  norm,
  power,
  sin,
  tan,
  tanh,
} from './elementary/index.ts';
export { type Box, distanceBetween, type Frame, type Point, point } from './frame.ts';
export { KEEP_NOTHING, type Keeper, newestKeeper } from './keeper.ts';
export { letGo } from './letGo.ts';
export { seededNormal, seededRandom } from './random.ts';
export { DRAFT_MM, SETTLED, TANGENT_RAD, WELD_MM, WRITE_MM } from './tolerance.ts';
