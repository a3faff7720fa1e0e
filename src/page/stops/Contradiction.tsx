import { faults } from '../store.ts';
import { sentenceOf } from '../words/sentences.ts';
import { words } from '../words/words.ts';

/** Why the design as it stands cannot be derived, in sentences; nothing where it can. */
export function Contradiction() {
  if (faults.value.length === 0) return null;
  return (
    <div class="trouble" role="alert">
      <p>
        <b>{words().fix}</b>
      </p>
      {faults.value.map((one) => (
        <p key={one.code + one.at}>{sentenceOf(one)}</p>
      ))}
    </div>
  );
}
