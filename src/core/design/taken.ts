import type { Finding } from '../base/index.ts';
import { type Family, nearestSize, valueAtLength } from '../knowledge/index.ts';
import { printLength, type Quantity } from '../quantity/index.ts';
import type { ValueName } from './values.ts';

/** How length and widths were taken, where the maker says. */
export interface Taken {
  readonly bodyLength?: 'straight' | 'over-arch' | undefined;
  readonly widths?: 'edge' | 'purfling' | undefined;
}

type Values = Readonly<Partial<Record<ValueName, Quantity>>>;

const WIDTHS = ['upperBout', 'waist', 'lowerBout'] as const satisfies readonly ValueName[];

/**
 * The values as they are drawn: length straight (calliper), widths edge to edge.
 *
 * - A tape over the arch reads longer than the chord c by 8 s² / (3 c), s the rise of the back above its edge
 *   (arc of a flat circle; the figure that makers quote, about 1 mm on a violin). The chord is solved from it.
 * - Widths between the outer lines of the purfling gain twice the border outside it: the purfling keeps its
 *   place when the edge wears (measured so since the early nineteenth century).
 * Where rise or border were not given, the family's habit serves, and the origin says so. What was not said is
 * read as straight and edge to edge, with a remark.
 */
export function takenAsDrawn(
  family: Family,
  given: Values,
  taken: Taken,
): { readonly values: Values; readonly findings: readonly Finding[] } {
  const values: Partial<Record<ValueName, Quantity>> = { ...given };
  const findings: Finding[] = [];
  const length = given.bodyLength;
  if (length && taken.bodyLength === 'over-arch') values.bodyLength = chordOf(family, given, length);
  else if (length && taken.bodyLength === undefined) findings.push(lengthNotSaid(family, given, length));
  const widths = WIDTHS.filter((name) => given[name]);
  if (length && taken.widths === 'purfling')
    for (const name of widths) values[name] = overEdges(family, given, given[name] as Quantity, length.value);
  else if (taken.widths === undefined && widths.length > 0) findings.push(widthsNotSaid(widths));
  return { values, findings };
}

function chordOf(family: Family, given: Values, length: Quantity): Quantity {
  const rise = riseAboveEdge(family, given, length.value);
  const chord = (length.value + Math.sqrt(length.value ** 2 - (32 / 3) * rise.mm ** 2)) / 2;
  if (!Number.isFinite(chord)) return length;
  const how = `${sourceOf(length)}: ${printLength(length.value)} over the arch, less ${(length.value - chord).toFixed(2)} mm for a rise of ${rise.mm.toFixed(1)} mm (${rise.from})`;
  return { ...length, value: chord, origin: { kind: 'measured', from: how } };
}

function overEdges(family: Family, given: Values, width: Quantity, lengthMm: number): Quantity {
  const border =
    given.purflingToEdge ?? valueAtLength(nearestSize(family, lengthMm), 'purflingToEdge', lengthMm);
  if (!border) return width;
  const from = given.purflingToEdge ? 'given' : 'habit of the family';
  const how = `${sourceOf(width)}: ${printLength(width.value)} over the purfling, and twice the border of ${printLength(border.value)} (${from})`;
  return { ...width, value: width.value + 2 * border.value, origin: { kind: 'measured', from: how } };
}

function riseAboveEdge(family: Family, given: Values, lengthMm: number): { mm: number; from: string } {
  const size = nearestSize(family, lengthMm);
  const arch = given.archHeightBack ?? valueAtLength(size, 'archHeightBack', lengthMm);
  const edge = given.edgeHeightBack ?? valueAtLength(size, 'edgeHeightBack', lengthMm);
  const mm = Math.max(0, (arch?.value ?? 0) - (edge?.value ?? 0));
  return {
    mm,
    from: given.archHeightBack ? 'arch of the back as given' : 'arch of the back as the family has it',
  };
}

function sourceOf(quantity: Quantity): string {
  return quantity.origin.kind === 'measured' ? quantity.origin.from : 'given';
}

function lengthNotSaid(family: Family, given: Values, length: Quantity): Finding {
  const tapeMm = length.value - chordOf(family, given, length).value;
  return {
    code: 'taken.length-not-said',
    weight: 'remark',
    at: 'bodyLength',
    found: `not said whether ${printLength(length.value)} was taken straight or over the arch; read as straight`,
    need: `to be known: a tape over the arch would read about ${tapeMm.toFixed(1)} mm more`,
    remedy: 'set taken.bodyLength to straight or over-arch',
  };
}

function widthsNotSaid(names: readonly ValueName[]): Finding {
  return {
    code: 'taken.widths-not-said',
    weight: 'remark',
    at: names.join(', '),
    found: 'not said whether widths go from edge to edge or over the purfling; read as edge to edge',
    need: 'to be known: over the purfling they are two borders less',
    remedy: 'set taken.widths to edge or purfling',
  };
}
