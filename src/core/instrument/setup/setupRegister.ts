import type { ValueName } from '../../design/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import { kilograms } from '../strings/stringTension.ts';
import type { SetUp } from './setUp.ts';
import { bowingRoomsMm } from './stringPlaces.ts';

const NECK = ['neck.angle', 'neck.bridge', 'neck.stringLength'];
const HEIGHTS: readonly ValueName[] = [
  'stringNutBass',
  'stringNutTreble',
  'stringEndBass',
  'stringEndTreble',
  'stringSpacingNut',
  'stringSpacingBridge',
];

/** The set-up as numbers for the register, each with what it depends on. */
export function setupEntries(setUp: SetUp, hasAfterLength: boolean): readonly RegisterEntry[] {
  const { strings, places, crownCircle, angles, load } = setUp;
  const pulls = strings.strings.map(({ number }) => `string${number}.tension`);
  const legs = ['neck.frontAngle', 'strings.rearAngle'];
  const asideMm = Math.abs(crownCircle.x).toFixed(1);
  return [
    ...strings.strings.toReversed().flatMap((string): readonly RegisterEntry[] => {
      const name = `string${string.number}`;
      return [
        entry(
          `${name}.frequency`,
          string.soundsHz,
          'Hz',
          ['tuningA'],
          `the ${string.letter} string, equal steps`,
        ),
        entry(
          `${name}.mass`,
          string.gramsPerMetre,
          'g/m',
          string.massFrom,
          string.massFrom.length === 1
            ? 'as given'
            : string.massFrom.some((from) => from.endsWith('Density'))
              ? 'a plain string of this gauge and density'
              : 'what its packet’s pull says, at 440 Hz',
        ),
        entry(
          `${name}.tension`,
          string.tensionN,
          'N',
          [`${name}.mass`, `${name}.frequency`, 'neck.stringLength'],
          `Mersenne’s law; ${kilograms(string.tensionN).toFixed(1)} kg`,
        ),
      ];
    }),
    entry('strings.pull', strings.totalN, 'N', pulls, `all four; ${kilograms(strings.totalN).toFixed(1)} kg`),
    entry(
      'strings.rearAngle',
      degrees(angles.rearAngleRad),
      'deg',
      ['neck.bridge', 'neck.archAtBridge', 'saddleHeight', 'saddleCrest', 'stop', 'bodyLength'],
      'slope of the strings behind the bridge, toward the saddle',
    ),
    entry(
      'strings.breakAngle',
      degrees(angles.breakAngleRad),
      'deg',
      legs,
      'between both parts over the bridge',
    ),
    entry(
      'bridge.halvingLean',
      degrees(angles.halvingLeanRad),
      'deg',
      legs,
      'leaning so far toward the tail it would halve the break; by habit its back stands square to the edge',
    ),
    entry(
      'bridge.down',
      load.downN,
      'N',
      ['strings.pull', ...legs],
      'on the top, the bridge square to the edge',
    ),
    entry(
      'bridge.downHalved',
      load.halvedDownN,
      'N',
      ['strings.pull', 'strings.breakAngle'],
      'the same with legs alike, where the bridge halves the break',
    ),
    entry(
      'bridge.towardBoard',
      load.towardBoardN,
      'N',
      ['strings.pull', ...legs],
      'what pulls the top of a square bridge toward the board; its feet must hold it by friction',
    ),
    entry(
      'bridge.downOnBassFoot',
      load.lowFootN,
      'N',
      ['bridge.down', ...pulls, 'stringSpacingBridge', 'bridgeFeet', 'bridgeFootLength'],
      'over the bar',
    ),
    entry(
      'bridge.downOnTrebleFoot',
      load.highFootN,
      'N',
      ['bridge.down', ...pulls, 'stringSpacingBridge', 'bridgeFeet', 'bridgeFootLength'],
      'beside the post, which carries it to the back',
    ),
    entry(
      'bridge.height',
      setUp.crownHeightMm,
      'mm',
      [...NECK, ...HEIGHTS],
      'crown in the middle of the bridge, over the top, from each string’s own height',
    ),
    entry(
      'bridge.crownRadius',
      crownCircle.radius,
      'mm',
      [...NECK, ...HEIGHTS],
      `circle nearest to the four strings (rms ${crownCircle.rms.toFixed(2)} mm), its middle ${asideMm} mm toward the lowest`,
    ),
    entry(
      'bridge.bowingRoom',
      Math.min(...bowingRoomsMm(places)),
      'mm',
      ['bridge.crownRadius', 'stringSpacingBridge'],
      'a middle string over the line of its neighbours, the least of both',
    ),
    ...places.map((place, index) =>
      entry(
        `bridge.slot${places.length - index}`,
        place.bridgeUpMm,
        'mm',
        [...NECK, ...HEIGHTS],
        `bottom of the slot of string ${places.length - index} over the top’s crest, ${Math.abs(place.atBridgeMm).toFixed(1)} mm from the middle`,
      ),
    ),
    entry(
      'strings.afterLength',
      setUp.afterLengthMm,
      'mm',
      hasAfterLength ? ['afterLength'] : ['neck.stringLength'],
      hasAfterLength ? 'as given' : 'a sixth of the string, common practice',
    ),
    entry(
      'tailpiece.longest',
      setUp.tailpieceMostMm,
      'mm',
      ['strings.afterLength', 'strings.rearAngle', 'tailGutGap', 'saddleCrest'],
      'fret to end, so that its gap before the saddle is left',
    ),
    entry(
      'endpin.up',
      setUp.endpin.upMm,
      'mm',
      ['ribHeightTail'],
      'middle of the hole over the edge of the ribs toward the back: half way up, common practice',
    ),
    entry(
      'endpin.inside',
      setUp.endpin.insideMm,
      'mm',
      ['endpinDiameter', 'endpinTaper', 'ribThickness', 'lowerBlockDepth'],
      'diameter of the reamed hole at the inside of the lower block',
    ),
  ];
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from: [...new Set(from)], how } };
}
