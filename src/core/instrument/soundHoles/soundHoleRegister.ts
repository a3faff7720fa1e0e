import type { ValueName } from '../../design/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import type { SoundHoles } from './soundHoles.ts';

const SHAPE = [
  'holeLength',
  'upperEyesApart',
  'upperEyeDiameter',
  'lowerEyeDiameter',
  'holeStemWidth',
] as const satisfies readonly ValueName[];

/** What comes of the sound holes, as numbers for the register, each with what it depends on. */
export function soundHoleEntries(holes: SoundHoles): readonly RegisterEntry[] {
  const {
    hole,
    upperEye,
    lowerEye,
    nearestEdge,
    rule,
    bridgeLineMm,
    innerNick,
    outerNick,
    turnRad,
    cornerBlockUnderMm,
  } = holes;
  const edge = ['lowerEyeToEdge', 'outline'] as const;
  const shape = [...SHAPE, ...edge];
  const line = ['stop', 'nickAboveStop', 'bodyLength'] as const;
  const one = 'one hole, without its nicks, in plan';
  return [
    entry('soundHoles.area', hole.areaMm2, 'mm²', [...shape, 'holeTipGap'], `opening of ${one}`),
    entry('soundHoles.perimeter', hole.perimeterMm, 'mm', [...shape, 'holeTipGap'], `round ${one}`),
    entry(
      'soundHoles.eyesApart',
      hole.eyesApartMm,
      'mm',
      shape,
      'middle of the upper to middle of the lower eye',
    ),
    entry(
      'soundHoles.turn',
      (turnRad * 180) / Math.PI,
      'deg',
      [...SHAPE, ...line, ...edge],
      'by which a hole is turned about its inner nick from how it is drawn, its lower eye toward the edge',
    ),
    entry(
      'soundHoles.upperEyeAcross',
      upperEye.centre.x,
      'mm',
      ['upperEyesApart', 'upperEyeDiameter'],
      'centre line to the middle of the upper eye',
    ),
    entry(
      'soundHoles.upperEyeAboveStop',
      upperEye.centre.y - bridgeLineMm,
      'mm',
      ['holeLength', 'nickAboveStop'],
      'bridge line to the middle of the upper eye, along',
    ),
    entry(
      'soundHoles.lowerEyeAcross',
      lowerEye.centre.x,
      'mm',
      ['holeLength', 'upperEyesApart', 'upperEyeDiameter', ...edge],
      'centre line to the middle of the lower eye, from its distance to the edge',
    ),
    entry(
      'soundHoles.lowerEyeBelowStop',
      bridgeLineMm - lowerEye.centre.y,
      'mm',
      ['holeLength', 'nickAboveStop'],
      'bridge line to the middle of the lower eye, along',
    ),
    entry(
      'soundHoles.lowerEyeEdge',
      lowerEye.toEdgeMm,
      'mm',
      [...SHAPE, ...line, ...edge, 'outline'],
      'rim of the lower eye to the nearest place of the edge',
    ),
    entry(
      'soundHoles.nearestEdge',
      nearestEdge.distanceMm,
      'mm',
      [...shape, ...line, 'outline'],
      'least distance from a hole to the edge of the top',
    ),
    entry(
      'soundHoles.cornerBlockUnder',
      cornerBlockUnderMm,
      'mm',
      [...shape, ...line, 'lowerCornerBlockAlongWaist', 'lowerCornerBlockAlongBout'],
      'how far the lower corner block reaches under a hole until it is trimmed inside',
    ),
    entry(
      'soundHoles.innerNickAcross',
      innerNick.x,
      'mm',
      shape,
      'centre line to the point of the inner nick',
    ),
    entry(
      'soundHoles.outerNickAboveStop',
      outerNick.y - bridgeLineMm,
      'mm',
      ['holeLength', 'nickAboveStop'],
      'bridge line to the point of the outer nick, along; it lies higher than the inner one on the holes measured',
    ),
    entry('soundHoles.upperPassage', hole.upper.passageMm, 'mm', shape, 'opening beside the upper eye'),
    entry('soundHoles.lowerPassage', hole.lower.passageMm, 'mm', shape, 'opening beside the lower eye'),
    entry(
      'soundHoles.lowerTipGap',
      hole.lower.tipGapMm,
      'mm',
      ['holeTipGap'],
      'opening at the tip of the lower wing, in proportion to the upper',
    ),
    entry(
      'soundHoles.ruleEyesApart',
      rule.eyesApartMm,
      'mm',
      ['bodyLength'],
      'distance of the eyes by a published rule of dividers (A. T. King, 2004), pins 4 mm of 355 inside the ends',
    ),
    entry(
      'soundHoles.ruleLowerEyeAcross',
      rule.lowerXMm,
      'mm',
      ['bodyLength'],
      'centre line to the middle of the lower eye by the same rule',
    ),
    entry(
      'soundHoles.ruleLowerEyeFromTop',
      rule.lowerFromTopMm,
      'mm',
      ['bodyLength'],
      'upper end of the body to the line of the lower eyes by the same rule',
    ),
    entry(
      'soundHoles.ruleGolden',
      rule.goldenMm,
      'mm',
      ['bodyLength'],
      'lower end of the body to the golden mean between both golden means of its length (T. Zethelius, no year)',
    ),
  ];
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from: [...new Set(from)], how } };
}
