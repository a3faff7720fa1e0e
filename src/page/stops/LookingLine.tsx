import { lookedAt } from '../keeping/tracing.ts';
import { print, words } from '../words/words.ts';

/** How far a photograph has been looked at, while it is. */
export function LookingLine() {
  if (lookedAt.value === null) return null;
  const text = words().see;
  return (
    <p class="looking" role="status">
      {text.working} {text.stages(print(100 * lookedAt.value, 0))}
    </p>
  );
}
