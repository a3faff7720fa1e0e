import type { Checked } from '../../base/index.ts';
import { accept } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { SheetBars } from '../sheet/printScale.ts';
import type { SheetReading } from '../sheet/sheetReading.ts';
import type { SolvedCamera } from './solvedScene.ts';
import { solveShots } from './solveShots.ts';

export interface CameraOptions {
  /** What the two bars of 150 mm measure on the print. */
  readonly sheetBarMm?: SheetBars;
  /** mm, k = 2. How far the sheet may lift at its rim: ± 0.3 for paper on a table, less when glued to a board. */
  readonly flatPlusMinusMm?: number;
}

/** The camera that took one picture of one sheet, with its covariance; faults and findings are those of `solveShots`. */
export function solveCamera(
  reading: Pick<SheetReading, 'pairs'>,
  picture: Pick<Picture, 'widthPx' | 'heightPx' | 'focal35Mm'>,
  options: CameraOptions = {},
): Checked<SolvedCamera> {
  const scene = solveShots([{ sheets: [{ number: 1, pairs: reading.pairs }], picture }], options);
  if (!scene.ok) return scene;
  return accept({ ...scene.value.shots[0], findings: scene.value.findings });
}
