import type { Picture } from '../picture/picture.ts';
import type { SheetBars } from '../sheet/printScale.ts';
import type { MeasuredPair } from '../sheet/sheetReading.ts';

/** One calibration sheet as one photograph shows it: places on the plan of the sheet, mm, and where they show. */
export interface SheetSighting {
  /** Sheets are told apart by it; the lowest seen fixes the frame `scene`. */
  readonly number: number;
  readonly pairs: readonly MeasuredPair[];
}

/** One height card as one photograph shows it, level with the sheets and above them; places in its own plan, mm. */
export interface CardSighting {
  readonly number: number;
  readonly pairs: readonly MeasuredPair[];
}

/** One photograph and what was read in it. */
export interface Shot {
  readonly sheets: readonly SheetSighting[];
  readonly cards?: readonly CardSighting[];
  readonly picture: Pick<Picture, 'widthPx' | 'heightPx' | 'focal35Mm'>;
  /** A word for the camera; shots with one word, size and noted focal length share a lens where that fits. */
  readonly cameraName?: string;
}

export interface ShotsOptions {
  /** What the bars of 150 mm measure on the print; it holds for all sheets that `sheetBarsMm` does not name. */
  readonly sheetBarMm?: SheetBars;
  /** Bars of single sheets, by their number. */
  readonly sheetBarsMm?: ReadonlyMap<number, SheetBars>;
  /** Heights of cards over the sheet that were measured, mm with half interval (k = 2), by the card's number. */
  readonly cardHeightsMm?: ReadonlyMap<number, { readonly heightMm: number; readonly plusMinusMm: number }>;
  /** mm, k = 2. How far sheets may lift at their rims: ± 0.3 for paper on a table, less when glued to a board. */
  readonly flatPlusMinusMm?: number;
  /**
   * `open`: nothing is believed of the lens beforehand, print and flatness are exact, and all shots count alike; for
   * boards of known size seen many times.
   */
  readonly beliefs?: 'usual' | 'open';
  /** Solves for a third term along the radius, which only a wide lens needs. */
  readonly withThirdTerm?: boolean;
}
