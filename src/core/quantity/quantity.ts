/** Where a number comes from. Every number in a design says. */
export type Origin =
  | { readonly kind: 'measured'; readonly from: string }
  | { readonly kind: 'published'; readonly source: string }
  | { readonly kind: 'common-practice'; readonly note?: string }
  | { readonly kind: 'from-memory'; readonly note?: string }
  | { readonly kind: 'chosen'; readonly why?: string }
  | { readonly kind: 'derived'; readonly from: readonly string[]; readonly how?: string };

/** The units that a number of the register may have. */
export type Unit =
  | 'mm'
  | 'deg'
  | 'ratio'
  | 'mm²'
  | 'mm³'
  | 'count'
  | 'N'
  | 'g'
  | 'kg/m³'
  | 'cm³'
  | 'l'
  | 'Hz'
  | 'g/m';

/** A number with its unit and where it came from; `plusMinus` is its half interval at k = 2, in the same unit. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
  readonly origin: Origin;
  readonly plusMinus?: number;
}

/** One line of the register: a named quantity. Derived ones name, in their origin, what they depend on. */
export interface RegisterEntry extends Quantity {
  readonly name: string;
}

/** Whether two quantities say the same: number, unit, how sure it is, and every word of where it comes from. */
export function isSameQuantity(one: Quantity, other: Quantity): boolean {
  if (one === other) return true;
  const isSameNumber =
    one.value === other.value && one.unit === other.unit && one.plusMinus === other.plusMinus;
  return isSameNumber && isSameOrigin(one.origin, other.origin);
}

function isSameOrigin(one: Origin, other: Origin): boolean {
  if (one === other) return true;
  const [a, b] = [Object.entries(one), Object.entries(other)];
  return (
    a.length === b.length && a.every(([key, said]) => isSaidAlike(said, b.find(([of]) => of === key)?.[1]))
  );
}

function isSaidAlike(
  one: string | readonly string[],
  other: string | readonly string[] | undefined,
): boolean {
  if (typeof one === 'string' || typeof other !== 'object') return one === other;
  return one.length === other.length && one.every((name, index) => name === other[index]);
}
