export type { GaugeFeet } from './archGaugeBody.ts';
export { archGaugeDrawings } from './archGaugeDrawings.ts';
export { EDGE_TOOLS_CAUTION } from './archGaugeNotes.ts';
export type { ArchGaugeOptions } from './archGaugeOptions.ts';
export { barDrawings } from './barDrawings.ts';
export { blockDrawings } from './blockDrawings.ts';
export { blockGaugeDrawings } from './blockGaugeDrawings.ts';
export { boardDrawings } from './boardDrawings.ts';
export { bridgeDrawings } from './bridgeDrawings.ts';
export { captionBelow } from './caption.ts';
export { caulDrawings } from './caulDrawings.ts';
export { cornerJointDrawing } from './cornerJointDrawing.ts';
export { cornerTemplateDrawings } from './cornerTemplateDrawings.ts';
export { type DeviationMapPlan, deviationMap } from './deviationMap.ts';
export type { MapPlace } from './deviationMapComb.ts';
export {
  type Drawing,
  type DrawnLine,
  type Lettering,
  type Meaning,
  PIECE_PARTS,
  type PiecePart,
} from './drawing.ts';
export { pieceSizeMm } from './drawingExtent.ts';
export { type ChartHole, type DrillChartPlan, drillChartDrawing } from './drillChartDrawing.ts';
export { type EdgeGaugeOptions, edgeGaugeDrawings } from './edgeGaugeDrawings.ts';
export { edgeStepDrawing } from './edgeStepDrawing.ts';
export { formDrawings } from './formDrawings.ts';
export { headDrawings } from './headDrawings.ts';
export { hollowDrillDrawing } from './hollowDrillDrawing.ts';
export { insideGaugeDrawings } from './insideGaugeDrawings.ts';
export { letteringStrokes, letteringWidthMm } from './lettering.ts';
export { liningDrawings } from './liningDrawings.ts';
export { marginTextWidthMm, plainMarginText } from './marginText.ts';
export { mortiseDrawings } from './mortiseDrawings.ts';
export { neckDrawings } from './neckDrawings.ts';
export { neckElevationDrawing } from './neckElevationDrawing.ts';
export type { NeckPlan } from './neckPiece.ts';
export { neckSetDrawings } from './neckSetDrawings.ts';
export { nutDrawings } from './nutDrawings.ts';
export { outlineDrawings } from './outlineDrawings.ts';
export { overhangGaugeDrawings } from './overhangGaugeDrawings.ts';
export {
  type Page,
  type PageLine,
  type PagePen,
  type PageSet,
  type PageText,
  type PlacedDrawing,
  type PrinterMeasure,
  placedChain,
} from './page.ts';
export type { PageOptions } from './pageGroup.ts';
export { layoutPages, layoutWholeSheet } from './pageLayout.ts';
export { isPaperName, PAPERS, type PaperName } from './paper.ts';
export { postDrawings } from './postDrawings.ts';
export { type PurflingPlan, purflingPlanDrawing } from './purflingPlanDrawing.ts';
export { ribHeightGaugeDrawing } from './ribHeightGaugeDrawing.ts';
export { ribScheduleDrawing } from './ribScheduleDrawing.ts';
export { ribStripDrawings } from './ribStripDrawings.ts';
export { roughArchingDrawing } from './roughArchingDrawing.ts';
export { roughDrillDrawing } from './roughDrillDrawing.ts';
export { type SetupSheet, setupSheet } from './setupPiece.ts';
export { sheetDrawing } from './sheetDrawing.ts';
export { cardsDrawing } from './sheetDrawingCards.ts';
export { soundHoleDrawings } from './soundHoleDrawings.ts';
export { spokenDrawing } from './spokenDrawing.ts';
export { tailDrawings } from './tailDrawings.ts';
export { wearMapDrawing } from './wearMapDrawing.ts';
