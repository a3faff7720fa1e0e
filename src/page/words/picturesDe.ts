import type { picturesEn } from './picturesEn.ts';

/** Worte zu den Bildern einer Platte. */
export const picturesDe: typeof picturesEn = {
  open: 'Bilder davon',
  title: 'Bild',
  kinds: {
    contours: 'Höhenlinien',
    curvature: 'Krümmungskarte',
    'raking-light': 'eine tiefe Lampe',
    thickness: 'Stärkenkarte',
    section: 'ein eigener Schnitt',
    difference: 'Unterschied zu dem, was darüberliegt',
  },
  interval: 'zwischen zwei Linien, mm',
  line: 'von x,y nach x,y: quer von der Mittellinie, hoch vom unteren Ende',
  keep: 'Aufheben als',
};
