import type { CornerJoint, EndpinHole, RibLines } from '../instrument/index.ts';

import { GLUE_CAUTION } from './glueCaution.ts';

/** What stands beside every sheet of a rib or a lining. */
export const RIB_CAUTIONS = [
  'A bending iron burns wood and skin: wet the rib, try the heat on waste, keep fingers off the inside of the bend, let it cool before it is touched or left. Steam scalds. Follow the manual of the iron.',
  'Thin strips split under plane and knife: plane them on a board against a stop, cut with both hands behind the edge.',
  GLUE_CAUTION,
];

/** In which order the ribs go on, and how their ends are trimmed at the corners. */
export function ribJointNote({ joints, choice, besideCornerMm }: RibLines): string {
  const { bout, waist } = joints.lower.bevelRad;
  const order = {
    'bouts-over': `Glue the waist ribs first, their ends running past the corners. Pare each end flush with the face of the block on the bout side, so that it is bevelled by ${degrees(waist)} and runs out to an edge; the upper and lower ribs go over it, and all is trimmed to the end of the rib corner.`,
    'waist-over': `Glue the upper and lower ribs first, their ends running past the corners. Pare each end flush with the face of the block on the waist side, so that it is bevelled by ${degrees(bout)} and runs out to an edge; the waist ribs go over it, and all is trimmed to the end of the rib corner.`,
    mitred: `Both ribs run past the corner and are bevelled by ${degrees(waist)} each, half the opening of the corner, until they close on each other over the tip of the block; then both are trimmed to the end of the rib corner.`,
  }[choice.joint];
  const { lower, upper } = besideCornerMm;
  const beside = ` Beside the rib corners the plate stands out ${lower.toFixed(1)} mm below and ${upper.toFixed(1)} mm above: draw the edge there with the corner templates, not with the overhang marker.`;
  return `${order}${showing(joints)}${beside}`;
}

/** How the hole for the end button is made. */
export function endpinNote({ diameterMm, insideMm, drillMm }: EndpinHole): string {
  const mm = (value: number): string => `${Number(value.toFixed(1))} mm`;
  return `The hole of the end button is made when the body is closed: drill ${mm(drillMm)} from outside, square to the ribs and level with the plates, the ribs backed up with tape or a block so that they do not splinter; then ream with the reamer of the pin, turning only forward, to ${mm(diameterMm)} at the ribs (${mm(insideMm)} inside). Clamp the body in padding, eyes protected, hands clear of the drill.`;
}

function showing({ lower, upper }: RibLines['joints']): string {
  const shown = (joint: CornerJoint): string =>
    `${joint.blockShowsMm.toFixed(1)} mm at the ${joint.which} corners`;
  const corners = [lower, upper].filter(({ blockShowsMm }) => blockShowsMm > 0);
  if (corners.length === 0) return '';
  return ` As drawn the block reaches the end of the corner and shows between the ribs, ${corners.map(shown).join(' and ')}: pare its tip back by as much and draw the ends together in the clamp, or leave it.`;
}

function degrees(rad: number): string {
  return `${((rad * 180) / Math.PI).toFixed(0)}°`;
}
