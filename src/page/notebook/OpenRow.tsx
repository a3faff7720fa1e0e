import type { ComponentChildren } from 'preact';

/** A row of the notebook that opens under the hand: its name and origin, what may stand beside them, a value; and below, once it is open, more. */
export function OpenRow({
  margin,
  name,
  from,
  aside,
  value,
  beside,
  isOpen,
  turn,
  classes = [],
  more,
  children,
}: {
  readonly margin: ComponentChildren;
  readonly name: string;
  /** Where it comes from, and whatever else stands under its name. */
  readonly from: ComponentChildren;
  readonly aside?: ComponentChildren;
  readonly value: string;
  readonly beside: string;
  readonly isOpen: boolean;
  /** Opens it, or closes it again. */
  readonly turn: () => void;
  readonly classes?: readonly string[];
  /** What is in sight while it is open. */
  readonly more: ComponentChildren;
  /** What is always in sight below. */
  readonly children?: ComponentChildren;
}) {
  return (
    <li class={['row', ...(isOpen ? ['touched'] : []), ...classes].join(' ')}>
      <span class="margin">{margin}</span>
      <div class="row-head">
        <button type="button" class="row-name" aria-expanded={isOpen} onClick={turn}>
          <b>{name}</b>
          {from}
        </button>
        {aside ?? <span />}
        <span class="value">{value}</span>
        <span class="beside">{beside}</span>
      </div>
      {isOpen && more}
      {children}
    </li>
  );
}
