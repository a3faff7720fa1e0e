import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import { type AgreeingMarkers, agreeingMarkers } from './agreeingMarkers.ts';
import type { CalibrationSheet } from './calibrationSheet.ts';
import type { MarkedPattern } from './markedPattern.ts';
import type { MarkerFinder } from './markerFinder.ts';
import { type MeasuredPair, photoSaddles } from './photoSaddles.ts';
import { type SeenPatterns, type SeenSheet, seenPatterns } from './seenPatterns.ts';
import { enclosedShare, hiddenSides } from './sheetSides.ts';
import {
  foldedFault,
  mirroredFault,
  notFound,
  sheetName,
  tooLittleFault,
  twiceFault,
  unknownFault,
  wrongPaper,
} from './sheetTrouble.ts';

export type { MeasuredPair } from './photoSaddles.ts';

/** The points of the sheet as they were measured in one photograph. */
export interface SheetReading {
  readonly sheet: CalibrationSheet;
  readonly pairs: readonly MeasuredPair[];
  readonly markersSeen: number;
  readonly markersTotal: number;
}

/** Of the sheet that the saddles seen must enclose: beyond them a camera would be a guess. */
const ENOUGH_ENCLOSED = 0.7;
const ENOUGH_SADDLES = 24;

/**
 * The sheet's saddles, measured in the photograph where they can be seen.
 *
 * Faults: those of {@link readAnySheet}, and `sheet.wrongPaper` (another sheet's codes).
 * Method: codes are found in a shrunk picture; saddles are predicted from the codes next to them and refined at full
 * size; one whose four quarters are not black and white as printed counts as hidden.
 */
export function readSheet(
  picture: Picture,
  sheet: CalibrationSheet,
  finder: MarkerFinder,
): Checked<SheetReading> {
  const seen = seenPatterns(picture, finder);
  const same = seen.sheets.find(
    (one) => one.sheet.paper === sheet.paper && one.sheet.number === sheet.number,
  );
  if (same) return readOneSheet(picture, same);
  const [other] = seen.sheets;
  return refuse(other ? wrongPaper(other.sheet, sheet) : noSheet(picture, seen));
}

/**
 * As {@link readSheet}, for whichever of our sheets the photograph shows most of. Faults: `sheet.notFound` (too dark,
 * blurred or not there), `sheet.mirrored`, `sheet.unknown` (codes of no layout of ours), `sheet.twice`, `sheet.folded`,
 * `sheet.too-little` (what is seen encloses too little of it).
 */
export function readAnySheet(picture: Picture, finder: MarkerFinder): Checked<SheetReading> {
  const seen = seenPatterns(picture, finder);
  const [first] = seen.sheets;
  return first ? readOneSheet(picture, first) : refuse(noSheet(picture, seen));
}

function readOneSheet(picture: Picture, seen: SeenSheet): Checked<SheetReading> {
  const placed = misplaced(sheetName(seen.sheet), seen.sheet, seen.markers);
  if (placed) return refuse(placed);
  const reading = readingOf(picture, seen);
  return isEnough(reading) ? accept(reading) : refuse(tooLittle(reading));
}

/** The saddles of one sheet, however few. */
export function readingOf(picture: Picture, { sheet, markers }: SeenSheet): SheetReading {
  return {
    sheet,
    pairs: photoSaddles(picture, sheet, markers),
    markersSeen: markers.count,
    markersTotal: sheet.markers.length,
  };
}

/** Whether what is seen of a sheet holds a camera by itself. */
export function isEnough({ sheet, pairs }: SheetReading): boolean {
  return pairs.length >= ENOUGH_SADDLES && enclosedBy(sheet, pairs) >= ENOUGH_ENCLOSED;
}

export function tooLittle({ sheet, pairs, markersSeen }: SheetReading): Fault {
  const sides = hiddenSides(
    sheet,
    pairs.map((pair) => pair.sheet),
  );
  return tooLittleFault(sheet, sides, markersSeen, enclosedBy(sheet, pairs));
}

export function enclosedBy(sheet: CalibrationSheet, pairs: readonly MeasuredPair[]): number {
  return enclosedShare(
    sheet,
    pairs.map((pair) => pair.sheet),
  );
}

const FEWEST_CODES = 4;

/** Why no sheet of ours was read at all. */
export function noSheet(picture: Picture, { mirrored, strangers }: SeenPatterns): Fault {
  if (mirrored >= FEWEST_CODES && mirrored > strangers) return mirroredFault(mirrored);
  if (strangers >= FEWEST_CODES) return unknownFault(strangers);
  return notFound(picture);
}

/**
 * Codes of a sheet or card away from the rest, on a perspective of their own: seen twice, or on a part that is bent up;
 * null where there are too few of them to tell.
 */
export function misplaced(
  name: string,
  pattern: MarkedPattern,
  { ids, others }: AgreeingMarkers,
): Fault | null {
  const apart = agreeingMarkers(others, pattern, FEWEST_APART);
  if (apart === null) return null;
  const twice = [...apart.ids].filter((id) => ids.has(id)).length;
  return 2 * twice >= apart.count ? twiceFault(name, twice) : foldedFault(name, apart.count);
}

const FEWEST_APART = 3;
