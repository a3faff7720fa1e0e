import { boundsOf, type Chain, circleChain, placeChain, type Vertex } from '../curve/index.ts';

/** mm of gauge above the crest: enough to hold and to stay straight. */
const ABOVE_CREST_MM = 28;

/** mm that the feet reach out beyond the edge of the plate. */
const BEYOND_EDGE_MM = 6;

/** mm. Rounds the upper corners, which the hand holds. */
const CORNER_MM = 5;

const QUARTER_BULGE = Math.tan(Math.PI / 8);

/**
 * The cut edge of a gauge: closed, anticlockwise. Below, the working edge between two feet that are level with the
 * edge of the plate; above, a straight back.
 */
export function gaugeBody(
  workingEdge: Chain<'section'>,
  edges: readonly [number, number],
  edgeHeightMm: number,
  crestMm: number,
): Chain<'drawing'> {
  const left = edges[0] - BEYOND_EDGE_MM;
  const right = edges[1] + BEYOND_EDGE_MM;
  const top = crestMm + ABOVE_CREST_MM;
  const below = placeChain<'drawing'>(workingEdge, { turnRad: 0, shift: [0, 0] });
  const vertices: readonly Vertex<'drawing'>[] = [
    { x: left, y: edgeHeightMm, bulge: 0 },
    ...below.vertices,
    { x: right, y: edgeHeightMm, bulge: 0 },
    { x: right, y: top - CORNER_MM, bulge: QUARTER_BULGE },
    { x: right - CORNER_MM, y: top, bulge: 0 },
    { x: left + CORNER_MM, y: top, bulge: QUARTER_BULGE },
    { x: left, y: top - CORNER_MM, bulge: 0 },
  ];
  return { closed: true, vertices };
}

/** mm. A nail or a string goes through. */
const HOLE_MM = 6;

/** The hole to hang a gauge by, on its centre mark near the back. */
export function gaugeHoles(middle: number, body: Chain<'drawing'>): readonly Chain<'drawing'>[] {
  const top = boundsOf(body).max.y;
  return [circleChain<'drawing'>({ x: middle, y: top - 1.5 * HOLE_MM }, HOLE_MM / 2, true)];
}
