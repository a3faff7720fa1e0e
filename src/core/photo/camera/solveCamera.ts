import { accept, type Checked, type Finding, type Point, point, refuse } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import { type PrintScale, printOf } from '../sheet/printScale.ts';
import type { MeasuredPair, SheetReading } from '../sheet/sheetReading.ts';
import { type Camera, projection, turnMatrix, undistortedRadius } from './camera.ts';
import { type FitProblem, type Fitted, fitParameters } from './cameraFit.ts';
import { cameraOf, PARAMETERS, parametersOf, slopeSteps } from './cameraParameters.ts';
import { cameraFindings, lensFault, notFlatFault, steepFault, unsettledFault } from './cameraTrouble.ts';
import { fitHomography } from './homography.ts';
import { cameraFromHomography, focalFromHomography } from './startCamera.ts';
import type { CameraTrust } from './view.ts';

export interface CameraOptions {
  /** What the two bars of 150 mm measure on the print. */
  readonly sheetBarMm?: { readonly xMm?: number; readonly yMm?: number };
}

export interface SolvedCamera {
  readonly camera: Camera;
  readonly printScale: PrintScale;
  readonly trust: CameraTrust;
  /** Of one coordinate, over the points kept. */
  readonly rmsPx: number;
  readonly rmsMm: number;
  readonly tiltRad: number;
  /** How high the projection centre stands over the paper. */
  readonly standMm: number;
  readonly pointsUsed: number;
  readonly findings: readonly Finding[];
}

/**
 * The camera that took the picture of the sheet, with its covariance.
 *
 * The focal length is held near the one the camera noted (35 mm equivalent, ± 3 %), the centre near the middle of
 * the picture (± 0.6 % of its diagonal), and the lens near none of distortion; where the sheet says otherwise it wins.
 * Faults: `sheet.bar`, `camera.unsettled`, `camera.steep` (more than 45° from square on), `camera.lens`, `sheet.notFlat`.
 * Findings: `sheet.unmeasured`, `sheet.curled`, `camera.focalNote`, `sheet.outliers`.
 * Method: least squares from several first focal lengths, straying points dropped, the spread taken from what is left.
 */
export function solveCamera(
  reading: SheetReading,
  picture: Pick<Picture, 'widthPx' | 'heightPx' | 'focal35Mm'>,
  options: CameraOptions = {},
): Checked<SolvedCamera> {
  const print = printOf(options.sheetBarMm);
  if (!print.ok) return refuse(...print.faults);
  const { scale } = print.value;
  const pairs = reading.pairs.map((pair) => ({
    ...pair,
    sheet: point<'sheet'>(pair.sheet.x * scale.x, pair.sheet.y * scale.y),
  }));
  const frame = frameOf(picture);
  const noted = bestFit(pairs, frame, frame.notedFocalPx);
  const strays = noted !== null && straysFromNote(noted, frame);
  const solution = strays ? bestFit(pairs, frame, undefined) : noted;
  if (!solution || !solution.fitted.settled) return refuse(unsettledFault());
  const camera = cameraOf(solution.fitted.parameters);
  const tiltRad = tiltOf(camera);
  if (tiltRad > STEEPEST_RAD) return refuse(steepFault(tiltRad));
  if (undistortedRadius((REACH * frame.diagonalPx) / 2 / camera.focalPx, camera.k1, camera.k2) === null)
    return refuse(lensFault());
  const standMm = projection(camera).stand.z;
  const rmsMm = (solution.rmsPx * standMm) / camera.focalPx;
  if (rmsMm > ROUGHEST_MM) return refuse(notFlatFault(rmsMm));
  return accept({
    camera,
    printScale: scale,
    trust: {
      covariance: solution.fitted.covariance.flatMap((row) => [...row]),
      printPlusMinus: print.value.plusMinus,
    },
    rmsPx: solution.rmsPx,
    rmsMm,
    tiltRad,
    standMm,
    pointsUsed: solution.kept.length,
    findings: [
      ...print.value.findings,
      ...cameraFindings({
        rmsMm,
        dropped: pairs.length - solution.kept.length,
        total: pairs.length,
        ...(strays &&
          frame.notedFocalPx && { focal: { notedPx: frame.notedFocalPx, foundPx: camera.focalPx } }),
      }),
    ],
  });
}

const STEEPEST_RAD = Math.PI / 4;
/** mm. A flat, stiff sheet reads to a few hundredths; beyond this no millimetre in the picture can be trusted. */
const ROUGHEST_MM = 0.5;
/** Share of the half diagonal to which the lens model must hold. */
const REACH = 1.02;

interface PictureFrame {
  readonly centre: Point<'photo'>;
  readonly diagonalPx: number;
  readonly notedFocalPx: number | undefined;
}

const DIAGONAL_OF_35_MM = Math.hypot(36, 24);

function frameOf(picture: Pick<Picture, 'widthPx' | 'heightPx' | 'focal35Mm'>): PictureFrame {
  const diagonalPx = Math.hypot(picture.widthPx, picture.heightPx);
  return {
    centre: point((picture.widthPx - 1) / 2, (picture.heightPx - 1) / 2),
    diagonalPx,
    notedFocalPx: picture.focal35Mm && (picture.focal35Mm / DIAGONAL_OF_35_MM) * diagonalPx,
  };
}

/** Share by which a noted focal length may be off: it is rounded to whole mm, and focusing lengthens it. */
const NOTED_FOCAL_SIGMA = 0.03;
/** Phones and cameras between a wide angle and a short telephoto, in logarithm, about 0.9 of the diagonal. */
const UNKNOWN_FOCAL_SIGMA = 0.6;
const UNKNOWN_FOCAL_SHARE = 0.9;
/** Share of the diagonal by which the lens's axis misses the middle; stabilised lenses move by about so much. */
const CENTRE_SIGMA = 0.006;
/** Distortion at the corner of the picture, as a share of the radius. */
const CORNER_BEND = { k1: 0.05, k2: 0.03 } as const;

function straysFromNote(solution: Solution, frame: PictureFrame): boolean {
  if (frame.notedFocalPx === undefined) return false;
  const away = solution.fitted.parameters[PARAMETERS.logFocal] - Math.log(frame.notedFocalPx);
  return Math.abs(away) > 3 * NOTED_FOCAL_SIGMA;
}

interface Solution {
  readonly fitted: Fitted;
  readonly kept: readonly MeasuredPair[];
  readonly rmsPx: number;
}

function bestFit(
  pairs: readonly MeasuredPair[],
  frame: PictureFrame,
  notedFocalPx: number | undefined,
): Solution | null {
  const homography = fitHomography(pairs);
  if (!homography) return null;
  const seen = focalFromHomography(homography, frame.centre);
  const guesses = (
    notedFocalPx ? [notedFocalPx] : [seen, ...[0.6, 1, 2].map((share) => share * frame.diagonalPx)]
  ).filter(
    (focal): focal is number => focal !== undefined && focal !== null && focal < 20 * frame.diagonalPx,
  );
  let best: { fitted: Fitted; problem: FitProblem } | null = null;
  for (const focal of guesses) {
    const start = cameraFromHomography(homography, focal, frame.centre);
    const problem = problemFor(pairs, start, frame, notedFocalPx, 1);
    const fitted = fitParameters(problem, parametersOf(start));
    if (fitted && (!best || fitted.cost < best.fitted.cost)) best = { fitted, problem };
  }
  return best && withoutStrays(pairs, best.fitted, frame, notedFocalPx);
}

/** How far, in spreads, a point may lie before it is taken for something that covers the sheet. */
const STRAY = 5;

function withoutStrays(
  pairs: readonly MeasuredPair[],
  first: Fitted,
  frame: PictureFrame,
  notedFocalPx: number | undefined,
): Solution | null {
  let fitted = first;
  let kept = pairs;
  for (let round = 0; round < 3; round++) {
    const camera = cameraOf(fitted.parameters);
    const sizes = pairs.map((pair) => missOf(projection(camera), pair));
    const scale = spreadOf(kept.flatMap((pair) => missOf(projection(camera), pair)));
    kept = pairs.filter((_, place) => Math.hypot(...sizes[place]) < STRAY * scale);
    const next = fitParameters(problemFor(kept, camera, frame, notedFocalPx, scale), fitted.parameters);
    if (!next) return null;
    fitted = next;
  }
  const seen = projection(cameraOf(fitted.parameters));
  const squares = kept.map((pair) => {
    const at = seen.toPhoto(pair.sheet.x, pair.sheet.y, 0);
    return (at.x - pair.photo.x) ** 2 + (at.y - pair.photo.y) ** 2;
  });
  const rmsPx = Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / (2 * kept.length));
  return { fitted, kept, rmsPx };
}

function missOf(seen: ReturnType<typeof projection>, pair: MeasuredPair): [number, number] {
  const at = seen.toPhoto(pair.sheet.x, pair.sheet.y, 0);
  return [(at.x - pair.photo.x) / pair.sigmaPx, (at.y - pair.photo.y) / pair.sigmaPx];
}

/** The spread of normal residuals from their median size, which a few strays do not move. */
function spreadOf(misses: readonly number[]): number {
  const sizes = misses.map(Math.abs).sort((a, b) => a - b);
  return MEDIAN_TO_SPREAD * sizes[Math.floor(sizes.length / 2)];
}

const MEDIAN_TO_SPREAD = 1.4826;

function problemFor(
  pairs: readonly MeasuredPair[],
  start: Camera,
  frame: PictureFrame,
  notedFocalPx: number | undefined,
  scale: number,
): FitProblem {
  const corner = frame.diagonalPx / 2 / start.focalPx;
  const centreSigma = CENTRE_SIGMA * frame.diagonalPx;
  return {
    residuals: (parameters) => {
      const seen = projection(cameraOf(parameters));
      const out = new Float64Array(2 * pairs.length);
      for (let place = 0; place < pairs.length; place++) {
        const { sheet, photo, sigmaPx } = pairs[place];
        const at = seen.toPhoto(sheet.x, sheet.y, 0);
        out[2 * place] = (at.x - photo.x) / (sigmaPx * scale);
        out[2 * place + 1] = (at.y - photo.y) / (sigmaPx * scale);
      }
      return out;
    },
    beliefs: [
      {
        parameter: PARAMETERS.logFocal,
        value: Math.log(notedFocalPx ?? UNKNOWN_FOCAL_SHARE * frame.diagonalPx),
        sigma: notedFocalPx ? NOTED_FOCAL_SIGMA : UNKNOWN_FOCAL_SIGMA,
      },
      { parameter: PARAMETERS.centreX, value: frame.centre.x, sigma: centreSigma },
      { parameter: PARAMETERS.centreY, value: frame.centre.y, sigma: centreSigma },
      { parameter: PARAMETERS.k1, value: 0, sigma: CORNER_BEND.k1 / corner ** 2 },
      { parameter: PARAMETERS.k2, value: 0, sigma: CORNER_BEND.k2 / corner ** 4 },
    ],
    steps: slopeSteps(start, corner),
  };
}

/** Between the lens's axis and straight down. */
function tiltOf(camera: Camera): number {
  const turn = turnMatrix(...camera.turnRad);
  return Math.atan2(Math.hypot(turn[6], turn[7]), turn[8]);
}
