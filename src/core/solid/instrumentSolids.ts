import { accept, type Checked, type Fault, type Finding, refuse } from '../base/index.ts';
import { boundsOf, circleChain, mirrorChain } from '../curve/index.ts';
import type { Instrument } from '../instrument/index.ts';
import { type ArchedShape, archedShape } from './archedShape.ts';
import type { Board } from './board.ts';
import type { Mesh } from './mesh.ts';
import { meshFlaws } from './meshFlaws.ts';
import { PLATE_CHORD_MM, plateSolid } from './plateSolid.ts';
import { prism } from './prism.ts';
import { type RibHeights, ribHeightAt, ribSolid } from './ribSolid.ts';

/** One part as a solid: its skin, and what of it true surfaces can hold: boards, and plates that are arched. */
export interface NamedSolid {
  /** File-safe: lower case letters and hyphens. */
  readonly name: string;
  readonly title: string;
  readonly mesh: Mesh;
  readonly board?: Board;
  readonly arched?: ArchedShape;
  /** What it could not be given. */
  readonly findings: readonly Finding[];
}

/**
 * Every part that has a solid: form, blocks, garland, and both plates as arched (flat below) and as finished (hollowed).
 * Every skin is looked over before it is handed out. Faults: `solid.…`.
 */
export function instrumentSolids(instrument: Instrument): Checked<readonly NamedSolid[]> {
  const made = [...boards(instrument).map(boardSolid), garland(instrument), ...plateSolids(instrument)];
  const faults: Fault[] = made.flatMap((solid) =>
    solid.ok ? meshFlaws(solid.value.name, solid.value.mesh) : solid.faults,
  );
  return faults.length > 0
    ? refuse(...faults)
    : accept(made.flatMap((solid) => (solid.ok ? [solid.value] : [])));
}

interface NamedBoard extends Board {
  readonly name: string;
  readonly title: string;
}

function boards({ plan }: Instrument): readonly NamedBoard[] {
  const { form, blocks } = plan;
  const heights = ribHeights(plan);
  return [
    {
      name: 'form',
      title: 'Inner form',
      outer: form.outline,
      holes: [...form.clampHoles, ...form.pins].map(({ centre, radiusMm }) =>
        circleChain(centre, radiusMm, true),
      ),
      fromZMm: 0,
      toZMm: form.thicknessMm,
    },
    ...blocks.parts.flatMap(({ name, count, outline }): NamedBoard[] => {
      // As high as the ribs at its higher end; the rest is planed off with them.
      const { min, max } = boundsOf(outline);
      const toZMm = Math.max(ribHeightAt(heights, min.y), ribHeightAt(heights, max.y));
      const board = { holes: [], fromZMm: 0, toZMm };
      const file = name.replace(/ /g, '-');
      const title = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
      if (count === 1) return [{ ...board, name: file, title, outer: outline }];
      return [
        { ...board, name: `${file}-treble`, title: `${title}, treble side`, outer: outline },
        { ...board, name: `${file}-bass`, title: `${title}, bass side`, outer: mirrorChain(outline) },
      ];
    }),
  ];
}

function boardSolid({ name, title, ...board }: NamedBoard): Checked<NamedSolid> {
  const mesh = prism(board.outer, board.holes, board.fromZMm, board.toZMm, PLATE_CHORD_MM);
  return accept({ name, title, mesh, board, findings: [] });
}

function ribHeights({ ribs, outline }: Instrument['plan']): RibHeights {
  return { tailMm: ribs.heightTailMm, neckMm: ribs.heightNeckMm, bodyLengthMm: outline.bodyLengthMm };
}

function garland({ plan }: Instrument): Checked<NamedSolid> {
  const { outer, inner } = plan.ribs;
  return accept({
    name: 'garland',
    title: 'Garland of ribs',
    mesh: ribSolid(outer.sections, inner.sections, ribHeights(plan), PLATE_CHORD_MM),
    findings: [],
  });
}

function plateSolids({ hollows, plan }: Instrument): readonly Checked<NamedSolid>[] {
  return (['back', 'top'] as const).flatMap((plate) =>
    (['arched', 'finished'] as const).map((state): Checked<NamedSolid> => {
      const hollowed = state === 'finished';
      const mesh = plateSolid(hollows[plate], plan.outline.chain, { state, hollowed });
      if (!mesh.ok) return mesh;
      const title = `${plate === 'back' ? 'Back' : 'Top'}, ${hollowed ? 'finished and hollowed' : 'arched, flat below'}`;
      const solid = { name: `${plate}-${state}`, title, mesh: mesh.value, findings: [] };
      if (hollowed) return accept(solid);
      const arched = archedShape(hollows[plate].arch, plan.outline.chain);
      if (arched.ok) return accept({ ...solid, arched: arched.value });
      return accept({ ...solid, findings: arched.faults.map((fault) => ({ ...fault, weight: 'caution' })) });
    }),
  );
}
