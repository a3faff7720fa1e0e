import type { Finding } from '../../base/index.ts';
import { STRETCH_WITH_STRAP, thicknessForBend } from '../ribs/ribFindings.ts';
import type { LiningParts } from './lining.ts';

/** What is to be said of linings that can be made all the same. */
export function liningFindings(
  { lower, waist, upper, mortises, choice }: Omit<LiningParts, 'findings'>,
  letInMm: number,
): Finding[] {
  const short = mortises
    .filter(({ reachMm }) => reachMm < letInMm)
    .map(
      ({ block, side, reachMm }): Finding => ({
        code: 'linings.mortise-short',
        weight: 'remark',
        at: 'liningLetIn',
        found: `room for ${reachMm.toFixed(1)} mm of lining in the ${block} corner block on the ${side} side`,
        need: `${letInMm.toFixed(1)} mm, with wood left before the corner`,
        remedy: 'let the linings in less far, or make the corner block longer',
      }),
    );
  // Kerfs let a lining round any bend.
  const bends = choice.linings === 'kerfed' ? [] : [lower, waist, upper];
  return [
    ...short,
    ...bends
      .filter(({ bend }) => bend.stretch > STRETCH_WITH_STRAP)
      .map(
        ({ name, bend }): Finding => ({
          code: 'linings.bend',
          weight: 'remark',
          at: 'liningThickness',
          found: `the ${name} lining bends to a radius of ${bend.tightestMm.toFixed(1)} mm and stretches ${(100 * bend.stretch).toFixed(1)} % there`,
          need: 'less than 7 %, even with a strap',
          remedy: `thin it to ${thicknessForBend(bend.tightestMm).toFixed(1)} mm at this place, or take kerfed linings`,
        }),
      ),
  ];
}
