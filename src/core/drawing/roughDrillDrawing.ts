import { closeChain, joinChains } from '../curve/index.ts';
import type { DrillPoint, PlateArch, RoughNumbers } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { drillChartDrawing } from './drillChartDrawing.ts';
import { onDrawing } from './outlineDrawingsMarks.ts';

/** The holes that rough out a plate's outside, as half a chart at true size; see {@link drillChartDrawing}. */
export function roughDrillDrawing(
  arch: PlateArch,
  rough: RoughNumbers,
  holes: readonly DrillPoint[],
  instrumentName: string,
): Drawing {
  const { diameterMm, pointMm, pitchMm } = rough.drill;
  const bit = pointMm > 0 ? `${diameterMm} mm bit, point ${mm(pointMm)}` : `${diameterMm} mm flat bit`;
  return drillChartDrawing({
    name: `rough-arching-drilling-${arch.plate}`,
    title: `Rough arching, ${arch.plate}, holes to depth`,
    part: 'roughing',
    caption: [
      `DRILLING · ${arch.plate.toUpperCase()} · OUTSIDE`,
      instrumentName,
      `straight edge on the centre joint, ${bit}`,
      `at each mark: depth from a board of ${mm(rough.boardMm)}, under it (wood left), both to the tip`,
    ],
    edge: onDrawing(closeChain(joinChains(...arch.edge))),
    holes: holes.map(({ at, depthMm, leftMm }) => ({ at: { x: at.x, y: at.y }, depthMm, leftMm })),
    pitchMm,
    bodyLengthMm: arch.bodyLengthMm,
    notes: [
      `For a ${bit}. No part of it comes nearer than ${mm(rough.allowanceMm)} to the arch before the channel is cut. A thicker bit, or one with a longer point, needs a chart of its own.`,
      `Depths count from the upper face of a board planed level at ${mm(rough.boardMm)}; the figures in brackets are what is left above the gluing face: set the stop of a pillar drill to them, with the tip over the bare table, and one setting serves all holes alike.`,
      'Prick the marks through, turn over for the other side, drill the shallowest first and try the stop on waste. Gouge away until the bottoms of the holes just vanish.',
    ],
  });
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
