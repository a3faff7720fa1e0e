import { point } from '../base/index.ts';
import { boundsOf, type Chain, chainThrough } from '../curve/index.ts';
import type { Lettering } from '../drawing/index.ts';
import { type ContourLine, contourLines, type HeightField, trimContour } from '../surface/index.ts';
import { type ColourScale, colourAt } from './colourScale.ts';
import { contourChain, LETTERED_FOR_MM } from './contourPlan.ts';
import { fieldBox, fieldRaster, nearestValue } from './fieldRaster.ts';
import { numberedLines } from './lineNumbers.ts';
import type { Colour, InkedLettering, InkedLine, PictureSheet } from './pictureSheet.ts';
import { plateLadders } from './plateLadders.ts';
import { widenedField } from './widenedField.ts';

/** Values over a plate as colours, with lines of equal value and their numbers, and a legend. */
export interface PlateMapPlan {
  readonly title: string;
  /** Lines of words under the legend. */
  readonly says: readonly string[];
  readonly outline: Chain<'body'>;
  /** The part of the plate that the values are of: the whole plate where none is given. */
  readonly area?: Chain<'body'>;
  /** Of any unit; NaN off the plate and where nothing is known. */
  readonly values: HeightField;
  readonly scale: ColourScale;
  /** Values that the ends of the scale stand for. */
  readonly from: number;
  readonly to: number;
  /** Values of the lines, rising; none for a map without lines. */
  readonly levels: readonly number[];
  readonly textOf: (value: number) => string;
  /** Values named along the legend. */
  readonly legend: readonly number[];
  readonly unit: string;
  /** Places with a mark and their words beside it. */
  readonly marks: readonly { readonly xMm: number; readonly yMm: number; readonly text: string }[];
  /** Further lines, such as another outline. */
  readonly guides: readonly Chain<'drawing'>[];
}

const PAPER: Colour = [255, 255, 255];
const INK: Colour = [52, 44, 38];
const LINE: Colour = [96, 84, 74];
const GUIDE: Colour = [60, 96, 130];

/** mm on an instrument of the usual length; others are scaled. */
const MARGIN_MM = 8;
const NUMBER_MM = 2.6;
const BAR = { downMm: 9, heightMm: 4, share: 0.62 } as const;
const TITLE_DOWN_MM = 28;
const WORDS_DOWN_MM = 6;

/** A map of values over a plate at true size. */
export function plateMap(plan: PlateMapPlan): PictureSheet {
  const { outline, area = outline, values, scale, from, to } = plan;
  const { min, max } = boundsOf(outline);
  const size = (max.y - min.y) / LETTERED_FOR_MM;
  const numbered = numberedLines(valueLines(plan), plan.textOf, NUMBER_MM * size, plateLadders(outline));
  const onSheet = asDrawn(outline);
  const colourOf = (value: number): Colour => colourAt(scale, (value - from) / (to - from));
  const legend = legendOf(plan, size);
  const shown = plan.guides.map((chain) => boundsOf(chain));
  const footMm = (TITLE_DOWN_MM + WORDS_DOWN_MM * plan.says.length + MARGIN_MM / 2) * size;
  return {
    title: plan.title,
    box: {
      min: point(Math.min(min.x, ...shown.map((box) => box.min.x)) - MARGIN_MM * size, min.y - footMm),
      max: point(
        Math.max(max.x, ...shown.map((box) => box.max.x)) + MARGIN_MM * size,
        Math.max(max.y, ...shown.map((box) => box.max.y)) + MARGIN_MM * size,
      ),
    },
    ground: PAPER,
    rasters: [
      {
        raster: fieldRaster(values, values.zMm, colourOf, PAPER),
        box: fieldBox(values),
        within: asDrawn(area),
      },
      ...legend.rasters,
    ],
    lines: [
      ...numbered.lines.map(
        (line): InkedLine => ({
          chain: contourChain(line),
          ink: LINE,
          widthMm: (line.levelMm === 0 ? 0.5 : 0.25) * size,
        }),
      ),
      ...plan.guides.map((chain) => ({ chain, ink: GUIDE, widthMm: 0.3 * size, dashMm: [2, 1.5] })),
      ...(plan.area ? [{ chain: asDrawn(area), ink: LINE, widthMm: 0.2 * size }] : []),
      { chain: onSheet, ink: INK, widthMm: 0.5 * size },
      ...legend.lines,
      ...plan.marks.map(({ xMm, yMm }) => ({ chain: cross(xMm, yMm, size), ink: INK, widthMm: 0.4 * size })),
    ],
    lettering: [
      ...numbered.numbers.map(({ lettering }) => ({ lettering, ink: INK })),
      ...plan.marks.map(({ xMm, yMm, text }) => written(text, xMm, yMm + 2.4 * size, 2.8 * size, true)),
      ...legend.lettering,
      ...[plan.title, ...plan.says].map((text, line) =>
        written(
          text,
          (min.x + max.x) / 2,
          min.y - (TITLE_DOWN_MM + WORDS_DOWN_MM * line) * size,
          (line === 0 ? 4.2 : 3) * size,
        ),
      ),
    ],
  };
}

/** Lines of equal value up to the edge of their area: beyond it values are thought to go on as at the nearest place. */
function valueLines({ values, outline, area = outline, levels }: PlateMapPlan): readonly ContourLine[] {
  const wide = widenedField(values, (x, y) =>
    nearestValue(
      values.zMm,
      values,
      Math.round((x - values.fromXMm) / values.stepMm),
      Math.round((y - values.fromYMm) / values.stepMm),
    ),
  );
  return contourLines(wide, levels).flatMap((line) => trimContour(line, area));
}

function legendOf(plan: PlateMapPlan, size: number): Pick<PictureSheet, 'rasters' | 'lines' | 'lettering'> {
  const { min, max } = boundsOf(plan.outline);
  const half = (BAR.share * (max.x - min.x)) / 2;
  const middle = (min.x + max.x) / 2;
  const top = min.y - BAR.downMm * size;
  const bottom = top - BAR.heightMm * size;
  const columns = 128;
  const rgb = new Uint8Array(3 * columns);
  for (let column = 0; column < columns; column++)
    rgb.set(colourAt(plan.scale, column / (columns - 1)), 3 * column);
  const box = { min: point<'drawing'>(middle - half, bottom), max: point<'drawing'>(middle + half, top) };
  const placeOf = (value: number): number =>
    middle - half + (2 * half * (value - plan.from)) / (plan.to - plan.from);
  return {
    rasters: [{ raster: { widthPx: columns, heightPx: 1, rgb }, box }],
    lines: [
      {
        chain: chainThrough<'drawing'>(
          [box.min, point(box.max.x, box.min.y), box.max, point(box.min.x, box.max.y)],
          true,
        ),
        ink: INK,
        widthMm: 0.25 * size,
      },
      ...plan.legend.map((value) => ({
        chain: chainThrough<'drawing'>(
          [point(placeOf(value), bottom), point(placeOf(value), bottom - 1.2 * size)],
          false,
        ),
        ink: INK,
        widthMm: 0.25 * size,
      })),
    ],
    lettering: [
      ...plan.legend.map((value) =>
        written(plan.textOf(value), placeOf(value), bottom - 4.6 * size, 2.6 * size),
      ),
      written(plan.unit, middle + half + 3 * size, bottom + 0.7 * size, 2.6 * size, false, 'start'),
    ],
  };
}

function written(
  text: string,
  x: number,
  y: number,
  heightMm: number,
  bold = false,
  anchor: Lettering['anchor'] = 'middle',
): InkedLettering {
  return { lettering: { text, at: point(x, y), heightMm, turnRad: 0, anchor }, ink: INK, bold };
}

function cross(x: number, y: number, size: number): Chain<'drawing'> {
  const arm = 1.4 * size;
  return chainThrough<'drawing'>(
    [point(x - arm, y), point(x + arm, y), point(x, y), point(x, y + arm), point(x, y - arm)],
    false,
  );
}

export function asDrawn(chain: Chain<'body'>): Chain<'drawing'> {
  return { closed: chain.closed, vertices: chain.vertices.map(({ x, y, bulge }) => ({ x, y, bulge })) };
}
