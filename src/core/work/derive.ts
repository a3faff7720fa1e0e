import type { Checked, Finding } from '../base/index.ts';
import { checkInstrument } from '../checks/index.ts';
import type { Design } from '../design/index.ts';
import { documentText, instrumentDocument, settledDigits } from '../files/index.ts';
import { deriveInstrument, type Instrument, weighed } from '../instrument/index.ts';

/** Every part and number of a design. Faults: those of the parts. */
export function derive(design: Design): Checked<Instrument> {
  const instrument = deriveInstrument(design);
  return instrument.ok ? weighed(instrument.value) : instrument;
}

/** The derived instrument as the text of its document. */
export function instrumentText(instrument: Instrument): string {
  return documentText(settledDigits(instrumentDocument(instrument)));
}

/** Everything in a design that contradicts itself, is risky or is unusual, heaviest first. */
export function check(design: Design): readonly Finding[] {
  return checkInstrument(design);
}
