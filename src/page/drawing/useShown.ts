import { useEffect, useState } from 'preact/hooks';
import type { Checked, Design } from '../../core/index.ts';
import { newestOnly } from '../bench/bench.ts';
import { design, whole } from '../store.ts';

/**
 * What the bench shows of the design on it, asked anew once the design has been derived or `key` has changed; null until the
 * first answer is there. An answer that cannot be given leaves the last one in sight.
 */
export function useShown<Shown>(ask: (design: Design) => Promise<Checked<Shown>>, key: string): Shown | null {
  const [shown, setShown] = useState<{ readonly key: string; readonly value: Shown } | null>(null);
  const [newest] = useState(() =>
    newestOnly(
      async (asked: { readonly ask: typeof ask; readonly key: string; readonly design: Design }) => ({
        key: asked.key,
        answer: await asked.ask(asked.design),
      }),
      (told) => {
        if (told.answer.ok) setShown({ key: told.key, value: told.answer.value });
      },
    ),
  );
  useEffect(() => {
    if (whole.value !== null && design.value !== null) newest({ ask, key, design: design.value });
  }, [whole.value, key]);
  return shown?.value ?? null;
}
