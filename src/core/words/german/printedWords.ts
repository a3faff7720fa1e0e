import type { Catalogue } from '../catalogue.ts';

/** What stands on printed pages beside the pieces. */
export const printedWords: Catalogue = {
  'Print at actual size (100 %), with no fitting to the page.':
    'In Originalgröße drucken (100 %), ohne Anpassen an die Seite.',
  'Measure both bars on every page before you trim it: each must be 150 mm between its end lines, to a quarter of a millimetre.':
    'Miss auf jeder Seite beide Maßstäbe, bevor du sie beschneidest: jeder muss zwischen seinen Endstrichen 150 mm haben, auf einen Viertelmillimeter genau.',
  'Trim tiled pages along the dashed line at their left and at their foot. Lay each over its left and its lower neighbour so that the crosses meet, seen against the light or pricked through, and tape them.':
    'Schneide geteilte Seiten längs der gestrichelten Linie links und unten ab. Leg jede über ihre linke und untere Nachbarin, so dass sich die Kreuze decken, gegen das Licht gesehen oder durchgestochen, und kleb sie fest.',
  'Glue the sheet to card, plywood or sheet metal, and cut on the line. Cut away from the hand; with a saw, router or laser keep to its manual and guard eyes, ears and lungs.':
    'Kleb das Blatt auf Karton, Sperrholz oder Blech und schneide auf der Linie. Schneide von der Hand weg; bei Säge, Fräse oder Laser halte dich an die Anleitung und schütze Augen, Ohren und Lunge.',
  'score, do not cut through': 'anreißen, nicht durchschneiden',
  'for reference': 'zum Vergleich',
  'trim the paper': 'Papier beschneiden',
  'tile {}': 'Teil {}',
  'page {} of {}': 'Seite {} von {}',
  'page {}': 'Seite {}',
  'p. {}': 'S. {}',
  'pages {}': 'Seiten {}',
  '{} pages': '{} Seiten',
  'Map and pieces, continued': 'Übersicht und Stücke, Fortsetzung',
  'Templates at true size': 'Schablonen in wahrer Größe',
  Pieces: 'Stücke',
  'Pieces {} and {}': 'Stücke {} und {}',
  Notes: 'Hinweise',
  'make {}': '{} Stück',
  'Both bars must measure 150 mm. If not, do not cut: print again at actual size (100 %), or give the two lengths and print the corrected pages.':
    'Beide Maßstäbe müssen 150 mm messen. Sonst nicht schneiden: in Originalgröße (100 %) neu drucken oder beide Längen angeben.',
  'Corrected for a printer that drew the bars {} mm across and {} mm up.':
    'Berichtigt für einen Drucker, der die Maßstäbe quer {} mm und hoch {} mm lang zeichnete.',
};
