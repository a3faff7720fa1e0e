import { accept, type Checked, type Finding, point, refuse } from '../../base/index.ts';
import type { CalibrationSheet } from '../sheet/calibrationSheet.ts';
import type { ScenePlane } from './scenePlane.ts';
import type { SolvedCamera } from './solvedScene.ts';
import type { CameraView } from './view.ts';
import { cameraPlusMinus } from './viewUncertainty.ts';

/** mm. More than this on the sheet's long side is more than a template should be off. */
const UNSURE_MM = 0.15;

/** mm. What lies on the paper may come out a little under it when photographs tell its height. */
const LOWEST_MM = -1;

/** Share of the camera's height over the sheet that a plane may reach. */
const HIGHEST_SHARE = 0.5;

/**
 * The view of a plane over the sheet. Fault `view.height` for a height below the paper or more than half way up to
 * the camera; finding `camera.heightUnsure` where the picture does not tell how far off the camera was (focal length
 * and distance change together when it looks straight down), with the ± that this leaves on the sheet's long side.
 */
export function cameraView(
  solved: SolvedCamera,
  sheet: Pick<CalibrationSheet, 'middle'>,
  plane: ScenePlane,
): Checked<{ readonly view: CameraView; readonly findings: readonly Finding[] }> {
  const { camera, printScale, trust, standMm } = solved;
  if (!(plane.heightMm >= LOWEST_MM && plane.heightMm < HIGHEST_SHARE * standMm))
    return refuse({
      code: 'view.height',
      at: 'edge height',
      found: `an edge ${plane.heightMm.toFixed(1)} mm above the sheet, under a camera about ${standMm.toFixed(0)} mm up`,
      need: `a height between 0 and ${(HIGHEST_SHARE * standMm).toFixed(0)} mm`,
      remedy:
        'measure from the paper up to the middle of the edge of the plate that faces the camera, in millimetres',
    });
  const view: CameraView = {
    kind: 'camera',
    camera,
    printScale,
    planeHeightMm: plane.heightMm,
    planeHeightPlusMinusMm: plane.plusMinusMm,
    ...(plane.withCamera && { heightWithCamera: plane.withCamera }),
    trust,
  };
  return accept({ view, findings: unsureFindings(view, sheet) });
}

function unsureFindings(view: CameraView, sheet: Pick<CalibrationSheet, 'middle'>): readonly Finding[] {
  const { min, max } = sheet.middle;
  const level = (min.y + max.y) / 2;
  const unsureMm = cameraPlusMinus(view, point(min.x, level), point(max.x, level));
  if (unsureMm <= UNSURE_MM) return [];
  return [
    {
      weight: 'caution',
      code: 'camera.heightUnsure',
      at: 'photograph',
      found:
        `taken so nearly square on that the camera's distance is unsure: ± ${unsureMm.toFixed(2)} mm ` +
        `on ${(max.x - min.x).toFixed(0)} mm at an edge ${view.planeHeightMm.toFixed(1)} mm above the sheet`,
      need: `± ${UNSURE_MM} mm`,
      remedy:
        'set a height card level with the edge, or take a second photograph tilted by 10° to 20°, or give two calliper lengths to correct the scale',
    },
  ];
}
