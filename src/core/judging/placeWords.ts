import type { Instrument } from '../instrument/index.ts';

/** Share of the body length within which a place counts as on the centre line, and as at an end. */
const CENTRE_SHARE = 0.012;
const END_SHARE = 0.05;

/** Where a place of a symmetric plate lies, in a maker's words. */
export function placeWords({ plan }: Instrument, xMm: number, yMm: number): string {
  const { bodyLengthMm, lowerCorner, upperCorner } = plan.outline;
  const stretch =
    yMm < END_SHARE * bodyLengthMm
      ? 'lower end'
      : yMm > (1 - END_SHARE) * bodyLengthMm
        ? 'upper end'
        : yMm < lowerCorner.stationMm
          ? 'lower bout'
          : yMm > upperCorner.stationMm
            ? 'upper bout'
            : 'waist';
  const beside =
    Math.abs(xMm) < CENTRE_SHARE * bodyLengthMm
      ? 'on the centre line'
      : `${Math.abs(xMm).toFixed(0)} mm to either side`;
  return `${stretch}, ${beside}, ${yMm.toFixed(0)} mm above the lower end`;
}
