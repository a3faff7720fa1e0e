import type { BodyOutline } from './outline/bodyOutline.ts';

/** Share of the body length within which a place counts as on the centre line, and as at an end. */
const CENTRE_SHARE = 0.012;
const END_SHARE = 0.05;

/** Where a place of the body lies, in a maker's words: to either side, unless its halves are told apart. Body frame. */
export function placeWords(
  { bodyLengthMm, lowerCorner, upperCorner }: BodyOutline,
  xMm: number,
  yMm: number,
  halves: 'alike' | 'apart' = 'alike',
): string {
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
  const side = halves === 'alike' ? 'to either side' : xMm > 0 ? 'to the treble side' : 'to the bass side';
  const beside =
    Math.abs(xMm) < CENTRE_SHARE * bodyLengthMm
      ? 'on the centre line'
      : `${Math.abs(xMm).toFixed(0)} mm ${side}`;
  return `${stretch}, ${beside}, ${yMm.toFixed(0)} mm above the lower end`;
}
