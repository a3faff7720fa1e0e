import { type Point, point } from '../../base/index.ts';
import { type CameraView, sheetPlaceInScene, toPhoto } from '../camera/view.ts';
import type { Picture } from '../picture/picture.ts';
import type { CalibrationSheet } from '../sheet/calibrationSheet.ts';
import { squaresInScene } from '../sheet/squaresInScene.ts';

/** Where a thing may lie, and where paper is sure to be seen; closed polygons and places in the scene, mm. */
export interface ShapeGround {
  /** Places of bare paper in the band's white squares, as far as the photograph shows them. */
  readonly whites: readonly Point<'scene'>[];
  readonly calm: readonly Point<'scene'>[];
  /** Squares of the band: what is printed there hides an edge. */
  readonly squares: readonly (readonly Point<'scene'>[])[];
}

/** The calibration sheet as ground under a thing, seen in the plane of the view. */
export function sheetGround(
  sheet: CalibrationSheet,
  view: CameraView,
  picture: Pick<Picture, 'widthPx' | 'heightPx'>,
): ShapeGround {
  const inset = (sheet.squareMm - sheet.markerMm) / 4;
  const whites = sheet.markers.flatMap(({ corners: [a, b, c, d] }) =>
    [
      point<'sheet'>(a.x - inset, a.y + inset),
      point<'sheet'>(b.x + inset, b.y + inset),
      point<'sheet'>(c.x + inset, c.y - inset),
      point<'sheet'>(d.x - inset, d.y - inset),
    ].map((place) => sheetPlaceInScene(view, place)),
  );
  const isShown = (place: Point<'scene'>): boolean => {
    const { x, y } = toPhoto(view, place);
    return x > 1 && y > 1 && x < picture.widthPx - 2 && y < picture.heightPx - 2;
  };
  return {
    whites: whites.filter(isShown),
    calm: sheet.calm.map((corner) => sheetPlaceInScene(view, corner)),
    squares: squaresInScene(sheet, (place) => sheetPlaceInScene(view, place)),
  };
}
