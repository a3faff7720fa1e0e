import { outlineChain } from '../curve/index.ts';
import type { Instrument, Plate } from '../instrument/index.ts';
import { channelArea } from './channelArea.ts';
import { BOTH_WAYS_SCALE } from './colourScale.ts';
import type { DesignDifference } from './compareDesigns.ts';
import type { PictureSheet } from './pictureSheet.ts';
import { asDrawn, plateMap } from './plateMap.ts';

/** Ends of the scale that are tried, mm. */
const ENDS_MM = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20] as const;
/** Lines to either side of none. */
const LINES = 5;

/** The difference of two designs over one plate: rust where the other is higher, blue where it is lower; its outline dashed. */
export function differencePicture(
  first: Instrument,
  other: Instrument,
  plate: Plate,
  { heights, says }: DesignDifference,
): PictureSheet {
  const most = Math.abs(heights.worst[0]?.differenceMm ?? 0);
  const end = ENDS_MM.find((one) => one >= most) ?? most;
  const every = end / LINES;
  const steps = Array.from({ length: 2 * LINES + 1 }, (_, index) => (index - LINES) * every);
  return plateMap({
    title: `${plate === 'back' ? 'Back' : 'Top'}: ${other.plan.name} less ${first.plan.name}`,
    says: ['rust: the other is higher; blue: lower; dashed: the other outline', ...says],
    outline: outlineChain(first.half),
    area: channelArea(first.plates[plate]),
    values: heights.field,
    scale: BOTH_WAYS_SCALE,
    from: -end,
    to: end,
    // Where nothing differs a line would only follow the last bits.
    levels: steps.filter((step) => step !== 0),
    textOf: (value) => signed(value, end),
    legend: steps,
    unit: 'mm',
    marks: heights.worst.flatMap(({ xMm, yMm, differenceMm }) =>
      (xMm === 0 ? [0] : [-xMm, xMm]).map((x) => ({ xMm: x, yMm, text: signed(differenceMm, 0) })),
    ),
    guides: [asDrawn(outlineChain(other.half))],
  });
}

/** With its sign, hundredths where the scale is that fine. */
function signed(value: number, end: number): string {
  const text = Math.abs(value).toFixed(end >= 5 ? 0 : end >= 1 ? 1 : 2);
  return Number(text) === 0 ? '0' : `${value > 0 ? '+' : '–'}${text}`;
}
