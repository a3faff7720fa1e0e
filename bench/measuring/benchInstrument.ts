import { draftDesign } from '../../src/core/design/index.ts';
import { deriveInstrument, type Instrument } from '../../src/core/instrument/index.ts';
import { chosen } from '../../src/core/quantity/index.ts';

/** The violin that plates are timed on: 355 mm, all else the family's habit. */
export function benchInstrument(): Instrument {
  const bodyLength = { value: 355, unit: 'mm', origin: chosen('benchmark') } as const;
  const drafted = draftDesign({ family: 'violin', name: 'benchmark', values: { bodyLength } });
  const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!derived.ok) throw new Error(derived.faults.map(({ code }) => code).join());
  return derived.value;
}
