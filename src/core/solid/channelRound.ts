import { Bug, cos, hypot, type Point, sin } from '../base/index.ts';
import { channelPlace, type PlateArch } from '../instrument/index.ts';

/** The channel's lowest line all round, anticlockwise from the lower end, by its length in mm; lengths wrap round. */
export interface ChannelRound {
  readonly placeAt: (alongMm: number) => ReturnType<typeof channelPlace>;
  /** Where a place beside the channel stands square to it. */
  readonly footOf: (at: Point<'body'>) => number;
  /** The same place of the channel, counted on from another. */
  readonly after: (alongMm: number, fromMm: number) => number;
  /** Where its stretches meet and its curvature steps. */
  readonly jointsMm: readonly number[];
}

/** Halvings of a millimetre after which nothing is left of it. */
const HALVINGS = 50;

/** The channel of a plate by its length. */
export function channelRound({ channel }: PlateArch): ChannelRound {
  const half = channel.line.points.length - 1;
  const points = Array.from({ length: 2 * half + 1 }, (_, at) => channelPlace(channel, at));
  const lengths = new Float64Array(points.length);
  points.forEach(({ x, y }, at) => {
    const before = points[at - 1];
    if (before) lengths[at] = (lengths[at - 1] as number) + hypot(x - before.x, y - before.y);
  });
  const total = lengths[2 * half] as number;
  const placeAt = (alongMm: number): ReturnType<typeof channelPlace> => {
    const mm = alongMm - total * Math.floor(alongMm / total);
    let [low, high] = [0, 2 * half];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((lengths[middle] as number) <= mm) low = middle;
      else high = middle;
    }
    const [start, end] = [lengths[low] as number, lengths[high] as number];
    return channelPlace(channel, low + (mm - start) / (end - start));
  };
  const footOf = (at: Point<'body'>): number => {
    const away = points.map(({ x, y }) => hypot(at.x - x, at.y - y));
    const nearest = away.indexOf(Math.min(...away));
    const length = lengths[nearest];
    if (length === undefined) throw new Bug('a channel without points has no foot');
    let [low, high] = [length - 1, length + 1];
    for (let step = 0; step < HALVINGS; step++) {
      const middle = (low + high) / 2;
      const { x, y, headingRad } = placeAt(middle);
      if ((at.x - x) * cos(headingRad) + (at.y - y) * sin(headingRad) > 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return {
    placeAt,
    footOf,
    after: (alongMm, fromMm) => alongMm + total * Math.ceil((fromMm - alongMm) / total),
    jointsMm: channel.lastOf.flatMap((at) => [lengths[at] as number, lengths[2 * half - at] as number]),
  };
}
