import type { Words } from '../words/en.ts';
import { NUMBERED_STOPS, type Stop } from './stops.ts';

/** Numbers that stand together in the notebook, under a heading. */
export interface NumberGroup {
  readonly title: keyof Words['groups'];
  readonly names: readonly string[];
  /** Only shown for this plate. */
  readonly plate?: 'back' | 'top';
}

const plateNumbers = (plate: 'back' | 'top', Plate: 'Back' | 'Top'): readonly NumberGroup[] => [
  {
    title: 'wholePlate',
    plate,
    names: [
      `archHeight${Plate}`,
      `edgeHeight${Plate}`,
      `scoopDepth${Plate}`,
      `${plate}.channelZ`,
      `${plate}.waist.steepest`,
    ],
  },
];

/** The numbers of every stop, in the order of the notebook. */
export const VALUES_OF_STOP: Readonly<Record<(typeof NUMBERED_STOPS)[number], readonly NumberGroup[]>> = {
  outline: [
    { title: 'sizes', names: ['bodyLength', 'upperBout', 'waist', 'lowerBout'] },
    { title: 'places', names: ['upperCornerEnd', 'lowerCornerEnd', 'stop', 'neckStop'] },
    { title: 'ribs', names: ['overhang', 'cornerOverhang', 'purflingToEdge', 'purflingWidth'] },
  ],
  form: [
    {
      title: 'ribs',
      names: [
        'ribThickness',
        'ribHeightNeck',
        'ribHeightTail',
        'liningThickness',
        'liningWidth',
        'liningLetIn',
        'caulDepth',
        'caulFacing',
        'ribs.lowerLength',
        'ribs.waistLength',
        'ribs.upperLength',
      ],
    },
    {
      title: 'blocks',
      names: ['upperBlockWidth', 'upperBlockDepth', 'lowerBlockWidth', 'lowerBlockDepth'],
    },
    {
      title: 'holes',
      names: ['formThickness', 'clampHoleDiameter', 'clampHoleWall', 'pinDiameter', 'pinFromEnd'],
    },
  ],
  arch: [
    ...plateNumbers('back', 'Back'),
    ...plateNumbers('top', 'Top'),
    { title: 'channel', names: ['channelAtBouts', 'channelAtWaist', 'channelAtCorners'] },
    {
      title: 'fullness',
      names: [
        'fullnessUpperBout',
        'fullnessUpperCorner',
        'fullnessWaist',
        'fullnessLowerCorner',
        'fullnessLowerBout',
      ],
    },
    {
      title: 'fullnessOfTop',
      plate: 'top',
      names: [
        'fullnessTopUpperBout',
        'fullnessTopUpperCorner',
        'fullnessTopWaist',
        'fullnessTopLowerCorner',
        'fullnessTopLowerBout',
      ],
    },
  ],
  thickness: [
    {
      title: 'thicknesses',
      plate: 'back',
      names: ['thicknessBackMiddle', 'thicknessBackBouts', 'thicknessBackFlanks', 'thicknessBackChannel'],
    },
    {
      title: 'thicknesses',
      plate: 'top',
      names: ['thicknessTopMiddle', 'thicknessTopBouts', 'thicknessTopFlanks', 'thicknessTopChannel'],
    },
    { title: 'weight', plate: 'back', names: ['densityBack', 'back.mass', 'airVolume'] },
    { title: 'weight', plate: 'top', names: ['densityTop', 'top.mass', 'top.massWithBar', 'airVolume'] },
  ],
  soundHoles: [
    {
      title: 'soundHoles',
      names: [
        'holeLength',
        'upperEyesApart',
        'upperEyeDiameter',
        'lowerEyeDiameter',
        'holeStemWidth',
        'holeTipGap',
        'lowerEyeToEdge',
        'nickAboveStop',
        'soundHoles.turn',
        'soundHoles.nearestEdge',
        'soundHoles.area',
      ],
    },
  ],
  head: [
    {
      title: 'head',
      names: ['headLength', 'headTop', 'headDepth', 'scrollHeight', 'scrollEye', 'scrollTurns'],
    },
    { title: 'pegbox', names: ['headNarrowest', 'chinWidth', 'pegboxFloor', 'pegDiameter', 'pegTaper'] },
  ],
  neck: [
    {
      title: 'neckSet',
      names: [
        'stop',
        'neckStop',
        'overstand',
        'projection',
        'neck.angle',
        'neck.stringLength',
        'neck.boardEnd',
      ],
    },
    {
      title: 'strings',
      names: [
        'tuningA',
        'string1.tension',
        'string2.tension',
        'string3.tension',
        'string4.tension',
        'strings.pull',
        'strings.breakAngle',
        'strings.afterLength',
        'bridge.down',
      ],
    },
    {
      title: 'bridge',
      names: [
        'bridgeFeet',
        'bridge.height',
        'bridge.crownRadius',
        'stringEndBass',
        'stringEndTreble',
        'stringSpacingBridge',
        'stringSpacingNut',
      ],
    },
    {
      title: 'board',
      names: [
        'boardLength',
        'boardWidthNut',
        'boardWidthEnd',
        'boardRadius',
        'boardSide',
        'board.scoopMiddle',
      ],
    },
    {
      title: 'neckWood',
      names: [
        'neckThicknessNut',
        'neckThicknessHeel',
        'buttonWidth',
        'buttonHeight',
        'mortiseDepth',
        'rootAngle',
      ],
    },
    {
      title: 'barAndPost',
      names: ['postDiameter', 'post.length', 'post.fromCentre', 'barLength', 'barHeight', 'barSpring'],
    },
  ],
};

/** Numbers that a traced outline has of itself: they are read off it, and only drawing from numbers makes them free. */
export const OUTLINE_NUMBERS: ReadonlySet<string> = new Set([
  'bodyLength',
  'upperBout',
  'waist',
  'lowerBout',
  'upperCornerEnd',
  'lowerCornerEnd',
]);

/** Where a number stands in the notebook: at the stop that one is at, or else the first that has it; null where none has. */
export function placeOfNumber(
  name: string,
  here: Stop,
): { readonly stop: (typeof NUMBERED_STOPS)[number]; readonly plate: 'back' | 'top' | undefined } | null {
  const places = NUMBERED_STOPS.flatMap((stop) =>
    VALUES_OF_STOP[stop].filter(({ names }) => names.includes(name)).map(({ plate }) => ({ stop, plate })),
  );
  return places.find(({ stop }) => stop === here) ?? places[0] ?? null;
}
