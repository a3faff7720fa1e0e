import type { Finding } from '../base/index.ts';
import type { Design } from '../design/index.ts';
import { deriveInstrument, type Instrument, weighed } from '../instrument/index.ts';
import { archSurfaceFindings } from './archSurface.ts';
import { checkDesign, heaviestFirst } from './checkDesign.ts';

/**
 * All that {@link checkDesign} finds, and what deriving the parts adds to it, heaviest first, nothing twice. Where
 * the design contradicts itself that is the cause, and what fails to be derived from it is left out.
 */
export function checkInstrument(design: Design): readonly Finding[] {
  const own = checkDesign(design);
  const instrument = deriveInstrument(design);
  const derived = instrument.ok ? weighed(instrument.value) : instrument;
  const contradicts = own.some(({ weight }) => weight === 'contradiction');
  const added: readonly Finding[] = derived.ok
    ? [...derived.value.findings, ...plates(derived.value)]
    : contradicts
      ? []
      : derived.faults.map((fault) => ({ ...fault, weight: 'contradiction' }));
  const told = new Set(own.map(({ code, at }) => `${code} ${at}`));
  const fresh = added.filter(({ code, at }) => {
    const key = `${code} ${at}`;
    return !told.has(key) && told.add(key);
  });
  return heaviestFirst([...own, ...fresh]);
}

function plates({ plates: { back, top } }: Instrument): readonly Finding[] {
  return [...archSurfaceFindings(back), ...archSurfaceFindings(top)];
}
