import { outlineChain } from '../curve/index.ts';
import { areaChain, type Instrument, type Plate, thicknessAt } from '../instrument/index.ts';
import { WOOD_SCALE } from './colourScale.ts';
import type { PictureSheet } from './pictureSheet.ts';
import { asDrawn, plateMap } from './plateMap.ts';
import { thicknessField, thicknessLevels } from './thicknessLines.ts';

/** mm between two places of the map. */
const STEP_MM = 1;

/**
 * What a plate is thinned to, all over: lines of equal thickness with their millimetres, the places asked for, and where post
 * and bar stand. Seen from the outside.
 */
export function thicknessPicture(instrument: Instrument, plate: Plate): PictureSheet {
  const hollow = instrument.hollows[plate];
  const values = thicknessField(hollow, STEP_MM);
  const { leastMm: least, mostMm: most, intervalMm, levelsMm } = thicknessLevels(values);
  const { points, numbers, areas } = hollow.thickness;
  const under = areas.map((area) => {
    const [x, y] = [(area.from.x + area.to.x) / 2, (area.from.y + area.to.y) / 2];
    return `${millimetres(thicknessAt(hollow.thickness, x, y))} under the middle of the ${area.name}`;
  });
  return plateMap({
    title: `${instrument.plan.name}: thickness of the ${plate}`,
    says: [
      `${millimetres(numbers.middleMm)} under the bridge, ${millimetres(numbers.boutsMm)} in the bouts, ${millimetres(numbers.flanksMm)} at the sides of the waist, ${millimetres(numbers.channelMm)} in the channel`,
      'measured square to the outside, inside the gluing face; seen from the outside',
      `dashed: ${under.join(', ')}`,
    ],
    outline: outlineChain(instrument.half),
    area: hollow.line,
    values,
    scale: WOOD_SCALE,
    from: least,
    to: most > least ? most : least + intervalMm,
    levels: levelsMm,
    textOf: (value) => String(Number(value.toFixed(2))),
    legend: [least, (least + most) / 2, most].map((value) => Number(value.toFixed(1))),
    unit: 'mm',
    marks: points.flatMap(({ x, y, thicknessMm }) =>
      (x === 0 ? [0] : [x, -x]).map((xMm) => ({ xMm, yMm: y, text: millimetres(thicknessMm) })),
    ),
    guides: areas.map((area) => asDrawn(areaChain(area))),
  });
}

function millimetres(value: number): string {
  return `${Number(value.toFixed(2))} mm`;
}
