import {
  ours,
  practised,
  read,
  recalled,
  type Size,
  scaledSize,
  sizeOf,
  valueAtLength,
  worked,
} from './size.ts';

const table = (value: number) => read(value, 'violinAverages');
const neckStop = (value: number) => worked(value, ['stop'], 'two thirds of the body stop');

/** The full-size violin. Where the table prints a range, its place in the range stands in the comment. */
const fullSize: Size = sizeOf('violin', '4/4', {
  bodyLength: table(355),
  upperBout: table(168),
  waist: table(112),
  lowerBout: table(206),
  upperCornerEnd: table(7), // printed 7 to 7.5
  lowerCornerEnd: table(7), // printed 7 to 7.5
  stop: read(195, 'bodyStop'),
  neckStop: neckStop(130),
  overhang: table(2.2),
  cornerOverhang: table(2.2), // the table prints one overhang
  ribThickness: table(1.1),
  ribHeightNeck: table(30),
  ribHeightTail: table(30),
  liningThickness: table(1.8),
  liningWidth: table(6),
  upperBlockWidth: table(50),
  upperBlockDepth: table(15),
  lowerBlockWidth: table(45),
  lowerBlockDepth: table(14),
  lowerCornerBlockAlongWaist: read(26, 'violinForm'),
  lowerCornerBlockAlongBout: ours(20, 'leaves no paper-thin feather on the block'),
  upperCornerBlockAlongWaist: ours(20.3, '0.78 of the lower'),
  upperCornerBlockAlongBout: ours(18, '0.9 of the lower'),
  formThickness: ours(12.7, 'half-inch plywood; the table prints 12'),
  clampHoleDiameter: recalled(20, '18 to 25'),
  clampHoleWall: ours(10, 'wood enough for a clamp to bear on'),
  clampHolePitch: ours(48, 'eight holes a side'),
  pinDiameter: ours(3, 'a common drill and nail'),
  pinFromEnd: read(80, 'violinForm'),
  purflingToEdge: table(3.75), // printed 3.5 to 3.8
  purflingWidth: table(1.2),
  edgeHeightBack: table(3.8),
  edgeHeightTop: table(4),
  archHeightBack: table(14.5),
  archHeightTop: table(15.5),
  scoopDepthBack: recalled(1, '0.7 to 1.2'),
  scoopDepthTop: recalled(1, '0.7 to 1.2'),
  edgeCrestInset: practised(1.4, 'a third of the edge from its outside'),
  edgeLand: ours(5.5, 'edge to beyond the purfling'),
  channelAtBouts: recalled(7, '6 to 8'),
  channelAtWaist: recalled(7, '6.5 to 8'),
  channelAtCorners: recalled(10, '9 to 11'),
  channelCornerRounding: ours(16, 'keeps the arch from creasing at the corners'),
  longArchFillet: ours(40, 'level into the channel'),
  fullnessUpperBout: practised(0, 'the cycloid itself'),
  fullnessUpperCorner: ours(-0.08, 'keeps the arch from creasing at the corners'),
  fullnessWaist: practised(0, 'the cycloid itself'),
  fullnessLowerCorner: ours(-0.08, 'keeps the arch from creasing at the corners'),
  fullnessLowerBout: practised(0, 'the cycloid itself'),
  gaugeThickness: ours(3, 'thin plywood as laser shops stock it'),
});

/** The columns of the table, in this order; the body stop of 7/8 is cut off in the print. */
const PRINTED = [
  'bodyLength',
  'upperBout',
  'waist',
  'lowerBout',
  'ribHeightNeck',
  'ribHeightTail',
  'ribThickness',
  'liningThickness',
  'liningWidth',
  'upperBlockWidth',
  'upperBlockDepth',
  'lowerBlockWidth',
  'lowerBlockDepth',
  'archHeightBack',
  'archHeightTop',
  'edgeHeightBack',
  'edgeHeightTop',
  'purflingToEdge',
  'purflingWidth',
] as const;

function printedColumn(...figures: readonly number[]): Readonly<Record<string, ReturnType<typeof table>>> {
  return Object.fromEntries(PRINTED.map((name, at) => [name, table(figures[at] as number)]));
}

const sevenEighths = scaledSize(fullSize, '7/8', {
  ...printedColumn(
    345,
    162,
    109,
    200,
    29.5,
    29.5,
    1.1,
    1.7,
    6,
    48,
    14,
    43,
    13,
    14.3,
    15.2,
    3.7,
    3.9,
    3.3,
    1.1,
  ),
  stop: recalled(189, 'the printed table is cut off here'),
  neckStop: neckStop(126),
});
const threeQuarters = scaledSize(fullSize, '3/4', {
  ...printedColumn(335, 156, 105, 195, 29, 29, 1.1, 1.5, 5, 47, 14, 42, 13, 14.1, 14.9, 3.4, 3.5, 3.2, 1.1),
  stop: table(183),
  neckStop: neckStop(122),
});
const half = scaledSize(fullSize, '1/2', {
  ...printedColumn(320, 145, 97, 182, 28, 28, 1, 1.5, 5, 44, 13, 39, 12, 13.7, 14.3, 3.2, 3.3, 3.1, 1.1),
  stop: table(171),
  neckStop: neckStop(114),
});
const quarter = scaledSize(fullSize, '1/4', {
  ...printedColumn(285, 133, 91, 163, 26, 26, 1, 1.5, 4, 41, 13, 36, 12, 13.2, 13.7, 3.1, 3.2, 3, 1.1),
  stop: table(159),
  neckStop: neckStop(106),
});

/** The smallest ribs leave no room for half-inch stuff between both linings. */
const thinForm = ours(9, 'lifts out past both linings of low ribs');
const bodyAlone = (lengthMm: number) => {
  const stop = valueAtLength(quarter, 'stop', lengthMm)?.value ?? Number.NaN;
  return {
    bodyLength: recalled(lengthMm, 'a common trade size'),
    neckStop: neckStop(stop * (2 / 3)),
    formThickness: thinForm,
  };
};
const eighth = scaledSize(quarter, '1/8', bodyAlone(255));
const tenth = scaledSize(quarter, '1/10', bodyAlone(240));
const sixteenth = scaledSize(quarter, '1/16', bodyAlone(230));

export const VIOLIN_SIZES: readonly Size[] = [
  fullSize,
  sevenEighths,
  threeQuarters,
  half,
  quarter,
  eighth,
  tenth,
  sixteenth,
];
