import { Bug, distanceBetween, type Frame, hypot, type Point, WELD_MM } from '../base/index.ts';
import type { Chain, Vertex } from './chain.ts';

/** One open chain of several, each starting where the one before ends, to within WELD_MM. */
export function joinChains<F extends Frame>(...chains: readonly Chain<F>[]): Chain<F> {
  const joined: Vertex<F>[] = [];
  for (const chain of chains) {
    const last = joined.at(-1);
    const first = chain.vertices[0];
    if (chain.closed) throw new Bug('a closed chain cannot be joined to another');
    if (!first) continue;
    if (last) {
      const gapMm = distanceBetween(last, first);
      if (gapMm > WELD_MM) throw new Bug(`chains to be joined lie ${gapMm} mm apart`);
      joined.pop();
    }
    joined.push(...chain.vertices);
  }
  return { closed: false, vertices: joined };
}

/** The closed chain: ends within WELD_MM become one vertex, ends further apart are joined by a line. */
export function closeChain<F extends Frame>(chain: Chain<F>): Chain<F> {
  const first = chain.vertices[0];
  const last = chain.vertices.at(-1);
  if (chain.closed || !first || !last) return { closed: true, vertices: chain.vertices };
  const meets = chain.vertices.length > 1 && distanceBetween(first, last) <= WELD_MM;
  return { closed: true, vertices: meets ? chain.vertices.slice(0, -1) : chain.vertices };
}

/** Straight lines through points; neighbours within WELD_MM become one vertex. */
export function chainThrough<F extends Frame>(points: readonly Point<F>[], closed: boolean): Chain<F> {
  const vertices: Vertex<F>[] = [];
  for (const { x, y } of points) {
    const last = vertices.at(-1);
    if (!last || hypot(x - last.x, y - last.y) > WELD_MM) vertices.push({ x, y, bulge: 0 });
  }
  const open: Chain<F> = { closed: false, vertices };
  return closed ? closeChain(open) : open;
}
