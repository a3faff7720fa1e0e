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

/**
 * A question asked again before its answer is there: only the newest is asked next. Every answer is told, for a hand that
 * drags without rest would never see one otherwise; whether it is still wanted is for `tell` to see.
 */
export function newestOnly<Asked, Answer>(
  ask: (asked: Asked) => Promise<Answer>,
  tell: (answer: Answer, asked: Asked) => void,
): (asked: Asked) => void {
  let waiting: { readonly asked: Asked } | null = null;
  let isBusy = false;
  const next = async (): Promise<void> => {
    isBusy = true;
    try {
      while (waiting !== null) {
        const { asked } = waiting;
        waiting = null;
        tell(await ask(asked), asked);
      }
    } finally {
      isBusy = false;
    }
  };
  return (asked) => {
    waiting = { asked };
    if (!isBusy) void next();
  };
}
