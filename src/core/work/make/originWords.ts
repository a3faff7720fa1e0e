import { type Origin, originText } from '../../quantity/index.ts';
import { germanNameOf, type Language, shortNames, speechOf } from '../../words/index.ts';

/** Where a number comes from, in a few words of a language. */
export function originWords(origin: Origin, language: Language): string {
  if (language === 'en') return originText(origin);
  const { tell } = speechOf(language);
  const withNote = (words: string, note: string | undefined): string =>
    note === undefined ? words : `${words}: ${tell(note)}`;
  switch (origin.kind) {
    case 'measured':
      return `gemessen: ${tell(origin.from)}`;
    case 'published':
      return `veröffentlicht: ${origin.source}`;
    case 'common-practice':
      return withNote('allgemein üblich', origin.note);
    case 'from-memory':
      return withNote('aus dem Gedächtnis', origin.note);
    case 'chosen':
      return origin.why?.startsWith('by us')
        ? withNote('von uns gewählt', origin.why.replace(/^by us:? ?/, '') || undefined)
        : withNote('gewählt', origin.why);
    case 'derived': {
      const names = origin.from.map((name) => shortNames[name] ?? germanNameOf(name) ?? name);
      return withNote(names.length > 0 ? `abgeleitet aus ${names.join(', ')}` : 'abgeleitet', origin.how);
    }
  }
}
