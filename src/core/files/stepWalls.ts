import { distanceBetween } from '../base/index.ts';
import { arcOf, areaOf, type Chain, reverseChain, type Segment, segments } from '../curve/index.ts';
import { type StepEntities, stepNumber } from './stepEntities.ts';
import { stepAxes, stepFace, stepLine, stepOriented, stepVertex } from './stepGeometry.ts';

/** The upright walls along a closed line, and the loops of edges in which the level faces above and below meet them. */
export interface StepWalls {
  readonly faces: readonly string[];
  readonly topLoop: readonly string[];
  readonly bottomLoop: readonly string[];
  /** The upper edge over each side and the vertex that it starts from, as the walls run: round an outer line anticlockwise. */
  readonly tops: readonly { readonly edge: string; readonly vertex: string }[];
  /** The same of the lower edge. */
  readonly bottoms: readonly { readonly edge: string; readonly vertex: string }[];
}

/**
 * Walls along a line from one height to another: planes over its straight sides, cylinders over its arcs, looking away from
 * what they enclose, or, along a hole, into it. Any turn of the line will do.
 */
export function stepWalls(
  file: StepEntities,
  line: Chain<'body'>,
  fromZMm: number,
  toZMm: number,
  kind: 'outer' | 'hole',
): StepWalls {
  const runsAnticlockwise = areaOf(line) > 0;
  const loop = runsAnticlockwise === (kind === 'outer') ? line : reverseChain(line);
  const walls = wallsOf(file, loop, fromZMm, toZMm);
  return {
    faces: walls.map((wall, index) => wall.face((walls[(index + 1) % walls.length] as Wall).upright)),
    topLoop: walls.map(({ top }) => stepOriented(file, top, true)),
    tops: walls.map(({ top, high }) => ({ edge: top, vertex: high })),
    bottoms: walls.map(({ bottom, low }) => ({ edge: bottom, vertex: low })),
    bottomLoop: walls.toReversed().map(({ bottom }) => stepOriented(file, bottom, false)),
  };
}

/** The edges over one side of a loop, each with the vertex that it starts from. */
interface Wall {
  readonly bottom: string;
  readonly top: string;
  readonly high: string;
  readonly low: string;
  readonly upright: string;
  readonly face: (nextUpright: string) => string;
}

function wallsOf(file: StepEntities, loop: Chain<'body'>, fromZ: number, toZ: number): readonly Wall[] {
  const sides = segments(loop);
  const corners = sides.map(({ start: { x, y } }) => ({
    low: stepVertex(file, [x, y, fromZ]),
    high: stepVertex(file, [x, y, toZ]),
    x,
    y,
  }));
  return sides.map((side, index): Wall => {
    const from = corners[index] as (typeof corners)[number];
    const to = corners[(index + 1) % corners.length] as (typeof corners)[number];
    const bottom = stepEdgeAlong(file, side, fromZ, from.low, to.low);
    const top = stepEdgeAlong(file, side, toZ, from.high, to.high);
    const rise = stepLine(file, [from.x, from.y, fromZ], [0, 0, 1]);
    const upright = file.add(`EDGE_CURVE('',${from.low},${from.high},${rise},.T.)`);
    const face = (nextUpright: string): string => {
      const round = [
        stepOriented(file, bottom, true),
        stepOriented(file, nextUpright, true),
        stepOriented(file, top, false),
        stepOriented(file, upright, false),
      ];
      const { surface, sense } = surfaceOver(file, side, fromZ);
      return stepFace(file, surface, sense, [round]);
    };
    return { bottom, top, high: from.high, low: from.low, upright, face };
  });
}

/** The edge along an arc or line at a height, between two vertices. */
export function stepEdgeAlong(
  file: StepEntities,
  side: Segment<'body'>,
  z: number,
  from: string,
  to: string,
): string {
  const arc = arcOf(side);
  if (arc) {
    const circle = file.add(
      `CIRCLE('',${stepAxes(file, [arc.centre.x, arc.centre.y, z])},${stepNumber(arc.radiusMm)})`,
    );
    return file.add(`EDGE_CURVE('',${from},${to},${circle},${side.bulge > 0 ? '.T.' : '.F.'})`);
  }
  const [x, y] = headingOf(side);
  const line = stepLine(file, [side.start.x, side.start.y, z], [x, y, 0]);
  return file.add(`EDGE_CURVE('',${from},${to},${line},.T.)`);
}

/** What stands over a side: a cylinder whose outside looks away from its axis, or a plane that looks to the right. */
function surfaceOver(file: StepEntities, side: Segment<'body'>, z: number) {
  const arc = arcOf(side);
  if (arc) {
    const at = stepAxes(file, [arc.centre.x, arc.centre.y, z]);
    const surface = file.add(`CYLINDRICAL_SURFACE('',${at},${stepNumber(arc.radiusMm)})`);
    return { surface, sense: side.bulge > 0 ? '.T.' : '.F.' } as const;
  }
  const [x, y] = headingOf(side);
  const surface = file.add(
    `PLANE('',${stepAxes(file, [side.start.x, side.start.y, z], [y, -x, 0], [x, y, 0])})`,
  );
  return { surface, sense: '.T.' } as const;
}

function headingOf({ start, end }: Segment<'body'>): readonly [number, number] {
  const length = distanceBetween(start, end);
  return [(end.x - start.x) / length, (end.y - start.y) / length];
}
