import { effect, untracked } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Checked, Design } from '../../core/index.ts';
import { afterFrame } from '../bench/afterFrame.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import { design, held, keepView, REST_MS, sound } from '../store.ts';

/** What is asked of a bench for a design. */
export type Ask<Shown> = (design: Design) => Promise<Checked<Shown>>;

/**
 * What a bench shows of the design, asked anew once it or `key` has changed; null until the first answer is there. Where the design
 * cannot be derived it is shown as it last could; where it never could, null. `follow` answers roughly while a hand drags; where it rests it is asked in full.
 */
export function useShown<Shown>(ask: Ask<Shown>, key: string, follow?: Ask<Shown>): Shown | null {
  return useShownOf(ask, key, follow)?.shown ?? null;
}

/** The same, with the design that it was asked for. */
export function useShownOf<Shown>(
  ask: Ask<Shown>,
  key: string,
  follow?: Ask<Shown>,
): { readonly shown: Shown; readonly of: Design } | null {
  const [shown, setShown] = useState<{ readonly shown: Shown; readonly of: Design } | null>(null);
  const [newest] = useState(() =>
    newestOnly(
      async (asked: { readonly ask: Ask<Shown>; readonly design: Design }) => {
        const answer = await asked.ask(asked.design);
        const was = sound.peek();
        if (answer.ok || held.peek() !== null || was === null || was === asked.design)
          return { answer, of: asked.design };
        return { answer: await asked.ask(was), of: was };
      },
      ({ answer, of }, asked) => {
        const isOld = held.value !== null && held.value !== asked.design;
        if (answer.ok && !isOld) setShown({ shown: answer.value, of });
      },
    ),
  );
  const [newestRough] = useState(() =>
    newestOnly(
      (asked: { readonly ask: Ask<Shown>; readonly design: Design }) => asked.ask(asked.design),
      (answer, asked) => {
        keepView(asked.design, answer);
        if (held.value === null) return;
        if (answer.ok) setShown({ shown: answer.value, of: asked.design });
      },
    ),
  );
  // In effects of signals, so that a hand that drags does not have the whole drawing looked through again at every move.
  const asks = useRef({ ask, follow });
  asks.current = { ask, follow };
  useEffect(
    () =>
      effect(() => {
        const on = held.value === null ? design.value : null;
        if (on !== null) untracked(() => newest({ ask: asks.current.ask, design: on }));
      }),
    [key],
  );
  useEffect(
    () =>
      effect(() => {
        const resting = held.value;
        const rough = asks.current.follow;
        if (!rough || resting === null) return;
        const callOff = afterFrame(() => newestRough({ ask: rough, design: resting }));
        const timer = setTimeout(() => newest({ ask: asks.current.ask, design: resting }), REST_MS);
        return () => {
          callOff();
          clearTimeout(timer);
        };
      }),
    [],
  );
  return shown;
}
