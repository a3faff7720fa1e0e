import { accept, type Checked, exp, expm1, type Fault, type Finding, refuse } from '../../base/index.ts';
import {
  type KnownMeasure,
  type KnownRatio,
  ratiosOf,
  type SceneMeasure,
  type SceneTrust,
} from './knownRatio.ts';
import { absurdFaults, contradictionFault, knownFindings } from './knownTrouble.ts';

/** What lengths in the scene are to be multiplied by, along the body and across it. */
export interface ScaleCorrection {
  readonly along: number;
  readonly across: number;
  readonly alongPlusMinus: number;
  readonly acrossPlusMinus: number;
  /** How each known length reads after the correction, less what it was given as. */
  readonly misfits: readonly { readonly name: string; readonly givenMm: number; readonly misfitMm: number }[];
  readonly findings: readonly Finding[];
}

/** The sheet's scale is a few tenths of a per cent good, and as good both ways. */
export const SHEET_TRUST: SceneTrust = { scalePlusMinus: 0.004, unevenPlusMinus: 0.003 };
/** Without a sheet the picture has no scale, and tilt or a print may stretch it one way by a few per cent. */
export const NO_SHEET_TRUST: SceneTrust = { scalePlusMinus: null, unevenPlusMinus: 0.03 };

/**
 * The correction that callipers make to lengths in the scene.
 *
 * With the sheet, known lengths check the scale and correct it within both intervals. Without it, the first known
 * length gives the scale and nothing checks it; two lengths, one along and one across, also check and correct how
 * evenly the picture is stretched.
 * Faults: `known.absurd` (a length no instrument of the family of violins has), `known.none` (no sheet and no known
 * length that was measured in the scene), `known.contradict` (lengths that cannot all be true: the fault names the two
 * farthest apart). Findings: `known.unchecked`, `known.strained`, `known.uneven`, `known.unused`.
 * Method: logarithms of known over measured, weighted by their intervals, with the scene's own trust as one more
 * measurement.
 */
export function scaleFromKnown(
  measured: readonly SceneMeasure[],
  known: readonly KnownMeasure[],
  trust: SceneTrust,
): Checked<ScaleCorrection> {
  const absurd = absurdFaults(known);
  if (absurd.length > 0) return refuse(...absurd);
  const ratios = known.flatMap((one) => ratiosOf(one, measured));
  if (trust.scalePlusMinus === null && ratios.length === 0) return refuse(noneFault());
  const fit = weighted(ratios, trust);
  const strains = ratios.map((ratio) => ratio.logRatio - (ratio.isAlong ? fit.logAlong : fit.logAcross));
  const contradiction = contradictionFault(ratios, trust);
  if (contradiction) return refuse(contradiction);
  return accept({
    along: exp(fit.logAlong),
    across: exp(fit.logAcross),
    alongPlusMinus: fit.alongPlusMinus,
    acrossPlusMinus: fit.acrossPlusMinus,
    misfits: ratios.map(({ name, knownMm }, place) => ({
      name,
      givenMm: knownMm,
      misfitMm: knownMm * expm1(-strains[place]),
    })),
    findings: knownFindings({
      measured,
      known,
      ratios,
      strains,
      trust,
      uneven: fit.logAlong - fit.logAcross,
    }),
  });
}

/** Two unknowns, the logarithms along and across, solved by hand. */
function weighted(ratios: readonly KnownRatio[], trust: SceneTrust) {
  const tie = 1 / trust.unevenPlusMinus ** 2;
  const own = trust.scalePlusMinus === null ? 0 : 1 / (2 * trust.scalePlusMinus ** 2);
  const sumOf = (isAlong: boolean, value: (ratio: KnownRatio) => number) =>
    ratios
      .filter((ratio) => ratio.isAlong === isAlong)
      .reduce((sum, ratio) => sum + value(ratio) / ratio.plusMinus ** 2, 0);
  const along = sumOf(true, () => 1) + own + tie;
  const across = sumOf(false, () => 1) + own + tie;
  const [rightAlong, rightAcross] = [sumOf(true, (one) => one.logRatio), sumOf(false, (one) => one.logRatio)];
  const determinant = along * across - tie * tie;
  return {
    logAlong: (across * rightAlong + tie * rightAcross) / determinant,
    logAcross: (along * rightAcross + tie * rightAlong) / determinant,
    alongPlusMinus: Math.sqrt(across / determinant),
    acrossPlusMinus: Math.sqrt(along / determinant),
  };
}

function noneFault(): Fault {
  return {
    code: 'known.none',
    at: 'known lengths',
    found: 'the photograph shows no calibration sheet, and no length of the instrument is given',
    need: 'one known length, such as the body length',
    remedy: 'measure the body with callipers and give its length, better also one width',
  };
}
