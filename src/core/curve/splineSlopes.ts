import { type ArcSpline, arcCount, nodesOf, reachByCurvature } from './arcSpline.ts';

/** How one node of a spline moves and turns with each number of the spline. */
export interface NodeSlopes {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly headingRad: Float64Array;
}

/** The slopes of every node, the end included. Method: each node moves with the one before and its arc's own change. */
export function slopesOf(spline: ArcSpline): readonly NodeSlopes[] {
  const nodes = nodesOf(spline);
  const row = () => new Float64Array(spline.length);
  const first: NodeSlopes = { x: row(), y: row(), headingRad: row() };
  first.x[0] = 1;
  first.y[1] = 1;
  first.headingRad[2] = 1;
  const slopes = [first];
  for (let arc = 0; arc < arcCount(spline); arc++) {
    const before = slopes[arc];
    const curvature = spline[3 + 2 * arc];
    const lengthMm = spline[4 + 2 * arc];
    const stepX = nodes.x[arc + 1] - nodes.x[arc];
    const stepY = nodes.y[arc + 1] - nodes.y[arc];
    const node = { x: before.x.slice(), y: before.y.slice(), headingRad: before.headingRad.slice() };
    for (let index = 0; index < 3 + 2 * arc; index++) {
      node.x[index] -= stepY * before.headingRad[index];
      node.y[index] += stepX * before.headingRad[index];
    }
    const bend = reachByCurvature(curvature, lengthMm);
    node.x[3 + 2 * arc] = bend.along * nodes.cosine[arc] - bend.left * nodes.sine[arc];
    node.y[3 + 2 * arc] = bend.along * nodes.sine[arc] + bend.left * nodes.cosine[arc];
    node.headingRad[3 + 2 * arc] = lengthMm;
    node.x[4 + 2 * arc] = nodes.cosine[arc + 1];
    node.y[4 + 2 * arc] = nodes.sine[arc + 1];
    node.headingRad[4 + 2 * arc] = curvature;
    slopes.push(node);
  }
  return slopes;
}
