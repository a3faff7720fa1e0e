import { type Box, type Point, point } from '../base/index.ts';
import { type Chain, chainThrough, placeChain } from '../curve/index.ts';
import { blackBoxesOfMarker, type MarkedPattern, type SheetMarker } from '../photo/index.ts';

/** The black areas of a sheet's or card's squares and codes, its lower left corner at `corner`; they overlap where they touch. */
export function patternChains(
  pattern: MarkedPattern,
  corner: Point<'drawing'> = point(0, 0),
): readonly Chain<'drawing'>[] {
  return [...pattern.blackSquares.map(boxChain), ...pattern.markers.flatMap(markerChains)].map((chain) =>
    placeChain(chain, { turnRad: 0, shift: [corner.x, corner.y] }),
  );
}

/** The outline of a box, anticlockwise. */
export function boxChain({ min, max }: Box<'sheet' | 'drawing'>): Chain<'drawing'> {
  return chainThrough(
    [point(min.x, min.y), point(max.x, min.y), point(max.x, max.y), point(min.x, max.y)],
    true,
  );
}

function markerChains({ id, corners }: SheetMarker): readonly Chain<'drawing'>[] {
  const [, upperRight, , lowerLeft] = corners;
  const boxes = blackBoxesOfMarker(id);
  const cells = Math.max(...boxes.map((box) => box.column + box.columns));
  const cellMm = (upperRight.x - lowerLeft.x) / cells;
  const at = (column: number, row: number): Point<'sheet'> =>
    point(lowerLeft.x + column * cellMm, lowerLeft.y + row * cellMm);
  return boxes.map(({ column, row, columns, rows }) =>
    boxChain({ min: at(column, row), max: at(column + columns, row + rows) }),
  );
}
