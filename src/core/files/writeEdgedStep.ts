import type { Point } from '../base/index.ts';
import { arcOf, headingOn, type Segment, segments } from '../curve/index.ts';
import type { EdgedShape, HollowedShape } from '../solid/index.ts';
import { patchBorder, type SpacePlace } from '../surface/index.ts';
import { type StepEntities, stepNumber } from './stepEntities.ts';
import { stepFile } from './stepFile.ts';
import { stepAxes, stepFace, stepLevelFace, stepOriented, stepVertex } from './stepGeometry.ts';
import { stepHollow } from './stepHollow.ts';
import { stepSpaceCurve, stepSplinePatch, stepSplineSurface } from './stepSplines.ts';
import { type StepWalls, stepEdgeAlong, stepWalls } from './stepWalls.ts';

/** mm within which a reader may take places for one: the edges of the faces keep to it. */
const UNCERTAINTY = '5.E-04';

/**
 * The finished outside of a plate over its gluing face, flat below or with its hollow, as a STEP file (ISO 10303-21, AP 214): one
 * solid. Walls, gluing face and the round of the edge are exact planes, cylinders and tori; scoop and arch, ramp and floor of the
 * hollow bicubic B-spline surfaces, in millimetres.
 */
export function writeEdgedStep(title: string, shape: EdgedShape, hollow?: HollowedShape): string {
  return stepFile(title, UNCERTAINTY, (file) => {
    const { outline, edgeHeightMm, crestInsetMm } = shape;
    const walls = stepWalls(file, outline, 0, edgeHeightMm - crestInsetMm, 'outer');
    const crest = crestEdges(file, shape);
    const rounds = roundFaces(file, shape, walls, crest);
    const { scoops, channel } = scoopFaces(file, shape, crest);
    const dome = stepFace(file, stepSplineSurface(file, shape.arch), '.T.', [channel]);
    const { faces, borders } = hollow ? stepHollow(file, hollow) : { faces: [], borders: [] };
    const gluing = stepLevelFace(file, 0, '.F.', [walls.bottomLoop, ...borders]);
    const skin = [...walls.faces, ...rounds, ...scoops, dome, gluing, ...faces];
    return file.add(`CLOSED_SHELL('',(${skin.join(',')}))`);
  });
}

interface CrestEdge {
  readonly vertex: string;
  readonly edge: string;
}

/** The crest over each side of the outline, with the vertex that it starts from. */
function crestEdges(file: StepEntities, { outline, crest, edgeHeightMm }: EdgedShape): readonly CrestEdge[] {
  const sides = crestSides(outline, crest);
  const vertices = crest.map(({ x, y }) => stepVertex(file, [x, y, edgeHeightMm]));
  return sides.map((side, k) => {
    const [vertex, next] = [vertices[k] as string, vertices[(k + 1) % vertices.length] as string];
    return { vertex, edge: stepEdgeAlong(file, side, edgeHeightMm, vertex, next) };
  });
}

/** The sides of the crest: about the same centres as those of the outline. */
function crestSides(
  outline: EdgedShape['outline'],
  crest: readonly Point<'body'>[],
): readonly Segment<'body'>[] {
  return segments(outline).map((side, k) => {
    const [start, end] = [crest[k] as Point<'body'>, crest[(k + 1) % crest.length] as Point<'body'>];
    const arc = arcOf(side);
    if (!arc) return { start, end, bulge: 0 };
    const { x, y } = arc.centre;
    const [fromX, fromY, toX, toY] = [start.x - x, start.y - y, end.x - x, end.y - y];
    const sweep = Math.atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
    return { start, end, bulge: Math.tan(sweep / 4) };
  });
}

/** The round between wall and crest, a face over each side of the outline. */
function roundFaces(
  file: StepEntities,
  shape: EdgedShape,
  { tops }: StepWalls,
  crest: readonly CrestEdge[],
): readonly string[] {
  const sides = segments(shape.outline);
  const seams = sides.map((side, k) => {
    const [low, high] = [tops[k]?.vertex as string, crest[k]?.vertex as string];
    return file.add(`EDGE_CURVE('',${low},${high},${seamCurve(file, shape, side, k)},.T.)`);
  });
  return sides.map((side, k) => {
    const next = seams[(k + 1) % seams.length] as string;
    const loop = [
      stepOriented(file, tops[k]?.edge as string, true),
      stepOriented(file, next, true),
      stepOriented(file, crest[k]?.edge as string, false),
      stepOriented(file, seams[k] as string, false),
    ];
    return stepFace(file, roundSurface(file, shape, side), '.T.', [loop]);
  });
}

/** From the wall up to the crest at a vertex: a quarter circle square to the edge, or in a corner the curve over its mitre. */
function seamCurve(file: StepEntities, shape: EdgedShape, side: Segment<'body'>, k: number): string {
  const { edgeHeightMm, crestInsetMm } = shape;
  const mitre = shape.mitres[k];
  if (mitre) return stepSpaceCurve(file, mitre);
  const inside = shape.crest[k] as Point<'body'>;
  const heading = headingOn(side, 0);
  // Turns up out of the wall about the direction of travel.
  const axis: SpacePlace = [-Math.cos(heading), -Math.sin(heading), 0];
  const outward: SpacePlace = [Math.sin(heading), -Math.cos(heading), 0];
  const place = stepAxes(file, [inside.x, inside.y, edgeHeightMm - crestInsetMm], axis, outward);
  return file.add(`CIRCLE('',${place},${stepNumber(crestInsetMm)})`);
}

function roundSurface(file: StepEntities, { edgeHeightMm, crestInsetMm }: EdgedShape, side: Segment<'body'>) {
  const zMm = edgeHeightMm - crestInsetMm;
  const radius = stepNumber(crestInsetMm);
  const arc = arcOf(side);
  if (arc) {
    const { x, y } = arc.centre;
    const major = arc.radiusMm - Math.sign(arc.sweepRad) * crestInsetMm;
    return file.add(`TOROIDAL_SURFACE('',${stepAxes(file, [x, y, zMm])},${stepNumber(major)},${radius})`);
  }
  const heading = headingOn(side, 0);
  const [alongX, alongY] = [Math.cos(heading), Math.sin(heading)];
  const at: SpacePlace = [side.start.x - crestInsetMm * alongY, side.start.y + crestInsetMm * alongX, zMm];
  const place = stepAxes(file, at, [alongX, alongY, 0], [0, 0, 1]);
  return file.add(`CYLINDRICAL_SURFACE('',${place},${radius})`);
}

/** The scoop from corner to corner, and the loop of its edges along the channel as the arch inside runs along them. */
function scoopFaces(file: StepEntities, { scoops }: EdgedShape, crest: readonly CrestEdge[]) {
  const sides = scoops.map(({ patch, fromVertex }) => {
    const side = patchBorder(patch, 'vStart');
    const vertex = stepVertex(file, side.coefficients[0] as SpacePlace);
    const curve = stepSpaceCurve(file, side);
    return {
      vertex,
      edge: file.add(`EDGE_CURVE('',${vertex},${crest[fromVertex]?.vertex},${curve},.T.)`),
    };
  });
  const channelEdges = scoops.map(({ patch }, index) => {
    const next = sides[(index + 1) % sides.length]?.vertex;
    const curve = stepSpaceCurve(file, patchBorder(patch, 'uStart'));
    return file.add(`EDGE_CURVE('',${sides[index]?.vertex},${next},${curve},.T.)`);
  });
  const faces = scoops.map(({ patch, fromVertex, toVertex }, index) => {
    const along: string[] = [];
    for (let k = fromVertex; k !== toVertex; k = (k + 1) % crest.length)
      along.push(stepOriented(file, crest[k]?.edge as string, true));
    const loop = [
      ...along,
      stepOriented(file, sides[(index + 1) % sides.length]?.edge as string, false),
      stepOriented(file, channelEdges[index] as string, false),
      stepOriented(file, sides[index]?.edge as string, true),
    ];
    return stepFace(file, stepSplinePatch(file, patch), '.T.', [loop]);
  });
  return { scoops: faces, channel: channelEdges.map((edge) => stepOriented(file, edge, true)) };
}
