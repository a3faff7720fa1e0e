import { type Point, point } from '../base/index.ts';
import type { ArchedShape } from '../solid/index.ts';
import type { SplineCurve } from '../surface/index.ts';
import type { StepEntities } from './stepEntities.ts';
import { stepFile } from './stepFile.ts';
import { stepFace, stepLevelFace, stepOriented, stepVertex } from './stepGeometry.ts';
import { stepSplineCurve, stepSplineSurface } from './stepSplines.ts';
import { stepWalls } from './stepWalls.ts';

/** mm within which a reader may take places for one: the edges of the faces keep to it. */
const UNCERTAINTY = '1.E-04';

/**
 * An arched plate as a STEP file (ISO 10303-21, AP 214): one solid, its walls and level faces exact planes and cylinders, its
 * arch one bicubic B-spline surface whose parameters are x and y, in millimetres. The same shape gives the same bytes.
 */
export function writePlateStep(title: string, shape: ArchedShape): string {
  const { outline, edgeHeightMm, arch, crease } = shape;
  return stepFile(title, UNCERTAINTY, (file) => {
    const walls = stepWalls(file, outline, 0, edgeHeightMm, 'outer');
    const { inside, outside } = rimLoops(file, crease, edgeHeightMm);
    const dome = stepFace(file, stepSplineSurface(file, arch), '.T.', [inside]);
    const edge = stepLevelFace(file, edgeHeightMm, '.T.', [walls.topLoop, outside]);
    const gluing = stepLevelFace(file, 0, '.F.', [walls.bottomLoop]);
    return file.add(`CLOSED_SHELL('',(${[...walls.faces, edge, dome, gluing].join(',')}))`);
  });
}

/** The edges along a line and its mirror image, as the face within runs along them and as the one round it does. */
function rimLoops(file: StepEntities, treble: readonly SplineCurve<'body'>[], zMm: number) {
  const starts = treble.map(({ coefficients }) => coefficients[0] as Point<'body'>);
  const last = treble.at(-1)?.coefficients.at(-1) as Point<'body'>;
  const vertexAt = (side: 1 | -1, { x, y }: Point<'body'>): string => stepVertex(file, [side * x, y, zMm]);
  const [lower, ...between] = starts as [Point<'body'>, ...Point<'body'>[]];
  // Both halves share their ends on the centre line.
  const [lowest, highest] = [vertexAt(1, lower), vertexAt(1, last)];
  const ends = (side: 1 | -1): readonly string[] => [
    lowest,
    ...between.map((place) => vertexAt(side, place)),
    highest,
  ];
  const edges = (side: 1 | -1): readonly string[] => {
    const vertices = ends(side);
    return treble.map(({ knots, coefficients }, at) => {
      const curve = { knots, coefficients: coefficients.map(({ x, y }) => point<'body'>(side * x, y)) };
      return file.add(
        `EDGE_CURVE('',${vertices[at]},${vertices[at + 1]},${stepSplineCurve(file, curve, zMm)},.T.)`,
      );
    });
  };
  const [trebleEdges, bassEdges] = [edges(1), edges(-1)];
  const run = (edge: readonly string[], forward: boolean): readonly string[] =>
    (forward ? edge : edge.toReversed()).map((one) => stepOriented(file, one, forward));
  return {
    inside: [...run(trebleEdges, true), ...run(bassEdges, false)],
    outside: [...run(bassEdges, true), ...run(trebleEdges, false)],
  };
}
