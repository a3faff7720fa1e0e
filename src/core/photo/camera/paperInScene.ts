import { type Point, point } from '../../base/index.ts';
import { projection } from './camera.ts';
import { type PlacedCard, type PlacedSheet, sheetPlace } from './solvedScene.ts';
import { type CameraView, toScene } from './view.ts';

/**
 * Where a place on a sheet's or card's plan shows in the scene: seen from one camera, what lies on the paper, or on a
 * card, does not line up with what stands at the scene's height.
 */
export function paperInScene(
  view: CameraView,
  placed: PlacedSheet | PlacedCard,
): (place: Point<'sheet'>) => Point<'scene'> {
  const seen = projection(view.camera);
  const heightMm = 'heightMm' in placed ? placed.heightMm : 0;
  const asSheet =
    'printScale' in placed ? placed : { ...placed, printScale: view.printScale, printPlusMinus: 0 };
  return (place) => {
    const { x, y } = sheetPlace(asSheet, place);
    return toScene(view, seen.toPhoto(x, y, heightMm));
  };
}

/** The bounds on the plane of the view of several places on paper. */
export function boundsInScene(places: readonly Point<'scene'>[]) {
  return {
    min: point<'scene'>(Math.min(...places.map(({ x }) => x)), Math.min(...places.map(({ y }) => y))),
    max: point<'scene'>(Math.max(...places.map(({ x }) => x)), Math.max(...places.map(({ y }) => y))),
  };
}
