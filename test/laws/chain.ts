import { type Chain, lengthOf, segments, selfCrossings } from '../../src/core/curve/index.ts';

type AnyChain = Chain<'body' | 'drawing'>;

/** What is wrong with a chain as data: numbers, neighbours that coincide, a bulge after the last open vertex. */
export function chainFaults(chain: AnyChain): readonly string[] {
  const faults: string[] = [];
  for (const [index, { x, y, bulge }] of chain.vertices.entries()) {
    if (![x, y, bulge].every(Number.isFinite)) faults.push(`vertex ${index} is not finite`);
  }
  for (const [index, { start, end }] of segments(chain).entries()) {
    if (Math.hypot(end.x - start.x, end.y - start.y) <= 1e-6) faults.push(`segment ${index} has no length`);
  }
  if (chain.vertices.length < 2) faults.push('fewer than two vertices');
  if (!chain.closed && chain.vertices.at(-1)?.bulge !== 0) faults.push('an open chain ends with a bulge');
  return faults;
}

/** As {@link chainFaults}, and the chain must be closed, of some length, and never meet itself. */
export function simpleLoopFaults(chain: AnyChain): readonly string[] {
  const faults = [...chainFaults(chain)];
  if (!chain.closed) faults.push('not closed');
  if (!(lengthOf(chain) > 0)) faults.push('no length');
  for (const { point } of selfCrossings(chain)) {
    faults.push(`meets itself at ${point.x.toFixed(6)}, ${point.y.toFixed(6)}`);
  }
  return faults;
}
