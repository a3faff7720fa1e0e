import type { Catalogue } from '../catalogue.ts';

/** What goes along with the solids of a pack. */
export const solidWords: Catalogue = {
  'Solids of the parts, in millimetres.': 'Körper der Teile, in Millimetern.',
  '.stl and .3mf: closed skins of triangles within {} mm of the parts (the inside of a hollowed plate within {} mm).':
    '.stl und .3mf: geschlossene Häute aus Dreiecken, höchstens {} mm von den Teilen (das Innere einer ausgehöhlten Platte höchstens {} mm).',
  'An STL names no unit: tell the reading program that the numbers are millimetres.':
    'Eine STL nennt keine Einheit: sag dem lesenden Programm, dass die Zahlen Millimeter sind.',
  'A 3MF says so itself.': 'Eine 3MF sagt es selbst.',
  '.step: true surfaces, each part one closed solid: form, blocks and plates.':
    '.step: wahre Flächen, jedes Teil ein geschlossener Körper: Form, Klötze und Platten.',
  "Planes, cylinders and tori are exact; arch and scoop are smooth surfaces within {} mm of the design's, the inside of a hollowed plate within {} mm.":
    'Ebenen, Zylinder und Tori sind genau; Wölbung und Kehle sind glatte Flächen, höchstens {} mm von denen des Entwurfs, das Innere einer ausgehöhlten Platte höchstens {} mm.',
  'Plates lie with their gluing face on z = 0, the lower end at y = 0, the centre line at x = 0, seen from outside.':
    'Platten liegen mit der Leimfläche auf z = 0, dem unteren Ende bei y = 0, der Mittellinie bei x = 0, von außen gesehen.',
  'They come in four stages, each named in its file: "arched" is flat below, its edge flat on top, for milling before the purfling; "outside" has the edge scooped and rounded too; "finished" is hollowed; "whole" is as on the closed body, the edge rounded below too, as is done when the plates are on, and the sound holes cut, straight down to the gluing face as a mill cuts them.':
    'Es gibt vier Stufen, jede im Namen ihrer Datei: „arched“ ist unten eben, der Rand oben flach, zum Fräsen vor der Einlage; „outside“ hat auch den Rand gekehlt und gerundet; „finished“ ist ausgehöhlt; „whole“ ist wie am geschlossenen Korpus, der Rand auch unten gerundet, wie man es tut, wenn die Platten aufgeleimt sind, und die Schalllöcher geschnitten, gerade hinunter zur Leimfläche, wie ein Fräser sie schneidet.',
  'The files named "purfling-groove" are the groove itself, to be taken from the arched plate: bottom at its depth, walls upright.':
    'Die Dateien „purfling-groove“ sind der Einlagegraben selbst, von der Platte „arched“ abzuziehen: der Grund in seiner Tiefe, die Wände senkrecht.',
  'Those named "sound-hole" are the holes, to be taken from the finished top (for the whole one has no .step).':
    'Die Dateien „sound-hole“ sind die Löcher, von der Decke „finished“ abzuziehen (denn „whole“ hat keine .step).',
  "Leave an allowance of wood in your machine's program; the last of it is for gouge and scraper.":
    'Lass im Programm der Maschine eine Zugabe an Holz; der Rest ist für Hohleisen und Ziehklinge.',
  'Routers, mills and printers can hurt: clamp the work, wear eye and ear protection, draw off dust and fumes, never leave a running machine alone, and follow its manual and the local rules.':
    'Fräsen und Drucker können verletzen: spann das Werkstück fest, trag Augen- und Gehörschutz, saug Staub und Rauch ab, lass eine laufende Maschine nie allein und folge ihrer Anleitung und den örtlichen Regeln.',
};
