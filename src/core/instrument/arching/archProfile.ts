import { type Point, point } from '../../base/index.ts';
import type { ArchStation, PlateArch } from './archedPlate.ts';
import { type EdgeState, edgeDistances, scoopBorderMm } from './edgeShape.ts';
import { plateHeight } from './plateHeight.ts';

/** mm between two points of a profile, at most. */
const STEP_MM = 0.25;

/**
 * The outside of a plate across or along it: points (x or y, height above the gluing face) from edge to edge, no
 * farther apart than a quarter millimetre, and the places where its character changes.
 */
export interface ArchProfile {
  readonly points: readonly Point<'section'>[];
  /** Where land or crest ends and the scoop begins, before and after the arch. */
  readonly borders: readonly [number, number];
  /** The channel's lowest points. */
  readonly channels: readonly [number, number];
}

/** Across the plate at a station, x from −edge to +edge, the same to the last bit on both sides. */
export function stationProfile(arch: PlateArch, station: ArchStation, state: EdgeState): ArchProfile {
  const { yMm, halfWidthMm, edgeHalfWidthMm } = station;
  const border = borderBetween(arch, state, (share) =>
    point(halfWidthMm + share * (edgeHalfWidthMm - halfWidthMm), yMm),
  ).x;
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
  const lower = borderBetween(arch, state, (share) => point(0, (1 - share) * startMm)).y;
  const upper = borderBetween(arch, state, (share) =>
    point(0, endMm + share * (arch.bodyLengthMm - endMm)),
  ).y;
  const middle = (startMm + endMm) / 2;
  const places = spread([0, lower, startMm, middle, endMm, upper, arch.bodyLengthMm]);
  return {
    points: places.map((y) => point<'section'>(y, plateHeight(arch, 0, y, state))),
    borders: [lower, upper],
    channels: [startMm, endMm],
  };
}

/** All stops in order, and even steps between them. */
function spread(stops: readonly number[]): readonly number[] {
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

/** The place on the way from the channel (share 0) out to the edge (share 1) where the scoop ends. */
function borderBetween(
  arch: PlateArch,
  state: EdgeState,
  place: (share: number) => Point<'body'>,
): Point<'body'> {
  const border = scoopBorderMm(arch.numbers, state);
  let low = 0;
  let high = 1;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (Math.min(...edgeDistances(arch.edge, place(middle))) > border) low = middle;
    else high = middle;
  }
  return place((low + high) / 2);
}
