import { type Remote, wrap } from 'comlink';
import type { BenchWork } from './benchWork.ts';
import BenchWorker from './benchWork.ts?worker&inline';
import { type Begun, whenAsked } from './whenAsked.ts';

/**
 * Benches in workers of their own, so that none waits for another: one for what follows a hand, one for the numbers of the
 * whole instrument. Both are needed at once, the others when somebody asks.
 */
export const quickBench = whenAsked(newBench);
export const slowBench = whenAsked(newBench);
/** For the pictures of the stop that one is at. */
export const viewBench = whenAsked(newBench);
/** For checks: they take longest, and a newer design must never wait for them. */
export const checkBench = whenAsked(newBench);
/** For every piece and for packs: they take seconds. */
export const makingBench = whenAsked(newBench);
/** For photographs: they take seconds and much room. */
export const seeingBench = whenAsked(newBench);

quickBench();
slowBench();

function newBench(): Begun<Remote<BenchWork>> {
  const worker = new BenchWorker();
  return { work: wrap<BenchWork>(worker), end: () => worker.terminate() };
}

/** A photograph needs much room: whatever is asked of designs rests until somebody asks it again. */
export function makeRoomForPhotographs(): void {
  for (const bench of [quickBench, slowBench, viewBench, checkBench, makingBench]) bench.rest();
}
