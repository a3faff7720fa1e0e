import { type Drawing, roughArchingDrawing, roughDrillDrawing } from '../../drawing/index.ts';
import { drillPoints, type Instrument, type Plate, terraces } from '../../instrument/index.ts';

/** The plan of terraces and the chart of holes that a plate is roughed out by. */
export function drawRoughing({ plan, plates, roughing }: Instrument, plate: Plate): readonly Drawing[] {
  const [arch, rough] = [plates[plate], roughing[plate]];
  return [
    roughArchingDrawing(arch, rough, terraces(arch, rough), plan.name),
    roughDrillDrawing(arch, rough, drillPoints(arch, rough), plan.name),
  ];
}
