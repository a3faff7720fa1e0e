export {
  type ArchChoices,
  type ArchProfile,
  type ArchStation,
  archOn,
  archOnGround,
  boardValueName,
  channelPlace,
  continuedArchHeight,
  type DrillBit,
  type DrillPoint,
  drillPoints,
  type EdgeProfile,
  type EdgeState,
  edgeProfile,
  FULLNESS_VALUES,
  type GaugePlace,
  type GaugeStuff,
  gaugePlace,
  gaugeProfile,
  gaugeStuff,
  type InsideEdge,
  type InsideHeight,
  insideLongEdge,
  insideStationEdge,
  insideStuff,
  levelLines,
  longArcs,
  longProfile,
  lowestTip,
  type Plate,
  type PlateArch,
  type PlateGround,
  type PlateRecord,
  plateArch,
  plateField,
  plateGround,
  plateHeight,
  plateRecord,
  plateShape,
  plateSlopes,
  type RoughNumbers,
  roughNumbers,
  STATION_NAMES,
  type StationName,
  type SurfaceProbe,
  stationArcs,
  stationProfile,
  surfaceProbes,
  type Terrace,
  TOP_FULLNESS_VALUES,
  terraces,
} from './arching/index.ts';
export type { BlockBlank, BlockPart, BlockParts } from './blocks/blockParts.ts';
export type { CornerBlock } from './blocks/cornerBlock.ts';
export type { EndBlock } from './blocks/endBlock.ts';
export type { Caul, CaulName, CaulParts, ClampReach } from './cauls/caul.ts';
export { type FormedPiece, formedPiece } from './cauls/formedPiece.ts';
export {
  deriveInstrument,
  fittedBar,
  fittedPost,
  holeLaidFlat,
  type Instrument,
  weighed,
} from './deriveInstrument.ts';
export type { ClampHole } from './form/clampHoles.ts';
export type { CheckWidth, FormParts, PinHole } from './form/formParts.ts';
export {
  FITTED,
  type FittedHead,
  type FittedName,
  fitHead,
  type SilhouettePlace,
} from './head/fitHead.ts';
export { type Head, headOfDesign, headSizesOf } from './head/headOfDesign.ts';
export { type HeadProfile, headProfile } from './head/headProfile.ts';
export { type HeadWidths, type WidthStation, widthAlong } from './head/headWidths.ts';
export { insideWidth, outsideWidth, type Pegbox } from './head/pegbox.ts';
export type { Peg } from './head/pegs.ts';
export type { ProfileSizes } from './head/profileSizes.ts';
export type { StringPath } from './head/stringPaths.ts';
export { EYE_PRICK_MM, PRICK_MM, type VoluteSlots, voluteSlots } from './head/voluteSlots.ts';
export { wrapEdge } from './head/wrapBand.ts';
export type { Lining, LiningMortise, LiningParts } from './linings/lining.ts';
export { type BoardSizes, boardThickness, boardWidth } from './neck/boardSection.ts';
export { upperEdge } from './neck/button.ts';
export type { MortiseInRibs } from './neck/mortiseInRibs.ts';
export type { SetNeck } from './neck/neckOfDesign.ts';
export type { Neck } from './neck/neckPart.ts';
export type { NeckSection } from './neck/neckSection.ts';
export { alongNeck, type NeckSet, type NeckSetSizes, neckPlace } from './neck/neckSet.ts';
export type { SaddlePlace, StringBreak } from './neck/stringBreak.ts';
export { type BodyOutline, bodyOutline, type PlateCorner, type WidthPlace } from './outline/bodyOutline.ts';
export { insideLine } from './outline/insideLine.ts';
export { type PurflingLines } from './outline/purflingLines.ts';
export type { PurflingCorner } from './outline/purflingSting.ts';
export { type CornerTip, type SectionLines } from './outline/sectionLines.ts';
export { type Station } from './outline/stations.ts';
export type { TemplateParts } from './outline/templates.ts';
export { type OutlineAndForm, outlineAndForm } from './outlineAndForm.ts';
export { placeWords } from './placeWords.ts';
export type { PlanParts } from './plan.ts';
export { planParts } from './planParts.ts';
export { type PlanValues } from './planValues.ts';
export {
  type AreaName,
  areaChain,
  type BarAndPost,
  type BoxNumbers,
  continuedDepthAt,
  fullDepthAt,
  type HollowHole,
  type HollowPlate,
  hollowHoles,
  insideHeight,
  insideOfBothHalves,
  isEven,
  type PlateArea,
  type PlateNumbers,
  plateWood,
  type ThickArea,
  type ThicknessMap,
  thicknessAt,
  thicknessNames,
  zonePlaces,
} from './plates/index.ts';
export type { CornerJoint, RibJoint } from './ribs/cornerJoint.ts';
export type { DevelopedRib, RibStretch } from './ribs/developedRib.ts';
export { STRETCH_WITH_STRAP, STRETCH_WITHOUT_STRAP, thicknessForBend } from './ribs/ribFindings.ts';
export { type RibLength, type RibLines } from './ribs/ribLines.ts';
export { isSharedGround } from './sameParts.ts';
export { type BarPlace, type BarShape, bevelRad } from './setup/barShape.ts';
export { type BridgeShape, bridgeShape } from './setup/bridgeShape.ts';
export type { EndpinHole } from './setup/endpinHole.ts';
export { nutCrown } from './setup/nutShape.ts';
export { type PostEnd, type PostShape } from './setup/postShape.ts';
export type { SetUp, SetupLoad } from './setup/setUp.ts';
export { SLOT_SHARE, type StringPlace } from './setup/stringPlaces.ts';
export type { DraftedHole } from './soundHoles/draftHole.ts';
export { type FittedHole, fitHole, type HoleMisfit, type TracedHole } from './soundHoles/fitHole.ts';
export type { FlatHole } from './soundHoles/flatHole.ts';
export { MOST_STRAIN } from './soundHoles/flatRegister.ts';
export type { PlacedEye } from './soundHoles/placedHoles.ts';
export type { SoundHoles } from './soundHoles/soundHoles.ts';
export type { StringSet, TunedString } from './strings/stringSet.ts';
