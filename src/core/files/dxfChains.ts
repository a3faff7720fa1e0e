import type { Frame } from '../base/index.ts';
import type { Chain, Vertex } from '../curve/index.ts';
import type { DxfGroup } from './dxfGroups.ts';
import { millimetres, pureNumber } from './millimetres.ts';
import { shortArcs } from './shortArcs.ts';

/** rad. Readers differ on arcs of more than half a turn; a little room keeps a half circle whole through rounding. */
const GREATEST_ARC_RAD = Math.PI * 1.001;

/** A chain's vertices at the written step: arcs of at most half a turn, no vertex on the one before it. */
function writtenVertices<F extends Frame>(chain: Chain<F>): readonly Vertex<F>[] {
  const short = shortArcs(chain, () => GREATEST_ARC_RAD);
  const place = (vertex: Vertex<F>): string => `${millimetres(vertex.x)} ${millimetres(vertex.y)}`;
  const kept: Vertex<F>[] = [];
  for (const vertex of short.vertices) {
    const before = kept.at(-1);
    // The later of two vertices in one place stays: its bulge is the one that leaves it.
    if (before && place(before) === place(vertex)) kept.pop();
    kept.push(vertex);
  }
  const first = kept[0];
  const last = kept.at(-1);
  if (chain.closed && first && last && kept.length > 1 && place(first) === place(last)) kept.pop();
  return kept;
}

/** LWPOLYLINE of the 2000 format. */
export function lightPolyline<F extends Frame>(
  chain: Chain<F>,
  layer: string,
  handle: string,
  owner: string,
): DxfGroup[] {
  const vertices = writtenVertices(chain);
  return [
    [0, 'LWPOLYLINE'],
    [5, handle],
    [330, owner],
    [100, 'AcDbEntity'],
    [8, layer],
    [100, 'AcDbPolyline'],
    [90, vertices.length],
    [70, chain.closed ? 1 : 0],
    [43, '0'],
    ...vertices.flatMap((vertex): DxfGroup[] => [
      [10, millimetres(vertex.x)],
      [20, millimetres(vertex.y)],
      ...bulgeGroup(vertex),
    ]),
  ];
}

/** POLYLINE, VERTEX and SEQEND of release 12. */
export function heavyPolyline<F extends Frame>(chain: Chain<F>, layer: string): DxfGroup[] {
  return [
    [0, 'POLYLINE'],
    [8, layer],
    [66, 1],
    [10, '0'],
    [20, '0'],
    [30, '0'],
    [70, chain.closed ? 1 : 0],
    ...writtenVertices(chain).flatMap((vertex): DxfGroup[] => [
      [0, 'VERTEX'],
      [8, layer],
      [10, millimetres(vertex.x)],
      [20, millimetres(vertex.y)],
      [30, '0'],
      ...bulgeGroup(vertex),
    ]),
    [0, 'SEQEND'],
    [8, layer],
  ];
}

function bulgeGroup(vertex: { readonly bulge: number }): DxfGroup[] {
  const bulge = pureNumber(vertex.bulge);
  return bulge === '0' ? [] : [[42, bulge]];
}
