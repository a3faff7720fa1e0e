import { photographs, seen } from '../keeping/tracing.ts';
import { AskingStop } from './AskingStop.tsx';
import { FoundStop } from './FoundStop.tsx';

/** Photographs in hand: what is known about them is asked; then what was found in them. */
export function SeeingStop() {
  if (photographs.value.length === 0) return null;
  return seen.value ? <FoundStop seen={seen.value} /> : <AskingStop />;
}
