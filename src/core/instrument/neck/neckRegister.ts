import type { ValueName } from '../../design/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import type { BlockWood } from './blockWood.ts';
import type { BoardHollow } from './boardHollow.ts';
import type { BoardScoop } from './boardScoop.ts';
import { boardThickness } from './boardSection.ts';
import type { MortiseInRibs } from './mortiseInRibs.ts';
import type { SetNeck } from './neckOfDesign.ts';
import type { NeckShape } from './neckShape.ts';

const BOARD = ['boardLength', 'boardWidthNut', 'boardWidthEnd', 'boardRadius', 'boardSide'] as const;
const ARCH = ['archHeightTop', 'edgeHeightTop', 'outline'] as const;
const STRINGS = ['stringNutBass', 'stringNutTreble', 'stringEndBass', 'stringEndTreble'] as const;

interface Parts extends SetNeck {
  readonly shape: NeckShape;
  readonly block: BlockWood;
  readonly inRibs: MortiseInRibs;
  readonly scoop: BoardScoop;
  readonly hollow: BoardHollow | null;
  /** Names of the widths of the root that were given. */
  readonly rootGiven: readonly ValueName[];
}

/** Neck and fingerboard as numbers for the register, each with what it depends on. */
export function neckEntries(parts: Parts): readonly RegisterEntry[] {
  return [...setEntries(parts), ...shapeEntries(parts), ...boardEntries(parts)];
}

function setEntries({ sizes, set, mortise, questions }: SetNeck): readonly RegisterEntry[] {
  const given = questions.flatMap(({ asks, met }) => (asks === 'set' ? met.map(({ name }) => name) : []));
  const isStrung = questions.some(({ asks, met }) => asks === 'lengths' && met.length > 0);
  const sought = [...new Set<ValueName>(['overstand', 'projection', ...given])];
  const how = 'meets what is given of the set as nearly as one straight board can';
  const from = ['neck.overstand', 'neck.projection', 'stop', ...BOARD, ...ARCH];
  return [
    entry(
      'neck.neckStop',
      sizes.neckStopMm,
      'mm',
      isStrung ? ['neckStop', 'stringLength', 'stop'] : ['neckStop'],
      'nut to the upper end of the top',
    ),
    entry('neck.overstand', sizes.overstandMm, 'mm', sought, how),
    entry('neck.projection', sizes.projectionMm, 'mm', sought, how),
    entry(
      'neck.archAtBridge',
      sizes.archAtBridgeMm,
      'mm',
      [...ARCH, 'stop'],
      'top over its edge, at the bridge',
    ),
    entry(
      'neck.angle',
      degrees(set.neckAngleRad),
      'deg',
      from,
      'gluing face of the board to the plane of the edge',
    ),
    entry(
      'neck.boardEnd',
      set.boardEndOverTopMm,
      'mm',
      ['neck.angle', ...from],
      'crown of the board over the top',
    ),
    entry(
      'neck.boardEndOverEdge',
      set.boardEndOverEdgeMm,
      'mm',
      ['neck.angle', ...from],
      'crown of the board’s end over the edge',
    ),
    entry(
      'neck.boardEndFromEdge',
      set.boardEndFromTopEndMm,
      'mm',
      ['neck.angle', ...from],
      'upper end of the top to the board’s end, along the body',
    ),
    entry(
      'neck.bridge',
      set.bridgeHeightMm,
      'mm',
      ['neck.angle', ...from, ...STRINGS],
      'crown of the strings over the top at the stop',
    ),
    entry(
      'neck.stringLength',
      set.stringLengthMm,
      'mm',
      ['neck.angle', 'neck.neckStop', 'stop', ...STRINGS],
      'nut to bridge along the crown of the strings',
    ),
    entry(
      'neck.frontAngle',
      degrees(set.frontAngleRad),
      'deg',
      ['neck.angle', 'neck.bridge'],
      'slope of the strings before the bridge',
    ),
    entry(
      'neck.mortiseLean',
      degrees(mortise.leanRad),
      'deg',
      ['neck.angle', 'rootAngle'],
      'floor of the mortise out of the square to the edge, deeper toward the back',
    ),
    entry(
      'neck.mortiseAtBack',
      mortise.depthAtBackMm,
      'mm',
      ['neck.mortiseLean', 'mortiseDepth', 'ribHeightNeck', 'edgeHeightTop'],
      'depth of the mortise at the back',
    ),
    entry(
      'neck.evenRootAngle',
      degrees(mortise.evenRootAngleRad),
      'deg',
      ['neck.angle'],
      'root to gluing face that would sink the root alike all the way',
    ),
  ];
}

function shapeEntries({ shape, block, inRibs, rootGiven }: Parts): readonly RegisterEntry[] {
  const { root, heel, sections } = shape;
  const rootFrom = [
    'neck.angle',
    'rootAngle',
    'mortiseDepth',
    'neck.overstand',
    'ribHeightNeck',
    'edgeHeightTop',
  ];
  const widthFrom = [
    ...rootFrom,
    'boardWidthNut',
    'boardWidthEnd',
    'boardLength',
    'buttonWidth',
    ...rootGiven,
  ];
  const blockFrom = ['mortiseDepth', 'neck.mortiseAtBack', 'overhang', 'ribThickness'];
  return [
    entry(
      'neck.rootAlong',
      root.alongMm,
      'mm',
      rootFrom,
      'nut to the face of the root, along the gluing face',
    ),
    entry(
      'neck.rootHeight',
      root.heightMm,
      'mm',
      rootFrom,
      'gluing face of the board to that of the back, along the face of the root',
    ),
    entry(
      'neck.rootWidthTop',
      root.topWidthMm,
      'mm',
      widthFrom,
      'of the root at the gluing face: as given, or flush with the board carried on',
    ),
    entry('neck.rootWidthEdge', root.edgeWidthMm, 'mm', widthFrom, 'of the root at the edge of the top'),
    entry(
      'neck.heelRadius',
      heel.upperRadiusMm,
      'mm',
      ['heelStart', 'buttonHeight', 'neckThicknessHeel', ...rootFrom],
      'of the upper, tighter arc of the heel',
    ),
    ...sections.map((section) =>
      entry(
        `neck.thickness${section.name[0]?.toUpperCase()}${section.name.slice(1)}Gauge`,
        section.withBoardMm,
        'mm',
        ['neckThicknessNut', 'neckThicknessHeel', 'heelStart', 'neck.neckStop', ...BOARD],
        `neck with board ${section.alongMm.toFixed(1)} mm from the nut, where a gauge stands`,
      ),
    ),
    entry('neck.intoBlockTop', block.intoAtTopMm, 'mm', blockFrom, 'root into the block itself, at the top'),
    entry(
      'neck.intoBlockBack',
      block.intoAtBackMm,
      'mm',
      blockFrom,
      'root into the block itself, at the back',
    ),
    entry(
      'neck.blockBehind',
      block.behindMm,
      'mm',
      [...blockFrom, 'upperBlockDepth'],
      'wood of the block behind the mortise, where it is least',
    ),
    entry(
      'neck.blockBeside',
      block.besideMm,
      'mm',
      ['neck.rootWidthEdge', 'upperBlockWidth'],
      'wood of the block on either side of the mortise, at the top',
    ),
    ...(['Top', 'Back'] as const).map((edge) =>
      entry(
        `neck.ribTakenAt${edge}`,
        inRibs[`at${edge}`].takenMm,
        'mm',
        ['neck.rootWidthEdge', 'overhang', 'outline', 'ribThickness', 'buttonWidth'],
        `what the mortise takes of an upper rib that runs to the centre line, laid flat, at its edge toward the ${edge.toLowerCase()}`,
      ),
    ),
    entry(
      'neck.ribShortOfCentre',
      inRibs.shortOfCentreMm,
      'mm',
      ['neck.ribTakenAtTop', 'neck.ribTakenAtBack'],
      'how far the upper ribs may stop short of the centre line: 3 mm inside the mortise, common practice',
    ),
  ];
}

function boardEntries({ sizes: { board, neckStopMm }, scoop, hollow }: Parts): readonly RegisterEntry[] {
  const scoopFrom = [...BOARD, 'boardScoopBass', 'boardScoopTreble'];
  return [
    entry(
      'board.thicknessNut',
      boardThickness(board, 0),
      'mm',
      BOARD,
      'side and rise of the round, in the middle',
    ),
    entry(
      'board.thicknessEdge',
      boardThickness(board, neckStopMm),
      'mm',
      [...BOARD, 'neck.neckStop'],
      'in the middle, over the edge of the top',
    ),
    entry(
      'board.thicknessEnd',
      boardThickness(board, board.lengthMm),
      'mm',
      BOARD,
      'side and rise of the round, in the middle',
    ),
    entry('board.scoopMiddle', scoop.middleMm, 'mm', scoopFrom, 'mean of both sides, half way along'),
    entry(
      'board.scoopMiddleOneRound',
      scoop.middleOfOneRoundMm,
      'mm',
      scoopFrom,
      'what the middle has where the round is the same all along',
    ),
    entry(
      'board.roundHalfWay',
      scoop.acrossRadiusMm,
      'mm',
      scoopFrom,
      'radius across, half way along, once it is scooped',
    ),
    ...(hollow
      ? [
          entry(
            'board.hollowDepth',
            hollow.depthMm,
            'mm',
            [...BOARD, 'boardRoof'],
            'under the end, in the middle',
          ),
          entry(
            'board.hollowFromNut',
            hollow.fromNutMm,
            'mm',
            ['neck.neckStop'],
            'where the hollow begins; from memory 10 mm beyond the edge on a violin',
          ),
        ]
      : []),
  ];
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from: [...new Set(from)], how } };
}
