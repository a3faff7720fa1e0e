import type { Frame, Point } from '../base/index.ts';

/**
 * A corner of a chain and the bulge of the segment that leaves it.
 *
 * `bulge = tan(sweep / 4)`: positive for an arc that turns anticlockwise (in frames with y up), 0 for
 * a straight line, 1 for a half circle. The last vertex of an open chain has bulge 0.
 */
export interface Vertex<F extends Frame> extends Point<F> {
  readonly bulge: number;
}

/**
 * Circular arcs and lines, end to end. A closed chain runs from its last vertex back to its first, which
 * is not repeated; closed chains of material run anticlockwise. No two neighbouring vertices coincide.
 */
export interface Chain<F extends Frame> {
  readonly closed: boolean;
  readonly vertices: readonly Vertex<F>[];
}
