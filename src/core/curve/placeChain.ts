import { cos, type Frame, sin } from '../base/index.ts';
import type { Chain, Vertex } from './chain.ts';

/** How a chain is placed: enlarged about its origin, then turned anticlockwise, then shifted. */
export interface Placement {
  readonly turnRad: number;
  readonly shift: readonly [number, number];
  /** Positive; 1 when left out. */
  readonly scale?: number;
}

/** The same line walked the other way. A closed chain keeps its first vertex first. */
export function reverseChain<F extends Frame>(chain: Chain<F>): Chain<F> {
  const { vertices, closed } = chain;
  const count = vertices.length;
  const reversed: Vertex<F>[] = [];
  for (let step = 0; step < count; step++) {
    const from = closed ? (count - step) % count : count - 1 - step;
    const vertex = vertices[from];
    const before = vertices[(from - 1 + count) % count];
    if (!vertex || !before) continue;
    const last = !closed && step === count - 1;
    reversed.push({ x: vertex.x, y: vertex.y, bulge: last ? 0 : minus(before.bulge) });
  }
  return { closed, vertices: reversed };
}

/** The mirror image in the line x = 0, vertex for vertex: what ran anticlockwise runs clockwise. */
export function mirrorChain<F extends Frame>(chain: Chain<F>): Chain<F> {
  return {
    closed: chain.closed,
    vertices: chain.vertices.map((v) => ({ x: minus(v.x), y: v.y, bulge: minus(v.bulge) })),
  };
}

/** The chain moved into another frame by {@link Placement}; arcs stay arcs. */
export function placeChain<T extends Frame, F extends Frame = Frame>(
  chain: Chain<F>,
  placement: Placement,
): Chain<T> {
  const scale = placement.scale ?? 1;
  const cosine = cos(placement.turnRad) * scale;
  const sine = sin(placement.turnRad) * scale;
  const [shiftX, shiftY] = placement.shift;
  return {
    closed: chain.closed,
    vertices: chain.vertices.map((v) => ({
      x: cosine * v.x - sine * v.y + shiftX,
      y: sine * v.x + cosine * v.y + shiftY,
      bulge: v.bulge,
    })),
  };
}

/** The negative, without a negative zero, so that mirrored chains compare and print alike. */
function minus(value: number): number {
  return value === 0 ? 0 : -value;
}
