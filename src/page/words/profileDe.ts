import type { profileEn } from './profileEn.ts';

/** Was über Fotos von Wölbungen und Köpfen gesagt wird, auf Deutsch. */
export const profileDe: typeof profileEn = {
  link: { arch: 'Eine Wölbung vom Foto ablesen …', head: 'Den Kopf vom Foto ablesen …' },
  question: { arch: 'Welche Wölbung ist es?', head: 'Welcher Kopf ist es?' },
  lead: {
    arch: 'Eine nach der Wölbung geschnittene Karte oder eine an ihr gezogene Linie liegt auf dem Messblatt; ein Foto von oben.',
    head: 'Der Kopf liegt auf der Seite auf dem Messblatt; ein Foto von oben, die Schnecke ganz zu sehen.',
  },
  choose: 'Das Foto wählen',
  another: 'Ein anderes Foto',
  read: 'Ablesen',
  reading: 'Es wird abgelesen …',
  take: 'In die Zeichnung nehmen',
  leave: 'Lassen',
  of: 'in welcher Richtung',
  kinds: {
    'cross-arch': 'quer über die Platte',
    'long-arch': 'längs in der Mitte',
    scroll: 'Seite des Kopfes',
  },
  plate: 'von welcher Platte',
  station: 'wo auf der Platte',
  how: 'was auf dem Blatt liegt',
  hows: {
    card: 'eine danach geschnittene Karte, ihre gerade Kante an der Leimfläche',
    free: 'eine Karte ohne solche Kante: Höhen von Ende zu Ende',
    drawn: 'eine Linie, auf Papier gezogen',
  },
  right: 'was rechts davon liegt',
  rights: {
    unknown: 'nicht bekannt',
    treble: 'Diskantseite',
    bass: 'Bassseite',
    neck: 'der Hals',
    'lower-end': 'das untere Ende',
  },
  leaveOut: 'auslassen, was Stimme, Balken oder Last verschoben haben',
  sheetBar: 'Messbalken auf deinem Blatt',
  height: { arch: 'Dicke der Karte', head: 'halbe Breite der Schnecke' },
  heightHow: {
    arch: 'So hoch über dem Blatt liegt, was abgelesen wird. Leer: es liegt darauf.',
    head: 'So hoch über dem Blatt liegt die Mitte des Kopfes, die gezeichnet wird: bei der Geige etwa 20.',
  },
  asRead: 'wie es abgelesen ist',
  points: 'abgelesene Stellen',
  rise: 'Stich',
  fullness: 'Fülle',
  fit: 'die Kurve verfehlt die Stellen um',
  each: 'jede Stelle',
  drawing: 'die Linie, wie sie abgelesen ist, aufrecht',
  taken: {
    'cross-arch': 'Wölbung vom Foto',
    'long-arch': 'Längswölbung vom Foto',
    scroll: 'Kopf vom Foto',
  },
};
