export type { Catalogue } from './catalogue.ts';
export { shortNames } from './german/shortNames.ts';
export { GERMAN, germanNameOf, LANGUAGES, type Language, type Speech, speechOf } from './speech.ts';
