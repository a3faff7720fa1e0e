import { type Fault, rangeFindings } from '../../core/index.ts';
import { design, held, heldFaults, touched } from '../store.ts';
import { placeOf, told } from '../words/sentences.ts';
import { words } from '../words/words.ts';

/** In words, over the drawing: that what the hand holds cannot be drawn, or that the number it is on is far from what is usual. */
export function HandSays() {
  return (
    <p class="hand-says" role="status">
      {wordsOf()}
    </p>
  );
}

function wordsOf(): string {
  const [fault] = heldFaults.value;
  if (fault) return shortly(fault);
  const on = held.value ?? design.value;
  const name = touched.value;
  if (on === null || name === null) return '';
  const unusual = rangeFindings(on).find(({ at }) => at === name || at === `values.${name}`);
  return unusual ? shortly(unusual) : '';
}

/** Without the source and the remedy, which the notebook tells. */
function shortly({ at, found, need }: Fault): string {
  return `${placeOf(at)}: ${told(found)}; ${words().needs} ${told(need).replace(/ \(.*\)$/s, '')}`;
}
