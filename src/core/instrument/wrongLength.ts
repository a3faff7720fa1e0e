import type { Fault } from '../base/index.ts';
import { VALUES, type ValueName } from '../design/index.ts';

/** A value of a design that is no length of the kind that is needed, as a fault of this code. */
export function wrongLength(
  code: string,
  name: ValueName,
  value: number,
  need = 'a length above 0 mm',
): Fault {
  return {
    code,
    at: name,
    found: Number.isFinite(value) ? `${value} mm` : 'no number',
    need,
    remedy: `correct it: the ${VALUES[name].says}`,
  };
}
