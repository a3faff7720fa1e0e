import { type Point, point } from '../../base/index.ts';
import type { ArchStation, PlateArch } from './archedPlate.ts';
import { type EdgeState, edgeDistances } from './edgeShape.ts';
import { plateHeight } from './plateHeight.ts';

/** mm between two points of a profile, at most. */
const STEP_MM = 0.25;

/**
 * The outside of a plate across or along it: points (x or y, height above the gluing face) from edge to edge, no
 * farther apart than a quarter millimetre, and the places where its character changes.
 */
export interface ArchProfile {
  readonly points: readonly Point<'section'>[];
  /** Where the flat edge ends and the arch rises, or the crest of the finished edge, before and after the arch. */
  readonly borders: readonly [number, number];
  /** The channel's lowest points. */
  readonly channels: readonly [number, number];
}

/** Across the plate at a station, x from −edge to +edge, the same to the last bit on both sides. */
export function stationProfile(arch: PlateArch, station: ArchStation, state: EdgeState): ArchProfile {
  const { yMm, halfWidthMm, edgeHalfWidthMm } = station;
  const { x: border } = borderBetween(arch, state, {
    crest: point(0, yMm),
    channel: point(halfWidthMm, yMm),
    edge: point(edgeHalfWidthMm, yMm),
  });
  const right = spread([0, halfWidthMm, border, edgeHalfWidthMm]).map((x) =>
    point<'section'>(x, plateHeight(arch, x, yMm, state)),
  );
  const left = right.slice(1).map(({ x, y }) => point<'section'>(-x, y));
  return {
    points: [...left.reverse(), ...right],
    borders: [-border, border],
    channels: [-halfWidthMm, halfWidthMm],
  };
}

/** Along the centre line from the lower edge (0) to the upper (body length). */
export function longProfile(arch: PlateArch, state: EdgeState): ArchProfile {
  const { startMm, endMm } = arch.longArch;
  const crest = point<'body'>(0, (startMm + endMm) / 2);
  const [lower, upper] = [
    { channel: point<'body'>(0, startMm), edge: point<'body'>(0, 0) },
    { channel: point<'body'>(0, endMm), edge: point<'body'>(0, arch.bodyLengthMm) },
  ].map((half) => borderBetween(arch, state, { crest, ...half }).y) as [number, number];
  const places = spread([0, lower, startMm, crest.y, endMm, upper, arch.bodyLengthMm]);
  return {
    points: places.map((y) => point<'section'>(y, plateHeight(arch, 0, y, state))),
    borders: [lower, upper],
    channels: [startMm, endMm],
  };
}

/** All stops in order, and even steps between them. */
function spread(unsorted: readonly number[]): readonly number[] {
  const stops = unsorted.toSorted((a, b) => a - b);
  const places: number[] = [];
  stops.forEach((stop, index) => {
    const next = stops[index + 1];
    const count = next === undefined ? 1 : Math.max(1, Math.ceil((next - stop) / STEP_MM));
    for (let step = 0; step < count; step++)
      places.push(next === undefined ? stop : stop + ((next - stop) * step) / count);
  });
  return places;
}

/** A double has this many halvings between 0 and 1. */
const HALVINGS = 52;

interface HalfSection {
  readonly crest: Point<'body'>;
  readonly channel: Point<'body'>;
  readonly edge: Point<'body'>;
}

/** On the way out: where the arch comes down to the height of the edge, or the crest of the finished edge. */
function borderBetween(arch: PlateArch, state: EdgeState, half: HalfSection): Point<'body'> {
  const { crestInsetMm, edgeHeightMm } = arch.numbers;
  return state === 'arched'
    ? lastPlace(half.crest, half.channel, ({ x, y }) => plateHeight(arch, x, y, 'finished') > edgeHeightMm)
    : lastPlace(half.channel, half.edge, (at) => Math.min(...edgeDistances(arch.edge, at)) > crestInsetMm);
}

/** The last place on the way from one point to another at which a condition, true at the start, still holds. */
function lastPlace(
  from: Point<'body'>,
  to: Point<'body'>,
  holds: (at: Point<'body'>) => boolean,
): Point<'body'> {
  const at = (share: number): Point<'body'> =>
    point(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
  let low = 0;
  let high = 1;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (holds(at(middle))) low = middle;
    else high = middle;
  }
  return at((low + high) / 2);
}
