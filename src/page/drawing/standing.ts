import { isMakersOwn, type ValueName } from '../../core/index.ts';
import { design, held } from '../store.ts';

/**
 * A number as it stands at this moment, ahead of what is drawn from it: where the hand holds it, or as the maker gave it. What was
 * only proposed may have been solved anew, and is as it was drawn.
 */
export function standing(name: ValueName, shown: number): number {
  const given = held.value?.values[name];
  if (given) return given.value;
  const own = design.value?.values[name];
  return own && isMakersOwn(own) ? own.value : shown;
}
