/**
 * A closed surface of triangles, millimetres. Three numbers a place, three places a triangle, turning anticlockwise as seen
 * from outside. Places are shared: triangles that meet name the same ones.
 */
export interface Mesh {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

/** Volume inside a mesh, mm³ (divergence theorem); negative for one that is inside out. */
export function meshVolume({ positions, triangles }: Mesh): number {
  let sixfold = 0;
  for (let at = 0; at < triangles.length; at += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => 3 * (triangles[at + corner] as number)) as [
      number,
      number,
      number,
    ];
    const [ax, ay, az] = placeAt(positions, a);
    const [bx, by, bz] = placeAt(positions, b);
    const [cx, cy, cz] = placeAt(positions, c);
    sixfold += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return sixfold / 6;
}

function placeAt(positions: Float64Array, at: number): readonly [number, number, number] {
  return [positions[at] as number, positions[at + 1] as number, positions[at + 2] as number];
}

/** Least and greatest x, y and z of a mesh, mm. */
export function meshBox({ positions }: Mesh): {
  readonly min: readonly number[];
  readonly max: readonly number[];
} {
  const min = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const max = min.map((value) => -value);
  positions.forEach((value, index) => {
    min[index % 3] = Math.min(min[index % 3] as number, value);
    max[index % 3] = Math.max(max[index % 3] as number, value);
  });
  return { min, max };
}
