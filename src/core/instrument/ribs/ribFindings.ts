import type { Finding } from '../../base/index.ts';
import { arcOf, type HalfOutline, segments } from '../../curve/index.ts';
import type { CornerTip } from '../outline/sectionLines.ts';

/** Rib corners thinner than this many rib thicknesses run out to a feather; common practice. */
const LEAST_END_IN_THICKNESSES = 1.5;

/** Rib corners wider than this share of the plate's corner end look stubby; from memory. */
const GREATEST_END_SHARE = 0.75;

/** Stretch of the outer fibre that a hot iron alone brings about safely, and with a strap; from memory. */
const STRAIN_WITHOUT_STRAP = 0.03;
const STRAIN_WITH_STRAP = 0.07;

/** What is to be said of one rib corner. */
export function cornerFindings(
  which: 'lower' | 'upper',
  tip: CornerTip,
  plateEndMm: number,
  ribThicknessMm: number,
): Finding[] {
  const least = LEAST_END_IN_THICKNESSES * ribThicknessMm;
  const greatest = GREATEST_END_SHARE * plateEndMm;
  const found = `the rib corner ends ${tip.widthMm.toFixed(1)} mm wide at the ${which} corners`;
  if (tip.widthMm < least)
    return [
      {
        code: 'ribs.corner-feather',
        weight: 'caution',
        at: 'cornerOverhang',
        found,
        need: `at least ${least.toFixed(1)} mm, or the ribs run out to a feather`,
        remedy: 'raise the overhang at the corners, or lower the overhang along the bouts',
      },
    ];
  if (tip.widthMm > greatest)
    return [
      {
        code: 'ribs.corner-stubby',
        weight: 'caution',
        at: 'cornerOverhang',
        found,
        need: `at most ${greatest.toFixed(1)} mm, three quarters of the plate's corner end`,
        remedy: 'lower the overhang at the corners, or raise the overhang along the bouts',
      },
    ];
  return [];
}

/**
 * The tightest bend of each rib, when it needs more than a hot iron.
 * Method: outer fibre strain t / (2R + t) for a rib of thickness t bent to the inside radius R.
 */
export function bendFindings(outerFace: HalfOutline, ribThicknessMm: number): Finding[] {
  const names = { lowerBout: 'lower rib', cBout: 'waist rib', upperBout: 'upper rib' } as const;
  return (Object.keys(names) as (keyof typeof names)[]).flatMap((section) => {
    const radiusMm = tightestMm(outerFace, section, ribThicknessMm);
    const strain = ribThicknessMm / (2 * radiusMm + ribThicknessMm);
    if (strain <= STRAIN_WITHOUT_STRAP) return [];
    const strapped = strain <= STRAIN_WITH_STRAP;
    return [
      {
        code: 'ribs.bend',
        weight: strapped ? 'remark' : 'caution',
        at: 'ribThickness',
        found: `the ${names[section]} bends to ${radiusMm.toFixed(1)} mm and stretches ${(100 * strain).toFixed(1)} % there`,
        need: strapped
          ? 'a strap of thin metal against the outside while bending'
          : 'less than 7 % even with a strap',
        remedy: strapped
          ? 'bend over a hot iron with a strap'
          : 'thin the rib at this place, or take a wider curve',
      } satisfies Finding,
    ];
  });
}

/** The smallest radius on the inside of a bend: the outer face of hollow arcs, the inner face of full ones. */
function tightestMm(outerFace: HalfOutline, section: keyof HalfOutline, ribThicknessMm: number): number {
  let tightest = Number.POSITIVE_INFINITY;
  for (const segment of segments(outerFace[section])) {
    const arc = arcOf(segment);
    if (arc === null) continue;
    tightest = Math.min(tightest, arc.sweepRad < 0 ? arc.radiusMm : arc.radiusMm - ribThicknessMm);
  }
  return tightest;
}
