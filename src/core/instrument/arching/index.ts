export type { ArchStation, PlateArch } from './archedPlate.ts';
export {
  type ArchNumbers,
  FULLNESS_VALUES,
  type Plate,
  STATION_NAMES,
  type StationName,
  TOP_FULLNESS_VALUES,
} from './archNumbers.ts';
export { type ArchProfile, longProfile, stationProfile } from './archProfile.ts';
export { archOnGround } from './bothArches.ts';
export { type ChannelCorner, type ChannelLine, channelPlace } from './channelLine.ts';
export { type DrillBit, lowestTip } from './drillBit.ts';
export { drillGrid, LEAST_DEPTH_MM, SETTING_MM } from './drillGrid.ts';
export { type DrillPoint, drillPoints } from './drillPoints.ts';
export { type EdgeProfile, edgeProfile } from './edgeProfile.ts';
export type { EdgeState } from './edgeShape.ts';
export { type GaugePlace, gaugePlace } from './gaugePlace.ts';
export { type GaugeStuff, gaugeProfile, gaugeStuff } from './gaugeProfile.ts';
export {
  type InsideEdge,
  type InsideHeight,
  insideLongEdge,
  insideStationEdge,
  insideStuff,
} from './insideGauge.ts';
export { type ArchChoices, archOn, plateArch } from './plateArch.ts';
export { plateField } from './plateField.ts';
export { type PlateGround, plateGround } from './plateGround.ts';
export {
  continuedArchHeight,
  continuedArchSlopes,
  isBeyondChannel,
  nearPlateHeight,
  nearPlateSlopes,
  plateHeight,
  plateSlopes,
} from './plateHeight.ts';
export { type PlateRecord, plateRecord } from './plateRecord.ts';
export { plateShape } from './plateShape.ts';
export { boardValueName, type RoughNumbers, roughNumbers } from './roughNumbers.ts';
export { type SurfaceProbe, surfaceProbes } from './surfaceProbes.ts';
export { levelLines, type Terrace, terraces } from './terraces.ts';
export { longArcs, stationArcs } from './workingEdge.ts';
