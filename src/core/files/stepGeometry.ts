import { type StepEntities, stepNumber } from './stepEntities.ts';

/** A place or direction in space, mm. */
export type StepPlace = readonly [number, number, number];

export function stepPoint(file: StepEntities, place: StepPlace): string {
  return file.add(`CARTESIAN_POINT('',(${place.map(stepNumber).join(',')}))`);
}

export function stepVertex(file: StepEntities, place: StepPlace): string {
  return file.add(`VERTEX_POINT('',${stepPoint(file, place)})`);
}

function stepDirection(file: StepEntities, along: StepPlace): string {
  return file.add(`DIRECTION('',(${along.map(stepNumber).join(',')}))`);
}

/** A place with an axis (up unless given) and a direction square to it. */
export function stepAxes(
  file: StepEntities,
  at: StepPlace,
  axis: StepPlace = [0, 0, 1],
  across: StepPlace = [1, 0, 0],
): string {
  return file.add(
    `AXIS2_PLACEMENT_3D('',${stepPoint(file, at)},${stepDirection(file, axis)},${stepDirection(file, across)})`,
  );
}

export function stepLine(file: StepEntities, at: StepPlace, along: StepPlace): string {
  const vector = file.add(`VECTOR('',${stepDirection(file, along)},1.)`);
  return file.add(`LINE('',${stepPoint(file, at)},${vector})`);
}

/** An edge as a loop runs along it: as it was laid, or the other way. */
export function stepOriented(file: StepEntities, edge: string, forward: boolean): string {
  return file.add(`ORIENTED_EDGE('',*,*,${edge},${forward ? '.T.' : '.F.'})`);
}

/** A face of a surface inside loops of oriented edges, the outermost first; `sense` is .T. where it looks as the surface does. */
export function stepFace(
  file: StepEntities,
  surface: string,
  sense: '.T.' | '.F.',
  loops: readonly (readonly string[])[],
): string {
  const bounds = loops.map((edges, index) => {
    const loop = file.add(`EDGE_LOOP('',(${edges.join(',')}))`);
    return file.add(`${index === 0 ? 'FACE_OUTER_BOUND' : 'FACE_BOUND'}('',${loop},.T.)`);
  });
  return file.add(`ADVANCED_FACE('',(${bounds.join(',')}),${surface},${sense})`);
}

/** A level face, `.T.` looking up and `.F.` looking down. */
export function stepLevelFace(
  file: StepEntities,
  zMm: number,
  sense: '.T.' | '.F.',
  loops: readonly (readonly string[])[],
): string {
  return stepFace(file, file.add(`PLANE('',${stepAxes(file, [0, 0, zMm])})`), sense, loops);
}
