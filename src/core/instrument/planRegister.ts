import type { ValueName } from '../design/index.ts';
import type { RegisterEntry, Unit } from '../quantity/index.ts';
import { caulEntries } from './cauls/caulRegister.ts';
import { liningEntries } from './linings/liningRegister.ts';
import type { PlanParts } from './plan.ts';

/** What the shape of the outline depends on: for the register, where the outline itself is one line. */
const OUTLINE = ['outline'] as const;

/** Every derived dimension in the plane, each with the names it is derived from. */
export function registerOfPlan(parts: Omit<PlanParts, 'registerEntries'>): readonly RegisterEntry[] {
  return [
    ...outlineEntries(parts),
    ...ribEntries(parts),
    ...blockEntries(parts),
    ...liningEntries(parts.linings),
    ...formEntries(parts),
    ...caulEntries(parts.cauls),
  ];
}

type Dependence = ValueName | 'outline';

function entry(
  name: string,
  value: number,
  from: readonly Dependence[],
  how: string,
  unit: Unit = 'mm',
): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from, how } };
}

function outlineEntries({ outline, purfling }: Omit<PlanParts, 'registerEntries'>): RegisterEntry[] {
  const purflingFrom = ['outline', 'purflingToEdge', 'purflingWidth'] as const;
  const mitre = 'depth of the mitre of the inner line inside the corner end';
  return [
    entry('outline.bodyLength', outline.bodyLengthMm, OUTLINE, 'from end to end on the centre line'),
    entry('outline.lowerBout', outline.lowerBout.widthMm, OUTLINE, 'widest place, exact on the arcs'),
    entry('outline.lowerBoutStation', outline.lowerBout.stationMm, OUTLINE, 'height of the widest place'),
    entry('outline.waist', outline.waist.widthMm, OUTLINE, 'narrowest place, exact on the arcs'),
    entry('outline.waistStation', outline.waist.stationMm, OUTLINE, 'height of the narrowest place'),
    entry('outline.upperBout', outline.upperBout.widthMm, OUTLINE, 'widest place, exact on the arcs'),
    entry('outline.upperBoutStation', outline.upperBout.stationMm, OUTLINE, 'height of the widest place'),
    entry('outline.lowerCorners', outline.lowerCorner.overCornersMm, OUTLINE, 'over the outermost tips'),
    entry(
      'outline.lowerCornerStation',
      outline.lowerCorner.stationMm,
      OUTLINE,
      'height of the outermost tip',
    ),
    entry('outline.lowerCornerEnd', outline.lowerCorner.endWidthMm, OUTLINE, 'tip to tip'),
    entry('outline.upperCorners', outline.upperCorner.overCornersMm, OUTLINE, 'over the outermost tips'),
    entry(
      'outline.upperCornerStation',
      outline.upperCorner.stationMm,
      OUTLINE,
      'height of the outermost tip',
    ),
    entry('outline.upperCornerEnd', outline.upperCorner.endWidthMm, OUTLINE, 'tip to tip'),
    entry('outline.area', outline.areaMm2, OUTLINE, 'inside the edge of the plate', 'mm²'),
    entry('outline.perimeter', outline.perimeterMm, OUTLINE, 'round the edge of the plate'),
    entry('purfling.lowerMitreDepth', purfling.inner.lowerCorner.depthMm, purflingFrom, mitre),
    entry('purfling.upperMitreDepth', purfling.inner.upperCorner.depthMm, purflingFrom, mitre),
    ...(['lower', 'upper'] as const).flatMap((which) => [
      entry(
        `purfling.${which}Apex`,
        purfling.outer[`${which}Corner`].depthMm,
        ['outline', 'purflingToEdge'],
        'where the outer lines meet, inside the corner end',
      ),
      entry(
        `purfling.${which}Sting`,
        purfling.corners[which].sting.lengthMm,
        ['outline', 'purflingToEdge', 'stingLength', 'stingAside'],
        'length of the point beyond the mitre, as far as the corner has room',
      ),
    ]),
  ];
}

const RIB_NAMES = { lowerBout: 'lower', cBout: 'waist', upperBout: 'upper' } as const;

function ribEntries({ ribs }: Omit<PlanParts, 'registerEntries'>): RegisterEntry[] {
  const from = ['outline', 'overhang', 'cornerOverhang'] as const;
  const flatFrom = [...from, 'ribThickness'] as const;
  const bendFrom = ['outline', 'overhang', 'ribThickness'] as const;
  const face = 'along the outer face of the rib';
  const allowance = 'length laid flat and 10 mm at each end, common practice';
  const across = 'in one piece across the centre line, 10 mm at each end, common practice';
  const strip = 'greatest rib height and 3 mm, common practice';
  return [
    entry(
      'ribs.inset',
      ribs.inner.insetMm,
      ['overhang', 'ribThickness'],
      'edge of the plate to inner outline',
    ),
    entry('ribs.lowerLength', ribs.lowerBout.lengthMm, from, face),
    entry('ribs.waistLength', ribs.cBout.lengthMm, from, face),
    entry('ribs.upperLength', ribs.upperBout.lengthMm, from, face),
    ...(['lowerBout', 'cBout', 'upperBout'] as const).map((section) =>
      entry(
        `ribs.${RIB_NAMES[section]}Developed`,
        ribs[section].developed.lengthMm,
        flatFrom,
        'laid flat, along the middle of its thickness',
      ),
    ),
    entry('ribs.garland', ribs.garlandMm, from, 'all six ribs along their outer faces'),
    entry('ribs.lowerCut', ribs.lowerBout.cutMm, flatFrom, allowance),
    entry('ribs.lowerCutAcross', ribs.lowerBout.cutAcrossMm ?? 0, flatFrom, across),
    entry('ribs.waistCut', ribs.cBout.cutMm, flatFrom, allowance),
    entry('ribs.upperCut', ribs.upperBout.cutMm, flatFrom, allowance),
    entry('ribs.upperCutAcross', ribs.upperBout.cutAcrossMm ?? 0, flatFrom, across),
    entry('ribs.stripWidth', ribs.stripWidthMm, ['ribHeightNeck', 'ribHeightTail'], strip),
    ...(['lowerBout', 'cBout', 'upperBout'] as const).flatMap((section) => [
      entry(
        `ribs.${RIB_NAMES[section]}TightestBend`,
        ribs[section].bend.tightestMm,
        bendFrom,
        'radius inside the bend',
      ),
      entry(
        `ribs.${RIB_NAMES[section]}Stretch`,
        ribs[section].bend.stretch,
        bendFrom,
        't / (2R + t)',
        'ratio',
      ),
    ]),
    entry('ribs.lowerCornerEnd', ribs.outer.lowerCorner.widthMm, from, 'width of the rib corner'),
    entry('ribs.upperCornerEnd', ribs.outer.upperCorner.widthMm, from, 'width of the rib corner'),
    ...(['lower', 'upper'] as const).flatMap((which) => [
      entry(
        `ribs.${which}BesideCorner`,
        ribs.besideCornerMm[which],
        flatFrom,
        'overhang of the plate beside the end of the rib corner, square to its sides',
      ),
      entry(
        `ribs.${which}BlockShows`,
        ribs.joints[which].blockShowsMm,
        flatFrom,
        'width of the block between both rib ends; 0 where they meet on it',
      ),
      entry(
        `ribs.${which}CornerOpening`,
        (ribs.joints[which].openingRad * 180) / Math.PI,
        from,
        'how both ribs open at the corner',
        'deg',
      ),
      entry(
        `ribs.${which}BoutBevel`,
        (ribs.joints[which].bevelRad.bout * 180) / Math.PI,
        from,
        'end of the outer rib, from its own face; 0 where it goes over uncut',
        'deg',
      ),
      entry(
        `ribs.${which}WaistBevel`,
        (ribs.joints[which].bevelRad.waist * 180) / Math.PI,
        from,
        'end of the waist rib, from its own face; 0 where it goes over uncut',
        'deg',
      ),
    ]),
    entry(
      'ribs.count',
      ribs.count,
      ['outline'],
      [
        ribs.choice.lowerRib === 'one-piece' ? 'the lower rib in one piece' : '',
        ribs.choice.upperRib === 'one-piece' ? 'the upper rib in one piece' : '',
      ]
        .filter((words) => words !== '')
        .join(', ') || 'two on every bout',
      'count',
    ),
  ];
}

function blockEntries({ blocks }: Omit<PlanParts, 'registerEntries'>): RegisterEntry[] {
  const reaches: Record<string, readonly Dependence[]> = {
    'lower block': ['outline', 'overhang', 'ribThickness', 'lowerBlockWidth', 'lowerBlockDepth'],
    'lower corner block': cornerFrom('lower'),
    'upper corner block': cornerFrom('upper'),
    'upper block': ['outline', 'overhang', 'ribThickness', 'upperBlockWidth', 'upperBlockDepth'],
  };
  return blocks.parts.flatMap((part) => {
    const from = reaches[part.name] ?? OUTLINE;
    const name = `blocks.${part.name.replace(/ (.)/g, (_, letter: string) => letter.toUpperCase())}`;
    const heights = ['ribHeightNeck', 'ribHeightTail'] as const;
    return [
      entry(`${name}.across`, part.acrossMm, from, 'finished, across the body'),
      entry(`${name}.along`, part.alongMm, from, 'finished, along the centre line'),
      entry(
        `${name}.blankAcross`,
        part.blank.acrossMm,
        from,
        '3 mm on the sides to be shaped, common practice',
      ),
      entry(
        `${name}.blankAlong`,
        part.blank.alongMm,
        from,
        '3 mm on the sides to be shaped, common practice',
      ),
      entry(
        `${name}.blankHeight`,
        part.blank.heightMm,
        heights,
        'greatest rib height and 1 mm, common practice',
      ),
    ];
  });
}

function cornerFrom(which: 'lower' | 'upper'): readonly Dependence[] {
  return [
    'outline',
    'overhang',
    'cornerOverhang',
    'ribThickness',
    `${which}CornerBlockAlongWaist`,
    `${which}CornerBlockAlongBout`,
  ];
}

function formEntries({ form }: Omit<PlanParts, 'registerEntries'>): RegisterEntry[] {
  const inset = ['outline', 'overhang', 'ribThickness'] as const;
  const holes = [
    'outline',
    'overhang',
    'ribThickness',
    'clampHoleDiameter',
    'clampHoleWall',
    'clampHolePitch',
  ] as const;
  const entries = [
    entry('form.width', form.widthMm, inset, 'greatest width of the form'),
    entry(
      'form.length',
      form.lengthMm,
      [...inset, 'lowerBlockWidth', 'upperBlockWidth'],
      'greatest length of the form',
    ),
    ...form.checkWidths.map((check) =>
      entry(
        check.name === 'waist' ? 'form.waist' : 'form.lowerBout',
        check.widthMm,
        inset,
        `check width of the form at the ${check.name}`,
      ),
    ),
    entry('form.clampHoles', form.clampHoles.length, holes, 'by the rule of pitch and wall', 'count'),
  ];
  if (form.leastWallMm === undefined) return entries;
  return [...entries, entry('form.leastWall', form.leastWallMm, holes, 'least wood round the clamp holes')];
}
