import { arcOf, areaOf, type Chain, reverseChain, type Segment, segments } from '../curve/index.ts';
import type { Board } from '../solid/index.ts';
import { type StepEntities, stepEntities, stepNumber, stepText } from './stepEntities.ts';

/**
 * A board as a STEP file (ISO 10303-21, AP 214): one solid of exact faces, planes for its caps and straight sides and
 * cylinders for its arcs, in millimetres. The same board gives the same bytes.
 */
export function writeStep(title: string, board: Board): string {
  const file = stepEntities();
  const shell = closedShell(file, board);
  const solid = file.add(`MANIFOLD_SOLID_BREP(${stepText(title)},${shell})`);
  productOf(file, title, solid);
  return [
    'ISO-10303-21;',
    'HEADER;',
    `FILE_DESCRIPTION((${stepText(title)}),'2;1');`,
    `FILE_NAME(${stepText(title)},'',(''),(''),'','','');`,
    "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));",
    'ENDSEC;',
    'DATA;',
    ...file.lines,
    'ENDSEC;',
    'END-ISO-10303-21;',
    '',
  ].join('\n');
}

type Place = readonly [number, number, number];

function pointAt(file: StepEntities, place: Place): string {
  return file.add(`CARTESIAN_POINT('',(${place.map(stepNumber).join(',')}))`);
}

function direction(file: StepEntities, along: Place): string {
  return file.add(`DIRECTION('',(${along.map(stepNumber).join(',')}))`);
}

/** A place with an axis (up unless given) and a direction square to it. */
function axes(file: StepEntities, at: Place, axis: Place = [0, 0, 1], across: Place = [1, 0, 0]): string {
  return file.add(
    `AXIS2_PLACEMENT_3D('',${pointAt(file, at)},${direction(file, axis)},${direction(file, across)})`,
  );
}

/** The edges over one side of a loop, each with the vertex that it starts from. */
interface Wall {
  readonly bottom: string;
  readonly top: string;
  readonly upright: string;
  readonly face: (nextUpright: string) => string;
}

function closedShell(file: StepEntities, board: Board): string {
  const outer = areaOf(board.outer) < 0 ? reverseChain(board.outer) : board.outer;
  const holes = board.holes.map((hole) => (areaOf(hole) > 0 ? reverseChain(hole) : hole));
  const loops = [outer, ...holes].map((loop) => wallsOf(file, loop, board.fromZMm, board.toZMm));
  const sides = loops.flatMap((walls) =>
    walls.map((wall, index) => wall.face((walls[(index + 1) % walls.length] as Wall).upright)),
  );
  const top = cap(
    file,
    board.toZMm,
    '.T.',
    loops.map((walls) => walls.map(({ top }) => oriented(file, top, true))),
  );
  const below = loops.map((walls) => walls.toReversed().map(({ bottom }) => oriented(file, bottom, false)));
  const bottom = cap(file, board.fromZMm, '.F.', below);
  return file.add(`CLOSED_SHELL('',(${[...sides, top, bottom].join(',')}))`);
}

function cap(
  file: StepEntities,
  zMm: number,
  sense: '.T.' | '.F.',
  loops: readonly (readonly string[])[],
): string {
  const bounds = loops.map((edges, index) => {
    const loop = file.add(`EDGE_LOOP('',(${edges.join(',')}))`);
    return file.add(`${index === 0 ? 'FACE_OUTER_BOUND' : 'FACE_BOUND'}('',${loop},.T.)`);
  });
  const plane = file.add(`PLANE('',${axes(file, [0, 0, zMm])})`);
  return file.add(`ADVANCED_FACE('',(${bounds.join(',')}),${plane},${sense})`);
}

function oriented(file: StepEntities, edge: string, forward: boolean): string {
  return file.add(`ORIENTED_EDGE('',*,*,${edge},${forward ? '.T.' : '.F.'})`);
}

function wallsOf(file: StepEntities, loop: Chain<'body'>, fromZ: number, toZ: number): readonly Wall[] {
  const sides = segments(loop);
  const corners = sides.map(({ start: { x, y } }) => ({
    low: file.add(`VERTEX_POINT('',${pointAt(file, [x, y, fromZ])})`),
    high: file.add(`VERTEX_POINT('',${pointAt(file, [x, y, toZ])})`),
    x,
    y,
  }));
  return sides.map((side, index): Wall => {
    const from = corners[index] as (typeof corners)[number];
    const to = corners[(index + 1) % corners.length] as (typeof corners)[number];
    const bottom = edgeAlong(file, side, fromZ, from.low, to.low);
    const top = edgeAlong(file, side, toZ, from.high, to.high);
    const rise = lineFrom(file, [from.x, from.y, fromZ], [0, 0, 1]);
    const upright = file.add(`EDGE_CURVE('',${from.low},${from.high},${rise},.T.)`);
    const face = (nextUpright: string): string => {
      const round = [
        oriented(file, bottom, true),
        oriented(file, nextUpright, true),
        oriented(file, top, false),
        oriented(file, upright, false),
      ];
      const bound = file.add(`FACE_OUTER_BOUND('',${file.add(`EDGE_LOOP('',(${round.join(',')}))`)},.T.)`);
      const { surface, sense } = surfaceOver(file, side, fromZ);
      return file.add(`ADVANCED_FACE('',(${bound}),${surface},${sense})`);
    };
    return { bottom, top, upright, face };
  });
}

function lineFrom(file: StepEntities, at: Place, along: Place): string {
  const vector = file.add(`VECTOR('',${direction(file, along)},1.)`);
  return file.add(`LINE('',${pointAt(file, at)},${vector})`);
}

function edgeAlong(file: StepEntities, side: Segment<'body'>, z: number, from: string, to: string): string {
  const arc = arcOf(side);
  if (arc) {
    const circle = file.add(
      `CIRCLE('',${axes(file, [arc.centre.x, arc.centre.y, z])},${stepNumber(arc.radiusMm)})`,
    );
    return file.add(`EDGE_CURVE('',${from},${to},${circle},${side.bulge > 0 ? '.T.' : '.F.'})`);
  }
  const [x, y] = headingOf(side);
  const line = lineFrom(file, [side.start.x, side.start.y, z], [x, y, 0]);
  return file.add(`EDGE_CURVE('',${from},${to},${line},.T.)`);
}

/** What stands over a side: a cylinder whose outside looks away from its axis, or a plane that looks to the right. */
function surfaceOver(file: StepEntities, side: Segment<'body'>, z: number) {
  const arc = arcOf(side);
  if (arc) {
    const at = axes(file, [arc.centre.x, arc.centre.y, z]);
    const surface = file.add(`CYLINDRICAL_SURFACE('',${at},${stepNumber(arc.radiusMm)})`);
    return { surface, sense: side.bulge > 0 ? '.T.' : '.F.' } as const;
  }
  const [x, y] = headingOf(side);
  const surface = file.add(`PLANE('',${axes(file, [side.start.x, side.start.y, z], [y, -x, 0], [x, y, 0])})`);
  return { surface, sense: '.T.' } as const;
}

function headingOf({ start, end }: Segment<'body'>): readonly [number, number] {
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  return [(end.x - start.x) / length, (end.y - start.y) / length];
}

/** mm within which a reader may take places for one. */
const UNCERTAINTY = '1.E-06';

/** The entities that make a solid the shape of a product in millimetres. */
function productOf(file: StepEntities, title: string, solid: string): void {
  const { add } = file;
  const application = add("APPLICATION_CONTEXT('core data for automotive mechanical design processes')");
  add(`APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,${application})`);
  const context = add(`PRODUCT_CONTEXT('',${application},'mechanical')`);
  const product = add(`PRODUCT(${stepText(title)},${stepText(title)},'',(${context}))`);
  const formation = add(`PRODUCT_DEFINITION_FORMATION('','',${product})`);
  const stage = add(`PRODUCT_DEFINITION_CONTEXT('part definition',${application},'design')`);
  const definition = add(`PRODUCT_DEFINITION('design','',${formation},${stage})`);
  const shape = add(`PRODUCT_DEFINITION_SHAPE('','',${definition})`);
  const length = add('(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))');
  const angle = add('(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))');
  const solidAngle = add('(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())');
  const uncertainty = add(
    `UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(${UNCERTAINTY}),${length},'distance_accuracy_value','')`,
  );
  const space = add(
    `(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((${uncertainty}))GLOBAL_UNIT_ASSIGNED_CONTEXT((${length},${angle},${solidAngle}))REPRESENTATION_CONTEXT('',''))`,
  );
  const brep = add(
    `ADVANCED_BREP_SHAPE_REPRESENTATION(${stepText(title)},(${axes(file, [0, 0, 0])},${solid}),${space})`,
  );
  add(`SHAPE_DEFINITION_REPRESENTATION(${shape},${brep})`);
}
