import {
  accept,
  type Checked,
  distanceBetween,
  type Fault,
  type Point,
  point,
  refuse,
} from '../../base/index.ts';
import { applyHomography, type SheetPair } from '../camera/homography.ts';
import { brightnessAt, enlarged, grayOf, shrunk } from '../picture/grayPicture.ts';
import type { Picture } from '../picture/picture.ts';
import { type AgreeingMarkers, agreeingMarkers } from './agreeingMarkers.ts';
import {
  type CalibrationSheet,
  calibrationSheet,
  paperOfMarker,
  SHEET_PAPERS,
  type SheetPaper,
} from './calibrationSheet.ts';
import type { FoundMarker, GrayPicture, MarkerFinder } from './markerFinder.ts';
import { refineSaddle, type SaddleGuess } from './saddle.ts';
import { hiddenSides } from './sheetSides.ts';

export interface MeasuredPair extends SheetPair {
  /** Spread of the photo point in x and in y. */
  readonly sigmaPx: number;
}

/** The points of the sheet as they were measured in one photograph. */
export interface SheetReading {
  readonly sheet: CalibrationSheet;
  readonly pairs: readonly MeasuredPair[];
  readonly markersSeen: number;
  readonly markersTotal: number;
}

/**
 * The sheet's saddles, measured in the photograph where they can be seen.
 *
 * Faults: `sheet.notFound` (none of our codes), `sheet.wrongPaper` (another paper's codes), `sheet.hidden` (one side
 * of the band or more cannot be seen, so that the camera would be a guess there).
 * Method: codes are found in a shrunk picture; saddles are predicted from the codes next to them and refined at full
 * size; one whose four quarters are not black and white as printed counts as hidden.
 */
export function readSheet(
  picture: Picture,
  sheet: CalibrationSheet,
  finder: MarkerFinder,
): Checked<SheetReading> {
  const gray = grayOf(picture);
  const found = findMarkers(gray, finder);
  const paper = paperSeen(found);
  if (paper !== null && paper !== sheet.paper) return refuse(wrongPaper(paper, sheet.paper));
  return readFound(gray, sheet, found);
}

/** As {@link readSheet}, for whichever of our papers the photograph shows. Faults: `sheet.notFound`, `sheet.hidden`. */
export function readAnySheet(picture: Picture, finder: MarkerFinder): Checked<SheetReading> {
  const gray = grayOf(picture);
  const found = findMarkers(gray, finder);
  const paper = paperSeen(found);
  return paper === null ? refuse(notFound()) : readFound(gray, calibrationSheet(paper), found);
}

function readFound(
  gray: GrayPicture,
  sheet: CalibrationSheet,
  found: readonly FoundMarker[],
): Checked<SheetReading> {
  const agreeing = agreeingMarkers(found, sheet);
  if (agreeing === null) return refuse(notFound());
  const pairs = measureSaddles(gray, sheet, agreeing);
  const hidden = hiddenSides(
    sheet,
    pairs.map((pair) => pair.sheet),
  );
  if (hidden.length > 0) return refuse(hiddenFault(hidden, agreeing.count, sheet.markers.length));
  return accept({ sheet, pairs, markersSeen: agreeing.count, markersTotal: sheet.markers.length });
}

/** px. Long side of the picture in which codes are looked for first: a code is then still some 20 px wide. */
const SEARCH_SIZE_PX = 2200;
/** With fewer codes than this the search is repeated in a larger picture. */
const ENOUGH_MARKERS = 24;

function findMarkers(gray: GrayPicture, finder: MarkerFinder): readonly FoundMarker[] {
  const longSide = Math.max(gray.widthPx, gray.heightPx);
  let best: readonly FoundMarker[] = [];
  for (let times = Math.max(1, Math.ceil(longSide / SEARCH_SIZE_PX)); times >= 1; times--) {
    const found = finder(shrunk(gray, times)).filter((marker) => paperOfMarker(marker.id) !== null);
    const large = found.map((marker) => enlargedMarker(marker, times));
    if (large.length > best.length) best = large;
    if (best.length >= ENOUGH_MARKERS) return best;
  }
  return best;
}

function enlargedMarker({ id, corners }: FoundMarker, times: number): FoundMarker {
  const large = (corner: Point<'photo'>) =>
    point<'photo'>(enlarged(corner.x, times), enlarged(corner.y, times));
  return { id, corners: [large(corners[0]), large(corners[1]), large(corners[2]), large(corners[3])] };
}

function paperSeen(found: readonly FoundMarker[]): SheetPaper | null {
  const counts = SHEET_PAPERS.map((paper) => ({
    paper,
    count: found.filter((marker) => paperOfMarker(marker.id) === paper).length,
  }));
  const most = counts.reduce((best, one) => (one.count > best.count ? one : best));
  return most.count >= FEWEST_MARKERS ? most.paper : null;
}

const FEWEST_MARKERS = 4;

function measureSaddles(
  gray: GrayPicture,
  sheet: CalibrationSheet,
  markers: AgreeingMarkers,
): MeasuredPair[] {
  const predict = predictor(sheet, markers);
  const step = sheet.squareMm * QUARTER_SHARE;
  return sheet.saddles.flatMap((saddle) => {
    const guess = guessOf(sheet, saddle, predict);
    const refined = guess && refineSaddle(gray, guess);
    if (!refined) return [];
    const shift = { x: refined.at.x - guess.at.x, y: refined.at.y - guess.at.y };
    const brightness = (dx: number, dy: number) => {
      const place = predict(point(saddle.x + dx * step, saddle.y + dy * step));
      return place === null ? 0 : brightnessAt(gray, place.x + shift.x, place.y + shift.y);
    };
    if (!isSaddle(sheet, saddle, brightness)) return [];
    return [{ sheet: saddle, photo: refined.at, sigmaPx: Math.max(LEAST_SIGMA_PX, refined.sigmaPx) }];
  });
}

/** Null where no code is near, or where the squares are too small in the picture to be measured. */
function guessOf(sheet: CalibrationSheet, saddle: Point<'sheet'>, predict: Prediction): SaddleGuess | null {
  const at = predict(saddle);
  const east = predict(point(saddle.x + sheet.squareMm / 2, saddle.y));
  const north = predict(point(saddle.x, saddle.y + sheet.squareMm / 2));
  if (at === null || east === null || north === null) return null;
  const [across, up] = [distanceBetween(at, east), distanceBetween(at, north)];
  const squarePx = 2 * Math.min(across, up);
  const sidePx = Math.min(WIDEST_SIDE_PX, SIDE_SHARE * squarePx - CODE_BLUR_PX);
  if (sidePx < NARROWEST_SIDE_PX) return null;
  return {
    at,
    edges: [
      { x: (east.x - at.x) / across, y: (east.y - at.y) / across },
      { x: (north.x - at.x) / up, y: (north.y - at.y) / up },
    ],
    armPx: Math.min(LONGEST_ARM_PX, ARM_SHARE * squarePx),
    sidePx,
  };
}

/** Plain strips beside an edge end where the codes begin, less what their edges blur over. */
const SIDE_SHARE = 0.15;
const CODE_BLUR_PX = 2.5;
const NARROWEST_SIDE_PX = 1.5;
const WIDEST_SIDE_PX = 8;
/** Arms end well before the next corner. */
const ARM_SHARE = 0.4;
const LONGEST_ARM_PX = 28;
/** Where a quarter's brightness is looked at: between the edges and the code. */
const QUARTER_SHARE = 0.08;
/** px. Below this the spread within one window says nothing about pixel and print errors. */
const LEAST_SIGMA_PX = 0.02;
/** Levels of 255. Black and white nearer than this are shadow, glare or something that lies on the sheet. */
const LEAST_CONTRAST = 25;

function isSaddle(
  sheet: CalibrationSheet,
  saddle: Point<'sheet'>,
  brightness: (dx: number, dy: number) => number,
): boolean {
  const column = Math.round((saddle.x - sheet.band.min.x) / sheet.squareMm);
  const row = Math.round((saddle.y - sheet.band.min.y) / sheet.squareMm);
  const rising = [brightness(1, 1), brightness(-1, -1)];
  const falling = [brightness(1, -1), brightness(-1, 1)];
  const [black, white] = (column + row) % 2 === 0 ? [rising, falling] : [falling, rising];
  return Math.min(...white) - Math.max(...black) > LEAST_CONTRAST;
}

type Prediction = (place: Point<'sheet'>) => Point<'photo'> | null;

/**
 * Where a place on the sheet shows, from the perspective and from how far the lens bends the code corners next to it;
 * null farther than three squares from any code.
 */
function predictor(sheet: CalibrationSheet, { corners, homography }: AgreeingMarkers): Prediction {
  const bends = corners.map((pair) => {
    const plain = applyHomography(homography, pair.sheet);
    return { at: pair.sheet, x: pair.photo.x - plain.x, y: pair.photo.y - plain.y };
  });
  const reach = 3 * sheet.squareMm;
  return (place) => {
    let [weights, x, y] = [0, 0, 0];
    for (const bend of bends) {
      const away = distanceBetween(bend.at, place);
      if (away > reach) continue;
      const weight = (1 - away / reach) ** 2;
      weights += weight;
      x += weight * bend.x;
      y += weight * bend.y;
    }
    if (!(weights > 0)) return null;
    const plain = applyHomography(homography, place);
    return point(plain.x + x / weights, plain.y + y / weights);
  };
}

function notFound(): Fault {
  return {
    code: 'sheet.notFound',
    at: 'photograph',
    found: 'no calibration sheet can be read in it',
    need: 'our printed sheet in view, sharp and evenly lit',
    remedy:
      'photograph again with the sheet under the instrument, or give a known length such as the body length',
  };
}

function wrongPaper(seen: SheetPaper, asked: SheetPaper): Fault {
  return {
    code: 'sheet.wrongPaper',
    at: 'sheet paper',
    found: `the photograph shows the ${seen} sheet, not the ${asked} one`,
    need: 'the paper that was photographed',
    remedy: `give ${seen} as the sheet's paper`,
  };
}

function hiddenFault(sides: readonly string[], seen: number, total: number): Fault {
  return {
    code: 'sheet.hidden',
    at: 'photograph',
    found: `the band of squares cannot be read along its ${sides.join(' and ')} (${seen} of ${total} codes seen)`,
    need: 'at least a third of the squares on each of the four sides',
    remedy: 'photograph again with the whole sheet in view and nothing but the neck across the band',
  };
}
