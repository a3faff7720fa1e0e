import type { Fault, Finding } from '../../base/index.ts';

/** mm. A cello on its back reaches some 150 mm (ribs, both edges, the arch it lies on: common practice). */
const HIGHEST_MM = 200;
/** Shares of the body length. Ribs and edges of the family lie near 0.1, a cello's near 0.2 (common practice). */
const USUAL_LEAST = 0.05;
const USUAL_MOST = 0.25;

/** Why a height of the edge above the sheet can be none. Fault: `trace.edge-height-absurd`. */
export function edgeHeightFaults(heightMm: number | undefined): readonly Fault[] {
  if (heightMm === undefined || (heightMm >= 0 && heightMm <= HIGHEST_MM)) return [];
  return [
    {
      code: 'trace.edge-height-absurd',
      at: '--edge-height',
      found: `an edge ${heightMm} mm above the sheet`,
      need: `a height between 0 and ${HIGHEST_MM} mm`,
      remedy:
        'measure from the sheet up to the middle of the edge of the plate that faces the camera, in millimetres',
    },
  ];
}

/** A height that no whole instrument of this length has: a slip of unit, or a plate alone. Finding: `trace.edge-height-unusual`. */
export function edgeHeightFindings(heightMm: number | undefined, bodyLengthMm: number): readonly Finding[] {
  if (heightMm === undefined) return [];
  const [least, most] = [USUAL_LEAST * bodyLengthMm, USUAL_MOST * bodyLengthMm];
  if (heightMm >= least && heightMm <= most) return [];
  return [
    {
      weight: 'caution',
      code: 'trace.edge-height-unusual',
      at: '--edge-height',
      found: `${heightMm} mm for a body that then is ${bodyLengthMm.toFixed(0)} mm long`,
      need: `${least.toFixed(0)} to ${most.toFixed(0)} mm where a whole instrument lies on the sheet`,
      remedy: 'look at the unit and measure again; leave it so only if a plate alone lies there',
    },
  ];
}
