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
