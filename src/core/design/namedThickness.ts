import type { Finding } from '../base/index.ts';
import { type NamedThicknesses, THICKNESS_MAPS, THICKNESS_VALUES } from '../knowledge/index.ts';
import { printLength, type Quantity } from '../quantity/index.ts';
import type { Design } from './design.ts';
import type { ValueName } from './values.ts';

/** mm. Figures of one tenth of a millimetre that differ by less are the same figure. */
const SAME_MM = 0.01;

/** No unit. A body this near to the one that a table prints for is of that size; chosen by us. */
const SAME_SIZE = 0.03;

/**
 * The design with the thicknesses of the maps that it names, each with its source; a value that the maker measured or chose
 * stands before the map's. A design that names none, or was given its maps already, stays as it is.
 *
 * Findings: `thickness.own-value` (a value that stands before the map's), `thickness.other-body` (the table is for another
 * body).
 */
export function withNamedThicknesses(design: Design): {
  readonly design: Design;
  readonly findings: readonly Finding[];
} {
  const values: Partial<Record<ValueName, Quantity>> = { ...design.values };
  const findings: Finding[] = [];
  for (const plate of ['back', 'top'] as const) {
    const map = THICKNESS_MAPS.find(({ name }) => name === design.thickness?.[plate]?.map);
    if (!map) continue;
    findings.push(...otherBody(design, plate, map));
    for (const name of THICKNESS_VALUES[plate]) {
      const own = design.values[name];
      const printed = map.values[name];
      if (own && isOwn(own)) findings.push(...ownValue(name, own, printed, map));
      else values[name] = printed;
    }
  }
  return { design: { ...design, values }, findings };
}

function isOwn({ origin }: Quantity): boolean {
  return origin.kind === 'measured' || origin.kind === 'chosen';
}

function ownValue(
  name: ValueName,
  own: Quantity,
  printed: Quantity,
  map: NamedThicknesses,
): readonly Finding[] {
  if (Math.abs(own.value - printed.value) < SAME_MM) return [];
  return [
    {
      code: 'thickness.own-value',
      weight: 'remark',
      at: name,
      found: `${printLength(own.value)} of your own, where the map “${map.name}” has ${printLength(printed.value)}; yours is used`,
      need: 'one of the two',
      remedy: 'keep it, or remove the value for the map to fill',
    },
  ];
}

function otherBody(design: Design, plate: 'back' | 'top', map: NamedThicknesses): readonly Finding[] {
  const lengthMm = design.values.bodyLength?.value ?? Number.NaN;
  const isOfSize = Math.abs(lengthMm / map.bodyLengthMm - 1) <= SAME_SIZE;
  if (design.family === map.family && isOfSize) return [];
  return [
    {
      code: 'thickness.other-body',
      weight: 'remark',
      at: `thickness.${plate}.map`,
      found: `“${map.name}”, thicknesses for a ${map.family} body of ${printLength(map.bodyLengthMm)}, on a ${design.family} of ${printLength(lengthMm)}; they are used as they stand`,
      need: 'thicknesses of this size, unless others are meant',
      remedy: 'keep it if it is meant, or name the map of a nearer size',
    },
  ];
}
