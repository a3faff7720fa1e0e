import { signal } from '@preact/signals';
import { germanNameOf, LANGUAGES, type Language, VALUES, type ValueName } from '../../core/index.ts';
import { keepChoice, keptOneOf } from '../keeping/choices.ts';
import { de } from './de.ts';
import { en, type Words } from './en.ts';
import { trueSign } from './trueSign.ts';

const CATALOGUES: Readonly<Record<Language, Words>> = { en, de };

export const language = signal<Language>(
  keptOneOf('language', LANGUAGES) ?? (navigator.language.startsWith('de') ? 'de' : 'en'),
);

/** The page speaks another language from now on, here and the next time. */
export function speak(next: Language): void {
  language.value = next;
  keepChoice('language', next);
}

/** The words of the language that the page speaks now. */
export function words(): Words {
  return CATALOGUES[language.value];
}

/** What a number is called in the notebook: the short name, or what it means. */
export function nameOf(name: string): string {
  const short = words().names[name];
  if (short !== undefined) return short;
  const german = language.value === 'de' ? germanNameOf(name) : null;
  if (german !== null) return german;
  if (name in VALUES) return VALUES[name as ValueName].says;
  return name
    .replace(/\./g, ', ')
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}

/** Making a format costs far more than using it. */
const formats = new Map<string, Intl.NumberFormat>();

/** A number in the notation of the language, with as many decimals as are good for a maker. */
export function print(value: number, decimals = 1): string {
  const key = `${language.value} ${decimals}`;
  const format =
    formats.get(key) ??
    new Intl.NumberFormat(language.value, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    });
  formats.set(key, format);
  return trueSign(format.format(value));
}

/** A day as it is said: 30 October. */
export function dayText(iso: string): string {
  const notation = language.value === 'en' ? 'en-GB' : 'de-DE';
  return new Date(`${iso}T12:00`).toLocaleDateString(notation, { day: 'numeric', month: 'long' });
}
