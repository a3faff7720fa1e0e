import { boundsOf, type Chain } from '../curve/index.ts';
import type { InsideEdge, PlateArch } from '../instrument/index.ts';
import { gaugeBlock, nameLines, placeText } from './archGaugeLettering.ts';
import type { ArchGaugeOptions, GaugeStand } from './archGaugeOptions.ts';
import type { Lettering } from './drawing.ts';

/** mm from the centre line to the lettering, and from the lettering to back and sides. */
const GAP_MM = 5;

/** Everything written on a gauge for the inside. A stand of null is the long gauge. */
export function insideGaugeLettering(
  arch: PlateArch,
  edge: InsideEdge,
  middle: number,
  stand: GaugeStand | null,
  options: ArchGaugeOptions,
  body: Chain<'drawing'>,
): readonly Lettering[] {
  const box = boundsOf(body);
  const roomMm = Math.min(middle - box.min.x, box.max.x - middle) - 2 * GAP_MM;
  const left = [
    `${arch.plate.toUpperCase()} · INSIDE`,
    ...nameLines(options.instrumentName, roomMm),
    stand ? `this side to the ${stand.stuff.behindMm < 0 ? 'neck' : 'lower end'}` : 'neck end to the right',
  ];
  const right = [
    stand ? `${placeText(stand.place)}, ${stand.place.yMm.toFixed(1)} from the lower end` : 'centre line',
    `hollow ${(edge.rims[1] - edge.rims[0]).toFixed(1)} mm, deepest ${edge.deepestMm.toFixed(1)}`,
    'rests on the gluing face',
  ];
  const y = box.max.y - GAP_MM;
  return [
    ...gaugeBlock(left, { x: middle - GAP_MM, y }, 'end', roomMm),
    ...gaugeBlock(right, { x: middle + GAP_MM, y }, 'start', roomMm),
  ];
}
