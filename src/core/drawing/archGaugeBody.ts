import { tan } from '../base/index.ts';
import { boundsOf, type Chain, circleChain, placeChain, type Vertex } from '../curve/index.ts';

/** mm of gauge above the crest: enough to hold and to stay straight. */
const ABOVE_CREST_MM = 28;

/** mm that the feet reach out beyond the edge of the plate. */
const BEYOND_EDGE_MM = 6;

/** mm between the edge of the plate and a foot that stands on the bench beside it. */
const BESIDE_EDGE_MM = 2;

/** mm. Width of a foot that stands on the bench. */
const BENCH_FOOT_MM = 12;

/** mm. Rounds the upper corners, which the hand holds. */
const CORNER_MM = 5;

const QUARTER_BULGE = tan(Math.PI / 8);

/**
 * What a gauge rests on: `edge`, the edge of the plate itself; `bench`, the plane that the plate's gluing face lies on,
 * beside the plate, so that the gauge also shows whether the edge has its height.
 */
export type GaugeFeet = 'edge' | 'bench';

/** What a gauge spans and how high it stands, mm in its own drawing. */
export interface GaugeSpan {
  readonly edges: readonly [number, number];
  readonly edgeHeightMm: number;
  readonly crestMm: number;
  readonly feet: GaugeFeet;
  /** Room for a button beyond the second edge, mm; the gauge steps over it. */
  readonly buttonMm?: number;
}

/** mm that a gauge stands clear of a button, which is as thick as the edge. */
const OVER_BUTTON_MM = 1.5;

/** mm beyond the edge at which a gauge steps up over a button: clear of the mark that stands on the edge. */
const STEP_BEYOND_MM = 1;

/**
 * The cut edge of a gauge: closed, anticlockwise. Below, the working edge between two feet; above, a straight back.
 */
export function gaugeBody(workingEdge: Chain<'section'>, span: GaugeSpan): Chain<'drawing'> {
  const { edges, edgeHeightMm, feet } = span;
  const outMm = feet === 'edge' ? BEYOND_EDGE_MM : BESIDE_EDGE_MM + BENCH_FOOT_MM;
  const left = edges[0] - outMm;
  const right = edges[1] + outMm + (feet === 'bench' ? (span.buttonMm ?? 0) : 0);
  const top = span.crestMm + ABOVE_CREST_MM;
  const below = placeChain<'drawing'>(workingEdge, { turnRad: 0, shift: [0, 0] });
  const corner = (x: number, y: number): Vertex<'drawing'> => ({ x, y, bulge: 0 });
  const [leftFoot, rightFoot] =
    feet === 'edge'
      ? [[corner(left, edgeHeightMm)], [corner(right, edgeHeightMm)]]
      : [benchFoot(left, edges[0] - BESIDE_EDGE_MM, edgeHeightMm), benchFootBeyond(span, right)];
  const vertices: readonly Vertex<'drawing'>[] = [
    ...leftFoot,
    ...below.vertices,
    ...rightFoot,
    ...straightBack(left, right, top),
  ];
  return { closed: true, vertices };
}

/** From the outer corner of a foot on the bench, along its sole and up to the level of the edge. */
function benchFoot(outer: number, inner: number, edgeHeightMm: number): readonly Vertex<'drawing'>[] {
  return [
    { x: outer, y: 0, bulge: 0 },
    { x: inner, y: 0, bulge: 0 },
    { x: inner, y: edgeHeightMm, bulge: 0 },
  ];
}

/** The other foot, downward: over a button where the plate has one. */
function benchFootBeyond(span: GaugeSpan, outer: number): readonly Vertex<'drawing'>[] {
  const { edges, edgeHeightMm, buttonMm = 0 } = span;
  const inner = edges[1] + BESIDE_EDGE_MM + buttonMm;
  const foot = benchFoot(outer, inner, edgeHeightMm).toReversed();
  if (buttonMm === 0) return foot;
  const over = edgeHeightMm + OVER_BUTTON_MM;
  return [
    { x: edges[1] + STEP_BEYOND_MM, y: edgeHeightMm, bulge: 0 },
    { x: edges[1] + STEP_BEYOND_MM, y: over, bulge: 0 },
    { x: inner, y: over, bulge: 0 },
    ...foot.slice(1),
  ];
}

/** mm of gauge above the gluing face, for the inside. */
const ABOVE_FACE_MM = 28;

/**
 * The cut edge of a gauge for the inside: closed, anticlockwise. Feet level on the gluing face, the working edge between
 * them hanging below it, above a straight back.
 */
export function insideGaugeBody(
  workingEdge: Chain<'drawing'>,
  ends: readonly [number, number],
): Chain<'drawing'> {
  const [left, right] = [ends[0] - BEYOND_EDGE_MM, ends[1] + BEYOND_EDGE_MM];
  return {
    closed: true,
    vertices: [
      { x: left, y: 0, bulge: 0 },
      ...workingEdge.vertices,
      { x: right, y: 0, bulge: 0 },
      ...straightBack(left, right, ABOVE_FACE_MM),
    ],
  };
}

/** From the right side over the rounded back to the left side. */
function straightBack(left: number, right: number, top: number): readonly Vertex<'drawing'>[] {
  return [
    { x: right, y: top - CORNER_MM, bulge: QUARTER_BULGE },
    { x: right - CORNER_MM, y: top, bulge: 0 },
    { x: left + CORNER_MM, y: top, bulge: QUARTER_BULGE },
    { x: left, y: top - CORNER_MM, bulge: 0 },
  ];
}

/** mm. A nail or a string goes through. */
const HOLE_MM = 6;

/** The hole to hang a gauge by, on its centre mark near the back. */
export function gaugeHoles(middle: number, body: Chain<'drawing'>): readonly Chain<'drawing'>[] {
  const top = boundsOf(body).max.y;
  return [circleChain<'drawing'>({ x: middle, y: top - 1.5 * HOLE_MM }, HOLE_MM / 2, true)];
}
