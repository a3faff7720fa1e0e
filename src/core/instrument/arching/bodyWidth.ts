import { type Checked, distanceBetween } from '../../base/index.ts';
import { type FairSpline, fairSpline } from '../../surface/index.ts';
import { type ChannelLine, cornerPoint } from './channelLine.ts';
import type { StationPlace } from './stations.ts';

/** Spans of the curve from channel end to channel end: about 19 mm each on a violin. */
const SPANS = 18;

/** Lengths below are for a body of this length and grow with it, mm. */
const REFERENCE_LENGTH_MM = 355;

/** The channel counts for nothing this near to a corner, mm, and fully from twice as far. */
const CORNER_REACH_MM = 24;

/** Softens the weights where the ends close and the half width goes to 0, mm. */
const END_SOFTENING_MM = 15;

/** How dear bending of the squared half width is, at the reference length; greater bodies in proportion come out alike. */
const STIFFNESS = 0.02;

/**
 * The body width that the arches are strung on, squared, over y: the channel's half width at the stations exactly,
 * near it along bouts and waist, and fair past the corners, which it ignores. Squared because the square is smooth
 * where the ends close.
 */
export function squaredBodyWidth(
  channel: ChannelLine,
  stations: readonly StationPlace[],
  bodyLengthMm: number,
): Checked<FairSpline> {
  const scale = bodyLengthMm / REFERENCE_LENGTH_MM;
  const reach = CORNER_REACH_MM * scale;
  const { points } = channel.line;
  const corners = [channel.lowerCorner, channel.upperCorner].map((corner) =>
    cornerPoint(corner, (corner.fromRad + corner.toRad) / 2),
  );
  const near = points.map((place) => {
    const away = Math.min(...corners.map((corner) => distanceBetween(place, corner)));
    const trust = Math.max(0, Math.min(1, away / reach - 1));
    // An error in the square is 2 w times the error in w.
    const weight = trust / (4 * (place.x ** 2 + (END_SOFTENING_MM * scale) ** 2));
    return { at: place.y, value: place.x ** 2, weight };
  });
  const start = points[0]?.y ?? 0;
  const end = points.at(-1)?.y ?? bodyLengthMm;
  return fairSpline(
    {
      from: start,
      to: end,
      spans: SPANS,
      values: [
        { at: start, value: 0 },
        ...stations.map(({ yMm, halfWidthMm }) => ({ at: yMm, value: halfWidthMm ** 2 })),
        { at: end, value: 0 },
      ],
      near,
      stiffness: STIFFNESS * scale ** 2,
    },
    'stations',
  );
}
