import { point } from '../../base/index.ts';
import { type Chain, intersections } from '../../curve/index.ts';
import type { EdgeMembers } from './edgeShape.ts';

/** Half width of the plate at a height above the lower end, mm: its outermost edge there; 0 off the plate. */
export function edgeHalfWidth(edge: EdgeMembers, yMm: number): number {
  const farMm = 2 * Math.max(...edge.flatMap(({ vertices }) => vertices.map(({ x }) => x)));
  const across: Chain<'body'> = {
    closed: false,
    vertices: [
      { ...point<'body'>(-farMm, yMm), bulge: 0 },
      { ...point<'body'>(farMm, yMm), bulge: 0 },
    ],
  };
  const crossings = edge.flatMap((member) => intersections(member, across));
  return crossings.reduce((most, crossing) => Math.max(most, crossing.point.x), 0);
}
