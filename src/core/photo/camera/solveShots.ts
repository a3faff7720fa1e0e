import { accept, type Checked, exp, type Finding, hypot, log, point, refuse } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import { printOf } from '../sheet/printScale.ts';
import type { Sighting } from './adjustment.ts';
import { adjustScene, evidenceOn, type SceneSolution, type SceneTask } from './adjustScene.ts';
import { sheetsApartFault, unsettledFault } from './cameraTrouble.ts';
import { rmsPxOf } from './residualSpread.ts';
import { NOTED_FOCAL_SIGMA, type SheetPrint } from './sceneBeliefs.ts';
import { printingsApart, type Solved, sceneOf } from './sceneOf.ts';
import { lensSlot, type SceneUnknowns, unknownsOf } from './sceneUnknowns.ts';
import type { Shot, ShotsOptions } from './shot.ts';
import { UNKNOWN } from './sight.ts';
import type { SolvedScene } from './solvedScene.ts';

/**
 * The cameras, sheets and height cards of one scene from all its photographs together, with their covariance.
 *
 * The lowest-numbered sheet fixes the frame `scene`, in true millimetres. Focal length is held near the one the camera
 * noted (35 mm equivalent, ± 3 %), the centre near the middle of the picture (± 0.6 % of its diagonal), the lens near
 * none of distortion, prints near what their bars measure; where the photographs say otherwise they win. Shots of one
 * size, note and camera name share a lens unless one for each explains them better.
 * Faults: `sheet.bar`, `sheet.barsApart` (they contradict the picture), `sheet.apart`, `camera.unsettled`, `camera.steep`
 * (more than 45° from square on), `camera.lens`, `sheet.notFlat`. Findings: `sheet.unmeasured`, `sheet.oneBar`,
 * `sheet.curled`, `sheet.bowed`, `sheet.printings`, `camera.focalNote`, `sheet.outliers`.
 * Method: least squares from several first focal lengths with Huber weights, straying points dropped, each shot's spread
 * taken from what is left and widened where neighbouring points miss alike.
 */
export function solveShots(shots: readonly Shot[], options: ShotsOptions = {}): Checked<SolvedScene> {
  if (shots.length === 0 || shots.some(({ sheets }) => sheets.length === 0)) return refuse(unsettledFault());
  const lensOfShot = sharedLenses(shots);
  const prints = printsOf(unknownsOf(shots, lensOfShot), options);
  if (!prints.ok) return prints;
  const shared = solveTask(taskOf(shots, lensOfShot, prints.value.prints, options));
  if (!shared.ok) return shared;
  const best = withOwnLenses(shots, shared.value, (some, lenses, beliefs) => {
    const own = printsOf(unknownsOf(some, lenses), options);
    return own.ok ? solveTask(taskOf(some, lenses, own.value.prints, { ...options, beliefs })) : own;
  });
  return sceneOf(best, prints.value.findings);
}

/** Shots that may share a lens get one number. */
function sharedLenses(shots: readonly Shot[]): readonly number[] {
  const keys = shots.map(({ picture, cameraName }) =>
    [picture.widthPx, picture.heightPx, picture.focal35Mm ?? '', cameraName ?? ''].join(' '),
  );
  const distinct = [...new Set(keys)];
  return keys.map((key) => distinct.indexOf(key));
}

/** More shots than these are looked into together only where they fit badly: a lens for each is costly then. */
const FEW_SHOTS = 4;
/** How many times better each shot alone may fit than all with one lens before a lens for each is tried. */
const MISFIT_SHARED = 1.5;
/**
 * Logarithm of how much better a lens for each must explain the shots than one for all, where the camera noted one focal
 * length; where it noted none, one lens must itself be clearly the better: seen wrongly as one they are surely wrong.
 */
const BETTER_APART = { noted: 3, unnoted: -6 } as const;

type Solve = (
  shots: readonly Shot[],
  lensOfShot: readonly number[],
  beliefs: ShotsOptions['beliefs'],
) => Checked<Solved>;

/**
 * The shared solution, or one with a lens for each shot where that explains the shots better. A picture's size alone does
 * not tell that nobody zoomed: a lens wrongly shared fits well and is sure of a wrong length.
 */
function withOwnLenses(shots: readonly Shot[], shared: Solved, solve: Solve): Solved {
  if (shared.task.unknowns.lensCount === shots.length) return shared;
  if (shots.length > FEW_SHOTS && isFitting(shots, shared, solve)) return shared;
  const each = shots.map((_, shot) => shot);
  const own = solve(shots, each, shared.task.options.beliefs);
  if (!own.ok) return shared;
  const points = { ...own.value.task, ...own.value.solution };
  const together = evidenceOn(points, shared.task, shared.solution.state);
  const apart = evidenceOn(points, own.value.task, own.value.solution.state);
  const isNoted = shots.every(({ picture }) => picture.focal35Mm !== undefined);
  const least = isNoted ? BETTER_APART.noted : BETTER_APART.unnoted;
  const isApart = apart !== null && (together === null || apart > together + least);
  return isApart ? own.value : shared;
}

/** Whether every shot fits as well as its points came with, or all together nearly as well as each alone. */
function isFitting(shots: readonly Shot[], shared: Solved, solve: Solve): boolean {
  const isAsMeasured = shots.every(({ sheets }, shot) => {
    const sigmas = sheets.flatMap(({ pairs }) => pairs.map(({ sigmaPx }) => sigmaPx));
    return squareOf(shared, shot) <= (MISFIT_SHARED * medianOf(sigmas)) ** 2;
  });
  if (isAsMeasured) return true;
  const squares = shots.map((shot, place) => {
    const alone = solve([shot], [0], 'usual');
    const together = squareOf(shared, place);
    return { together, alone: alone.ok ? squareOf(alone.value, 0) : together };
  });
  const sum = (of: 'together' | 'alone') => squares.reduce((total, one) => total + one[of], 0);
  return sum('together') <= MISFIT_SHARED ** 2 * sum('alone');
}

function squareOf({ task, solution }: Solved, shot: number): number {
  return rmsPxOf(task.unknowns, solution.state, solution.sightings, shot) ** 2;
}

function printsOf(
  { sheetNumbers }: SceneUnknowns,
  { sheetBarMm, sheetBarsMm }: ShotsOptions,
): Checked<{ readonly prints: readonly SheetPrint[]; readonly findings: readonly Finding[] }> {
  const own = sheetNumbers.map((number) => sheetBarsMm?.get(number));
  const first = printOf(own[0] ?? sheetBarMm);
  if (!first.ok) return refuse(...first.faults);
  const prints: SheetPrint[] = [];
  for (const [sheet, bars] of own.entries()) {
    const isApart = sheet > 0 && (bars !== undefined || (own[0] !== undefined && sheetBarMm !== undefined));
    const print = isApart ? printOf(bars ?? sheetBarMm) : first;
    if (!print.ok) return refuse(...print.faults);
    prints.push({ scale: print.value.scale, rows: sheet === 0 || isApart ? print.value.beliefs : null });
  }
  return accept({ prints, findings: first.value.findings });
}

const DIAGONAL_OF_35_MM = hypot(36, 24);

function taskOf(
  shots: readonly Shot[],
  lensOfShot: readonly number[],
  prints: readonly SheetPrint[],
  options: ShotsOptions,
): SceneTask {
  const unknowns = unknownsOf(shots, lensOfShot);
  const pictures = Array.from({ length: unknowns.lensCount }, (_, lens) => {
    const { widthPx, heightPx, focal35Mm } = shots[lensOfShot.indexOf(lens)].picture;
    const diagonalPx = hypot(widthPx, heightPx);
    const notedFocalPx =
      focal35Mm === undefined || !(focal35Mm > 0) ? undefined : (focal35Mm / DIAGONAL_OF_35_MM) * diagonalPx;
    return { centre: point<'photo'>((widthPx - 1) / 2, (heightPx - 1) / 2), diagonalPx, notedFocalPx };
  });
  const sightings = shots.flatMap(({ sheets, cards }, shot): Sighting[] => [
    ...sheets.map(({ number, pairs }) => ({
      shot,
      item: { kind: 'sheet' as const, index: unknowns.sheetNumbers.indexOf(number) },
      pairs,
    })),
    ...(cards ?? []).map(({ number, pairs }) => ({
      shot,
      item: { kind: 'card' as const, index: unknowns.cardNumbers.indexOf(number) },
      pairs,
    })),
  ]);
  return { unknowns, sightings, prints, areOnePrinting: true, pictures, options };
}

/**
 * The solution with notes and ties set aside that the photographs contradict. Prints are free of each other at first:
 * held together they would hide in the misfit.
 */
function solveTask(task: SceneTask): Checked<Solved> {
  const isTied = task.prints.some(({ rows }) => rows === null);
  const first = adjustScene(isTied ? { ...task, areOnePrinting: false } : task);
  if (first && 'apart' in first)
    return refuse(sheetsApartFault(first.apart.map((sheet) => task.unknowns.sheetNumbers[sheet])));
  if (!first) return refuse(unsettledFault());
  const strays = strayingFocals(task, first);
  const pictures = task.pictures.map((picture, lens) =>
    strays.has(lens) ? { ...picture, notedFocalPx: undefined } : picture,
  );
  const areOnePrinting = isTied && printingsApart(task.unknowns, first).length === 0;
  const freed: SceneTask = { ...task, pictures, areOnePrinting };
  const second = strays.size === 0 && !areOnePrinting ? first : adjustScene(freed);
  if (!second || 'apart' in second || !second.settled) return refuse(unsettledFault());
  const found = [...strays].map(
    ([lens, notedPx]) => [lens, { notedPx, foundPx: focalOf(task.unknowns, second, lens) }] as const,
  );
  return accept({ task: freed, solution: second, unnoted: new Map(found) });
}

function focalOf(unknowns: SceneUnknowns, { state }: SceneSolution, lens: number): number {
  return exp(state.values[lensSlot(unknowns, lens) + UNKNOWN.logFocal]);
}

function strayingFocals({ unknowns, pictures }: SceneTask, solution: SceneSolution): Map<number, number> {
  const strays = pictures.flatMap(({ notedFocalPx }, lens) => {
    if (notedFocalPx === undefined) return [];
    const away = log(focalOf(unknowns, solution, lens) / notedFocalPx);
    return Math.abs(away) > 3 * NOTED_FOCAL_SIGMA ? [[lens, notedFocalPx] as const] : [];
  });
  return new Map(strays);
}
