export type { ArchStation, PlateArch } from './archedPlate.ts';
export { type ArchNumbers, type Plate, STATION_NAMES, type StationName } from './archNumbers.ts';
export { type ArchProfile, longProfile, stationProfile } from './archProfile.ts';
export type { ChannelCorner, ChannelLine } from './channelLine.ts';
export type { EdgeState } from './edgeShape.ts';
export { type ArchChoices, plateArch } from './plateArch.ts';
export { plateHeight } from './plateHeight.ts';
export { type PlateRecord, plateRecord } from './plateRecord.ts';
export { longArcs, stationArcs } from './workingEdge.ts';
