import { type Chain, chainThrough, type HalfOutline, mirrorChain, sampleChain } from '../curve/index.ts';
import type { Mesh } from './mesh.ts';
import { prism } from './prism.ts';

/** How high the ribs stand, mm: even from tail to neck along the body. */
export interface RibHeights {
  readonly tailMm: number;
  readonly neckMm: number;
  readonly bodyLengthMm: number;
}

/** Height of the ribs at a place along the body, mm. */
export function ribHeightAt({ tailMm, neckMm, bodyLengthMm }: RibHeights, yMm: number): number {
  return tailMm + ((neckMm - tailMm) * yMm) / bodyLengthMm;
}

/**
 * The six ribs, each a closed skin between its outer and inner face, level below (toward the back) and tapering above, its
 * faces within the chord error (mm). They touch at corners and centre line without being joined, as ribs do before the glue.
 */
export function ribSolid(
  outer: HalfOutline,
  inner: HalfOutline,
  heights: RibHeights,
  chordErrorMm: number,
): Mesh {
  const treble = (['lowerBout', 'cBout', 'upperBout'] as const).map((name) =>
    chainThrough(
      [...sampleChain(outer[name], chordErrorMm), ...sampleChain(inner[name], chordErrorMm).toReversed()],
      true,
    ),
  );
  const ribs = [...treble, ...treble.map((rib) => mirrorChain(rib))];
  return together(ribs.map((rib) => tapered(rib, heights, chordErrorMm)));
}

function tapered(rib: Chain<'body'>, heights: RibHeights, chordErrorMm: number): Mesh {
  const { positions, triangles } = prism(rib, [], 0, 1, chordErrorMm);
  return {
    triangles,
    positions: positions.map((value, index, all) =>
      index % 3 === 2 && value > 0 ? ribHeightAt(heights, all[index - 1] as number) : value,
    ),
  };
}

/** Several skins in one mesh. */
function together(meshes: readonly Mesh[]): Mesh {
  let start = 0;
  const triangles = meshes.map((mesh) => {
    const shifted = mesh.triangles.map((place) => place + start);
    start += mesh.positions.length / 3;
    return [...shifted];
  });
  return {
    positions: Float64Array.from(meshes.flatMap(({ positions }) => [...positions])),
    triangles: Uint32Array.from(triangles.flat()),
  };
}
