import { type Point, point } from '../../base/index.ts';
import type { SheetPlace } from '../camera/camera.ts';
import { type Rectified, sceneToRectified } from '../camera/rectify.ts';
import type { PaperShares } from '../paper/paperLight.ts';
import type { ShapeGround } from '../paper/sheetGround.ts';
import type { ThingColour } from '../paper/thingColour.ts';
import { linesAcross } from './linesAcross.ts';
import { asSeenAt, placeAtHeight, wallShownMm } from './lookedOver.ts';
import { outermostRises } from './outermostRises.ts';
import { bodyToScene, directionToScene, type ShapeSeat } from './shapeSeat.ts';
import type { ShapeStation } from './shapeStations.ts';
import type { ExpectedShape } from './tracedShape.ts';

/** The square-on picture in the plane of the thing's upper edge, and from where it was taken. */
export interface ShapeScene {
  readonly rectified: Rectified;
  readonly planeHeightMm: number;
  readonly stand: SheetPlace;
  readonly ground: ShapeGround;
}

/** What every look at the picture needs. */
export interface Look {
  readonly scene: ShapeScene;
  readonly shape: ExpectedShape;
  readonly shares: PaperShares;
  readonly colour: ThingColour;
  readonly upperEdgeMm: (at: Point<'body'>) => number;
}

/** Where a station's upper edge must show from a seat, and how much of the wall below shows beyond it. */
export interface Expectation {
  readonly at: Point<'scene'>;
  readonly normal: Point<'scene'>;
  readonly heightMm: number;
  readonly wallMm: number;
  /** mm along the normal from the station's own place to where its upper edge shows in the plane. */
  readonly shownMm: number;
}

function expectation({ scene, upperEdgeMm }: Look, seat: ShapeSeat, station: ShapeStation): Expectation {
  const at = bodyToScene(seat, station.at);
  const normal = directionToScene(seat, station.normal);
  const heightMm = upperEdgeMm(station.at);
  const shown = asSeenAt(scene.stand, scene.planeHeightMm, at, heightMm);
  return {
    at,
    normal,
    heightMm,
    wallMm: wallShownMm(scene.stand, scene.planeHeightMm, heightMm, at, normal),
    shownMm: (shown.x - at.x) * normal.x + (shown.y - at.y) * normal.y,
  };
}

/** One station's outermost edge: mm along the normal from the station, and the place on the thing that this shows. */
export interface Outermost {
  readonly expected: Expectation;
  readonly offsetMm: number;
  readonly place: Point<'scene'> | null;
}

export function outermost(
  look: Look,
  seat: ShapeSeat,
  stations: readonly ShapeStation[],
  reachMm: number,
): readonly Outermost[] {
  const { scene, shares, colour } = look;
  const stepMm = Math.max(scene.rectified.mmPerPixel / 2, reachMm / MOST_SAMPLES);
  const expected = stations.map((station) => expectation(look, seat, station));
  const centre = (i: number) => expected[i].shownMm + Math.max(0, expected[i].wallMm);
  const reach = { insideMm: reachMm, outsideMm: reachMm, stepMm };
  const lines = linesAcross(shares, scene.rectified, seat, stations, reach, centre);
  return [...outermostRises(lines, stations, colour)].map((found, i) => {
    const one = expected[i];
    const offsetMm = found + centre(i);
    const shown = point<'scene'>(one.at.x + offsetMm * one.normal.x, one.at.y + offsetMm * one.normal.y);
    const heightMm = one.wallMm > 0 ? 0 : one.heightMm;
    const isHidden = Number.isNaN(found) || !isInside(scene, shown);
    return {
      expected: one,
      offsetMm,
      place: isHidden ? null : placeAtHeight(scene.stand, scene.planeHeightMm, shown, heightMm),
    };
  });
}

const MOST_SAMPLES = 40;

function isInside({ rectified }: ShapeScene, place: Point<'scene'>): boolean {
  const { x, y } = sceneToRectified(rectified, place);
  return x > 1 && y > 1 && x < rectified.picture.widthPx - 2 && y < rectified.picture.heightPx - 2;
}
