import type { Fault, Finding } from '../../base/index.ts';
import { SHEET_BAR_MM } from '../sheet/calibrationSheet.ts';
import type { SheetPrint } from './sceneBeliefs.ts';
import { printSlot, type SceneState, type SceneUnknowns } from './sceneUnknowns.ts';

/** What a solved camera shows about its sheet and its picture. */
export interface CameraSigns {
  readonly rmsMm: number;
  /** The part of the misses that neighbouring squares share: a flat sheet has none. */
  readonly bowMm: number;
  /** How far the sheets are found to stand up at their rims, nought where that is not sure. */
  readonly liftMm: number;
  readonly dropped: number;
  readonly total: number;
  /** Given where the camera's own note was set aside. */
  readonly focal?: { readonly notedPx: number; readonly foundPx: number };
}

/** mm. A sheet lying flat on a table reads truer than this. */
const CURLED_MM = 0.1;
/** mm. Whole stretches that lie off together by so much are no noise: the sheet is curled or folded. */
const CURLED_TOGETHER_MM = 0.012;
/** mm. A sheet that stands up further at its rim is not merely paper on a table. */
const CURLED_LIFT_MM = 1;
/** mm. Beyond this lift a sheet is rolled or folded, and its plane is anyone's guess. */
export const ROLLED_LIFT_MM = 6;
/** mm, and share of the rest: what stretches lie off together by when a sheet bows by a millimetre. */
const BOWED = { mm: 0.004, share: 0.5 } as const;
/** Share of the points. More than this lost is more than a shadow or a fingertip. */
const MANY_STRAYS = 0.15;

export function cameraFindings({
  rmsMm,
  bowMm,
  liftMm,
  dropped,
  total,
  focal,
}: CameraSigns): readonly Finding[] {
  const findings: Finding[] = [];
  if (rmsMm > CURLED_MM || bowMm > CURLED_TOGETHER_MM || liftMm > CURLED_LIFT_MM)
    findings.push({
      weight: 'caution',
      code: 'sheet.curled',
      at: 'calibration sheet',
      found:
        liftMm > CURLED_LIFT_MM
          ? `it stands up from the table by about ${liftMm.toFixed(0)} mm at its rim`
          : `its squares lie ${Math.max(rmsMm, bowMm).toFixed(3)} mm from where a flat sheet would have them, whole stretches together`,
      need: 'a sheet that lies flat all over; the ± of lengths is widened here',
      remedy: 'tape or glue the sheet to a stiff flat board and photograph again',
    });
  else if (bowMm > Math.max(BOWED.mm, BOWED.share * rmsMm))
    findings.push({
      weight: 'remark',
      code: 'sheet.bowed',
      at: 'calibration sheet',
      found: `whole stretches of it lie ${bowMm.toFixed(3)} mm off together, as when the paper bows a little or the lens bends oddly`,
      need: 'a sheet that lies flat all over; the ± of lengths is widened here',
      remedy: 'weigh down or tape its edges',
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
    need: 'a plain photograph of the sheet lying flat, as the camera saved it',
    remedy: 'photograph again from about a metre or more, all of the sheet in view',
  };
}

/** Squared spreads of both bars together beyond which a careful hand cannot have read them. */
const MOST_STRAIN = 32;

/** The fault of bars that a photograph contradicts, or null: it shows well which direction of a print is the longer. */
export function barsFault(
  prints: readonly SheetPrint[],
  unknowns: SceneUnknowns,
  { values }: SceneState,
): Fault | null {
  const strained = prints.findIndex(({ rows }, sheet) => {
    const slot = printSlot(unknowns, sheet);
    const off = (rows ?? []).map(
      ({ x, y, value, sigma }) => (x * values[slot] + y * values[slot + 1] - value) / sigma,
    );
    return off.reduce((sum, one) => sum + one * one, 0) > MOST_STRAIN;
  });
  if (strained < 0) return null;
  const { scale } = prints[strained];
  const slot = printSlot(unknowns, strained);
  const length = (share: number) => (share * SHEET_BAR_MM).toFixed(1);
  const said = scale.x === scale.y ? '' : ` of ${length(scale.x)} and ${length(scale.y)} mm`;
  return {
    code: 'sheet.barsApart',
    at: 'sheet bar',
    found: `the photograph does not show bars${said}: side by side they look more like ${length(values[slot])} and ${length(values[slot + 1])} mm`,
    need: 'both bars measured on this very sheet, and a photograph that was not stretched',
    remedy: 'measure both bars again, from end mark to end mark, the longer side of the sheet first',
  };
}

/** Two sheets whose prints differ by more than one printer does in one run. */
export function printingsFinding({
  number,
  share,
}: {
  readonly number: number;
  readonly share: number;
}): Finding {
  const percent = `${Math.abs(share * 100).toFixed(1)} % ${share > 0 ? 'larger' : 'smaller'}`;
  return {
    weight: 'caution',
    code: 'sheet.printings',
    at: `calibration sheet ${number}`,
    found: `it was printed ${percent} than the first sheet, so they are of different printings`,
    need: 'all sheets printed in one run, or both bars of each',
    remedy: 'print all sheets again together, or measure the bars of each sheet and give them',
  };
}

export function sheetsApartFault(numbers: readonly number[]): Fault {
  return {
    code: 'sheet.apart',
    at: 'photographs',
    found:
      numbers.length === 0
        ? 'they do not hang together: no sheet is seen both in one and in the others'
        : `no photograph shows sheet ${numbers.join(', ')} together with the others`,
    need: 'at least two sheets in one photograph, so that one leads to the next',
    remedy: 'photograph again with neighbouring sheets in one picture, none moved in between',
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

export function notFlatFault(rmsMm: number, liftMm: number): Fault {
  return {
    code: 'sheet.notFlat',
    at: 'calibration sheet',
    found:
      liftMm > ROLLED_LIFT_MM
        ? `it stands up from the table by about ${liftMm.toFixed(0)} mm at its rim`
        : `its squares lie ${rmsMm.toFixed(2)} mm from where a flat sheet would have them`,
    need: 'a flat sheet, true to half a millimetre',
    remedy: 'tape or glue the sheet to a stiff flat board and photograph again',
  };
}
