import { accept, type Box, type Checked, type Finding, hypot, type Point, point } from '../../base/index.ts';
import {
  type CalibrationSheet,
  type CameraView,
  cameraView,
  lengthBetween,
  type MarkerFinder,
  type ProfileScene,
  projection,
  readAnySheet,
  sheetGround,
  solveCamera,
  squareOn,
  toPhoto,
} from '../../photo/index.ts';
import type { ProfileRequest } from './profileRequest.ts';

/** What lies on the sheet, square on, and the way back to millimetres with their ±. */
export interface OnPaper {
  readonly scene: ProfileScene;
  readonly view: CameraView;
  readonly findings: readonly Finding[];
}

/** mm, k = 2. What a thickness taken with a rule is good to (common practice). */
const HEIGHT_PLUS_MINUS_MM = 0.3;

/** The thing on the calibration sheet, seen square on in the plane that is traced. Faults: those of sheet, camera and height. */
export function seeOnPaper(request: ProfileRequest, finder: MarkerFinder): Checked<OnPaper> {
  const { picture, sheetBarMm, heightMm = 0 } = request;
  const reading = readAnySheet(picture, finder);
  if (!reading.ok) return reading;
  const { sheet } = reading.value;
  const solved = solveCamera(reading.value, picture, sheetBarMm ? { sheetBarMm } : {});
  if (!solved.ok) return solved;
  const seen = cameraView(solved.value, sheet, { heightMm, plusMinusMm: HEIGHT_PLUS_MINUS_MM });
  if (!seen.ok) return seen;
  const { view } = seen.value;
  const rectified = squareOn(picture, view, sheetBox(sheet), 0);
  return accept({
    scene: { rectified, ground: sheetGround(sheet, view, picture) },
    view,
    findings: [...solved.value.findings, ...seen.value.findings],
  });
}

/** mm. A side that may show by more than this beyond the edge is told (chosen by us: what a template may be off). */
const SIDE_SHOWS_MM = 0.3;

/**
 * A thing of some height seen from near shows its side beyond its edge, by the height over the camera's own times the distance from
 * straight under it. Finding: `profile.side-shows`.
 */
export function sideFindings(
  view: CameraView,
  places: readonly Point<'scene'>[],
  heightMm: number,
): readonly Finding[] {
  const { stand } = projection(view.camera);
  const farthest = Math.max(...places.map(({ x, y }) => hypot(x - stand.x, y - stand.y)));
  const showsMm = (heightMm * farthest) / stand.z;
  if (showsMm <= SIDE_SHOWS_MM) return [];
  return [
    {
      weight: 'caution',
      code: 'profile.side-shows',
      at: 'photograph',
      found: `taken from ${stand.z.toFixed(0)} mm, ${farthest.toFixed(0)} mm aside: up to ${showsMm.toFixed(1)} mm of the side of a thing ${heightMm} mm high show beyond its edge`,
      need: `at most ${SIDE_SHOWS_MM} mm`,
      remedy: 'photograph from straight above its middle and from farther away, or trace a thinner thing',
    },
  ];
}

/** Half interval (k = 2) of lengths between two places, as a share: what camera, print and height leave open. */
export function scaleShare(view: CameraView, ends: readonly [Point<'scene'>, Point<'scene'>]): number {
  const { mm, plusMinusMm } = lengthBetween(view, toPhoto(view, ends[0]), toPhoto(view, ends[1]));
  return plusMinusMm / mm;
}

function sheetBox({ widthMm, heightMm }: CalibrationSheet): Box<'scene'> {
  return { min: point(0, 0), max: point(widthMm, heightMm) };
}
