import type { Fault } from '../base/index.ts';
import { type Mesh, meshVolume } from './mesh.ts';

/**
 * What keeps a mesh from being the skin of a solid: `solid.open` (an edge without its neighbour), `solid.twice` (an edge that
 * two triangles run along the same way), `solid.flat` (a triangle that names a place twice), `solid.inside-out`,
 * `solid.not-finite`. Empty for a closed, manifold, outward mesh.
 */
export function meshFlaws(name: string, mesh: Mesh): readonly Fault[] {
  const { positions, triangles } = mesh;
  if (!positions.every((value) => Number.isFinite(value)))
    return [flaw('solid.not-finite', name, 'a place that is not a number')];
  const edges = new Set<number>();
  const places = positions.length / 3;
  let [flat, twice] = [0, 0];
  for (let at = 0; at < triangles.length; at += 3)
    for (let side = 0; side < 3; side++) {
      const from = triangles[at + side] as number;
      const to = triangles[at + ((side + 1) % 3)] as number;
      if (from === to) flat++;
      const key = from * places + to;
      if (edges.has(key)) twice++;
      edges.add(key);
    }
  let open = 0;
  for (const key of edges) {
    const [from, to] = [Math.floor(key / places), key % places];
    if (!edges.has(to * places + from)) open++;
  }
  return [
    ...(flat > 0 ? [flaw('solid.flat', name, `${flat} triangles without area`)] : []),
    ...(twice > 0 ? [flaw('solid.twice', name, `${twice} edges that more than two triangles share`)] : []),
    ...(open > 0 ? [flaw('solid.open', name, `${open} edges at which the skin is open`)] : []),
    ...(meshVolume(mesh) > 0 ? [] : [flaw('solid.inside-out', name, 'a skin that is inside out')]),
  ];
}

function flaw(code: string, at: string, found: string): Fault {
  return {
    code,
    at,
    found,
    need: 'a closed skin in which every edge joins two triangles',
    remedy: 'please report this design: the drawing of the part is sound, its solid is not',
  };
}
