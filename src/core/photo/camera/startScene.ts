import { atan2, cos, hypot, log, type Point, point, sin } from '../../base/index.ts';
import type { Matrix3 } from '../../numeric/index.ts';
import { fitHomography, type SheetPair } from '../sheet/homography.ts';
import type { Sighting } from './adjustment.ts';
import type { SheetPrint } from './sceneBeliefs.ts';
import {
  cardHeightSlot,
  cardSlot,
  lensSlot,
  placeSlot,
  poseSlot,
  printSlot,
  type SceneState,
  type SceneUnknowns,
} from './sceneUnknowns.ts';
import { POSE_UNKNOWNS, type Pose, UNKNOWN } from './sight.ts';
import { poseFromHomography } from './startCamera.ts';
import { turnedBack, turnMatrix, turnTwice } from './turn.ts';

/** A sheet or card seen in a shot with the plane perspective that fits it. */
export interface PlainSighting extends Sighting {
  readonly homography: Matrix3;
}

/** The sightings with their plane perspectives, places brought to print size; those too poor for one are left out. */
export function plainSightings(
  sightings: readonly Sighting[],
  prints: readonly SheetPrint[],
): readonly PlainSighting[] {
  return sightings.flatMap((sighting) => {
    const { scale } = prints[sighting.item.kind === 'sheet' ? sighting.item.index : 0];
    const homography = fitHomography(printed(sighting, scale));
    return homography ? [{ ...sighting, homography }] : [];
  });
}

function printed({ pairs }: Sighting, { x, y }: SheetPrint['scale']): readonly SheetPair[] {
  return pairs.map(({ sheet, photo }) => ({ sheet: point<'sheet'>(sheet.x * x, sheet.y * y), photo }));
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly turnRad: number;
}

export interface LensStart {
  readonly focalPx: number;
  readonly centre: Point<'photo'>;
}

/**
 * A first state of the scene for first focal lengths, or the numbers of the sheets that no photograph shows together
 * with the others. Method: poses from plane perspectives; places handed on from sheet to sheet through shots that show
 * two of them.
 */
export function startScene(
  unknowns: SceneUnknowns,
  plain: readonly PlainSighting[],
  prints: readonly SheetPrint[],
  lenses: readonly LensStart[],
): SceneState | { readonly apart: readonly number[] } {
  const lensOf = (shot: number) => lenses[unknowns.lensOfShot[shot]];
  const sheets = plain.filter(({ item }) => item.kind === 'sheet');
  const poseOfSighting = (one: PlainSighting) => {
    const { focalPx, centre } = lensOf(one.shot);
    return poseFromHomography(one.homography, focalPx, centre);
  };
  const { places, poses } = handOn(sheets, poseOfSighting);
  const apart = unknowns.sheetNumbers.filter((_, sheet) => !places.has(sheet));
  if (apart.length > 0 || poses.size < unknowns.lensOfShot.length) return { apart };
  const values = new Float64Array(unknowns.size);
  lenses.forEach(({ focalPx, centre }, lens) => {
    values.set([log(focalPx), centre.x, centre.y], lensSlot(unknowns, lens) + UNKNOWN.logFocal);
  });
  const turns = unknowns.lensOfShot.map((_, shot) => {
    const { turn, shift } = poses.get(shot) as Pose;
    values.set(shift, poseSlot(unknowns, shot) + POSE_UNKNOWNS / 2);
    return turn;
  });
  unknowns.sheetNumbers.forEach((_, sheet) => {
    const { x, y, turnRad } = places.get(sheet) as Place;
    values.set([prints[sheet].scale.x, prints[sheet].scale.y], printSlot(unknowns, sheet));
    values.set([x, y, turnRad], placeSlot(unknowns, sheet));
  });
  setCards({ unknowns, plain, prints, lensOf, poses, values });
  return { values, turns };
}

function handOn(sheets: readonly PlainSighting[], poseOfSighting: (one: PlainSighting) => Pose) {
  const places = new Map<number, Place>([[0, { x: 0, y: 0, turnRad: 0 }]]);
  const poses = new Map<number, Pose>();
  for (let isNew = true; isNew; ) {
    isNew = false;
    for (const one of sheets) {
      const place = places.get(one.item.index);
      const pose = poses.get(one.shot);
      if (place && !pose) {
        poses.set(one.shot, poseOfScene(poseOfSighting(one), place));
        isNew = true;
      } else if (pose && !place) {
        places.set(one.item.index, placeIn(pose, poseOfSighting(one)));
        isNew = true;
      }
    }
  }
  return { places, poses };
}

/** How the camera stands to the scene, from how it stands to a sheet that lies at `place`. */
function poseOfScene({ turn, shift }: Pose, { x, y, turnRad }: Place): Pose {
  const whole = turnTwice(turn, turnMatrix(0, 0, -turnRad));
  return {
    turn: whole,
    shift: [
      shift[0] - whole[0] * x - whole[1] * y,
      shift[1] - whole[3] * x - whole[4] * y,
      shift[2] - whole[6] * x - whole[7] * y,
    ],
  };
}

/** Where a sheet lies in the scene, from how the camera stands to both. */
function placeIn(scene: Pose, sheet: Pose): Place {
  const [x, y] = turnedBack(scene.turn, [
    sheet.shift[0] - scene.shift[0],
    sheet.shift[1] - scene.shift[1],
    sheet.shift[2] - scene.shift[2],
  ]);
  const [along, up] = turnedBack(scene.turn, [sheet.turn[0], sheet.turn[3], sheet.turn[6]]);
  return { x, y, turnRad: atan2(up, along) };
}

interface CardStart {
  readonly unknowns: SceneUnknowns;
  readonly plain: readonly PlainSighting[];
  readonly prints: readonly SheetPrint[];
  readonly lensOf: (shot: number) => LensStart;
  readonly poses: ReadonlyMap<number, Pose>;
  readonly values: Float64Array;
}

/** A card looks larger by its nearness to the camera: that gives its height, and then its place. */
function setCards({ unknowns, plain, prints, lensOf, poses, values }: CardStart): void {
  unknowns.cardNumbers.forEach((_, card) => {
    const seen = plain.find(({ item }) => item.kind === 'card' && item.index === card);
    const pose = seen && poses.get(seen.shot);
    if (!seen || !pose) return;
    const pairs = printed(seen, prints[0].scale);
    const onPlane = planeSight(pose, lensOf(seen.shot));
    const stand = turnedBack(pose.turn, [-pose.shift[0], -pose.shift[1], -pose.shift[2]])[2];
    const low = likeness(pairs, (photo) => onPlane(photo, 0));
    const heightMm = stand * (1 - 1 / low.size);
    const level = likeness(pairs, (photo) => onPlane(photo, heightMm));
    values.set([level.x, level.y, level.turnRad], cardSlot(unknowns, card));
    values[cardHeightSlot(unknowns, card)] = heightMm;
  });
}

function planeSight(pose: Pose, { focalPx, centre }: LensStart) {
  const stand = turnedBack(pose.turn, [-pose.shift[0], -pose.shift[1], -pose.shift[2]]);
  return (photo: Point<'photo'>, z: number): Point<'scene'> => {
    const ray = turnedBack(pose.turn, [(photo.x - centre.x) / focalPx, (photo.y - centre.y) / focalPx, 1]);
    const reach = (z - stand[2]) / ray[2];
    return point(stand[0] + reach * ray[0], stand[1] + reach * ray[1]);
  };
}

/** Place, turn and size that bring a card's plan onto where it is seen, in the sense of least squares. */
function likeness(pairs: readonly SheetPair[], toScene: (photo: Point<'photo'>) => Point<'scene'>) {
  const seen = pairs.map(({ photo }) => toScene(photo));
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const [planX, planY] = [mean(pairs.map(({ sheet }) => sheet.x)), mean(pairs.map(({ sheet }) => sheet.y))];
  const [sceneX, sceneY] = [mean(seen.map(({ x }) => x)), mean(seen.map(({ y }) => y))];
  let [along, across, square] = [0, 0, 0];
  pairs.forEach(({ sheet }, place) => {
    const [a, b] = [sheet.x - planX, sheet.y - planY];
    const [x, y] = [seen[place].x - sceneX, seen[place].y - sceneY];
    along += a * x + b * y;
    across += a * y - b * x;
    square += a * a + b * b;
  });
  const turnRad = atan2(across, along);
  const size = hypot(along, across) / square;
  const [c, s] = [size * cos(turnRad), size * sin(turnRad)];
  return { size, turnRad, x: sceneX - c * planX + s * planY, y: sceneY - s * planX - c * planY };
}
