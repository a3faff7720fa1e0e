import type { keptEn } from './keptEn.ts';

/** Was über frühere Sitzungen gesagt wird, auf Deutsch. */
export const keptDe: typeof keptEn = {
  goOn: (name) => `Weiter mit ${name}`,
  sitting: (family, length) => `${family}, ${length}`,
  steps: (count) => (count === 0 ? 'noch nichts geändert' : count === 1 ? '1 Schritt' : `${count} Schritte`),
  inFile: (name) => `in ${name}`,
  changed: (name) => `geändert, seit es in ${name} gelegt wurde`,
  onlyHere: 'nur in diesem Browser',
  photographs: (names) => `Weiter mit ${names}`,
  notSettled: 'Fotos, der Rand noch nicht abgemacht',
  gone: 'Die Bilder dazu sind nicht mehr hier. Bring sie noch einmal herein.',
  drop: 'Wegwerfen',
  dropOf: (name) => `${name} wegwerfen`,
  dropped: (name) => `${name} ist weggeworfen.`,
  putBack: 'Zurücknehmen',
  own: 'Sein Foto noch einmal ansehen',
  ownWhy:
    'Mit allem, was dazu gesagt und gezeigt wurde. Ein neuer Umriss lässt deine eigenen Zahlen, wie sie sind.',
};
