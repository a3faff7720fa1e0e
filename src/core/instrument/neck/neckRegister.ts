import type { ValueName } from '../../design/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import type { SetNeck } from './neckOfDesign.ts';

const BOARD = ['boardLength', 'boardWidthNut', 'boardWidthEnd', 'boardRadius', 'boardSide'] as const;
const ARCH = ['archHeightTop', 'edgeHeightTop', 'outline'] as const;
const STRINGS = ['stringNutBass', 'stringNutTreble', 'stringEndBass', 'stringEndTreble'] as const;

/** The set of the neck as numbers for the register, each with what it depends on. */
export function neckEntries({ sizes, set, mortise, met }: SetNeck): readonly RegisterEntry[] {
  const given = met.map(({ name }) => name);
  const sought = [...new Set<ValueName>(['overstand', 'projection', ...given])];
  const how = 'meets what is given of the set as nearly as one straight board can';
  const from = ['neck.overstand', 'neck.projection', 'stop', ...BOARD, ...ARCH];
  return [
    entry('neck.neckStop', sizes.neckStopMm, 'mm', stopNames(given), 'nut to the upper end of the top'),
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

function stopNames(given: readonly string[]): readonly string[] {
  return given.includes('stringLength') ? ['neckStop', 'stringLength', 'stop'] : ['neckStop'];
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from: [...new Set(from)], how } };
}
