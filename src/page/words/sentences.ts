import { type Fault, germanNameOf, VALUES } from '../../core/index.ts';
import { germanOf } from './told.ts';
import { language, nameOf, words } from './words.ts';

/** What a room says, in the language of the page; as it stands where that is not known. */
export function told(text: string): string {
  return language.value === 'de' ? (germanOf(text) ?? text) : text;
}

/** One sentence for a fault or finding, with the place it lies in. */
export function sentenceOf(fault: Fault): string {
  return `${placeOf(fault.at)}: ${remarkOf(fault, 'within')}`;
}

/** The same without its place, for where the place is plain. */
export function remarkOf({ found, need, remedy }: Fault, stands: 'alone' | 'within' = 'alone'): string {
  const begun = stands === 'alone' ? capital(told(found)) : told(found);
  return `${begun}; ${words().needs} ${told(need)}. ${capital(told(remedy))}.`;
}

/** A place as a maker names it: a number by its name, a list of them one by one, a file as it is called. */
export function placeOf(at: string): string {
  return at
    .replace(/\bvalues\./g, '')
    .split(', ')
    .map((name) => words().see.askedAs[name] ?? (isNumber(name) ? nameOf(name) : told(name)))
    .join(', ');
}

function isNumber(name: string): boolean {
  return name in VALUES || words().names[name] !== undefined || germanNameOf(name) !== null;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
