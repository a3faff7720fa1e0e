import { useEffect, useState } from 'preact/hooks';
import type { Checked, Design } from '../../core/index.ts';
import { newestOnly } from '../bench/bench.ts';
import { design, held, heldFaults, REST_MS } from '../store.ts';

/** What is asked of a bench for a design. */
export type Ask<Shown> = (design: Design) => Promise<Checked<Shown>>;

/**
 * What a bench shows of the design, asked anew once it or `key` has changed; null until the first answer is there. An answer
 * that cannot be given leaves the last one in sight. `follow` answers roughly while a hand drags; where it rests it is asked in full.
 */
export function useShown<Shown>(ask: Ask<Shown>, key: string, follow?: Ask<Shown>): Shown | null {
  const [shown, setShown] = useState<Shown | null>(null);
  const [newest] = useState(() =>
    newestOnly(
      (asked: { readonly ask: Ask<Shown>; readonly design: Design }) => asked.ask(asked.design),
      (answer, asked) => {
        const isOld = held.value !== null && held.value !== asked.design;
        if (answer.ok && !isOld) setShown(answer.value);
      },
    ),
  );
  const [newestRough] = useState(() =>
    newestOnly(
      (asked: { readonly ask: Ask<Shown>; readonly design: Design }) => asked.ask(asked.design),
      (answer) => {
        if (held.value === null) return;
        heldFaults.value = answer.ok ? [] : answer.faults;
        if (answer.ok) setShown(answer.value);
      },
    ),
  );
  useEffect(() => {
    if (design.value !== null && held.value === null) newest({ ask, design: design.value });
  }, [design.value, held.value === null, key]);
  useEffect(() => {
    const resting = held.value;
    if (!follow || resting === null) return;
    newestRough({ ask: follow, design: resting });
    const timer = setTimeout(() => newest({ ask, design: resting }), REST_MS);
    return () => clearTimeout(timer);
  }, [held.value]);
  return shown;
}
