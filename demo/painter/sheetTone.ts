import { blackBoxesOfMarker, type CalibrationSheet } from '../../src/core/index.ts';
import type { SheetTone } from './fiddleScene.ts';

/** mm. Every edge on the sheet lies on a multiple of this, so the raster is exact. */
const CELL_MM = 0.1;

/** The printed sheet as tones: black inside its squares and codes, white elsewhere on the paper. */
export function sheetTone(sheet: CalibrationSheet): SheetTone {
  const columns = Math.round(sheet.widthMm / CELL_MM);
  const rows = Math.round(sheet.heightMm / CELL_MM);
  const white = new Uint8Array(columns * rows).fill(1);
  const ink = (x0: number, y0: number, x1: number, y1: number): void => {
    for (let r = Math.round(y0 / CELL_MM); r < Math.round(y1 / CELL_MM); r++)
      white.fill(0, r * columns + Math.round(x0 / CELL_MM), r * columns + Math.round(x1 / CELL_MM));
  };
  for (const { min, max } of sheet.blackSquares) ink(min.x, min.y, max.x, max.y);
  for (const marker of sheet.markers) {
    const [upperLeft, upperRight, , lowerLeft] = marker.corners;
    const boxes = blackBoxesOfMarker(marker.id);
    const cell = (upperRight.x - upperLeft.x) / MARKER_GRID;
    for (const box of boxes)
      ink(
        lowerLeft.x + box.column * cell,
        lowerLeft.y + box.row * cell,
        lowerLeft.x + (box.column + box.columns) * cell,
        lowerLeft.y + (box.row + box.rows) * cell,
      );
  }
  return (x, y) => {
    if (x < 0 || y < 0 || x >= sheet.widthMm || y >= sheet.heightMm) return undefined;
    return white[Math.floor(y / CELL_MM) * columns + Math.floor(x / CELL_MM)];
  };
}

/** Cells along a code's side, its black frame included. */
const MARKER_GRID = 7;
