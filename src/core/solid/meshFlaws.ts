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
  const { starts, ends } = edgesFrom(triangles, positions.length / 3);
  const times = (from: number, to: number): number => {
    let found = 0;
    for (let at = starts[from] as number; at < (starts[from + 1] as number); at++)
      if (ends[at] === to) found++;
    return found;
  };
  let [flat, twice, open] = [0, 0, 0];
  for (let at = 0; at < triangles.length; at += 3)
    for (let side = 0; side < 3; side++) {
      const from = triangles[at + side] as number;
      const to = triangles[at + ((side + 1) % 3)] as number;
      if (from === to) flat++;
      if (times(from, to) > 1) twice++;
      if (times(to, from) === 0) open++;
    }
  return [
    ...(flat > 0 ? [flaw('solid.flat', name, `${flat} triangles without area`)] : []),
    ...(twice > 0 ? [flaw('solid.twice', name, `${twice} edges that more than two triangles share`)] : []),
    ...(open > 0 ? [flaw('solid.open', name, `${open} edges at which the skin is open`)] : []),
    ...(meshVolume(mesh) > 0 ? [] : [flaw('solid.inside-out', name, 'a skin that is inside out')]),
  ];
}

/** Where each place's edges lead to: those of place p stand in `ends` from `starts[p]` to before `starts[p + 1]`. */
function edgesFrom(triangles: Uint32Array, places: number) {
  const starts = new Uint32Array(places + 1);
  for (const from of triangles) starts[from + 1] = (starts[from + 1] as number) + 1;
  for (let place = 0; place < places; place++)
    starts[place + 1] = (starts[place + 1] as number) + (starts[place] as number);
  const next = starts.slice();
  const ends = new Uint32Array(triangles.length);
  triangles.forEach((from, at) => {
    const to = triangles[at % 3 === 2 ? at - 2 : at + 1] as number;
    ends[next[from] as number] = to;
    next[from] = (next[from] as number) + 1;
  });
  return { starts, ends };
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
