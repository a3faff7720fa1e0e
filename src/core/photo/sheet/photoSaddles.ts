import { distanceBetween, hypot, type Point, point } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';
import { brightnessAt } from '../picture/grayPicture.ts';
import type { Picture } from '../picture/picture.ts';
import type { AgreeingMarkers } from './agreeingMarkers.ts';
import { type CodeSide, type CodeStart, codePull } from './codePull.ts';
import { grayWindow } from './grayWindow.ts';
import { applyHomography, type SheetPair } from './homography.ts';
import type { MarkedPattern } from './markedPattern.ts';
import { refineSaddle, type Saddle, type SaddleGuess } from './saddle.ts';
import { type SaddleMisfit, saddleMisfit } from './saddleMisfit.ts';

export interface MeasuredPair extends SheetPair {
  /** Spread of the photo point in x and in y. */
  readonly sigmaPx: number;
}

/**
 * The saddles of a pattern where the photograph shows them: predicted from the codes next to them and refined at full
 * size. One whose quarters are not black and white as printed, or whose arms are not two straight edges, counts as hidden.
 */
export function photoSaddles(
  picture: Picture,
  pattern: MarkedPattern,
  markers: AgreeingMarkers,
): readonly MeasuredPair[] {
  const predict = predictor(pattern, markers);
  return pattern.saddles.flatMap((saddle) => {
    const guess = guessOf(pattern, saddle, predict);
    const window = guess && grayWindow(picture, guess.at, guess.armPx + guess.sidePx + ROUND_PX);
    if (!window) return [];
    const { corner, gray } = window;
    const inWindow = (at: Point<'photo'>) => point<'photo'>(at.x - corner.x, at.y - corner.y);
    const local = { ...guess, at: inWindow(guess.at) };
    const refined = refineSaddle(gray, local);
    if (!refined) return [];
    const shift = { x: refined.at.x - local.at.x, y: refined.at.y - local.at.y };
    const brightness = (dx: number, dy: number) => {
      const step = pattern.squareMm * QUARTER_SHARE;
      const place = predict(point(saddle.x + dx * step, saddle.y + dy * step));
      if (place === null) return 0;
      const seen = inWindow(place);
      return brightnessAt(gray, seen.x + shift.x, seen.y + shift.y);
    };
    if (!isSaddle(pattern, saddle, brightness)) return [];
    const settled = freedFromCode(gray, local, refined, loneCode(pattern, saddle));
    if (!settled) return [];
    const { at, sigmaPx } = settled;
    return [{ sheet: saddle, photo: point(at.x + corner.x, at.y + corner.y), sigmaPx }];
  });
}

/** px. Room for the refinement to step about in the window that is cut out for it. */
const ROUND_PX = 5;

/** The saddle less what a code on one side of it pulls, and its spread; null where something covers an arm of it. */
function freedFromCode(
  gray: GrayPicture,
  guess: PrintedGuess,
  { at, sigmaPxPerLevel }: Saddle,
  code: CodeSide | null,
): { readonly at: Point<'photo'>; readonly sigmaPx: number } | null {
  const misfit = saddleMisfit(gray, { ...guess, at });
  if (misfit === null || isCovered(misfit)) return null;
  const noisePx = hypot(LEAST_SIGMA_PX, BETWEEN_PIXELS * misfit.levels * sigmaPxPerLevel);
  const isPulled = code && guess.gapPx < BLUR_REACH * misfit.blurPx;
  if (!isPulled) return { at, sigmaPx: noisePx };
  const pull = codePull(guess, code, guess.codeStart, misfit.blurPx);
  if (!pull) return null;
  const sigmaPx = hypot(noisePx, PULL_UNSURE * hypot(pull.x, pull.y));
  return { at: point(at.x - pull.x, at.y - pull.y), sigmaPx };
}

/** Between pixels the noise is averaged away in part, so what is left there is less than what the pixels have. */
const BETWEEN_PIXELS = 1.7;
/** Times the half width of an edge: a code farther off than this pulls less than a hundredth of a pixel. */
const BLUR_REACH = 2.5;
/** Share of a code's pull that stays unknown, as the blur of an edge is known to a few hundredths. */
const PULL_UNSURE = 0.15;

/** The side of the one code beside a saddle; null where both white quarters bear one, or none. */
function loneCode(pattern: MarkedPattern, saddle: Point<'sheet'>): CodeSide | null {
  const reach = 0.9 * pattern.squareMm;
  const beside = pattern.markers.flatMap(({ corners: [upperLeft, , lowerRight] }): CodeSide[] => {
    const x = (upperLeft.x + lowerRight.x) / 2 - saddle.x;
    const y = (upperLeft.y + lowerRight.y) / 2 - saddle.y;
    if (Math.abs(x) > reach || Math.abs(y) > reach) return [];
    return [{ first: x > 0 ? 1 : -1, second: y > 0 ? 1 : -1 }];
  });
  return beside.length === 1 ? beside[0] : null;
}

/** Something lies over an arm: it departs much from an edge, or clearly more than the arms that are free. */
function isCovered({ worstArm, bestArms }: SaddleMisfit): boolean {
  return worstArm > MOST_MISFIT || worstArm > Math.max(LEAST_MISFIT, TIMES_BEST * bestArms);
}

/** Shares of the step from black to white: no noise leaves as much as the first; blur and codes leave less than the second. */
const MOST_MISFIT = 0.2;
const LEAST_MISFIT = 0.06;
/** Noise alone makes arms differ less than this. */
const TIMES_BEST = 2;

interface PrintedGuess extends SaddleGuess {
  /** From the strips that are looked at to where the codes begin. */
  readonly gapPx: number;
  readonly codeStart: CodeStart;
}

/** Null where no code is near, or where the squares are too small in the picture to be measured. */
function guessOf(pattern: MarkedPattern, saddle: Point<'sheet'>, predict: Prediction): PrintedGuess | null {
  const at = predict(saddle);
  const east = predict(point(saddle.x + pattern.squareMm / 2, saddle.y));
  const north = predict(point(saddle.x, saddle.y + pattern.squareMm / 2));
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
    gapPx: SIDE_SHARE * squarePx - sidePx,
    codeStart: { firstPx: SIDE_SHARE * 2 * across, secondPx: SIDE_SHARE * 2 * up },
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
/** px. What pixels and print leave open however little the noise. */
const LEAST_SIGMA_PX = 0.012;
/** Levels of 255. Black and white nearer than this are shadow, glare or something that lies on the sheet. */
const LEAST_CONTRAST = 25;

function isSaddle(
  pattern: MarkedPattern,
  saddle: Point<'sheet'>,
  brightness: (dx: number, dy: number) => number,
): boolean {
  const isBlackRising = pattern.blackSquares.some(
    ({ min }) => hypot(min.x - saddle.x, min.y - saddle.y) < QUARTER_SHARE * pattern.squareMm,
  );
  const rising = [brightness(1, 1), brightness(-1, -1)];
  const falling = [brightness(1, -1), brightness(-1, 1)];
  const [black, white] = isBlackRising ? [rising, falling] : [falling, rising];
  return Math.min(...white) - Math.max(...black) > LEAST_CONTRAST;
}

type Prediction = (place: Point<'sheet'>) => Point<'photo'> | null;

/**
 * Where a place on the pattern shows, from the perspective and from how far the lens bends the code corners next to it;
 * null farther than three squares from any code.
 */
function predictor(pattern: MarkedPattern, { corners, homography }: AgreeingMarkers): Prediction {
  const bends = corners.map((pair) => {
    const plain = applyHomography(homography, pair.sheet);
    return { at: pair.sheet, x: pair.photo.x - plain.x, y: pair.photo.y - plain.y };
  });
  const reach = 3 * pattern.squareMm;
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
