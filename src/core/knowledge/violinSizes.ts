import { VIOLIN_HEAD, violinHead } from './heads.ts';
import { VIOLIN_NECK } from './necks.ts';
import { VIOLIN_RIB_WORK } from './ribWork.ts';
import { ROUGHING } from './roughing.ts';
import { VIOLIN_SETUP } from './setups.ts';
import {
  type Cell,
  ours,
  practised,
  read,
  readFor,
  recalled,
  type Size,
  scaledSize,
  sizeOf,
  valueAtLength,
  worked,
} from './size.ts';
import { violinHoles } from './soundHoles.ts';
import { VIOLIN_STRINGS } from './strings.ts';
import { WOODS } from './woods.ts';

const table = (value: number) => read(value, 'violinAverages');
/** Length between the ends of the wings, between the upper eyes, and lower eye to edge, as the same table prints them. */
const HOLES_MM = {
  '1/4': [62, 35, 10],
  '1/2': [68, 36, 10],
  '3/4': [71, 38, 11],
  '7/8': [73, 41, 11.5],
  '4/4': [75, 42, 12],
} as const;
const holes = (column: keyof typeof HOLES_MM) => {
  const [lengthMm, apartMm, toEdgeMm] = HOLES_MM[column];
  return violinHoles(lengthMm, { apart: table(apartMm), toEdge: table(toEdgeMm) });
};
const neckStop = (value: number) => worked(value, ['stop'], 'two thirds of the body stop');

const COLUMNS = ['1/4', '1/2', '3/4', '7/8', '4/4'] as const;

/** Length of the head as the same table prints it. */
const HEAD_MM = { '1/4': 85, '1/2': 94, '3/4': 101, '7/8': 104 } as const;

/** The published table as printed; where it prints a range for the 4/4, one figure of that range is taken. */
const TABLE = {
  bodyLength: [285, 320, 335, 345, 355],
  upperBout: [133, 145, 156, 162, 168],
  waist: [91, 97, 105, 109, 112],
  lowerBout: [163, 182, 195, 200, 206],
  ribHeightNeck: [26, 28, 29, 29.5, 30],
  ribHeightTail: [26, 28, 29, 29.5, 30], // the table prints one height
  ribThickness: [1, 1, 1.1, 1.1, 1.1],
  liningThickness: [1.5, 1.5, 1.5, 1.7, 1.8],
  liningWidth: [4, 5, 5, 6, 6],
  upperBlockWidth: [41, 44, 47, 48, 50],
  upperBlockDepth: [13, 13, 14, 14, 15],
  lowerBlockWidth: [36, 39, 42, 43, 45],
  lowerBlockDepth: [12, 12, 13, 13, 14],
  archHeightBack: [13.2, 13.7, 14.1, 14.3, 14.5],
  archHeightTop: [13.7, 14.3, 14.9, 15.2, 15.5],
  edgeHeightBack: [3.1, 3.2, 3.4, 3.7, 3.8],
  edgeHeightTop: [3.2, 3.3, 3.5, 3.9, 4],
  thicknessBackMiddle: [3.2, 3.5, 3.9, 4.1, 4.3],
  thicknessBackBouts: [2, 2, 2.2, 2.3, 2.5],
  thicknessBackFlanks: [2, 2, 2.2, 2.3, 2.5],
  thicknessBackChannel: [1.8, 1.8, 2, 2.1, 2.3],
  thicknessTopMiddle: [2.5, 2.5, 2.8, 2.9, 3],
  thicknessTopBouts: [2.2, 2.2, 2.4, 2.5, 2.7],
  thicknessTopFlanks: [2.3, 2.4, 2.4, 2.6, 2.7],
  thicknessTopChannel: [2, 2, 2.1, 2.3, 2.4],
  purflingToEdge: [3, 3.1, 3.2, 3.3, 3.75], // 4/4 printed 3.5 to 3.8
  purflingWidth: [1.1, 1.1, 1.1, 1.1, 1.2],
} as const;

/** Where the table prints a thickness that stands elsewhere here. */
const PRINTED_FOR: Readonly<Record<string, string>> = {
  thicknessBackMiddle: 'the post',
  thicknessTopMiddle: 'the post',
  thicknessBackFlanks: 'the channel of the waist',
  thicknessTopFlanks: 'the channel of the waist',
};

function printed(column: (typeof COLUMNS)[number]): Readonly<Record<string, Cell>> {
  const at = COLUMNS.indexOf(column);
  return Object.fromEntries(
    Object.entries(TABLE).map(([name, row]) => {
      const value = row[at] as number;
      const where = PRINTED_FOR[name];
      return [name, where === undefined ? table(value) : readFor(value, 'violinAverages', where)];
    }),
  );
}

const fullSize: Size = sizeOf('violin', '4/4', {
  ...printed('4/4'),
  upperCornerEnd: table(7), // printed 7 to 7.5
  lowerCornerEnd: table(7), // printed 7 to 7.5
  stop: read(195, 'bodyStop'),
  neckStop: neckStop(130),
  overhang: table(2.2),
  cornerOverhang: table(2.2), // the table prints one overhang
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
  fullnessUpperCorner: ours(-0.06, 'keeps the arch from creasing at the corners; more would dish a low arch'),
  fullnessWaist: practised(0, 'the cycloid itself'),
  fullnessLowerCorner: ours(-0.06, 'keeps the arch from creasing at the corners; more would dish a low arch'),
  fullnessLowerBout: practised(0, 'the cycloid itself'),
  purflingDepth: recalled(1.8, '1.5 to 2'),
  stingLength: recalled(1.1, '0.8 to 1.5'),
  stingAside: recalled(0.35, 'a third of its length'),
  edgeUnderRounding: recalled(1.2, 'taken off the lower arris'),
  gaugeThickness: ours(3, 'thin plywood as laser shops stock it'),
  bridgeFeet: recalled(41.5, '41 to 42'),
  bridgeFootThickness: recalled(4.25, '4 to 4.5'),
  footBeyondBar: read(1.25, 'footAndBar'), // printed 1 to 1.5
  postDiameter: read(6, 'postSizes'),
  barLength: read(275, 'barLength'),
  barThickness: read(5.5, 'barBlank'), // printed 5.5 to 6
  barHeight: recalled(12, '11 to 13 once it is trimmed'),
  barEndHeight: recalled(3.5, '3 to 4'),
  ...VIOLIN_NECK,
  ...VIOLIN_SETUP,
  ...VIOLIN_STRINGS,
  ...VIOLIN_HEAD,
  ...holes('4/4'),
  ...VIOLIN_RIB_WORK,
  ...WOODS,
  ...ROUGHING,
});

const sevenEighths = scaledSize(fullSize, '7/8', {
  ...printed('7/8'),
  ...violinHead(table(HEAD_MM['7/8'])),
  ...holes('7/8'),
  stop: recalled(189, 'the printed table is cut off here'),
  neckStop: neckStop(126),
});
const threeQuarters = scaledSize(fullSize, '3/4', {
  ...printed('3/4'),
  ...violinHead(table(HEAD_MM['3/4'])),
  ...holes('3/4'),
  bridgeFeet: worked(38, ['upperEyesApart'], 'no wider than between the upper eyes'),
  stop: table(183),
  neckStop: neckStop(122),
});
const half = scaledSize(fullSize, '1/2', {
  ...printed('1/2'),
  ...violinHead(table(HEAD_MM['1/2'])),
  ...holes('1/2'),
  bridgeFeet: worked(36, ['upperEyesApart'], 'no wider than between the upper eyes'),
  stop: table(171),
  neckStop: neckStop(114),
});
const quarter = scaledSize(fullSize, '1/4', {
  ...printed('1/4'),
  ...violinHead(table(HEAD_MM['1/4'])),
  ...holes('1/4'),
  lowerCornerBlockAlongWaist: ours(14, 'clear of the lower eye once it is trimmed inside'),
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

/** The violin from full size down. The ordinary size of the family stands first. */
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
