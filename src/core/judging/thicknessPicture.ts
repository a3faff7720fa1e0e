import { point } from '../base/index.ts';
import { containsPoint, outlineChain } from '../curve/index.ts';
import { type HollowPlate, type Instrument, type Plate, thicknessAt } from '../instrument/index.ts';
import { type HeightField, heightField } from '../surface/index.ts';
import { WOOD_SCALE } from './colourScale.ts';
import type { PictureSheet } from './pictureSheet.ts';
import { plateMap } from './plateMap.ts';

/** mm between two places of the map. */
const STEP_MM = 1;

/** Thickness of a plate over a grid, mm, inside the edge of its gluing face; NaN elsewhere. */
export function thicknessField({ thickness, line, arch }: HollowPlate, stepMm: number): HeightField {
  const half = Math.ceil(Math.max(...line.vertices.map(({ x }) => x)) / stepMm);
  return heightField(
    {
      fromXMm: -half * stepMm,
      fromYMm: 0,
      stepMm,
      columns: 2 * half + 1,
      rows: Math.ceil(arch.bodyLengthMm / stepMm) + 1,
    },
    (x, y) => (containsPoint(line, point<'body'>(x, y)) ? thicknessAt(thickness, x, y) : Number.NaN),
  );
}

/** mm between lines: the first that leaves no more than this many of them. */
const INTERVALS = [0.1, 0.2, 0.25, 0.5, 1] as const;
const MOST_LINES = 12;

/** What a plate is thinned to, all over: lines of equal thickness with their millimetres, and the places asked for. */
export function thicknessPicture(instrument: Instrument, plate: Plate): PictureSheet {
  const hollow = instrument.hollows[plate];
  const values = thicknessField(hollow, STEP_MM);
  const known = values.zMm.filter((value) => !Number.isNaN(value));
  const least = known.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = known.reduce((a, b) => Math.max(a, b), 0);
  const intervalMm = INTERVALS.find((step) => (most - least) / step <= MOST_LINES) ?? 1;
  const first = Math.floor(least / intervalMm) + 1;
  const levels = Array.from(
    { length: Math.max(0, Math.ceil(most / intervalMm) - first) },
    (_, index) => (first + index) * intervalMm,
  );
  const { points, numbers } = hollow.thickness;
  return plateMap({
    title: `${instrument.plan.name}: thickness of the ${plate}`,
    says: [
      `${millimetres(numbers.middleMm)} under the bridge, ${millimetres(numbers.boutsMm)} in the bouts, ${millimetres(numbers.flanksMm)} at the sides of the waist, ${millimetres(numbers.channelMm)} in the channel`,
      'measured square to the outside, inside the gluing face',
    ],
    outline: outlineChain(instrument.half),
    area: hollow.line,
    values,
    scale: WOOD_SCALE,
    from: least,
    to: most > least ? most : least + intervalMm,
    levels,
    textOf: (value) => String(Number(value.toFixed(2))),
    legend: [least, (least + most) / 2, most].map((value) => Number(value.toFixed(1))),
    unit: 'mm',
    marks: points.flatMap(({ x, y, thicknessMm }) =>
      (x === 0 ? [0] : [x, -x]).map((xMm) => ({ xMm, yMm: y, text: millimetres(thicknessMm) })),
    ),
    guides: [],
  });
}

function millimetres(value: number): string {
  return `${Number(value.toFixed(2))} mm`;
}
