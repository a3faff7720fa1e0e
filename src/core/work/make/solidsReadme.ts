import { INSIDE_CHORD_MM, INSIDE_MM, PLATE_CHORD_MM, SURFACE_MM } from '../../solid/index.ts';
import { type Language, speechOf } from '../../words/index.ts';

/** Columns of a plain text: what fits beside a window of pictures. */
const COLUMNS = 120;

const PARAGRAPHS = [
  'Solids of the parts, in millimetres.',
  `.stl and .3mf: closed skins of triangles within ${PLATE_CHORD_MM} mm of the parts (the inside of a hollowed plate within ${INSIDE_CHORD_MM} mm). An STL names no unit: tell the reading program that the numbers are millimetres. A 3MF says so itself.`,
  `.step: true surfaces, each part one closed solid: form, blocks and plates. Planes, cylinders and tori are exact; arch and scoop are smooth surfaces within ${SURFACE_MM} mm of the design's, the inside of a hollowed plate within ${INSIDE_MM} mm.`,
  'Plates lie with their gluing face on z = 0, the lower end at y = 0, the centre line at x = 0, seen from outside. They come in four stages, each named in its file: "arched" is flat below, its edge flat on top, for milling before the purfling; "outside" has the edge scooped and rounded too; "finished" is hollowed; "whole" is as on the closed body, the edge rounded below too, as is done when the plates are on, and the sound holes cut, straight down to the gluing face as a mill cuts them.',
  'The files named "purfling-groove" are the groove itself, to be taken from the arched plate: bottom at its depth, walls upright. Those named "sound-hole" are the holes, to be taken from the finished top (for the whole one has no .step).',
  "Leave an allowance of wood in your machine's program; the last of it is for gouge and scraper.",
  'Routers, mills and printers can hurt: clamp the work, wear eye and ear protection, draw off dust and fumes, never leave a running machine alone, and follow its manual and the local rules.',
];

/** What goes along with the solids of a pack, in its language. */
export function solidsReadme(language: Language): string {
  const { tell } = speechOf(language);
  return `${PARAGRAPHS.map((paragraph) => wrapped(tell(paragraph))).join('\n\n')}\n`;
}

function wrapped(text: string): string {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && longer.length <= COLUMNS) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.join('\n');
}
