import { accept, type Checked, type Fault, type Finding, refuse } from '../base/index.ts';
import { boundsOf, type Chain, circleChain, mirrorChain } from '../curve/index.ts';
import type { HollowPlate, Instrument } from '../instrument/index.ts';
import { type ArchedShape, archedShape } from './archedShape.ts';
import type { Board } from './board.ts';
import { type EdgedShape, edgedShape, type UnderRound, underRound } from './edgedShape.ts';
import { type HollowedShape, hollowedShape } from './hollowedShape.ts';
import type { Mesh } from './mesh.ts';
import { meshFlaws } from './meshFlaws.ts';
import { PLATE_CHORD_MM, plateSolid, rememberedInside } from './plateSolid.ts';
import { prism } from './prism.ts';
import { type RibHeights, ribHeightAt, ribSolid } from './ribSolid.ts';

/** One part as a solid: its skin, and what of it true surfaces can hold: boards and plates. */
export interface NamedSolid {
  /** File-safe: lower case letters and hyphens. */
  readonly name: string;
  readonly title: string;
  readonly mesh: Mesh;
  readonly board?: Board;
  readonly arched?: ArchedShape;
  readonly edged?: EdgedShape;
  /** Of a plate that has `edged` too. */
  readonly hollowed?: HollowedShape;
  /** Of a plate that has `edged` too. */
  readonly under?: UnderRound;
  /** What it could not be given. */
  readonly findings: readonly Finding[];
}

/**
 * Every part that has a solid: form, blocks, garland, the grooves of the purfling, and both plates as arched, with their outside
 * finished (both flat below), hollowed, and whole: edge rounded below too, sound holes cut through the top.
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

/** The sound holes as bodies, to be taken from the hollowed top: from under its gluing face to over its arch. */
function soundHoleBodies({ soundHoles, plates }: Instrument): readonly NamedBoard[] {
  const heights = { fromZMm: -BEYOND_MM, toZMm: plates.top.archHeightMm + BEYOND_MM };
  return [
    { name: 'top-sound-hole-treble', title: 'Sound hole, treble side', outer: soundHoles.treble },
    { name: 'top-sound-hole-bass', title: 'Sound hole, bass side', outer: soundHoles.bass },
  ].map((hole) => ({ ...hole, holes: [], ...heights }));
}

/** mm that a body to be taken away reaches beyond what it is taken from: faces that touch confuse programs. */
const BEYOND_MM = 2;

interface NamedBoard extends Board {
  readonly name: string;
  readonly title: string;
}

function boards(instrument: Instrument): readonly NamedBoard[] {
  const { plan } = instrument;
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
    ...grooves(instrument),
    ...soundHoleBodies(instrument),
  ];
}

/**
 * The grooves of the purfling as bodies, to be taken from a plate as arched: up to its flat edge, down to the depth of the groove.
 * None where no depth is known, or where it would go through the edge.
 */
function grooves({ design, plan, plates }: Instrument): readonly NamedBoard[] {
  const depthMm = design.values.purflingDepth?.value ?? 0;
  return (['back', 'top'] as const).flatMap((plate): readonly NamedBoard[] => {
    const { edgeHeightMm } = plates[plate].numbers;
    if (!(depthMm > 0 && depthMm < edgeHeightMm)) return [];
    const title = `${plate === 'back' ? 'Back' : 'Top'}, groove of the purfling`;
    const { outer, inner } = plan.purfling;
    const board = {
      outer: outer.chain,
      holes: [inner.chain],
      fromZMm: edgeHeightMm - depthMm,
      toZMm: edgeHeightMm,
    };
    return [{ name: `${plate}-purfling-groove`, title, ...board }];
  });
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

/** What of a plate is a solid of its own: what has been done to its outside and inside, in the order of the work. */
const PLATE_STAGES = [
  { name: 'arched', words: 'arched, flat below', plan: { state: 'arched', hollowed: false } },
  { name: 'outside', words: 'outside finished, flat below', plan: { state: 'finished', hollowed: false } },
  { name: 'finished', words: 'finished and hollowed', plan: { state: 'finished', hollowed: true } },
  { name: 'whole', words: 'whole, as on the closed body', plan: { state: 'finished', hollowed: true } },
] as const;

function plateSolids({ design, hollows, plan, soundHoles }: Instrument): readonly Checked<NamedSolid>[] {
  const outline = plan.outline.chain;
  const underRoundingMm = design.values.edgeUnderRounding?.value ?? 0;
  return (['back', 'top'] as const).flatMap((plate) => {
    const openings = plate === 'top' ? [soundHoles.treble, soundHoles.bass] : [];
    const surfaces = trueSurfaces(hollows[plate], outline, underRoundingMm);
    const insideAt = rememberedInside(hollows[plate]);
    return PLATE_STAGES.map(({ name, words, plan: stage }): Checked<NamedSolid> => {
      const work =
        name === 'whole' ? { ...stage, openings, underRoundingMm, insideAt } : { ...stage, insideAt };
      const mesh = plateSolid(hollows[plate], outline, work);
      if (!mesh.ok) return mesh;
      const title = `${plate === 'back' ? 'Back' : 'Top'}, ${words}`;
      return accept({ name: `${plate}-${name}`, title, mesh: mesh.value, ...surfaces[name] });
    });
  });
}

type TrueSurfaces = Pick<NamedSolid, 'arched' | 'edged' | 'hollowed' | 'under' | 'findings'>;

/** The true surfaces of a plate at each stage; where they cannot be made, why. */
function trueSurfaces(
  plate: HollowPlate,
  outline: Chain<'body'>,
  underRoundingMm: number,
): Readonly<Record<(typeof PLATE_STAGES)[number]['name'], TrueSurfaces>> {
  const arched = archedShape(plate.arch, outline);
  const edged = edgedShape(plate.arch, outline);
  // A top's holes are bodies of their own: where they run over a block no one surface lies under them.
  const isWhole = edged.ok && plate.arch.plate === 'back';
  const under = isWhole && underRoundingMm > 0 ? underRound(edged.value, underRoundingMm, 'back') : null;
  // Without an outside there is nothing to hollow: what it lacks is told once.
  const hollowed = edged.ok ? hollowedShape(plate) : null;
  const lacking = (shape: Checked<unknown> | null): readonly Finding[] =>
    shape === null || shape.ok ? [] : shape.faults.map((fault) => ({ ...fault, weight: 'caution' }));
  return {
    arched: { ...(arched.ok && { arched: arched.value }), findings: lacking(arched) },
    outside: { ...(edged.ok && { edged: edged.value }), findings: lacking(edged) },
    finished: {
      ...(edged.ok && hollowed?.ok && { edged: edged.value, hollowed: hollowed.value }),
      findings: lacking(hollowed),
    },
    whole: {
      ...(isWhole &&
        hollowed?.ok &&
        under?.ok !== false && {
          edged: edged.value,
          hollowed: hollowed.value,
          ...(under && { under: under.value }),
        }),
      findings: lacking(under),
    },
  };
}
