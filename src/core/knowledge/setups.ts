import { type Cell, ours, read, recalled } from './size.ts';

type Cells = Readonly<Record<string, Cell>>;

const scaled = (value: number) => recalled(value, 'the violin, scaled; weak');

/** What every family has alike. */
const ANY: Cells = {
  endpinTaper: recalled(17, '17 to 20'),
  barSpring: read(0, 'barSpring'), // both notes advise against it
};

/** What carries the strings of a full-size violin. */
export const VIOLIN_SETUP: Cells = {
  ...ANY,
  stringSpacingNut: recalled(16.5, '16 to 17; a book of 1902 has 16.7'),
  stringSpacingBridge: recalled(33.5, '33 to 34; a book of 1902 has 33.3'),
  nutDepth: recalled(5.5, '5 to 6'),
  bridgeFootLength: recalled(12, 'weak'),
  bridgeTopThickness: recalled(1.3, '1.2 to 1.4'),
  tailGutGap: recalled(5, '3 to 8'),
  saddleWidth: recalled(38, '36 to 40'),
  saddleDepth: recalled(6.5, '6 to 7'),
  saddleHeight: recalled(7.5, '7 to 8'),
  saddleCrest: ours(2, 'its round begins at the edge'),
  saddleGap: recalled(0.4, '0.3 to 0.5'),
  endpinDiameter: recalled(7.5, '7 to 8'),
};

const ANY_VIOLA: Cells = {
  ...ANY,
  nutDepth: recalled(6, 'the violin, a little more'),
  bridgeTopThickness: recalled(1.5, 'the violin, a little more'),
  tailGutGap: recalled(5, '3 to 8, as on a violin'),
  saddleGap: recalled(0.4, '0.3 to 0.5, as on a violin'),
  endpinDiameter: recalled(8, '7 to 8'),
};

/** 16 in and more. */
export const LARGE_VIOLA_SETUP: Cells = {
  ...ANY_VIOLA,
  stringSpacingNut: read(17, 'stringSpacing'),
  stringSpacingBridge: read(36, 'stringSpacing'),
  bridgeFootLength: recalled(14, 'weak'),
  saddleWidth: scaled(45),
  saddleDepth: scaled(7.5),
  saddleHeight: scaled(8.5),
  saddleCrest: ours(2.4, 'its round begins at the edge'),
};

export const MEDIUM_VIOLA_SETUP: Cells = {
  ...LARGE_VIOLA_SETUP,
  bridgeFootLength: recalled(13.5, 'weak'),
  saddleWidth: scaled(43),
  saddleDepth: scaled(7),
  saddleHeight: scaled(8),
  saddleCrest: ours(2.3, 'its round begins at the edge'),
};

/** Under 16 in. */
export const SMALL_VIOLA_SETUP: Cells = {
  ...ANY_VIOLA,
  stringSpacingNut: read(16.5, 'stringSpacing'),
  stringSpacingBridge: read(35, 'stringSpacing'),
  bridgeFootLength: recalled(13, 'weak'),
  saddleWidth: scaled(42),
  saddleDepth: scaled(7),
  saddleHeight: scaled(8),
  saddleCrest: ours(2.2, 'its round begins at the edge'),
};

/** The full-size cello. */
export const CELLO_SETUP: Cells = {
  ...ANY,
  stringSpacingNut: recalled(22.3, '22 to 22.5'),
  stringSpacingBridge: recalled(47, '46 to 48'),
  nutDepth: recalled(9, 'weak'),
  bridgeFootLength: recalled(27, 'weak'),
  bridgeTopThickness: recalled(2.75, '2.5 to 3'),
  tailGutGap: recalled(20, 'weak'),
  saddleWidth: read(60, 'celloSaddle'),
  saddleDepth: read(12, 'celloSaddle'),
  saddleHeight: read(12, 'celloSaddle'),
  saddleCrest: ours(4, 'its round begins at the edge'),
  saddleGap: recalled(0.5, '0.3 to 0.5 on a violin, a little more'),
  endpinDiameter: recalled(25, 'weak'),
};
