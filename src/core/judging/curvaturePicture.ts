import { outlineChain } from '../curve/index.ts';
import {
  type EdgeState,
  type Instrument,
  type Plate,
  type PlateArch,
  plateField,
  plateShape,
} from '../instrument/index.ts';
import { type HeightField, principalCurvatures } from '../surface/index.ts';
import { channelArea, insideArea } from './channelArea.ts';
import { BOTH_WAYS_SCALE } from './colourScale.ts';
import { LETTERED_FOR_MM } from './contourPlan.ts';
import type { PictureSheet } from './pictureSheet.ts';
import { plateMap } from './plateMap.ts';
import { sheetsInARow } from './sheetsInARow.ts';

/** Curvatures over a plate, 1/m, hollow positive: the mean of both, and the one that bends more. */
export interface PlateCurvatures {
  readonly mean: HeightField;
  readonly larger: HeightField;
}

const PER_METRE = 1000;

/** Curvatures of a plate's arch over a grid, inside the channel, the same on both sides. */
export function plateCurvatures(arch: PlateArch, state: EdgeState, stepMm: number): PlateCurvatures {
  const field = insideArea(plateField(arch, state, stepMm), channelArea(arch));
  const { columns, rows, fromXMm, fromYMm, zMm } = field;
  const mean = new Float64Array(zMm.length).fill(Number.NaN);
  const larger = new Float64Array(zMm.length).fill(Number.NaN);
  const put = (values: Float64Array, row: number, column: number, value: number): void => {
    values[row * columns + column] = value;
    values[row * columns + columns - 1 - column] = value;
  };
  for (let row = 0; row < rows; row++)
    for (let column = (columns - 1) / 2; column < columns; column++) {
      if (Number.isNaN(zMm[row * columns + column])) continue;
      const shape = plateShape(arch, fromXMm + column * stepMm, fromYMm + row * stepMm, state);
      const [up, down] = principalCurvatures(shape);
      put(mean, row, column, (PER_METRE * (up + down)) / 2);
      put(larger, row, column, PER_METRE * (Math.abs(up) > Math.abs(down) ? up : down));
    }
  return { mean: { ...field, zMm: mean }, larger: { ...field, zMm: larger } };
}

/** mm between two places of the maps, on an instrument of the usual length. */
const MAP_STEP_MM = 1;
/** Curvature, 1/m, at the ends of the scale: a radius of 50 mm. */
const MOST = 20;
const LINES = [-15, -10, -5, 0, 5, 10] as const;
const LEGEND = [-20, -10, -5, 0, 5, 10, 20] as const;

/** Maps of both curvatures side by side: domed rust, hollow blue, white where the surface is straight. */
export function curvaturePicture(instrument: Instrument, plate: Plate, state: EdgeState): PictureSheet {
  const outline = outlineChain(instrument.half);
  const arch = instrument.plates[plate];
  const size = arch.bodyLengthMm / LETTERED_FOR_MM;
  const { mean, larger } = plateCurvatures(arch, state, MAP_STEP_MM * size);
  const shared = {
    outline,
    area: channelArea(arch),
    scale: BOTH_WAYS_SCALE.toReversed(),
    from: -MOST,
    to: MOST,
    textOf: radiusText,
    legend: LEGEND,
    unit: 'radius, mm',
    marks: [],
    guides: [],
  };
  const name = plate === 'back' ? 'Back' : 'Top';
  return sheetsInARow(`${instrument.plan.name}: curvature of the ${plate}`, [
    plateMap({
      ...shared,
      title: `${name}: mean curvature`,
      says: ['rust: domed; blue: hollow; the heavy line is where the two make even'],
      values: mean,
      levels: LINES,
    }),
    plateMap({
      ...shared,
      title: `${name}: stronger curvature`,
      says: ['of the two ways in which a surface bends the tighter one'],
      values: larger,
      levels: [],
    }),
  ]);
}

/** A curvature in 1/m as the radius a maker can feel. */
function radiusText(perMetre: number): string {
  return perMetre === 0 ? 'flat' : (PER_METRE / Math.abs(perMetre)).toFixed(0);
}
