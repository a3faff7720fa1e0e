import type { ValueName } from '../../design/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import type { Head } from './headOfDesign.ts';

const SPIRAL = [
  'scrollHeight',
  'scrollEye',
  'scrollTurns',
  'scrollQuickening',
] as const satisfies readonly ValueName[];
const PLACED = [...SPIRAL, 'headTop', 'scrollFront'] as const;

/** What comes of a head, as numbers for the register, each with what it depends on. */
export function headEntries({ profile }: Head): readonly RegisterEntry[] {
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
      Math.hypot(throat.centre.x, throat.centre.y) + throat.radiusMm,
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

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from: [...new Set(from)], how } };
}
