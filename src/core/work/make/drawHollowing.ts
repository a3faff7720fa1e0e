import { type Drawing, hollowDrillDrawing } from '../../drawing/index.ts';
import { hollowHoles, type Instrument, type Plate } from '../../instrument/index.ts';
import { thicknessDrawing, thicknessPlan } from '../../judging/index.ts';

/** The chart of holes that a plate is hollowed by, and the sheet of its thickness that the calliper follows. */
export function drawHollowing(instrument: Instrument, plate: Plate): readonly Drawing[] {
  const { plan, hollows, roughing } = instrument;
  const [hollow, rough] = [hollows[plate], roughing[plate]];
  return [
    hollowDrillDrawing(hollow, rough, hollowHoles(hollow, rough), plan.name),
    thicknessDrawing(thicknessPlan(instrument, plate)),
  ];
}
