import { type Box, type Point, point } from '../../base/index.ts';
import type { MarkedPattern } from './markedPattern.ts';

/**
 * The squares of a sheet's or a card's pattern as they show in the scene, each a closed polygon: edges that are not the
 * body's. `inScene` tells where a place on its plan shows.
 */
export function squaresInScene(
  sheet: Pick<MarkedPattern, 'squareMm' | 'markerMm' | 'markers' | 'blackSquares'>,
  inScene: (place: Point<'sheet'>) => Point<'scene'>,
): readonly (readonly Point<'scene'>[])[] {
  const grow = sheet.squareMm * GROW_SHARE;
  const around = ({ min, max }: Box<'sheet'>): Point<'sheet'>[] => [
    point(min.x - grow, min.y - grow),
    point(max.x + grow, min.y - grow),
    point(max.x + grow, max.y + grow),
    point(min.x - grow, max.y + grow),
  ];
  const inset = (sheet.squareMm - sheet.markerMm) / 2;
  const whites = sheet.markers.map(({ corners }): Box<'sheet'> => {
    const [upperLeft, , lowerRight] = corners;
    return {
      min: point(upperLeft.x - inset, lowerRight.y - inset),
      max: point(lowerRight.x + inset, upperLeft.y + inset),
    };
  });
  return [...sheet.blackSquares, ...whites].map((box) => around(box).map(inScene));
}

/** Share of a square by which the mask is larger, for blur. */
const GROW_SHARE = 0.06;
