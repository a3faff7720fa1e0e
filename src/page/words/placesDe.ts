import type { placesEn } from './placesEn.ts';

/** Was zu einzelnen Stellen mit eigener Stärke gesagt wird, auf Deutsch. */
export const placesDe: typeof placesEn = {
  title: 'Stärke an einzelnen Stellen',
  none: 'Noch keine. Gib vor, was am Original gemessen wurde: der Plan geht hindurch, auf beiden Hälften.',
  name: (number) => `Stelle ${number}`,
  where: (across, up) => `${across} von der Mittellinie, ${up} vom unteren Ende`,
  label: (number, across, up) =>
    `Stärke an Stelle ${number}, ${across} von der Mittellinie, ${up} vom unteren Ende`,
  says: (number, thickness) => `Stärke an Stelle ${number} ${thickness}`,
  without: (number) => `ohne Stelle ${number}`,
  drop: 'wegnehmen',
  fields: { across: 'von der Mittellinie', up: 'vom unteren Ende', thickness: 'Stärke dort' },
  ask: 'Vorgeben',
};
