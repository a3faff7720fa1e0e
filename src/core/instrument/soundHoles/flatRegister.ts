import type { Finding } from '../../base/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import type { PlateArch } from '../arching/index.ts';
import type { FlatHole } from './flatHole.ts';

/** What lays a hole flat: where it lies, and the finished arch under it. */
const FROM = [
  'soundHoles.area',
  'soundHoles.turn',
  'stop',
  'top.rise',
  'scoopDepthTop',
  'channelAtWaist',
  'channelAtBouts',
  'channelAtCorners',
] as const;

/** The hole laid flat as numbers for the register. */
export function flatEntries(flat: FlatHole | null, top: PlateArch): readonly RegisterEntry[] {
  if (flat === null) return [];
  const { upperCorner, waist, lowerCorner } = top.numbers.fullnessFrom;
  const from = [...FROM, upperCorner, waist, lowerCorner];
  const of = (name: string, value: number, unit: Unit, how: string): RegisterEntry => ({
    name: `soundHoles.${name}`,
    value,
    unit,
    origin: { kind: 'derived', from, how },
  });
  return [
    of('flatArea', flat.areaMm2, 'mm²', 'opening of one hole laid flat from the arch, with its nicks'),
    of('flatStem', flat.stemMm, 'mm', 'stem at its nicks, laid flat'),
    of('flatEyesApart', flat.eyesApartMm, 'mm', 'middle to middle of the eyes, laid flat'),
    of('flatNickAcross', flat.innerNick.x, 'mm', 'centre line to the point of the inner nick, over the arch'),
    of('flatOffPlan', flat.offPlanMm, 'mm', 'flat hole off the plan one at most, laid on it to fit best'),
    of('flatStrain', flat.strainMost, 'ratio', 'stretching left in the flat template, at most'),
    of(
      'steepest',
      (flat.steepestRad * 180) / Math.PI,
      'deg',
      'slope of the top under a hole at its steepest',
    ),
  ];
}

/** No unit. A sheet that must give by more creases (from memory). */
export const MOST_STRAIN = 0.01;
/** rad. On a steeper arch a template slides, and a cut square to the joint leans far from square to the wood. Chosen by us. */
const MOST_SLOPE_RAD = (30 * Math.PI) / 180;

/** Findings `soundHoles.not-flat`, `soundHoles.strain`, `soundHoles.steep`. */
export function flatFindings(flat: FlatHole | null): readonly Finding[] {
  if (flat === null)
    return [
      {
        code: 'soundHoles.not-flat',
        weight: 'caution',
        at: 'lowerEyeToEdge, holeLength',
        found:
          'a sound hole so near to the edge that it cannot be laid flat from the arch: no template hugs it',
        need: 'wood of the arch all round the hole',
        remedy: 'use the template in plan, or bring the hole farther from the edge',
      },
    ];
  const findings: Finding[] = [];
  if (flat.strainMost > MOST_STRAIN)
    findings.push({
      code: 'soundHoles.strain',
      weight: 'caution',
      at: 'archHeightTop',
      found: `a flat template of the sound hole that must give by ${(100 * flat.strainMost).toFixed(1)} % to lie on the arch`,
      need: `${100 * MOST_STRAIN} % or less (from memory)`,
      remedy: 'cut it in two at the bridge line and lay each half by its own eye, or lower the arch',
    });
  if (flat.steepestRad > MOST_SLOPE_RAD)
    findings.push({
      code: 'soundHoles.steep',
      weight: 'caution',
      at: 'archHeightTop',
      found: `an arch that slopes by ${((flat.steepestRad * 180) / Math.PI).toFixed(0)}° under the sound hole`,
      need: '30° or less (chosen by us)',
      remedy: 'lower the arch, or bring the hole nearer to the centre line',
    });
  return findings;
}
