import { atan2, type Box, cos, type Frame, type Point, point, sin } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { type Arc, arcOf, pointOn, type Segment, segmentLength, segments, sweepOf } from './segment.ts';

/** Area, centroid, and second moments of area about the centroid (axes along x and y). */
export interface Moments<F extends Frame> {
  readonly areaMm2: number;
  readonly centroid: Point<F>;
  /** ∫ y² dA from the centroid, mm⁴. */
  readonly aboutXMm4: number;
  /** ∫ x² dA from the centroid, mm⁴. */
  readonly aboutYMm4: number;
  /** ∫ x y dA from the centroid, mm⁴. */
  readonly productMm4: number;
}

/** Length along all arcs and lines, mm. */
export function lengthOf<F extends Frame>(chain: Chain<F>): number {
  return segments(chain).reduce((sum, segment) => sum + segmentLength(segment), 0);
}

/** Area inside a closed chain, mm², positive when it runs anticlockwise; exact on arcs. An open chain is closed by a line. */
export function areaOf<F extends Frame>(chain: Chain<F>): number {
  const origin = chain.vertices[0];
  if (!origin) return 0;
  let doubled = 0;
  for (const segment of closedSegments(chain)) {
    const { start, end } = segment;
    doubled += (start.x - origin.x) * (end.y - origin.y) - (end.x - origin.x) * (start.y - origin.y);
    doubled += 2 * areaOverChord(segment);
  }
  return doubled / 2;
}

/**
 * Area, centroid and second moments of the region inside a closed chain; a clockwise one gives negative moments.
 * Method: Green's theorem, each arc by five-point Gauss-Legendre on pieces of at most an eighth turn (to rounding).
 */
export function momentsOf<F extends Frame>(chain: Chain<F>): Moments<F> {
  const bounds = boundsOf(chain);
  const originX = (bounds.min.x + bounds.max.x) / 2;
  const originY = (bounds.min.y + bounds.max.y) / 2;
  const sums = { x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  for (const segment of closedSegments(chain)) addMoments(segment, originX, originY, sums);
  const areaMm2 = areaOf(chain);
  const centreX = sums.x / areaMm2;
  const centreY = sums.y / areaMm2;
  return {
    areaMm2,
    centroid: point(originX + centreX, originY + centreY),
    aboutXMm4: sums.yy - areaMm2 * centreY * centreY,
    aboutYMm4: sums.xx - areaMm2 * centreX * centreX,
    productMm4: sums.xy - areaMm2 * centreX * centreY,
  };
}

/** The smallest upright box around a chain; arcs count to their outermost points. */
export function boundsOf<F extends Frame>(chain: Chain<F>): Box<F> {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const vertex of chain.vertices) widen(box, vertex.x, vertex.y);
  for (const segment of segments(chain)) {
    const arc = arcOf(segment);
    if (arc) widenByArc(box, arc);
  }
  return { min: point(box.minX, box.minY), max: point(box.maxX, box.maxY) };
}

interface Extent {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

/** Upright box of one segment, whose arc is known already. */
export function segmentExtent<F extends Frame>(segment: Segment<F>, arc: Arc<F> | null): Readonly<Extent> {
  const { start, end } = segment;
  const box = {
    minX: Math.min(start.x, end.x),
    minY: Math.min(start.y, end.y),
    maxX: Math.max(start.x, end.x),
    maxY: Math.max(start.y, end.y),
  };
  if (arc) widenByArc(box, arc);
  return box;
}

function widen(box: Extent, x: number, y: number): void {
  box.minX = Math.min(box.minX, x);
  box.minY = Math.min(box.minY, y);
  box.maxX = Math.max(box.maxX, x);
  box.maxY = Math.max(box.maxY, y);
}

function widenByArc<F extends Frame>(box: Extent, arc: Arc<F>): void {
  const quarter = Math.PI / 2;
  const low = Math.min(arc.startAngleRad, arc.startAngleRad + arc.sweepRad) / quarter;
  const high = Math.max(arc.startAngleRad, arc.startAngleRad + arc.sweepRad) / quarter;
  for (let turn = Math.ceil(low); turn <= high; turn++) {
    const compass = ((turn % 4) + 4) % 4;
    if (compass === 0) widen(box, arc.centre.x + arc.radiusMm, box.minY);
    if (compass === 1) widen(box, box.minX, arc.centre.y + arc.radiusMm);
    if (compass === 2) widen(box, arc.centre.x - arc.radiusMm, box.minY);
    if (compass === 3) widen(box, box.minX, arc.centre.y - arc.radiusMm);
  }
}

function closedSegments<F extends Frame>(chain: Chain<F>): readonly Segment<F>[] {
  return segments(chain.closed ? chain : { ...chain, closed: true });
}

/** Signed area between an arc and its chord: (θ − sin θ) R² / 2, by its series where the difference would cancel. */
function areaOverChord<F extends Frame>(segment: Segment<F>): number {
  if (segment.bulge === 0) return 0;
  const sweep = sweepOf(segment);
  const chordX = segment.end.x - segment.start.x;
  const chordY = segment.end.y - segment.start.y;
  const square = sweep * sweep;
  const chordSquare = chordX * chordX + chordY * chordY;
  if (Math.abs(sweep) < SERIES_RAD) {
    const flatness = sweep === 0 ? 1 : sweep / 2 / sin(sweep / 2);
    const series = 1 - (square / 20) * (1 - (square / 42) * (1 - (square / 72) * (1 - square / 110)));
    return (chordSquare * sweep * series * flatness * flatness) / 12;
  }
  const sine = sin(sweep / 2);
  return (chordSquare * (sweep - sin(sweep))) / (8 * sine * sine);
}

/** rad. Below this sweep the series of θ − sin θ is exact to rounding and the difference no longer is. */
const SERIES_RAD = 0.3;

/** Nodes and weights of five-point Gauss-Legendre on [0, 1]. */
const GAUSS: readonly (readonly [number, number])[] = [
  [0.5, 64 / 225],
  ...[Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3].flatMap(
    (node, index): [number, number][] => {
      const weight = (322 + (index === 0 ? 13 : -13) * Math.sqrt(70)) / 1800;
      return [
        [(1 - node) / 2, weight],
        [(1 + node) / 2, weight],
      ];
    },
  ),
];

function addMoments<F extends Frame>(
  segment: Segment<F>,
  originX: number,
  originY: number,
  sums: { x: number; y: number; xx: number; yy: number; xy: number },
): void {
  const lengthMm = segmentLength(segment);
  const sweep = sweepOf(segment);
  const chordRad = atan2(segment.end.y - segment.start.y, segment.end.x - segment.start.x);
  const pieces = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 4)));
  for (let piece = 0; piece < pieces; piece++) {
    for (const [node, weight] of GAUSS) {
      const fraction = (piece + node) / pieces;
      const at = pointOn(segment, fraction);
      const x = at.x - originX;
      const y = at.y - originY;
      const heading = chordRad + sweep * (fraction - 0.5);
      const stepMm = (lengthMm * weight) / pieces;
      const dx = cos(heading) * stepMm;
      const dy = sin(heading) * stepMm;
      sums.x += (x * x * dy) / 2;
      sums.y -= (y * y * dx) / 2;
      sums.xx += (x * x * x * dy) / 3;
      sums.yy -= (y * y * y * dx) / 3;
      sums.xy += (x * x * y * dy) / 2;
    }
  }
}
