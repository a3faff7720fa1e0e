import { type LinePoint, placesWhere } from '../../src/core/instrument/arching/smoothLine.ts';
import { type PlateArch, plateHeight } from '../../src/core/instrument/index.ts';
import { bodyHalfWidth } from '../../src/core/surface/index.ts';

/** A place on a plate and a direction (unit vector) in which it is looked at. */
export interface Seam {
  readonly x: number;
  readonly y: number;
  readonly toX: number;
  readonly toY: number;
}

/** mm. From these the slope on one side is carried to no distance at all: what is left is of the third order. */
const NEAR_MM = [0.02, 0.01, 0.005] as const;
const DEGREE = 180 / Math.PI;

/** Slope of the finished outside from a place in a direction, from that side alone, degrees. */
export function slopeFromDeg(arch: PlateArch, { x, y, toX, toY }: Seam): number {
  const here = plateHeight(arch, x, y, 'finished');
  const [far, near, nearest] = NEAR_MM.map(
    (mm) => (plateHeight(arch, x + mm * toX, y + mm * toY, 'finished') - here) / mm,
  ) as [number, number, number];
  const [first, second] = [2 * near - far, 2 * nearest - near];
  return Math.atan((4 * second - first) / 3) * DEGREE;
}

/** Degrees by which the surface is broken at a place. */
export function breakDeg(arch: PlateArch, seam: Seam): number {
  const back = { ...seam, toX: -seam.toX, toY: -seam.toY };
  return Math.abs(slopeFromDeg(arch, seam) + slopeFromDeg(arch, back));
}

/** Share of the body length over which what the correction misses at the channel is faded out. */
const FADE_SHARE = 5 / 355;
const PLACES_ACROSS = 60;
const ROWS_ANYWHERE = 400;

/** Every line of the treble half across which the surface is put together of two formulas, by name, and places anywhere. */
export function seamsOf(arch: PlateArch): Readonly<Record<string, readonly Seam[]>> {
  const { correction, longArch, bodyLengthMm } = arch;
  const { stepMm, fromMm, columns, rows } = correction;
  const joints = [longArch.below, longArch.above].flatMap((half, index) =>
    half.kind === 'arcs' ? half.half.map(({ toMm }) => longArch.crestMm + (index === 0 ? -toMm : toMm)) : [],
  );
  return {
    channel: alongChannel(arch, 0),
    'end of the fade': alongChannel(arch, FADE_SHARE * bodyLengthMm),
    'joints of the channel': beside(arch, arch.channel.line.points.slice(2, -2)),
    'body width in the channel': beside(arch, widthCrossings(arch)),
    'knots along': upTo(columns).flatMap((column) => alongAt(arch, column * stepMm)),
    'knots across': upTo(rows).flatMap((row) => acrossAt(arch, fromMm + row * stepMm)),
    stations: arch.stations.flatMap(({ yMm }) => acrossAt(arch, yMm)),
    'joints of the long arch': joints.flatMap((y) => acrossAt(arch, y)),
    'centre line': alongAt(arch, 0),
    anywhere: upTo(ROWS_ANYWHERE).flatMap((row) => anywhereOn(arch, row)),
  };
}

function upTo(count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => index);
}

/** Places a distance inside the channel, looked at square to it. */
export function alongChannel(arch: PlateArch, insideMm: number): readonly Seam[] {
  return arch.channel.line.points.slice(1, -1).map(({ x, y, headingRad }) => {
    const [toX, toY] = [-Math.sin(headingRad), Math.cos(headingRad)];
    return { x: x + insideMm * toX, y: y + insideMm * toY, toX, toY };
  });
}

/** Places in the fade beside places of the channel, looked at along it. */
function beside(arch: PlateArch, places: readonly LinePoint[]): readonly Seam[] {
  return places.flatMap(({ x, y, headingRad }) =>
    [0.2, 0.4].map((share) => {
      const insideMm = share * FADE_SHARE * arch.bodyLengthMm;
      const [toX, toY] = [Math.cos(headingRad), Math.sin(headingRad)];
      return { x: x - insideMm * toY, y: y + insideMm * toX, toX, toY };
    }),
  );
}

/** Where the channel crosses the width that the arches are strung on, or touches it at a station. */
function widthCrossings({ channel, loft, stations }: PlateArch): readonly LinePoint[] {
  const beyond = ({ x, y }: LinePoint): number => x - bodyHalfWidth(loft, y);
  const { points } = channel.line;
  const crossed = placesWhere(channel.line, beyond, 2, points.length - 3);
  return [...crossed, ...stations.flatMap(({ yMm }) => placesWhere(channel.line, ({ y }) => y - yMm))];
}

function acrossAt(arch: PlateArch, y: number): readonly Seam[] {
  const widest = Math.max(...arch.channel.line.points.map((place) => place.x));
  return upTo(PLACES_ACROSS).map((place) => ({
    x: (widest * (place + 0.37)) / PLACES_ACROSS,
    y,
    toX: 0,
    toY: 1,
  }));
}

function alongAt(arch: PlateArch, x: number): readonly Seam[] {
  const { startMm, endMm } = arch.longArch;
  const count = 2 * PLACES_ACROSS;
  return upTo(count).map((place) => ({
    x,
    y: startMm + ((endMm - startMm) * (place + 0.41)) / count,
    toX: 1,
    toY: 0,
  }));
}

/** Some places of a row, looked at in a direction that turns from row to row. */
function anywhereOn(arch: PlateArch, row: number): readonly Seam[] {
  const { startMm, endMm } = arch.longArch;
  const y = startMm + ((endMm - startMm) * (row + 0.5)) / ROWS_ANYWHERE;
  const turned = { toX: Math.cos(row), toY: Math.sin(row) };
  return acrossAt(arch, y).flatMap((seam, place) => (place % 6 === row % 6 ? [{ ...seam, ...turned }] : []));
}
