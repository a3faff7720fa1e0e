import { accept, type Checked, type Finding, point } from '../../base/index.ts';
import { BUILT_PARTS } from '../../checks/index.ts';
import type { PlanParts } from '../../instrument/index.ts';
import {
  bodyToScene,
  cameraView,
  lengthBetween,
  type MarkerFinder,
  projection,
  readAnySheet,
  sheetGround,
  solveCamera,
  squareOn,
  type TracedShape,
  toPhoto,
  traceShape,
} from '../../photo/index.ts';
import type { BuiltRequest } from './builtRequest.ts';
import { expectedShapes, heightAt, type UpperEdge } from './expectedShapes.ts';

/** A made thing as it was measured, and how far the camera lets its lengths be trusted. */
export interface SeenThing {
  readonly traced: TracedShape;
  /** Half interval (k = 2) of the thing's whole length from camera, print and height. */
  readonly lengthPlusMinusMm: number;
  readonly findings: readonly Finding[];
}

/** mm of the scene kept round the sheet. */
const ROUND_THE_SHEET_MM = 15;

/** A made thing on the calibration sheet, measured. Faults: those of the sheet, the camera, the view and the shape. */
export function seeMadeThing(
  request: BuiltRequest,
  plan: PlanParts,
  upperEdge: UpperEdge,
  finder: MarkerFinder,
): Checked<SeenThing> {
  const { picture } = request;
  const reading = readAnySheet(picture, finder);
  if (!reading.ok) return reading;
  const { sheet } = reading.value;
  const solved = solveCamera(reading.value, picture, { sheetBarMm: request.sheetBarMm });
  if (!solved.ok) return solved;
  const heightMm = (upperEdge.lowerMm + upperEdge.upperMm) / 2;
  const plane = { heightMm, plusMinusMm: upperEdge.plusMinusMm };
  const seen = cameraView(solved.value, sheet, plane);
  if (!seen.ok) return seen;
  const { view } = seen.value;
  const area = { min: point<'scene'>(0, 0), max: point<'scene'>(sheet.widthMm, sheet.heightMm) };
  const traced = traceShape(
    {
      rectified: squareOn(picture, view, area, ROUND_THE_SHEET_MM),
      planeHeightMm: heightMm,
      stand: projection(view.camera).stand,
      ground: sheetGround(sheet, view, picture),
    },
    {
      shapes: expectedShapes(plan, request.part, request.face),
      others: BUILT_PARTS.filter((part) => part !== request.part).flatMap((part) =>
        expectedShapes(plan, part, request.face),
      ),
      upperEdgeMm: heightAt(upperEdge, plan.outline.bodyLengthMm),
      rimMm: request.part === 'garland' ? RIM_MM : WIDE_RIM_MM,
    },
  );
  if (!traced.ok) return traced;
  const ends = [point<'body'>(0, 0), point<'body'>(0, plan.outline.bodyLengthMm)].map((end) =>
    toPhoto(view, bodyToScene(traced.value.seat, end)),
  );
  const length = lengthBetween(view, ends[0] as (typeof ends)[0], ends[1] as (typeof ends)[0]);
  return accept({
    traced: traced.value,
    lengthPlusMinusMm: length.plusMinusMm,
    findings: [...solved.value.findings, ...seen.value.findings],
  });
}

/** mm. Ribs without their linings show no more than this at the edge; any other thing shows more than is looked at. */
const RIM_MM = 1;
const WIDE_RIM_MM = 5;
