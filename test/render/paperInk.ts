/** Where a printed sheet or card is black, and where it is plain all round. */
import { blackBoxesOfMarker, type CalibrationSheet, type HeightCard } from '../../src/core/photo/index.ts';

export const CELL_MM = 0.1;

/** A paper's ink in cells of {@link CELL_MM} from its lower left corner, and where a block of it is like all its neighbours. */
export interface PaperInk {
  readonly columns: number;
  readonly rows: number;
  readonly black: Uint8Array;
  readonly across: number;
  readonly up: number;
  readonly plain: Uint8Array;
}

/** Papers are photographed again and again in a test; their ink stays. */
const kept = new WeakMap<CalibrationSheet | HeightCard, PaperInk>();

export function paperInk(paper: CalibrationSheet | HeightCard): PaperInk {
  const known = kept.get(paper);
  if (known) return known;
  const raster = inkRaster(paper);
  const ink = { ...raster, ...plainBlocks(raster) };
  kept.set(paper, ink);
  return ink;
}

function inkRaster(sheet: CalibrationSheet | HeightCard) {
  const columns = Math.round(sheet.widthMm / CELL_MM);
  const rows = Math.round(sheet.heightMm / CELL_MM);
  const black = new Uint8Array(columns * rows);
  const put = (x0: number, y0: number, x1: number, y1: number) => {
    for (let row = Math.round(y0 / CELL_MM); row < Math.round(y1 / CELL_MM); row++)
      black.fill(1, row * columns + Math.round(x0 / CELL_MM), row * columns + Math.round(x1 / CELL_MM));
  };
  for (const { min, max } of sheet.blackSquares) put(min.x, min.y, max.x, max.y);
  for (const { id, corners } of sheet.markers) {
    const cell = sheet.markerMm / 7;
    const [x, y] = [corners[3].x, corners[3].y];
    for (const box of blackBoxesOfMarker(id))
      put(
        x + box.column * cell,
        y + box.row * cell,
        x + (box.column + box.columns) * cell,
        y + (box.row + box.rows) * cell,
      );
  }
  return { columns, rows, black };
}

/** mm. Ink that is the same all round a place for so far is looked at only once there. */
export const PLAIN_MM = 0.5;
export const PLAIN_CELLS = Math.round(PLAIN_MM / CELL_MM);

/** For every block of {@link PLAIN_MM}: whether it and the eight round it are all black or all white. */
function plainBlocks({ columns, rows, black }: ReturnType<typeof inkRaster>) {
  const across = Math.floor(columns / PLAIN_CELLS);
  const up = Math.floor(rows / PLAIN_CELLS);
  const sums = new Uint8Array(across * up);
  for (let row = 0; row < up * PLAIN_CELLS; row++)
    for (let column = 0; column < across * PLAIN_CELLS; column++)
      sums[Math.floor(row / PLAIN_CELLS) * across + Math.floor(column / PLAIN_CELLS)]! +=
        black[row * columns + column]!;
  const plain = new Uint8Array(across * up);
  for (let row = 1; row < up - 1; row++)
    for (let column = 1; column < across - 1; column++) {
      const at = row * across + column;
      const sum = sums[at]!;
      if (sum !== 0 && sum !== PLAIN_CELLS ** 2) continue;
      let isSame = true;
      for (let near = at - across; near <= at + across; near += across)
        isSame &&= sums[near - 1] === sum && sums[near] === sum && sums[near + 1] === sum;
      plain[at] = isSame ? 1 : 0;
    }
  return { across, up, plain };
}
