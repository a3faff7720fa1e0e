import { accept, type Checked, type Finding } from '../base/index.ts';
import { type Design, halfOf } from '../design/index.ts';
import { type Instrument, planParts } from '../instrument/index.ts';
import type { RegisterEntry } from '../quantity/index.ts';
import { type ShownBody, type ShownDrawing, shownBody, shownDrawing } from '../showing/index.ts';
import { derive } from './derive.ts';
import { drawInstrument } from './make/drawInstrument.ts';

/** What is shown of a whole instrument once a hand rests. */
export interface ShownInstrument {
  readonly body: ShownBody;
  readonly register: readonly RegisterEntry[];
  readonly findings: readonly Finding[];
}

/** The body alone: quick enough to follow a hand that drags. Faults: those of the outline and of the parts in the plane. */
export function showBody(design: Design): Checked<ShownBody> {
  const half = halfOf(design);
  if (!half.ok) return half;
  const plan = planParts(design, half.value.half);
  return plan.ok ? accept(shownBody(plan.value)) : plan;
}

/** Body, numbers and what is found about them, with the instrument that they come from. Faults: those of {@link derive}. */
export function showInstrument(
  design: Design,
): Checked<{ readonly instrument: Instrument; readonly shown: ShownInstrument }> {
  const derived = derive(design);
  if (!derived.ok) return derived;
  const { plan, register, findings } = derived.value;
  return accept({
    instrument: derived.value,
    shown: { body: shownBody(plan), register: register.entries, findings },
  });
}

/** Every piece to be made, as it looks. Faults: those of {@link drawInstrument}. */
export function showDrawings(instrument: Instrument): Checked<readonly ShownDrawing[]> {
  const drawings = drawInstrument(instrument);
  return drawings.ok ? accept(drawings.value.map(shownDrawing)) : drawings;
}
