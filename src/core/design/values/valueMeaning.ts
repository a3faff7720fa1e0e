import type { Unit } from '../../quantity/index.ts';

/**
 * What a number is that a maker may give. `optional` ones are used only when given; all others are filled from the
 * family's habits, with origin.
 */
export interface ValueMeaning {
  readonly unit: Unit;
  readonly optional?: boolean;
  readonly says: string;
}
