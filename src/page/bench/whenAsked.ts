/** One that answers questions, each by a promise, until it is ended. */
export interface Begun<Work> {
  readonly work: Work;
  readonly end: () => void;
}

/** Gives the one that is there, or begins one. */
export interface WhenAsked<Work> {
  (): Work;
  /** Ends it, as soon as all that it was asked is answered; whoever asks after this asks a new one. */
  readonly rest: () => void;
}

interface Busy<Work> extends Begun<Work> {
  unanswered: number;
  isToEnd: boolean;
}

/** Begins one when it is asked first, and again after every rest. */
export function whenAsked<Work extends object>(begin: () => Begun<Work>): WhenAsked<Work> {
  let now: Busy<Work> | null = null;
  const ask = (): Work => {
    now ??= counted(begin());
    return now.work;
  };
  const rest = (): void => {
    if (now === null) return;
    now.isToEnd = true;
    endIfDone(now);
    now = null;
  };
  return Object.assign(ask, { rest });
}

type Question = (...words: unknown[]) => Promise<unknown>;

/** The same, with its questions counted until they are answered. */
function counted<Work extends object>({ work, end }: Begun<Work>): Busy<Work> {
  const questions = new Proxy(work, {
    get:
      (_, name): Question =>
      (...words) => {
        one.unanswered++;
        return (work as Record<string | symbol, Question>)[name](...words).finally(() => {
          one.unanswered--;
          endIfDone(one);
        });
      },
  });
  const one: Busy<Work> = { work: questions, end, unanswered: 0, isToEnd: false };
  return one;
}

function endIfDone({ isToEnd, unanswered, end }: Busy<unknown>): void {
  if (isToEnd && unanswered === 0) end();
}
