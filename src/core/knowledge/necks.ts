import { type Cell, ours, read, recalled } from './size.ts';

type Cells = Readonly<Record<string, Cell>>;

const table = (value: number) => read(value, 'violaTable');

/** The neck of a full-size violin: its set, the fingerboard, the strings over it, heel, button and mortise. */
export const VIOLIN_NECK: Cells = {
  overstand: recalled(6, '5.5 to 6.5'),
  projection: read(27, 'neckSets'), // printed 26 to 28
  boardLength: recalled(270, 'one published drawing has 269'),
  boardWidthNut: read(24, 'neckHeel'),
  boardWidthEnd: read(42, 'neckHeel'),
  boardRadius: read(42, 'boardShape'), // 38 to 43 in use
  boardSide: recalled(5, '4.5 to 5.5'),
  boardRoof: recalled(5, '5 or more'),
  boardScoopBass: read(0.75, 'boardShape'),
  boardScoopTreble: read(0.25, 'boardShape'),
  stringNutBass: ours(0.5, 'a little more than the highest string has'),
  stringNutTreble: recalled(0.35, '0.3 to 0.4; a playing card in a book of 1902'),
  stringEndBass: read(5.5, 'stringsOverBoard'), // printed 5 to 6
  stringEndTreble: read(3.5, 'stringsOverBoard'), // printed 3 to 4
  neckThicknessNut: recalled(19, '18.5 to 19.5'),
  neckThicknessHeel: recalled(20.5, '20.5 to 22'),
  heelStart: ours(35, 'leaves the heel a round that a thumb finds room in'),
  buttonWidth: read(21, 'neckHeel'),
  buttonHeight: recalled(13.5, '13 to 14'),
  mortiseDepth: recalled(6, '6 to 7'),
  rootAngle: read(87, 'neckHeel'),
};

/** What a viola's neck has whatever its size. */
const ANY_VIOLA: Cells = {
  boardWidthNut: read(25, 'violaBoard'),
  boardRadius: table(37),
  boardRoof: recalled(5.5, 'the violin, a little more'),
  boardScoopBass: ours(0.9, 'the violin’s, for a longer and thicker string; weak'),
  boardScoopTreble: ours(0.35, 'the violin’s, for a longer and thicker string; weak'),
  stringNutBass: ours(0.6, 'a little more than on a violin'),
  stringNutTreble: ours(0.4, 'a little more than on a violin'),
  stringEndBass: recalled(6.25, '6 to 6.5'),
  stringEndTreble: recalled(4.25, '4 to 4.5'),
  neckThicknessNut: recalled(20, 'with the board; a published table prints 19 to 21 and does not say'),
  rootAngle: table(87),
};

export const LARGE_VIOLA_NECK: Cells = {
  ...ANY_VIOLA,
  overstand: table(8.5),
  projection: table(32.5),
  boardLength: table(300),
  boardWidthEnd: table(48),
  boardSide: table(6.5),
  neckThicknessHeel: recalled(23, 'with the board; a published table prints 22 and does not say'),
  heelStart: ours(41, 'leaves the heel a round that a thumb finds room in'),
  buttonWidth: table(23),
  buttonHeight: table(15),
  mortiseDepth: recalled(7, 'the violin, a little more'),
};

export const MEDIUM_VIOLA_NECK: Cells = {
  ...ANY_VIOLA,
  overstand: table(8),
  projection: table(32),
  boardLength: table(295),
  boardWidthEnd: table(46),
  boardSide: table(6),
  neckThicknessHeel: recalled(22.5, 'with the board; a published table prints 20 and does not say'),
  heelStart: ours(39, 'leaves the heel a round that a thumb finds room in'),
  buttonWidth: table(22.5),
  buttonHeight: table(14),
  mortiseDepth: recalled(7, 'the violin, a little more'),
};

export const SMALL_VIOLA_NECK: Cells = {
  ...ANY_VIOLA,
  overstand: table(7.5),
  projection: table(31.5),
  boardLength: table(290),
  boardWidthEnd: table(44),
  boardSide: table(5.5),
  neckThicknessHeel: recalled(22, 'with the board; a published table prints 19.5 and does not say'),
  heelStart: ours(37.5, 'leaves the heel a round that a thumb finds room in'),
  buttonWidth: table(22),
  buttonHeight: table(13),
  mortiseDepth: recalled(6.5, 'between violin and medium viola'),
};

/** The neck of a full-size cello. Most figures are from memory. */
export const CELLO_NECK: Cells = {
  overstand: recalled(21, '20 to 23'),
  projection: read(81, 'celloSetUp'), // the source of the strings over the board; others have 79 to 81, and 82.5 to 84
  boardLength: recalled(585, '580 to 590'),
  boardWidthNut: recalled(32),
  boardWidthEnd: recalled(63, '62 to 64'),
  boardRadius: recalled(62, '60 to 65; many boards are flat under the lowest string, which is not drawn'),
  boardSide: ours(7.5, 'brings the board to a usual thickness in the middle'),
  boardRoof: recalled(7.5, 'weak'),
  boardScoopBass: ours(1.5, 'more than half the string, which one published rule asks for; weak'),
  boardScoopTreble: ours(0.8, 'more than half the string, which one published rule asks for; weak'),
  stringNutBass: read(0.75, 'celloNut'),
  stringNutTreble: read(0.5, 'celloNut'),
  stringEndBass: read(6.5, 'celloSetUp'),
  stringEndTreble: read(4, 'celloSetUp'),
  neckThicknessNut: recalled(29, '29 to 31'),
  neckThicknessHeel: recalled(34, 'weak'),
  heelStart: ours(82, 'leaves the heel a round that a thumb finds room in'),
  buttonWidth: recalled(32, '30 to 34'),
  buttonHeight: recalled(23.5, '22 to 25'),
  mortiseDepth: recalled(12, 'twice the violin’s'),
  rootAngle: ours(
    82.5,
    'square to the edge less the angle of a usual neck, and 1.5° more; 87° as on a violin would sink it far too deep',
  ),
};
