import { accept, type Checked, type Finding } from '../../base/index.ts';
import {
  type PackFile,
  write3mf,
  writeEdgedStep,
  writePlateStep,
  writeStep,
  writeStl,
} from '../../files/index.ts';
import type { Instrument } from '../../instrument/index.ts';
import {
  INSIDE_CHORD_MM,
  INSIDE_MM,
  instrumentSolids,
  meshBox,
  type NamedSolid,
  PLATE_CHORD_MM,
  SURFACE_MM,
} from '../../solid/index.ts';
import { type Language, speechOf } from '../../words/index.ts';

const WORDS = `Solids of the parts, in millimetres.

.stl and .3mf: closed skins of triangles within ${PLATE_CHORD_MM} mm of the parts (the inside of a hollowed plate within ${INSIDE_CHORD_MM} mm).
  An STL names no unit: tell the reading program that the numbers are millimetres. A 3MF says so itself.
.step: true surfaces, each part one closed solid: form, blocks and plates. Planes, cylinders and tori are exact; arch and scoop are
  smooth surfaces within ${SURFACE_MM} mm of the design's, the inside of a hollowed plate within ${INSIDE_MM} mm.

Plates lie with their gluing face on z = 0, the lower end at y = 0, the centre line at x = 0, seen from outside.
back-arched and top-arched are flat below, their edge flat on top, for milling before the purfling; back-outside and top-outside have the
edge scooped and rounded too; back-finished and top-finished are hollowed; back-whole and top-whole are as on the closed body: the edge
rounded below too, as is done when the plates are on, and the sound holes cut, straight down to the gluing face as a mill cuts them.
back-purfling-groove and top-purfling-groove are the groove itself, to be taken from the arched plate: bottom at its depth, walls upright;
top-sound-hole-treble and top-sound-hole-bass the holes, to be taken from top-finished (for top-whole has no .step).
Leave an allowance of wood in your machine's program; the last of it is for gouge and scraper.

Routers, mills and printers can hurt: clamp the work, wear eye and ear protection, draw off dust and fumes, never leave a
running machine alone, and follow its manual and the local rules.
`;

/** The files of a pack's solids, and what is missing of them. */
export interface SolidParts {
  readonly parts: readonly PackFile[];
  readonly findings: readonly Finding[];
}

/**
 * The files of a pack's solids: every part as STL and 3MF, boards and plates as STEP too. Faults: those of
 * {@link instrumentSolids}.
 */
export function solidParts(instrument: Instrument, language: Language = 'en'): Checked<SolidParts> {
  const solids = instrumentSolids(instrument);
  if (!solids.ok) return solids;
  const files = solids.value.flatMap((solid): readonly PackFile[] => {
    const { name, title, mesh } = solid;
    const { min, max } = meshBox(mesh);
    const size = (axis: number): number => (max[axis] as number) - (min[axis] as number);
    const shared = { kind: 'solid', parts: [name], sizeMm: [size(0), size(1), size(2)] } as const;
    const words = `${instrument.plan.name}: ${title}`;
    const step = stepOf(solid, words);
    return [
      { ...shared, path: `solid/${name}.stl`, bytes: writeStl(words, mesh) },
      { ...shared, path: `solid/${name}.3mf`, bytes: write3mf(words, mesh) },
      ...(step === null
        ? []
        : [{ ...shared, path: `solid/${name}.step`, bytes: new TextEncoder().encode(step) }]),
    ];
  });
  const readme: PackFile = {
    path: 'solid/readme.txt',
    kind: 'solid',
    parts: [],
    bytes: new TextEncoder().encode(speechOf(language).say(WORDS) ?? WORDS),
  };
  return accept({ parts: [...files, readme], findings: solids.value.flatMap(({ findings }) => findings) });
}

function stepOf({ board, arched, edged, hollowed, under }: NamedSolid, words: string): string | null {
  if (board) return writeStep(words, board);
  if (arched) return writePlateStep(words, arched);
  return edged ? writeEdgedStep(words, edged, hollowed, under) : null;
}
