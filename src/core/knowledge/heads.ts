import { type Cell, ours, practised, read, recalled } from './size.ts';

type Cells = Readonly<Record<string, Cell>>;

/** mm. Length of head that the side view below was fitted at: two old violin heads, photographed square from the side. */
const FITTED_AT_MM = 107;

const TWO_HEADS = 'fits the side views of two old violin heads, measured on photographs';

/** The side view at the length it was fitted at. */
const SIDE_MM = {
  headTop: 99.4,
  headDepth: 53,
  scrollHeight: 40,
  scrollFront: 1.4,
  scrollEye: 3.6,
  backHollow: 27.5,
  chinBehind: 31.8,
  chinReach: 21,
  throatGap: 1.7,
  throatRadius: 1.2,
} as const;

const PEGS_MM = { peg1: 15, peg2: 32, peg3: 50, peg4: 65.6 } as const;

/** What a head has whatever its length: angles, and how the spiral winds. */
const ANY_HEAD: Cells = {
  scrollTurns: practised(2.5, 'from the throat to the eye'),
  scrollQuickening: ours(0.006, `${TWO_HEADS}; an even spiral draws its inner turn far too small`),
  backLeaveAngle: ours(75, `${TWO_HEADS}, which leave it anywhere between 38° and 79°`),
  backLeanAngle: ours(31, TWO_HEADS),
  chinAngle: ours(4, TWO_HEADS),
  pegboxFrontAngle: ours(48, TWO_HEADS),
  outerTurnAngle: ours(9, 'half the published angle of the second turn'),
  middleTurnAngle: read(18, 'scrollAngles'),
  innerTurnAngle: ours(33.5, 'between the published 30° and 36°'),
};

/** The side view of a head of another length: the fitted one, enlarged; `weak` where no head of the kind was looked at. */
function sideOf(headLengthMm: number, weak: boolean): Cells {
  const scale = headLengthMm / FITTED_AT_MM;
  const why = weak ? 'the violin’s head, enlarged; none of this kind was measured, weak' : TWO_HEADS;
  const cells = Object.entries({ ...SIDE_MM, ...PEGS_MM }).map(([name, mm]) => [
    name,
    ours(tenths(mm * scale), name in PEGS_MM ? pegWhy(weak) : why),
  ]);
  return { ...ANY_HEAD, ...Object.fromEntries(cells) };
}

function pegWhy(weak: boolean): string {
  return weak
    ? 'the violin’s, enlarged; weak'
    : 'between two old heads measured on photographs; a published rule has a 20th, 10th, 6th and 5th of the string';
}

/** A figure of the fitted head brought to another length keeps twentieths of a millimetre. */
function tenths(mm: number): number {
  return Math.round(mm * 20) / 20;
}

/** A violin's head of this length: what its size prints, and everything else in proportion. */
export function violinHead(headLength: Cell): Cells {
  const scale = headLength[0] / FITTED_AT_MM;
  const of = (mm: number, note: string): Cell =>
    recalled(tenths(mm * scale), scale === 1 ? note : 'the full size, scaled');
  return {
    ...sideOf(headLength[0], false),
    headLength,
    chinSpare: ours(1, 'a file takes the rest once the neck is shaped'),
    scrollEars: of(42, '41 to 43'),
    headNarrowest: of(11.5, '11 to 13'),
    chinWidth: of(27, 'weak'),
    pegboxWidthNut: of(25, '25 beside a fingerboard of 24'),
    pegboxShoulder: practised(0, 'hardly wider than the neck'),
    pegboxWidthThroat: of(18, '18 to 18.6'),
    pegboxWallNut: of(4.7, '4.5 to 5.5'),
    pegboxWallThroat: of(4.4, '4.5 to 5.5, a little less at the throat'),
    pegboxWallLean: of(1, 'about 1 on each side'),
    pegboxFloor: of(4.5, 'weak'),
    pegboxEndSlope: ours(tenths(5 * scale), 'leaves wood over the chin, where a neck breaks'),
    pegboxWeb: ours(tenths(2.5 * scale), 'more than a chisel breaks through'),
    pegDiameter: of(7.5, '7.5 to 8'),
    pegTaper: read(30, 'pegTapers'),
  };
}

/** The full-size violin's head. */
export const VIOLIN_HEAD: Cells = violinHead(
  ours(FITTED_AT_MM, `${TWO_HEADS}; a published average is 108, one old head 106.3`),
);

const violaTable = (value: number) => read(value, 'violaTable');

/** A viola's head as the published table has it, in three sizes. */
export function violaHead(printed: {
  readonly lengthMm: number;
  readonly nutMm: number;
  readonly throatMm: number;
  readonly earsMm: number;
}): Cells {
  const scale = printed.lengthMm / FITTED_AT_MM;
  const scaled = (mm: number): Cell => recalled(tenths(mm * scale), 'the violin, enlarged; weak');
  return {
    ...sideOf(printed.lengthMm, true),
    headLength: violaTable(printed.lengthMm),
    chinSpare: ours(1.2, 'a file takes the rest once the neck is shaped'),
    scrollEars: recalled(printed.earsMm, 'the violin, enlarged; weak'),
    headNarrowest: scaled(11.5),
    chinWidth: recalled(printed.nutMm + 2, 'as much wider than at the nut as on a violin; weak'),
    pegboxWidthNut: violaTable(printed.nutMm),
    pegboxShoulder: recalled(
      3,
      'a violin’s head with small shoulders; some violas have a cello’s, twice as long on a wider pegbox; weak',
    ),
    pegboxWidthThroat: violaTable(printed.throatMm),
    pegboxWallNut: recalled(5.2, 'the violin, a little more; weak'),
    pegboxWallThroat: recalled(4.8, 'the violin, a little more; weak'),
    pegboxWallLean: recalled(1.1, 'the violin, a little more; weak'),
    pegboxFloor: recalled(5),
    pegboxEndSlope: ours(5.8, 'leaves wood over the chin, where a neck breaks'),
    pegboxWeb: ours(2.8, 'more than a chisel breaks through'),
    pegDiameter: recalled(8.2, '8 to 8.5; weak'),
    pegTaper: read(30, 'pegTapers'),
  };
}

/** The full-size cello's head; all from memory or enlarged from the violin's. */
export const CELLO_HEAD: Cells = {
  ...sideOf(200, true),
  headLength: recalled(200, 'weak'),
  chinSpare: ours(2, 'a file takes the rest once the neck is shaped'),
  scrollEars: recalled(66, '64 to 68; weak'),
  headNarrowest: recalled(18, 'in proportion to the ears; weak'),
  chinWidth: recalled(45, 'weak'),
  pegboxWidthNut: recalled(42, 'weak'),
  pegboxShoulder: recalled(7, 'rounded out from the neck in about a quarter circle; weak'),
  pegboxWidthThroat: recalled(30, 'weak'),
  pegboxWallNut: recalled(8.5, 'weak'),
  pegboxWallThroat: recalled(7.5, 'weak'),
  pegboxWallLean: recalled(1.8, 'weak'),
  pegboxFloor: recalled(8),
  pegboxEndSlope: ours(9, 'leaves wood over the chin, where a neck breaks'),
  pegboxWeb: ours(4, 'more than a chisel breaks through'),
  pegDiameter: recalled(13, '12.5 to 13.5; weak'),
  pegTaper: read(25, 'pegTapers'),
};
