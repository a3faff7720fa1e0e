import type { ShownWear } from '../../core/index.ts';

/** What a piece of wear is called where it can be touched: in the drawing as in the notebook. */
export function wearName({ side, section, stationMm }: ShownWear): string {
  return `wear.${side}.${section}.${Math.round(stationMm)}`;
}
