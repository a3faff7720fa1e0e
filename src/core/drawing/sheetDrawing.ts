import { type Box, point } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';
import type { CalibrationSheet, SheetBar } from '../photo/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { boxChain, patternChains } from './sheetDrawingPattern.ts';

/** mm. Bars are this thick, and their ends this tall, so that callipers find them. */
const BAR_MM = 0.8;
const BAR_END_MM = 2.4;
const LETTER_MM = 2;
/** mm. From the end of a bar to the words beside it. */
const GAP_MM = 2.5;
/** mm. From the band up to the line of words above it. */
const ABOVE_MM = 1.4;

/**
 * The calibration sheet as it is printed, one drawing as large as the paper, origin the paper's lower left corner.
 * Everything black is a filled area; areas overlap where they touch so that no white seam shows between them.
 */
export function sheetDrawing(sheet: CalibrationSheet): Drawing {
  return {
    name: `calibration-sheet-${sheet.paper.toLowerCase()}${sheet.number === 1 ? '' : `-${sheet.number}`}`,
    title: sheetTitle(sheet),
    part: 'sheet',
    lines: [],
    lettering: letteringOf(sheet),
    filled: [...patternChains(sheet), ...barChains(sheet.bars.x), ...barChains(sheet.bars.y)],
    notes: [],
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'check bar along the long side', valueMm: sheet.barMm },
      { name: 'check bar along the short side', valueMm: sheet.barMm },
      { name: 'band along the long side', valueMm: sheet.band.max.x - sheet.band.min.x },
      { name: 'band along the short side', valueMm: sheet.band.max.y - sheet.band.min.y },
    ],
  };
}

function sheetTitle({ paper, number }: CalibrationSheet): string {
  return number === 1 ? `Calibration sheet ${paper}` : `Calibration sheet ${paper} number ${number}`;
}

function letteringOf(sheet: CalibrationSheet): readonly Lettering[] {
  const { band, bars, barMm } = sheet;
  const level = { heightMm: LETTER_MM, turnRad: 0, anchor: 'start' } as const;
  return [
    {
      ...level,
      text: `Both bars: ${barMm} mm. If not, tell trace what they measure.`,
      at: point(bars.x.to.x + GAP_MM, bars.x.to.y - LETTER_MM * 0.4),
    },
    {
      ...level,
      text: `${barMm} mm`,
      turnRad: Math.PI / 2,
      at: point(bars.y.to.x + LETTER_MM / 2, bars.y.to.y + GAP_MM),
    },
    {
      ...level,
      text:
        `${sheetTitle(sheet)} · print at 100 %, not fitted to the page · tape it flat on a board · ` +
        (sheet.number === 1
          ? 'lay the instrument on the white · photograph all four sides'
          : 'lay it beside the others, round the body · photograph them all at once'),
      at: point(band.min.x, band.max.y + ABOVE_MM),
    },
  ];
}

/** A strip with taller ends; both ends stand exactly on the bar's two points. */
export function barChains({ from, to }: SheetBar): readonly Chain<'drawing'>[] {
  const isLevel = from.y === to.y;
  const box = (start: number, end: number, thickMm: number): Box<'sheet'> => {
    const half = thickMm / 2;
    return isLevel
      ? { min: point(start, from.y - half), max: point(end, from.y + half) }
      : { min: point(from.x - half, start), max: point(from.x + half, end) };
  };
  const [first, last] = isLevel ? [from.x, to.x] : [from.y, to.y];
  return [
    box(first, last, BAR_MM),
    box(first, first + BAR_MM, BAR_END_MM),
    box(last - BAR_MM, last, BAR_END_MM),
  ].map(boxChain);
}
