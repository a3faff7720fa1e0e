import { cos, type Finding } from '../../base/index.ts';
import { arcOf, type Chain, segments } from '../../curve/index.ts';
import type { CornerTip } from '../outline/sectionLines.ts';
import type { CornerJoint } from './cornerJoint.ts';

/** Rib corners thinner than this many rib thicknesses run out to a feather; common practice. */
const LEAST_END_IN_THICKNESSES = 1.5;

/** Rib corners wider than this share of the plate's corner end look stubby; from memory. */
const GREATEST_END_SHARE = 0.75;

/** Stretch of the outer fibre that a hot iron alone brings about safely, and with a strap; from memory. */
export const STRETCH_WITHOUT_STRAP = 0.03;
export const STRETCH_WITH_STRAP = 0.07;

/** The thickness, mm, that a strap still brings round an inside radius. */
export function thicknessForBend(insideRadiusMm: number): number {
  return (2 * insideRadiusMm * STRETCH_WITH_STRAP) / (1 - STRETCH_WITH_STRAP);
}

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

/** Rib ends with no more than this many rib thicknesses of block between them are drawn together in the clamp; from memory. */
const CLOSES_IN_THICKNESSES = 2;

/** The corners where the block would show between the ends of the ribs, and what brings them together. */
export function blockShowsFindings(
  joints: Readonly<Record<'lower' | 'upper', CornerJoint>>,
  ribThicknessMm: number,
): Finding[] {
  return Object.values(joints)
    .filter(({ blockShowsMm }) => blockShowsMm > CLOSES_IN_THICKNESSES * ribThicknessMm)
    .map((joint) => ({
      code: 'ribs.block-shows',
      weight: 'remark',
      at: 'overhang',
      found: `the block shows ${joint.blockShowsMm.toFixed(1)} mm wide between the rib ends at the ${joint.which} corners`,
      need: 'ribs that meet on the tip of the block, or nearly',
      remedy: `raise the overhang along the bouts by ${overhangToMeet(joint).toFixed(1)} mm or lower the overhang at the corners`,
    }));
}

/** Beside a rib corner the plate stands out so many overhangs at most before its corner looks heavy; ours. */
const GREATEST_BESIDE = 1.75;

/** The corners where ribs are drawn together so far that the overhang is plainly uneven. */
export function drawnTogetherFindings(
  besideCornerMm: Readonly<Record<'lower' | 'upper', number>>,
  overhangMm: number,
): Finding[] {
  return (['lower', 'upper'] as const)
    .filter((which) => besideCornerMm[which] > GREATEST_BESIDE * overhangMm)
    .map((which) => ({
      code: 'ribs.drawn-together',
      weight: 'remark',
      at: 'overhang',
      found: `the ribs are drawn together over the ${which} corner blocks until the plate stands out ${besideCornerMm[which].toFixed(1)} mm beside them, ${overhangMm.toFixed(1)} mm along the bouts`,
      need: `at most ${(GREATEST_BESIDE * overhangMm).toFixed(1)} mm, or the corners look heavy`,
      remedy: 'raise the overhang along the bouts, make the corner ends narrower, or keep it',
    }));
}

/** mm by which the overhang along the bouts would have to grow for the ribs to meet on the tip of the block. */
export function overhangToMeet({
  blockShowsMm,
  openingRad,
}: Pick<CornerJoint, 'blockShowsMm' | 'openingRad'>): number {
  return (blockShowsMm / 2) * cos(openingRad / 2);
}

/** The tightest bend of a rib and what the wood has to bear there. */
export interface RibBend {
  /** Radius on the inside of the bend, mm. */
  readonly tightestMm: number;
  /** Stretch of the outer fibre, a ratio: t / (2R + t) for a rib of thickness t bent to the inside radius R. */
  readonly stretch: number;
  /** Whether the bend asks for a metal strap against its outside. */
  readonly needsStrap: boolean;
}

/** The tightest bend along a rib's outer face: full arcs bend round their inner face, hollow ones round the outer. */
export function ribBend(outerFace: Chain<'body'>, ribThicknessMm: number): RibBend {
  let tightestMm = Number.POSITIVE_INFINITY;
  for (const segment of segments(outerFace)) {
    const arc = arcOf(segment);
    if (arc === null) continue;
    tightestMm = Math.min(tightestMm, arc.sweepRad < 0 ? arc.radiusMm : arc.radiusMm - ribThicknessMm);
  }
  const stretch = ribThicknessMm / (2 * tightestMm + ribThicknessMm);
  return { tightestMm, stretch, needsStrap: stretch > STRETCH_WITHOUT_STRAP };
}

/** The ribs that no strap brings round their tightest bend safely. */
export function bendFindings(bends: readonly (readonly [name: string, bend: RibBend])[]): Finding[] {
  return bends
    .filter(([, { stretch }]) => stretch > STRETCH_WITH_STRAP)
    .map(([name, { tightestMm, stretch }]) => ({
      code: 'ribs.bend',
      weight: 'caution',
      at: 'ribThickness',
      found: `the ${name} bends to a radius of ${tightestMm.toFixed(1)} mm and stretches ${(100 * stretch).toFixed(1)} % there`,
      need: 'less than 7 %, even with a strap',
      remedy: `thin it to ${thicknessForBend(tightestMm).toFixed(1)} mm at this place, or take a wider curve`,
    }));
}
