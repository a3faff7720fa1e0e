import type { Drawing } from './drawing.ts';
import { headCombDrawings } from './headCombDrawings.ts';
import { headFrontDrawing } from './headFrontDrawing.ts';
import type { HeadPlan } from './headPiece.ts';
import { headSideDrawing } from './headSideDrawing.ts';
import { headStringsDrawing } from './headStringsDrawing.ts';
import { headViewsDrawing } from './headViewsDrawing.ts';
import { headWrapDrawing } from './headWrapDrawing.ts';
import { pegboxDrawings } from './pegboxDrawings.ts';
import { pegDrawings } from './pegDrawings.ts';

/** Templates and gauges of scroll and pegbox, in the order in which a head is cut. */
export function headDrawings(plan: HeadPlan): readonly Drawing[] {
  return [
    headSideDrawing(plan),
    headWrapDrawing(plan),
    headFrontDrawing(plan),
    headViewsDrawing(plan),
    ...headCombDrawings(plan),
    ...pegboxDrawings(plan),
    headStringsDrawing(plan),
    ...pegDrawings(plan),
  ];
}
