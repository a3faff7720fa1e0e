import { type Design, draftDesign, type Family } from '../../src/core/design/index.ts';
import { deriveInstrument, type Instrument } from '../../src/core/instrument/index.ts';
import { chosen } from '../../src/core/quantity/index.ts';

/** Usual body lengths, mm, common practice. */
const BODY_LENGTH_MM = { violin: 355, viola: 406, cello: 755 } as const satisfies Record<Family, number>;

export const FAMILIES = Object.keys(BODY_LENGTH_MM) as readonly Family[];
export const PLATES = ['back', 'top'] as const;

/** An instrument of a family of which nothing is said but its body length: all else is the family's habit. */
export function defaultInstrument(family: Family): Instrument {
  const bodyLength = { value: BODY_LENGTH_MM[family], unit: 'mm', origin: chosen('check') } as const;
  const drafted = draftDesign({ family, name: family, values: { bodyLength } });
  if (!drafted.ok) throw new Error(`no ${family} is drafted`);
  return instrumentOf(drafted.value.design);
}

function instrumentOf(design: Design): Instrument {
  const derived = deriveInstrument(design);
  if (!derived.ok) throw new Error(derived.faults.map(({ code, found }) => `${code}: ${found}`).join());
  return derived.value;
}
