import { hypot } from '../../base/index.ts';
import { lengthOf } from '../../curve/index.ts';
import type { ValueName } from '../../design/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import type { Head } from './headOfDesign.ts';

const SPIRAL = [
  'scrollHeight',
  'scrollEye',
  'scrollTurns',
  'scrollQuickening',
] as const satisfies readonly ValueName[];
const BACK = [
  'headDepth',
  'backLeaveAngle',
  'backLeanAngle',
  'backHollow',
  'chinBehind',
  'headLength',
] as const satisfies readonly ValueName[];
const WIDTHS = [
  'chinWidth',
  'headNarrowest',
  'scrollEars',
  'outerTurnAngle',
  'middleTurnAngle',
  'innerTurnAngle',
] as const satisfies readonly ValueName[];
const INSIDE = [
  'pegboxFloor',
  'pegboxWidthNut',
  'pegboxWidthThroat',
  'pegboxWallNut',
  'pegboxWallThroat',
  'pegboxWallLean',
] as const satisfies readonly ValueName[];
const NUT = [
  'stringSpacingNut',
  'stringNutBass',
  'stringNutTreble',
  'boardSide',
  'boardRadius',
  'boardWidthNut',
  'nutDepth',
] as const satisfies readonly ValueName[];
const PEGS = ['peg1', 'peg2', 'peg3', 'peg4', 'pegDiameter'] as const satisfies readonly ValueName[];
const PLACED = [...SPIRAL, 'headTop', 'scrollFront'] as const;

/** What comes of a head, as numbers for the register, each with what it depends on. */
export function headEntries(head: Head): readonly RegisterEntry[] {
  return [...sideEntries(head), ...widthEntries(head), ...pegboxEntries(head), ...pegEntries(head)];
}

function sideEntries({ profile }: Head): readonly RegisterEntry[] {
  const { volute, throat } = profile;
  const radius = (k: number): number => volute.arcs[k]?.radiusMm ?? Number.NaN;
  const eye = volute.arcs.at(-1)?.centre;
  const round = 'radius of the quarter circle of the spiral that starts';
  return [
    entry('head.turnTop', radius(1), 'mm', SPIRAL, `${round} at the top`),
    entry('head.turnFront', radius(2), 'mm', SPIRAL, `${round} at the front`),
    entry('head.turnBottom', radius(3), 'mm', SPIRAL, `${round} at the bottom, by the throat`),
    entry('head.eyeBehind', eye?.x ?? Number.NaN, 'mm', PLACED, 'middle of the eye behind the gluing face'),
    entry('head.eyeFromNut', eye?.y ?? Number.NaN, 'mm', PLACED, 'nut to the middle of the eye'),
    entry(
      'head.backRadius',
      profile.backRadiusMm,
      'mm',
      [...PLACED, 'headDepth', 'backLeaveAngle'],
      'round of the back behind the scroll',
    ),
    entry(
      'head.frontRadius',
      profile.frontRadiusMm,
      'mm',
      [...PLACED, 'pegboxFrontAngle', 'throatGap'],
      'round of the front edge of the pegbox',
    ),
    entry(
      'head.pegboxLength',
      hypot(throat.centre.x, throat.centre.y) + throat.radiusMm,
      'mm',
      [...PLACED, 'pegboxFrontAngle', 'throatGap', 'throatRadius'],
      'nut to the end of the throat, straight',
    ),
    entry(
      'head.neckBehind',
      profile.sizes.neckBehindMm,
      'mm',
      ['neckThicknessNut', 'boardWidthNut', 'boardRadius', 'boardSide', 'chinSpare'],
      'back of the neck under the chin behind the gluing face, before it is shaped',
    ),
  ];
}

function widthEntries({ widths, profile }: Head): readonly RegisterEntry[] {
  const along = 'along the back and the spiral from the tip of the chin';
  return [
    entry(
      'head.wrapLength',
      widths.bottomMm,
      'mm',
      [...PLACED, ...BACK],
      'tip of the chin over the top to the throat',
    ),
    entry(
      'head.hiddenShare',
      widths.hiddenShare,
      'ratio',
      [...PLACED, ...WIDTHS],
      'turns behind against the front',
    ),
    ...widths.stations.flatMap(({ number, place, alongMm, widthMm }) => [
      entry(
        `head.width${number}`,
        widthMm,
        'mm',
        alongMm <= widths.topMm
          ? ['chinWidth', 'headNarrowest']
          : ['headNarrowest', 'head.hiddenShare', 'head.spiralLength'],
        `width at station ${number}, ${place === 'eye' ? 'over the ears' : place}`,
      ),
      entry(
        `head.along${number}`,
        alongMm,
        'mm',
        alongMm <= widths.bottomMm ? ['head.wrapLength'] : ['head.wrapLength', 'head.spiralLength'],
        `station ${number}, ${along}`,
      ),
    ]),
    entry(
      'head.spiralLength',
      lengthOf(profile.spine) - widths.topMm,
      'mm',
      PLACED,
      'along the spiral from the top to the eye',
    ),
  ];
}

function pegboxEntries({ pegbox }: Head): readonly RegisterEntry[] {
  const from = [...PLACED, 'pegboxFrontAngle', 'throatGap', 'throatRadius'] as const;
  return [
    entry(
      'head.opensFrom',
      pegbox.opensFromMm,
      'mm',
      ['headLength'],
      'nut to the inside of the pegbox, straight',
    ),
    entry(
      'head.opensTo',
      pegbox.opensToMm,
      'mm',
      [...from, 'pegboxWeb'],
      'nut to the end of the inside on the front',
    ),
    entry(
      'head.thinnestWall',
      pegbox.thinnestWall.mm,
      'mm',
      [...from, ...BACK, ...INSIDE, 'chinWidth', 'headNarrowest'],
      `thinnest wall beside the floor, ${pegbox.thinnestWall.fromNutMm.toFixed(0)} mm from the nut`,
    ),
  ];
}

function pegEntries({ pegs, strings }: Head): readonly RegisterEntry[] {
  const from = [...PLACED, ...BACK, 'pegboxFrontAngle', 'throatGap', 'pegboxFloor', ...PEGS, ...NUT] as const;
  const how = 'midway between front and floor, or moved from there to clear the strings';
  return [
    ...pegs.flatMap((peg) => [
      entry(`head.peg${peg.number}Behind`, peg.centre.x, 'mm', from, `behind the gluing face: ${how}`),
      entry(`head.peg${peg.number}FromNut`, peg.centre.y, 'mm', from, 'along the gluing face'),
      entry(`head.peg${peg.number}Moved`, peg.movedMm, 'mm', from, 'from midway toward the back'),
      entry(`head.peg${peg.number}Front`, peg.frontCoverMm, 'mm', from, 'wood in front of the hole'),
      entry(`head.peg${peg.number}Floor`, peg.floorCoverMm, 'mm', from, 'room from the hole to the floor'),
      entry(
        `head.peg${peg.number}Small`,
        peg.smallMm,
        'mm',
        ['pegDiameter', 'pegTaper', 'pegboxWidthNut', 'pegboxWidthThroat', `peg${peg.number}`],
        'diameter of the hole at the wall opposite the peg’s head',
      ),
    ]),
    ...strings.flatMap(({ number, letter, peg, leastRoom }) =>
      leastRoom === null
        ? []
        : [
            entry(
              `head.string${number}Room`,
              leastRoom.mm,
              'mm',
              [...from, `string${number}Diameter`],
              `least room of the ${letter} string beside peg ${leastRoom.peg}, on its way to peg ${peg}`,
            ),
          ],
    ),
  ];
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from: [...new Set(from)], how } };
}
