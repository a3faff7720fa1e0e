import type { Fault } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { BodyFit } from './bodySeat.ts';
import { emptyPlacedTemplate, placeTemplate } from './templateBoth.ts';
import { STATION_STRIDE, stationsOfTemplate } from './templateStations.ts';

/** Share of the outline that may touch or cross the border: a rounding of the template, not a lost bout. */
const MOST_OUTSIDE = 0.01;

/** The fault when part of the fitted body lies outside the picture, naming which part and which border; else null. */
export function frameFault(picture: Picture, fit: BodyFit): Fault | null {
  const placed = emptyPlacedTemplate(stationsOfTemplate(3.6));
  placeTemplate(fit, placed);
  const { count, section } = placed.stations;
  const borders = new Map<string, number>();
  const parts = new Set<string>();
  let outside = 0;
  for (let i = 0; i < 2 * count; i++) {
    const x = placed.photo[i * STATION_STRIDE] as number;
    const y = placed.photo[i * STATION_STRIDE + 1] as number;
    const border = borderCrossed(picture, x, y);
    if (border === null) continue;
    outside++;
    borders.set(border, (borders.get(border) ?? 0) + 1);
    parts.add(PART[section[i % count] as keyof typeof PART]);
  }
  if (outside <= MOST_OUTSIDE * 2 * count) return null;
  const border = [...borders].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'border';
  return {
    code: 'trace.cut-off',
    at: 'photograph',
    found: `the ${[...parts].join(' and the ')} of the body ${parts.size > 1 ? 'run' : 'runs'} out of the picture at its ${border}`,
    need: 'the whole body with some ground all round',
    remedy: 'step back and photograph it again, or use the picture before it was cropped',
  };
}

const PART = {
  lowerBout: 'lower bout',
  lowerCorner: 'C bout',
  cBout: 'C bout',
  upperCorner: 'C bout',
  upperBout: 'upper bout',
} as const;

function borderCrossed(picture: Picture, x: number, y: number): string | null {
  if (x < 0) return 'left';
  if (x > picture.widthPx - 1) return 'right';
  if (y < 0) return 'top';
  return y > picture.heightPx - 1 ? 'bottom' : null;
}
