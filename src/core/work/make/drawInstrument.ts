import { accept, type Checked, refuse } from '../../base/index.ts';
import {
  archGaugeDrawings,
  blockDrawings,
  cornerTemplateDrawings,
  type Drawing,
  edgeGaugeDrawings,
  formDrawings,
  headDrawings,
  insideGaugeDrawings,
  outlineDrawings,
  purflingPlanDrawing,
  soundHoleDrawings,
} from '../../drawing/index.ts';
import { type Instrument, insideOfBothHalves } from '../../instrument/index.ts';
import { drawHollowing } from './drawHollowing.ts';
import { drawNeck } from './drawNeck.ts';
import { drawEdgeSteps, drawRibs } from './drawRibs.ts';
import { drawRoughing } from './drawRoughing.ts';
import { drawSetUp } from './drawSetUp.ts';
import type { GaugeChoices } from './gaugeChoices.ts';

/** Every piece of an instrument that is drawn so far, in the order a maker needs them. Faults: those of the gauges. */
export function drawInstrument(
  instrument: Instrument,
  gauges: GaugeChoices = {},
): Checked<readonly Drawing[]> {
  const { plan, plates, hollows, design } = instrument;
  const shared = {
    ...gauges,
    instrumentName: plan.name,
    gaugeThicknessMm: design.values.gaugeThickness?.value ?? 0,
    buttonMm: instrument.neck.button.heightMm,
    ...(design.values.stop && { stopMm: design.values.stop.value }),
  };
  const edge = {
    instrumentName: plan.name,
    underRoundingMm: design.values.edgeUnderRounding?.value ?? 0,
    overhangMm: design.values.overhang?.value ?? 0,
  };
  const sets = [
    edgeGaugeDrawings(plates.back, edge),
    edgeGaugeDrawings(plates.top, edge),
    archGaugeDrawings(plates.back, shared),
    archGaugeDrawings(plates.top, shared),
    archGaugeDrawings(plates.back, { ...shared, state: 'finished' }),
    archGaugeDrawings(plates.top, { ...shared, state: 'finished' }),
    ...([hollows.back, hollows.top] as const).map((hollow) =>
      // A gauge serves both halves: where they differ it must spare the thicker.
      insideGaugeDrawings(hollow.arch, (x, y) => insideOfBothHalves(hollow, x, y), shared),
    ),
  ];
  const neck = drawNeck(instrument);
  // The same place is off the arch in both states of a plate: said once.
  const faults = new Map(
    [...sets, neck].flatMap((set) => (set.ok ? [] : set.faults.map((fault) => [fault.found, fault]))),
  );
  if (faults.size > 0) return refuse(...faults.values());
  return accept([
    ...formDrawings(plan),
    ...outlineDrawings(plan),
    ...blockDrawings(plan, { neck: instrument.neck, endpin: instrument.setUp.endpin }),
    ...drawRibs(instrument),
    ...cornerTemplateDrawings(plan),
    ...drawEdgeSteps(instrument),
    purflingPlanDrawing(plan, plates.back, {
      toEdgeMm: plan.purfling.outer.insetMm,
      widthMm: plan.purfling.inner.insetMm - plan.purfling.outer.insetMm,
      depthMm: design.values.purflingDepth?.value ?? 0,
    }),
    ...drawRoughing(instrument, 'back'),
    ...drawRoughing(instrument, 'top'),
    ...sets.flatMap((set) => (set.ok ? set.value : [])),
    ...drawHollowing(instrument, 'back'),
    ...drawHollowing(instrument, 'top'),
    ...soundHoleDrawings(instrument),
    ...(neck.ok ? neck.value : []),
    ...headDrawings(instrument),
    ...drawSetUp(instrument),
  ]);
}
