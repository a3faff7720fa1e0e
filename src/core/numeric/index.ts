export {
  type BandedFactor,
  type BandedMatrix,
  factorBanded,
  factorInPlace,
  solveBanded,
  solveFactored,
  zeroBanded,
} from './bandedSolve.ts';
export {
  addScaled,
  backwardSolve,
  dot,
  forwardSolve,
  lowerFactor,
  type Matrix,
  solveDefinite,
  zeroMatrix,
} from './denseSolve.ts';
export { type FittedCircle, type FittedLine, fitCircle, fitLine } from './fitPlaces.ts';
export { levelCurve } from './levelCurve.ts';
export type { Matrix3 } from './matrix3.ts';
export { medianOf } from './median.ts';
export {
  addHold,
  addRow,
  clearEquations,
  emptyEquations,
  type NormalEquations,
  solveEquations,
} from './normalEquations.ts';
export {
  type LinearRow,
  type ProgramFrame,
  type ProgramOutcome,
  programFrame,
  type QuadraticProgram,
  solveInFrame,
  solveQuadraticProgram,
} from './quadraticProgram.ts';
export { solveSquare } from './solveSquare.ts';
