import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { RegisterEntry } from '../../core/index.ts';
import { COARSE } from '../drawing/arrows.ts';
import { remarkOf } from '../words/sentences.ts';
import { nameOf, words } from '../words/words.ts';
import { numberText, readNumber } from './numberText.ts';

/** Steps of the arrow keys, in mm and in parts of one. */
const STEP = { mm: 0.1, other: 0.01 } as const;

/** A field for a number of the maker's own; arrow keys nudge it, Enter uses it, Escape leaves it as it was. */
export function NumberField({
  entry,
  takesFocus,
  give,
  leave,
}: {
  readonly entry: RegisterEntry;
  readonly takesFocus: boolean;
  readonly give: (value: number) => void;
  readonly leave: () => void;
}) {
  const field = useRef<HTMLInputElement>(null);
  // What the hand has typed and not yet used; before that the field shows the number as it stands.
  const [typed, setTyped] = useState<string | null>(null);
  const { value, unit } = entry;
  const text = typed ?? numberText({ value, unit });
  // At once, before any key can reach the field: later it would mark what has been typed meanwhile.
  useLayoutEffect(() => {
    if (!takesFocus) return;
    field.current?.focus();
    field.current?.select();
  }, [entry.name, takesFocus]);
  const read = readNumber(text, entry.unit);
  const use = () => {
    if (!read.ok || typed === null) return;
    setTyped(null);
    give(read.value);
  };
  const nudge = (event: KeyboardEvent) => {
    const up = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (up !== 0 && read.ok) {
      event.preventDefault();
      const step = (entry.unit === 'mm' ? STEP.mm : STEP.other) * (event.shiftKey ? COARSE : 1);
      setTyped(null);
      give(Number(((typed === null ? entry.value : read.value) + up * step).toFixed(4)));
    }
    if (event.key === 'Escape') leave();
  };
  return (
    <form
      class="number-field"
      onSubmit={(event) => {
        event.preventDefault();
        use();
      }}
    >
      <input
        ref={field}
        value={text}
        inputMode="decimal"
        autocomplete="off"
        aria-label={words().number.label(nameOf(entry.name))}
        aria-invalid={!read.ok}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={nudge}
        onBlur={use}
      />
      {!read.ok && (
        <p class="said" role="alert">
          {read.faults[0] && remarkOf(read.faults[0])}
        </p>
      )}
    </form>
  );
}
