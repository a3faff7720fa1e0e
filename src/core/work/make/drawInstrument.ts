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

/** Draws the pieces of one kind. Faults: those of the gauges. */
type Draw = (instrument: Instrument, gauges: GaugeChoices) => Checked<readonly Drawing[]>;

const BOTH = ['back', 'top'] as const;

/** Every kind of piece, by what it serves, in the order in which a maker needs them. */
export const KINDS_OF_PIECES: Readonly<Record<string, Draw>> = {
  form: ({ plan }) => accept(formDrawings(plan)),
  outline: ({ plan }) => accept(outlineDrawings(plan)),
  blocks: ({ plan, neck, setUp }) => accept(blockDrawings(plan, { neck, endpin: setUp.endpin })),
  ribs: (instrument) => accept(drawRibs(instrument)),
  corners: ({ plan }) => accept(cornerTemplateDrawings(plan)),
  edgeSteps: (instrument) => accept(drawEdgeSteps(instrument)),
  purfling: ({ plan, plates, design }) =>
    accept([
      purflingPlanDrawing(plan, plates.back, {
        toEdgeMm: plan.purfling.outer.insetMm,
        widthMm: plan.purfling.inner.insetMm - plan.purfling.outer.insetMm,
        depthMm: design.values.purflingDepth?.value ?? 0,
      }),
    ]),
  roughing: (instrument) => accept(BOTH.flatMap((plate) => drawRoughing(instrument, plate))),
  edges: (instrument) =>
    joined(BOTH.map((plate) => edgeGaugeDrawings(instrument.plates[plate], edge(instrument)))),
  arching: (instrument, gauges) =>
    joined(BOTH.map((plate) => archGaugeDrawings(instrument.plates[plate], shared(instrument, gauges)))),
  finishedArching: (instrument, gauges) =>
    joined(
      BOTH.map((plate) =>
        archGaugeDrawings(instrument.plates[plate], { ...shared(instrument, gauges), state: 'finished' }),
      ),
    ),
  inside: (instrument, gauges) =>
    joined(
      BOTH.map((plate) => {
        const hollow = instrument.hollows[plate];
        // A gauge serves both halves: where they differ it must spare the thicker.
        return insideGaugeDrawings(
          hollow.arch,
          (x, y) => insideOfBothHalves(hollow, x, y),
          shared(instrument, gauges),
        );
      }),
    ),
  hollowing: (instrument) => accept(BOTH.flatMap((plate) => drawHollowing(instrument, plate))),
  soundHoles: (instrument) => accept(soundHoleDrawings(instrument)),
  neck: (instrument) => drawNeck(instrument),
  head: (instrument) => accept(headDrawings(instrument)),
  setUp: (instrument) => accept(drawSetUp(instrument)),
};

function shared({ plan, design, neck }: Instrument, gauges: GaugeChoices) {
  return {
    ...gauges,
    instrumentName: plan.name,
    gaugeThicknessMm: design.values.gaugeThickness?.value ?? 0,
    buttonMm: neck.button.heightMm,
    ...(design.values.stop && { stopMm: design.values.stop.value }),
  };
}

function edge({ plan, design }: Instrument) {
  return {
    instrumentName: plan.name,
    underRoundingMm: design.values.edgeUnderRounding?.value ?? 0,
    overhangMm: design.values.overhang?.value ?? 0,
  };
}

/** All of them, or every fault once: the same place is off the arch in both states of a plate. */
function joined(sets: readonly Checked<readonly Drawing[]>[]): Checked<readonly Drawing[]> {
  const faults = new Map(
    sets.flatMap((set) => (set.ok ? [] : set.faults.map((fault) => [fault.found, fault] as const))),
  );
  if (faults.size > 0) return refuse(...faults.values());
  return accept(sets.flatMap((set) => (set.ok ? set.value : [])));
}

/** Every piece of an instrument that is drawn so far, in the order a maker needs them. Faults: those of the gauges. */
export function drawInstrument(
  instrument: Instrument,
  gauges: GaugeChoices = {},
): Checked<readonly Drawing[]> {
  return joined(Object.values(KINDS_OF_PIECES).map((draw) => draw(instrument, gauges)));
}
