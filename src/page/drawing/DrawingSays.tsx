import { type Fault, rangeFindings } from '../../core/index.ts';
import { body, design, faults, held, heldFaults, sound, stop, touched, touchedAt } from '../store.ts';
import { placeOf, told } from '../words/sentences.ts';
import { words } from '../words/words.ts';
import { outlineAlone } from './OutlineAlone.tsx';

/**
 * In words, over the drawing: that what the hand holds cannot be drawn; that the design cannot, and what is shown in its stead; or
 * that the number which the hand is on here is far from what is usual.
 */
export function DrawingSays({ isInFlow = false }: { readonly isInFlow?: boolean }) {
  return (
    <p class={isInFlow ? 'drawing-says in-flow' : 'drawing-says'} role="status">
      {wordsOf()}
    </p>
  );
}

function wordsOf(): string {
  const [fault] = heldFaults.value;
  if (fault) return shortly(fault);
  const [standing] = faults.value;
  if (standing && held.value === null) return `${shownInstead()} ${shortly(standing)}.`;
  const on = held.value ?? design.value;
  const name = touched.value;
  if (on === null || name === null || touchedAt.value !== stop.value) return '';
  const unusual = rangeFindings(on).find(({ at }) => at === name || at === `values.${name}`);
  return unusual ? shortly(unusual) : '';
}

/** What is in sight of a design that cannot be derived as it stands. */
function shownInstead(): string {
  if (sound.value !== null) return words().showing;
  const isBody = body.value !== null && BODY_STOPS.has(stop.value);
  if (isBody) return words().showingBody;
  return outlineAlone.value === null ? words().showingNothing : words().showingOutline;
}

/** Where the body in its plane is drawn as far as it goes. */
const BODY_STOPS: ReadonlySet<string> = new Set(['photograph', 'outline', 'form']);

/** Without the source and the remedy, which the notebook tells. */
function shortly({ at, found, need }: Fault): string {
  return `${placeOf(at)}: ${told(found)}; ${words().needs} ${told(need).replace(/ \(.*\)$/s, '')}`;
}
