import { atan2, cos, type Point, sin, tan } from '../base/index.ts';
import { arcOf, headingOn, type Segment, segments } from '../curve/index.ts';
import type { EdgedShape, HollowedShape, UnderRound } from '../solid/index.ts';
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
 * The finished outside of a plate over its gluing face, flat below or with its hollow, its edge square below or rounded, as a STEP
 * file (ISO 10303-21, AP 214): one solid. Walls, gluing face and the rounds of the edge are exact planes, cylinders and tori; scoop
 * and arch, ramp and floor of the hollow bicubic B-spline surfaces, in millimetres.
 */
export function writeEdgedStep(
  title: string,
  shape: EdgedShape,
  hollow?: HollowedShape,
  under?: UnderRound,
): string {
  return stepFile(title, UNCERTAINTY, (file) => {
    const { outline, edgeHeightMm, crestInsetMm } = shape;
    const walls = stepWalls(file, outline, under?.radiusMm ?? 0, edgeHeightMm - crestInsetMm, 'outer');
    const crest = lineEdges(file, outline, shape.crest, edgeHeightMm);
    const above: StepRound = {
      radiusMm: crestInsetMm,
      axisMm: edgeHeightMm - crestInsetMm,
      places: shape.crest,
      mitres: shape.mitres,
      low: walls.tops,
      high: crest,
    };
    const rounds = roundFaces(file, outline, above);
    const { scoops, channel } = scoopFaces(file, shape, crest);
    const dome = stepFace(file, stepSplineSurface(file, shape.arch), '.T.', [channel]);
    const { faces, borders } = hollow ? stepHollow(file, hollow) : { faces: [], borders: [] };
    const below = under ? underFaces(file, outline, under, walls) : { faces: [], loop: walls.bottomLoop };
    const gluing = stepLevelFace(file, 0, '.F.', [below.loop, ...borders]);
    const skin = [...walls.faces, ...below.faces, ...rounds, ...scoops, dome, gluing, ...faces];
    return file.add(`CLOSED_SHELL('',(${skin.join(',')}))`);
  });
}

/** The round below the edge, and the loop of its foot as the gluing face inside runs along it. */
function underFaces(file: StepEntities, outline: EdgedShape['outline'], under: UnderRound, walls: StepWalls) {
  const { radiusMm, places, mitres } = under;
  const foot = lineEdges(file, outline, places, 0);
  const round: StepRound = { radiusMm, axisMm: radiusMm, places, mitres, low: foot, high: walls.bottoms };
  return {
    faces: roundFaces(file, outline, round),
    loop: foot.toReversed().map(({ edge }) => stepOriented(file, edge, false)),
  };
}

interface CrestEdge {
  readonly vertex: string;
  readonly edge: string;
}

/** A level line inside each side of the outline, crest or foot, with the vertices that its edges start from. */
function lineEdges(
  file: StepEntities,
  outline: EdgedShape['outline'],
  places: readonly Point<'body'>[],
  zMm: number,
): readonly CrestEdge[] {
  const sides = crestSides(outline, places);
  const vertices = places.map(({ x, y }) => stepVertex(file, [x, y, zMm]));
  return sides.map((side, k) => {
    const [vertex, next] = [vertices[k] as string, vertices[(k + 1) % vertices.length] as string];
    return { vertex, edge: stepEdgeAlong(file, side, zMm, vertex, next) };
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
    const sweep = atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
    return { start, end, bulge: tan(sweep / 4) };
  });
}

/** A round of the edge: a quarter circle between the wall and a level line inside it, whose edges are those below and above it. */
interface StepRound {
  readonly radiusMm: number;
  /** Height of its middle. */
  readonly axisMm: number;
  readonly places: readonly Point<'body'>[];
  readonly mitres: EdgedShape['mitres'];
  readonly low: readonly CrestEdge[];
  readonly high: readonly CrestEdge[];
}

/** A round, a face over each side of the outline. */
function roundFaces(file: StepEntities, outline: EdgedShape['outline'], round: StepRound): readonly string[] {
  const sides = segments(outline);
  const seams = sides.map((side, k) => {
    const [low, high] = [round.low[k]?.vertex as string, round.high[k]?.vertex as string];
    return file.add(`EDGE_CURVE('',${low},${high},${seamCurve(file, round, side, k)},.T.)`);
  });
  return sides.map((side, k) => {
    const next = seams[(k + 1) % seams.length] as string;
    const loop = [
      stepOriented(file, round.low[k]?.edge as string, true),
      stepOriented(file, next, true),
      stepOriented(file, round.high[k]?.edge as string, false),
      stepOriented(file, seams[k] as string, false),
    ];
    return stepFace(file, roundSurface(file, round, side), '.T.', [loop]);
  });
}

/** Up a round at a vertex: a quarter circle square to the edge, or in a corner the curve over its mitre. */
function seamCurve(file: StepEntities, round: StepRound, side: Segment<'body'>, k: number): string {
  const mitre = round.mitres[k];
  if (mitre) return stepSpaceCurve(file, mitre);
  const inside = round.places[k] as Point<'body'>;
  const heading = headingOn(side, 0);
  // Turns up out of the wall, or up into it, about the direction of travel.
  const axis: SpacePlace = [-cos(heading), -sin(heading), 0];
  const outward: SpacePlace = [sin(heading), -cos(heading), 0];
  const place = stepAxes(file, [inside.x, inside.y, round.axisMm], axis, outward);
  return file.add(`CIRCLE('',${place},${stepNumber(round.radiusMm)})`);
}

function roundSurface(file: StepEntities, { radiusMm, axisMm }: StepRound, side: Segment<'body'>): string {
  const radius = stepNumber(radiusMm);
  const arc = arcOf(side);
  if (arc) {
    const { x, y } = arc.centre;
    const major = arc.radiusMm - Math.sign(arc.sweepRad) * radiusMm;
    return file.add(`TOROIDAL_SURFACE('',${stepAxes(file, [x, y, axisMm])},${stepNumber(major)},${radius})`);
  }
  const heading = headingOn(side, 0);
  const [alongX, alongY] = [cos(heading), sin(heading)];
  const at: SpacePlace = [side.start.x - radiusMm * alongY, side.start.y + radiusMm * alongX, axisMm];
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
