export { type BarAndPost, barAndPost, barHeightAt, barVolumeMm3 } from './barAndPost.ts';
export { insideOfBothHalves } from './bothHalves.ts';
export type { BoxWalls } from './boxAir.ts';
export { continuedDepthAt, fullDepthAt, type HollowPlate, hollowPlate, insideHeight } from './hollow.ts';
export { type HollowHole, hollowHoles } from './hollowHoles.ts';
export { hollowPlates } from './hollowOfDesign.ts';
export { type AreaName, areaChain, type PlateArea, type ThickArea } from './plateArea.ts';
export { type BoxNumbers, boxNumbers, type PlateNumbers } from './plateNumbers.ts';
export { type PlateWood, plateWood } from './plateWood.ts';
export {
  isEven,
  type ThicknessMap,
  type ThicknessPattern,
  thicknessAt,
  thicknessMap,
  zonePlaces,
} from './thicknessMap.ts';
export { thicknessNames } from './thicknessNames.ts';
export type { ThicknessNumbers, ThicknessPoint } from './thicknessNumbers.ts';
export type { ThicknessSurvey, Zone, ZoneThickness } from './thicknessZones.ts';
