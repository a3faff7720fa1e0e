import { hypot } from '../../base/index.ts';
import { takenAsDrawn, type ValueName } from '../../design/index.ts';
import type { Family } from '../../knowledge/index.ts';
import type { KnownMeasure } from '../../photo/index.ts';
import { measured, type Quantity } from '../../quantity/index.ts';
import type { KnownLength } from './traceRequest.ts';

/** mm, k = 2, added where a length over the arch or over the purfling is turned into one at the edge by habit. */
const TURNED_MM = 0.3;

/**
 * Known lengths as the photograph shows them: straight, and from edge to edge. A tape over the arch reads longer than
 * the chord; over the purfling a width lacks two borders. Rise and border are the family's habit, so what was turned is
 * believed a little less.
 */
export function knownAsDrawn(known: readonly KnownLength[], family: Family): readonly KnownMeasure[] {
  const length = known.find(({ name }) => name === 'bodyLength')?.mm ?? USUAL_LENGTH_MM[family];
  return known.map((one) => {
    const plain = { name: one.name, ...(one.plusMinusMm && { plusMinusMm: one.plusMinusMm }) };
    const mm = turned(one, family, length);
    if (mm === one.mm) return { ...plain, mm };
    return { name: one.name, mm, plusMinusMm: hypot(one.plusMinusMm ?? TURNED_MM, TURNED_MM) };
  });
}

const USUAL_LENGTH_MM: Readonly<Record<Family, number>> = { violin: 355, viola: 405, cello: 755 };

function turned({ name, mm, taken }: KnownLength, family: Family, lengthMm: number): number {
  if (taken !== 'over-arch' && taken !== 'purfling') return mm;
  const of = (value: number): Quantity => ({ value, unit: 'mm', origin: measured('the maker') });
  const given = { bodyLength: of(lengthMm), [name]: of(mm) };
  const said = taken === 'over-arch' ? ({ bodyLength: taken } as const) : ({ widths: taken } as const);
  return takenAsDrawn(family, given, said).values[name as ValueName]?.value ?? mm;
}
