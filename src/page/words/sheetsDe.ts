import type { sheetsEn } from './sheetsEn.ts';

/** Was bei den Blättern steht, die mitgenommen werden. */
export const sheetsDe: typeof sheetsEn = {
  paper: 'Papierblätter',
  page: (number, of) => `Papier, Seite ${number} von ${of}`,
  laserHead: 'Laser',
  laserSays: (count) =>
    `${count} Teile, jedes in einer eigenen Datei, als DXF und SVG. Auf der Linie schneiden; die Breite des Brandes bleibt der Werkstatt überlassen.`,
  solidHead: 'Körper',
  solidSays: 'Platten, Form, Klötze und Zargen als geschlossene Körper, in Millimetern: STL, 3MF und STEP.',
  drawing: 'Die Seiten werden gelegt …',
  nearer: 'Näher ansehen',
  whole: 'Das ganze Blatt zeigen',
  size: (width, height) =>
    `${width} × ${height} mm. Beide Messbalken müssen 150 messen, bevor du schneidest.`,
  corrected: (x, y) => `Quer ${x} % und hoch ${y} % gezeichnet, gegen das, was dein Drucker tut.`,
  pageCount: (count) => (count === 1 ? '1 Seite' : `${count} Seiten`),
  pieceCount: (count) => (count === 1 ? '1 Teil' : `${count} Teile`),
  which: (some, all) => (some === all ? 'Jede Art von Teilen' : `${some} von ${all} Arten von Teilen`),
  parts: {
    form: 'Innenform',
    outline: 'Umrissschablonen',
    blocks: 'Klötze',
    ribs: 'Zargen, Reifchen, Zulagen',
    edge: 'Rand und Einlage',
    roughing: 'Pläne zum Vorwölben',
    arching: 'Wölbungsschablonen',
    hollowing: 'Aushöhlen',
    soundHoles: 'Schalllöcher',
    neck: 'Hals und Griffbrett',
    head: 'Kopf',
    bar: 'Balken und Stimme',
    setup: 'Einrichtung',
    sheet: 'Blätter',
  },
  only: (kind) => `Nur ${kind}`,
  checked: {
    title: 'Was geprüft wurde',
    pieces: { name: 'Teile', says: 'in wahrer Größe, jedes mit Namen und Platz' },
    contours: { name: 'Umrisse', says: 'geschlossen; keiner schneidet sich, keiner ist doppelt' },
    pages: { name: 'Seiten', says: 'Messbalken auf jeder, quer und hoch' },
    files: { name: 'Dateien', says: 'im Verzeichnis mit ihren Prüfsummen' },
    flaws: { name: 'Umrisse', says: 'sind so nicht zu schneiden: siehe unten, und schneide sie nicht' },
    noticed: (count) => (count === 1 ? 'Eines ist zu wissen' : `${count} Dinge sind zu wissen`),
  },
};
