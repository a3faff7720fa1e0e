import { speechOf } from '../../core/index.ts';

const GERMAN = speechOf('de');

/** The German of what a room says, with numbers in German notation; null where it is not known. */
export function germanOf(text: string): string | null {
  return GERMAN.say(text);
}
