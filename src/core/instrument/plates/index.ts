export { fullDepthAt, type HollowPlate, hollowPlate, insideHeight } from './hollow.ts';
export { type ThicknessMap, type ThicknessPattern, thicknessAt, thicknessMap } from './thicknessMap.ts';
export type { ThicknessNumbers, ThicknessPoint } from './thicknessNumbers.ts';
