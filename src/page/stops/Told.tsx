import type { Quantity } from '../../core/index.ts';
import { numberText, spreadText } from '../notebook/numberText.ts';
import { OriginMark } from '../notebook/OriginMark.tsx';
import { words } from '../words/words.ts';

/** A row of the notebook that tells a number and where it comes from. */
export function Told({
  kind,
  name,
  from,
  value,
  beside,
}: {
  readonly kind: 'measured' | 'derived' | 'common-practice';
  readonly name: string;
  /** More about its origin. */
  readonly from?: string;
  /** As it is to be written, or a number that is known to its ±. */
  readonly value: string | Pick<Quantity, 'value' | 'unit' | 'plusMinus'>;
  /** What stands beside it, where it is no ±. */
  readonly beside?: string;
}) {
  const origin = words().origins[kind];
  return (
    <li class="row">
      <span class="margin">
        <OriginMark kind={kind} />
      </span>
      <div class="row-head">
        <span class="row-name">
          <b>{name}</b>
          <span class="origin">{from === undefined ? origin : `${origin}, ${from}`}</span>
        </span>
        <span />
        <span class="value">{typeof value === 'string' ? value : numberText(value)}</span>
        <span class="beside">
          {beside ?? (typeof value !== 'string' && value.plusMinus && spreadText(value.plusMinus))}
        </span>
      </div>
    </li>
  );
}
