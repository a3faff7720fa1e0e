import { type Remote, wrap } from 'comlink';
import type { BenchWork } from './benchWork.ts';
import BenchWorker from './benchWork.ts?worker&inline';

/** The bench in its worker; one for what follows a hand, one for what takes its time, so that neither waits for the other. */
export const quickBench: Remote<BenchWork> = wrap<BenchWork>(new BenchWorker());
export const slowBench: Remote<BenchWork> = wrap<BenchWork>(new BenchWorker());

let seeing: Remote<BenchWork> | null = null;

/** A bench of its own for photographs: they take seconds and much room. */
export function seeingBench(): Remote<BenchWork> {
  seeing ??= wrap<BenchWork>(new BenchWorker());
  return seeing;
}

/**
 * A question asked again before its answer is there: only the newest is asked next, older answers are dropped. The answer of
 * the newest always comes.
 */
export function newestOnly<Asked, Answer>(
  ask: (asked: Asked) => Promise<Answer>,
  tell: (answer: Answer, asked: Asked) => void,
): (asked: Asked) => void {
  let waiting: { readonly asked: Asked } | null = null;
  let isBusy = false;
  const next = async (): Promise<void> => {
    isBusy = true;
    while (waiting !== null) {
      const { asked } = waiting;
      waiting = null;
      const answer = await ask(asked);
      if (waiting === null) tell(answer, asked);
    }
    isBusy = false;
  };
  return (asked) => {
    waiting = { asked };
    if (!isBusy) void next();
  };
}
