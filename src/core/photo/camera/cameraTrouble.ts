import type { Fault, Finding } from '../../base/index.ts';

/** What a solved camera shows about its sheet and its picture. */
export interface CameraSigns {
  readonly rmsMm: number;
  readonly dropped: number;
  readonly total: number;
  /** Given where the camera's own note was set aside. */
  readonly focal?: { readonly notedPx: number; readonly foundPx: number };
}

/** mm. A sheet lying flat on a table reads truer than this. */
const CURLED_MM = 0.1;
/** Share of the points. More than this lost is more than a shadow or a fingertip. */
const MANY_STRAYS = 0.15;

export function cameraFindings({ rmsMm, dropped, total, focal }: CameraSigns): readonly Finding[] {
  const findings: Finding[] = [];
  if (rmsMm > CURLED_MM)
    findings.push({
      weight: 'caution',
      code: 'sheet.curled',
      at: 'calibration sheet',
      found: `its squares lie ${rmsMm.toFixed(2)} mm from where a flat sheet would have them`,
      need: `a flat sheet, true to ${CURLED_MM} mm`,
      remedy: 'tape or glue the sheet to a stiff flat board and photograph again',
    });
  if (dropped > MANY_STRAYS * total)
    findings.push({
      weight: 'caution',
      code: 'sheet.outliers',
      at: 'calibration sheet',
      found: `${dropped} of ${total} points do not fit the others and were left out`,
      need: 'an even, uncovered band of squares',
      remedy: 'look for glare, folds or things that lie on the band',
    });
  if (focal)
    findings.push({
      weight: 'caution',
      code: 'camera.focalNote',
      at: 'photograph',
      found: `the camera noted a focal length of ${focal.notedPx.toFixed(0)} px, the sheet shows ${focal.foundPx.toFixed(0)} px`,
      need: 'a picture that was not cropped or enlarged after it was taken',
      remedy: 'use the picture as the camera saved it; the sheet was believed here',
    });
  return findings;
}

export function unsettledFault(): Fault {
  return {
    code: 'camera.unsettled',
    at: 'photograph',
    found: 'no camera could be found that explains how the sheet looks',
    need: 'bars measured on this very sheet, and a plain photograph of it lying flat',
    remedy:
      'measure both bars again or give their mean as one length; if that does not help, photograph again from about a metre or more, all of the sheet in view',
  };
}

export function steepFault(tiltRad: number): Fault {
  return {
    code: 'camera.steep',
    at: 'photograph',
    found: `it was taken ${((tiltRad * 180) / Math.PI).toFixed(0)}° from square on`,
    need: 'no more than 45°, better between 3° and 10°',
    remedy: 'hold the camera nearly straight above the instrument',
  };
}

export function lensFault(): Fault {
  return {
    code: 'camera.lens',
    at: 'photograph',
    found: 'the lens bends the picture more than can be straightened out to its corners',
    need: 'a normal or long lens',
    remedy: 'step back and use the normal or the long lens, not the wide one',
  };
}

export function notFlatFault(rmsMm: number): Fault {
  return {
    code: 'sheet.notFlat',
    at: 'calibration sheet',
    found: `its squares lie ${rmsMm.toFixed(2)} mm from where a flat sheet would have them`,
    need: 'a flat sheet, true to half a millimetre',
    remedy: 'tape or glue the sheet to a stiff flat board and photograph again',
  };
}
