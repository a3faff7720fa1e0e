import {
  blockGaugeDrawings,
  caulDrawings,
  cornerJointDrawing,
  type Drawing,
  edgeStepDrawing,
  liningDrawings,
  overhangGaugeDrawings,
  ribHeightGaugeDrawing,
  ribScheduleDrawing,
  ribStripDrawings,
} from '../../drawing/index.ts';
import type { Instrument } from '../../instrument/index.ts';

/** Everything for the garland: schedule, ribs and linings laid flat, joints, gauges of blocks and height, cauls. */
export function drawRibs({ plan, neck, setUp }: Instrument): readonly Drawing[] {
  return [
    ribScheduleDrawing(plan),
    ...ribStripDrawings(plan, { mortise: neck.inRibs, endpin: setUp.endpin }),
    cornerJointDrawing(plan),
    ...blockGaugeDrawings(plan),
    ...liningDrawings(plan),
    ...caulDrawings(plan),
    ribHeightGaugeDrawing(plan),
  ];
}

/** What overhang and edge of the plates are marked and checked by. */
export function drawEdgeSteps({ plan, plates, design }: Instrument): readonly Drawing[] {
  return [
    ...overhangGaugeDrawings(plan, {
      boutsMm: design.values.overhang?.value ?? 0,
      cornersMm: design.values.cornerOverhang?.value ?? 0,
    }),
    edgeStepDrawing(plates.back, plan.name),
    edgeStepDrawing(plates.top, plan.name),
  ];
}
