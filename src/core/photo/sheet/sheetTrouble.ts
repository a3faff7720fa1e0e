import type { Fault } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { CalibrationSheet } from './calibrationSheet.ts';
import { pictureLook } from './pictureSharpness.ts';
import { shrunkGrayOf } from './shrunkGray.ts';

/** What a maker calls a sheet. */
export function sheetName({ paper, number }: Pick<CalibrationSheet, 'paper' | 'number'>): string {
  return number === 1 ? `${paper} sheet` : `${paper} sheet number ${number}`;
}

/** px. The picture is judged at about this long side, so that edges are told by how they look, not by how many pixels it has. */
const JUDGED_SIZE_PX = 1600;
/** Levels of 255. White paper that is no lighter than this drowns in noise. */
const DARK_BELOW = 50;
/** px at that size. Codes on a sheet that fills half the picture are gone when edges are wider. */
const BLURRED_ABOVE_PX = 8;

/** No sheet of ours; the reason where the picture as a whole tells one: too dark, or blurred. */
export function notFound(picture: Picture): Fault {
  const times = Math.max(1, Math.round(Math.max(picture.widthPx, picture.heightPx) / JUDGED_SIZE_PX));
  const look = pictureLook(shrunkGrayOf(picture, times));
  const fault = { code: 'sheet.notFound', at: 'photograph' };
  if (look.lightest < DARK_BELOW)
    return {
      ...fault,
      found: `no calibration sheet can be read in it: it is too dark, its lightest parts reach ${look.lightest} of 255`,
      need: 'our printed sheet in even light, its white near white',
      remedy: 'photograph again by a window or with a lamp from each side, without flash',
    };
  if (look.sharpestEdgePx > BLURRED_ABOVE_PX)
    return {
      ...fault,
      found: `no calibration sheet can be read in it: it is blurred, its sharpest edges are ${Math.round(look.sharpestEdgePx * times)} px wide`,
      need: `our printed sheet in focus and the camera held still: edges of ${3 * times} px or less`,
      remedy: 'photograph again from a stand or with the camera propped up, and let it focus on the sheet',
    };
  return {
    ...fault,
    found: 'no calibration sheet can be read in it',
    need: 'our printed sheet in view, sharp and evenly lit',
    remedy:
      'photograph again with the sheet under the instrument, or give a known length such as the body length',
  };
}

export function mirroredFault(codes: number): Fault {
  return {
    code: 'sheet.mirrored',
    at: 'photograph',
    found: `it is mirrored: ${codes} codes of the sheet read only in a mirror`,
    need: 'the picture as the camera saw it',
    remedy: 'turn off mirroring in the camera, or flip the picture back, and try again',
  };
}

export function unknownFault(codes: number): Fault {
  return {
    code: 'sheet.unknown',
    at: 'photograph',
    found: `${codes} codes like ours are in it, but not laid out as on any sheet this version knows`,
    need: 'a sheet printed by this version or an earlier one',
    remedy: 'print a new sheet, or use the version that printed this one',
  };
}

export function wrongPaper(seen: CalibrationSheet, asked: CalibrationSheet): Fault {
  return {
    code: 'sheet.wrongPaper',
    at: 'sheet paper',
    found: `the photograph shows the ${sheetName(seen)}, not the ${sheetName(asked)}`,
    need: 'the sheet that was photographed',
    remedy: `give ${seen.paper} as the sheet's paper`,
  };
}

export function twiceFault(name: string, codes: number): Fault {
  return {
    code: 'sheet.twice',
    at: 'photograph',
    found: `the ${name} lies in it twice: ${codes} of its codes are seen in two places`,
    need: 'sheets and cards with different numbers side by side',
    remedy: 'take one away, or print the others with numbers 2, 3 and 4',
  };
}

export function foldedFault(name: string, codes: number): Fault {
  return {
    code: 'sheet.folded',
    at: 'calibration sheet',
    found: `the ${name} is bent: ${codes} of its codes lie in another plane than the rest`,
    need: 'a flat sheet, true to half a millimetre',
    remedy: 'tape or glue the sheet to a stiff flat board and photograph again',
  };
}

export function tooLittleFault(
  sheet: CalibrationSheet,
  sides: readonly string[],
  codes: number,
  share: number,
): Fault {
  const where = sides.length > 0 ? `along its ${sides.join(' and ')}` : 'in enough places';
  return {
    code: 'sheet.too-little',
    at: 'photograph',
    found:
      `the band of squares cannot be read ${where} ` +
      `(${codes} of ${sheet.markers.length} codes of the ${sheetName(sheet)} seen; what is seen encloses ${Math.round(100 * share)} % of it)`,
    need: 'squares on all sides of what is measured',
    remedy: 'photograph again with the whole sheet in view and nothing but the neck across the band',
  };
}
