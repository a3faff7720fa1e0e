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
import { instrumentSolids, meshBox, type NamedSolid } from '../../solid/index.ts';
import { type Language, speechOf } from '../../words/index.ts';
import { solidsReadme } from './solidsReadme.ts';

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
  const { tell } = speechOf(language);
  const files = solids.value.flatMap((solid): readonly PackFile[] => {
    const { name, title, mesh } = solid;
    const { min, max } = meshBox(mesh);
    const size = (axis: number): number => (max[axis] as number) - (min[axis] as number);
    const shared = { kind: 'solid', parts: [name], sizeMm: [size(0), size(1), size(2)] } as const;
    const words = `${instrument.plan.name}: ${tell(title)}`;
    const step = stepOf(solid, words);
    return [
      { ...shared, path: `solid/${name}.stl`, bytes: writeStl(words, mesh) },
      { ...shared, path: `solid/${name}.3mf`, bytes: write3mf(words, mesh, language) },
      ...(step === null
        ? []
        : [{ ...shared, path: `solid/${name}.step`, bytes: new TextEncoder().encode(step) }]),
    ];
  });
  const readme: PackFile = {
    path: 'solid/readme.txt',
    kind: 'solid',
    parts: [],
    bytes: new TextEncoder().encode(solidsReadme(language)),
  };
  return accept({ parts: [...files, readme], findings: solids.value.flatMap(({ findings }) => findings) });
}

function stepOf({ board, arched, edged, hollowed, under }: NamedSolid, words: string): string | null {
  if (board) return writeStep(words, board);
  if (arched) return writePlateStep(words, arched);
  return edged ? writeEdgedStep(words, edged, hollowed, under) : null;
}
