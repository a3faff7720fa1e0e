import { segments } from '../curve/index.ts';
import type { HollowedShape } from '../solid/index.ts';
import { patchBorder, type SpacePlace } from '../surface/index.ts';
import type { StepEntities } from './stepEntities.ts';
import { stepFace, stepOriented, stepVertex } from './stepGeometry.ts';
import { stepSpaceCurve, stepSplinePatch, stepSplineSurface } from './stepSplines.ts';
import { stepEdgeAlong } from './stepWalls.ts';

/** The faces of a hollow, and the loop of its border as the gluing face round it runs along it. */
export interface StepHollow {
  readonly faces: readonly string[];
  readonly borders: readonly (readonly string[])[];
}

/** The ramp of a hollow, a face over each side of its border, and its floor; all of them look down, out of the wood. */
export function stepHollow(file: StepEntities, { border, ramps, floor }: HollowedShape): StepHollow {
  const sides = segments(border);
  const after = (k: number): number => (k + 1) % sides.length;
  const lines = ramps.map((ramp) => patchBorder(ramp, 'vStart'));
  const high = lines.map(({ coefficients }) => stepVertex(file, coefficients.at(-1) as SpacePlace));
  const low = sides.map(({ start }) => stepVertex(file, [start.x, start.y, 0]));
  const downs = lines.map((line, k) =>
    file.add(`EDGE_CURVE('',${low[k]},${high[k]},${stepSpaceCurve(file, line)},.T.)`),
  );
  const borderEdges = sides.map((side, k) =>
    stepEdgeAlong(file, side, 0, low[k] as string, low[after(k)] as string),
  );
  const feet = ramps.map((ramp, k) => {
    const curve = stepSpaceCurve(file, patchBorder(ramp, 'uEnd'));
    return file.add(`EDGE_CURVE('',${high[k]},${high[after(k)]},${curve},.T.)`);
  });
  const faces = ramps.map((ramp, k) =>
    stepFace(file, stepSplinePatch(file, ramp), '.T.', [
      [
        stepOriented(file, borderEdges[k] as string, false),
        stepOriented(file, downs[k] as string, true),
        stepOriented(file, feet[k] as string, true),
        stepOriented(file, downs[after(k)] as string, false),
      ],
    ]),
  );
  const round = feet.toReversed().map((edge) => stepOriented(file, edge, false));
  return {
    faces: [...faces, stepFace(file, stepSplineSurface(file, floor), '.F.', [round])],
    borders: [borderEdges.map((edge) => stepOriented(file, edge, true))],
  };
}
